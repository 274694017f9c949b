using System.Buffers;

namespace BenchSim.Report;

/// <summary>Checks the names under which inputs are kept.</summary>
internal static class InputNames
{
    private static readonly SearchValues<char> s_forbidden = SearchValues.Create("\\:*?\"<>|");

    /// <summary>Refuses names that would leave the folder of inputs, or that some system could not store, and names given twice.</summary>
    public static void Check(IReadOnlyList<ReportInput> inputs)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (ReportInput input in inputs)
        {
            if (!IsPlain(input.Name))
                throw new ArgumentException($"An input is named '{input.Name}'; a plain name relative to the scenario folder would be "
                    + "right.", nameof(inputs));
            if (!seen.Add(input.Name))
                throw new ArgumentException($"Two inputs are named '{input.Name}'; each needs a name of its own.", nameof(inputs));
        }
    }

    private static bool IsPlain(string name) =>
        name.Length > 0
        && name.AsSpan().IndexOfAny(s_forbidden) < 0
        && !name.Any(char.IsControl)
        && Array.TrueForAll(name.Split('/'), part => part.Length > 0 && part.Trim().Length == part.Length && !part.EndsWith('.'));
}
