using BenchSim.Engine.Randomness;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Words;

/// <summary>Finds the name a user wrote among those that are known, or says which ones there are.</summary>
internal static class KnownNames
{
    /// <summary>
    /// The name as it is known; null where it is none of them. A keyboard may write an accent as a character of its own where the files do
    /// not, or the other way round.
    /// </summary>
    public static string? Find(string written, string[] known)
    {
        var wanted = LatinAccents.Join(written);
        return Array.Find(known, name => string.Equals(LatinAccents.Join(name), wanted, StringComparison.Ordinal));
    }

    /// <summary>The names near the one written as a question, or all of them: the end of a sentence.</summary>
    /// <param name="written">What the user wrote.</param>
    /// <param name="known">The names there are.</param>
    /// <param name="all">What stands before all names, such as "its spaces are".</param>
    public static string Meant(string written, string[] known, string all)
    {
        var near = NearNames.Of(written, known);
        return near.IsEmpty
            ? $"{all} {PlainText.List([.. known.Select(PlainText.Quote)])}."
            : $"did you mean {string.Join(" or ", near.Select(PlainText.Quote))}?";
    }
}
