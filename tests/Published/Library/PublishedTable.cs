using System.Text;

namespace BenchSim.Published.Library;

/// <summary>The rows of a table under tests/Published/data, by column name.</summary>
internal static class PublishedTable
{
    /// <summary>Folder of the repository, found upwards from the running tests.</summary>
    internal static List<Dictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "Published", "data", file));
        var header = Split(lines[0]);
        return
        [
            .. lines
                .Skip(1)
                .Where(line => line.Length > 0)
                .Select(line => header.Zip(Split(line)).ToDictionary(pair => pair.First, pair => pair.Second, StringComparer.Ordinal)),
        ];
    }

    private static List<string> Split(string line)
    {
        List<string> cells = [];
        var cell = new StringBuilder();
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString());
        return cells;
    }
}
