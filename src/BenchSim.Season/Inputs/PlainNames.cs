using System.Buffers;

namespace BenchSim.Season.Inputs;

/// <summary>Names of files of a scenario folder that every system can store, so that a report can keep the files it was made from.</summary>
public static class PlainNames
{
    private static readonly SearchValues<char> Forbidden = SearchValues.Create("\\:*?\"<>|");

    /// <summary>
    /// Whether a name is relative, stays inside the folder, and can be stored anywhere: parts with "/" between them, none of them empty, ending in a dot, or
    /// with blanks at an end; no control character and none of \ : * ? " &lt; &gt; |.
    /// </summary>
    /// <param name="name">Name of a file, relative to the folder.</param>
    public static bool IsPlain(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.AsSpan().IndexOfAny(Forbidden) < 0
            && !name.Any(char.IsControl)
            && Array.TrueForAll(name.Split('/'), part => part.Length > 0 && part.Trim().Length == part.Length && !part.EndsWith('.'));
    }
}
