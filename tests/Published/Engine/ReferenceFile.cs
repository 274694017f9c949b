using System.Globalization;
using System.Text;

namespace Published.Engine;

/// <summary>A file of tests/Published/data, read into rows by column name.</summary>
internal static class ReferenceFile
{
    public static List<Dictionary<string, string>> Rows(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder(), name));
        var columns = Fields(lines[0]);
        return lines
            .Skip(1)
            .Where(line => line.Length > 0)
            .Select(line => columns.Zip(Fields(line)).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal))
            .ToList();
    }

    public static double Number(string text)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? double.Parse(text, CultureInfo.InvariantCulture) : Number(text[..slash]) / Number(text[(slash + 1)..]);
    }

    public static double[] Numbers(string text) => Array.ConvertAll(text.Split('|'), Number);

    /// <summary>The named numbers among the inputs of a row: "c=2;lambda=1.5;mu=1".</summary>
    public static Dictionary<string, double> Inputs(string text) =>
        text.Split(';')
            .Select(part => part.Split('='))
            .Where(part => part.Length == 2 && double.TryParse(part[1], CultureInfo.InvariantCulture, out _))
            .ToDictionary(part => part[0], part => Number(part[1]), StringComparer.Ordinal);

    private static string Folder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var data = Path.Combine(folder.FullName, "tests", "Published", "data");
            if (Directory.Exists(data))
            {
                return data;
            }
        }

        throw new DirectoryNotFoundException("tests/Published/data lies above the tests' own folder.");
    }

    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        foreach (var letter in line)
        {
            if (letter == '"')
            {
                quoted = !quoted;
            }
            else if (letter == ',' && !quoted)
            {
                Cut();
            }
            else
            {
                field.Append(letter);
            }
        }

        Cut();
        return fields;

        void Cut()
        {
            fields.Add(field.ToString());
            field.Clear();
        }
    }
}
