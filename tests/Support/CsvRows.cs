using CsvHelper;

namespace Support;

/// <summary>The cells of a table that the program wrote, read by CsvHelper: header first, every row as long as it.</summary>
public static class CsvRows
{
    private static readonly CsvReaderOptions s_form = new()
    {
        Separator = ',',
        HasHeader = false,
        MalformedData = CsvMalformedDataHandling.Throw,
        FieldCountMismatch = CsvFieldCountHandling.Throw,
    };

    /// <summary>The rows of a table.</summary>
    public static string[][] Of(byte[] table)
    {
        using var csv = CsvReader.Create(table, s_form);
        var rows = new List<string[]>();
        while (csv.Read())
        {
            rows.Add([.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]);
        }

        return [.. rows];
    }

    /// <summary>The rows of a file.</summary>
    public static string[][] In(string path) => Of(File.ReadAllBytes(path));
}
