using System.Globalization;
using BenchSim.Published.Library;

namespace Published.Engine;

/// <summary>A file of tests/Published/data, read into rows by column name.</summary>
internal static class ReferenceFile
{
    public static List<Dictionary<string, string>> Rows(string name) => PublishedTable.Read(name);

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
}
