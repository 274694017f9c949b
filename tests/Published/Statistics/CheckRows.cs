using System.Globalization;
using System.Text;

namespace Published.Statistics;

/// <summary>Rows of tests/Published/data/queueing_checks.csv. The source of each value stands in its row.</summary>
internal static class CheckRows
{
    /// <summary>Rows of one category, and of one name where given. Those recalled from memory are left out: they gate nothing.</summary>
    public static IReadOnlyList<CheckRow> Of(string category, string? name = null)
    {
        List<CheckRow> rows = [];
        foreach (var line in File.ReadLines(Path.Combine(DataFolder(), "queueing_checks.csv")).Skip(1))
        {
            var fields = Split(line);
            if (fields[0] == category && (name ?? fields[1]) == fields[1] && fields[5] is "seen" or "derived" or "computed")
            {
                rows.Add(new CheckRow(fields[2], fields[3], double.Parse(fields[4], CultureInfo.InvariantCulture)));
            }
        }

        Assert.NotEmpty(rows);
        return rows;
    }

    private static string DataFolder()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var data = Path.Combine(folder.FullName, "tests", "Published", "data");
            if (Directory.Exists(data))
            {
                return data;
            }
        }

        throw new DirectoryNotFoundException("tests/Published/data is not above the test's own folder.");
    }

    private static List<string> Split(string line)
    {
        List<string> fields = [];
        StringBuilder field = new();
        var quoted = false;
        foreach (var each in line)
        {
            if (each == '"')
            {
                quoted = !quoted;
            }
            else if (each == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(each);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}
