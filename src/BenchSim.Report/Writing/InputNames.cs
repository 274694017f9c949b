using BenchSim.Season.Inputs;

namespace BenchSim.Report.Writing;

/// <summary>Checks the names under which inputs are kept.</summary>
internal static class InputNames
{
    /// <summary>Refuses names that would leave the folder of inputs, or that some system could not store, and names given twice.</summary>
    public static void Check(IReadOnlyList<ReportInput> inputs)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var input in inputs)
        {
            if (!PlainNames.IsPlain(input.Name))
            {
                throw new ArgumentException(
                    $"An input is named '{input.Name}'; a plain name relative to the scenario folder would be " + "right.",
                    nameof(inputs)
                );
            }

            if (!seen.Add(input.Name))
            {
                throw new ArgumentException($"Two inputs are named '{input.Name}'; each needs a name of its own.", nameof(inputs));
            }
        }
    }
}
