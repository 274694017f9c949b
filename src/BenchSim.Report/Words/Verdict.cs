using System.Collections.Immutable;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>
/// The answer in plain words: what a grower reads in ten seconds. The only text from users in the sentences are names of batches,
/// shortened, on one line and without control characters, so the sentences can go to a screen as they are.
/// </summary>
/// <param name="Fits"> True when the plan fits in at least nine seasons of ten beyond doubt (the whole 95 % interval is at or above
/// <see cref="ReliableFrom"/>), false when it beyond doubt does not (the whole interval is below it), null when the seasons played cannot
/// tell. </param>
/// <param name="Headline">How many plants are late in a usual year and in a bad one, whose, and when.</param>
/// <param name="Chance">The share of seasons that fit, and what fails in the rest.</param>
/// <param name="Spread">How far the share of seasons that fit may be off; null where the seasons are few, or all alike.</param>
/// <param name="Weak">How many of the values behind it are from memory or assumption; null where none is.</param>
/// <param name="Decides">Where room runs out, and which batches wait, are held or are slow; none to three sentences.</param>
/// <param name="Sentences">The findings in full, most important first.</param>
/// <param name="LeavesOut">What the numbers leave out, one sentence each.</param>
public sealed record Verdict(
    bool? Fits,
    string Headline,
    string Chance,
    string? Spread,
    string? Weak,
    ImmutableArray<string> Decides,
    ImmutableArray<string> Sentences,
    ImmutableArray<string> LeavesOut
)
{
    /// <summary>Share of seasons from which a plan is said to fit reliably.</summary>
    public const double ReliableFrom = 0.9;

    /// <summary>Puts a result into words.</summary>
    /// <param name="result">The result of a study.</param>
    /// <exception cref="ArgumentNullException"><paramref name="result"/> is null.</exception>
    public static Verdict Of(StudyResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        bool? fits =
            result.Fits.Low >= ReliableFrom ? true
            : result.Fits.High < ReliableFrom ? false
            : null;
        return new Verdict(
            fits,
            VerdictFelt.Headline(result),
            VerdictChance.Headline(result),
            VerdictChance.Spread(result),
            VerdictChance.Weak(result),
            VerdictDecides.Sentences(result),
            [
                .. VerdictChance.Sentences(result),
                .. VerdictCauses.Sentences(result),
                .. VerdictSpaces.Sentences(result),
                .. VerdictSowing.Sentences(result),
                .. VerdictPlants.Sentences(result),
            ],
            VerdictLimits.Sentences(result)
        );
    }
}
