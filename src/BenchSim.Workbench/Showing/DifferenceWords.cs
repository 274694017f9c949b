using BenchSim.Report.Words;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>What a try changes, in words and numbers.</summary>
internal static class DifferenceWords
{
    private const string ByTheFiles =
        "The try changes what it is judged by, so the two are set side by side by what the files call in time and the dates they promise.";

    /// <summary>The difference from the files; null where there is none to tell.</summary>
    public static string? Of(Told told)
    {
        if (told is not { Played.Result: { } result, Base: { } files })
        {
            return null;
        }

        if (files.Result is not { } before)
        {
            return "The files themselves have faults, so there is nothing to set this try against.";
        }

        // Known at once: the seasons of the try alone are judged as it says itself.
        var isMoved = told is { Played.Plan: { } tried, Base.Plan: { } plan } && Yardstick.IsMoved(plan, tried);
        if (told.Change is { } change)
        {
            return CompareSentences.FitsWith("this try", change, change.Base.Seasons) + (isMoved ? " " + ByTheFiles : "");
        }

        if (isMoved)
        {
            return $"The files fit in {ChanceWords.OfAllSeasons(before.Fits)}. {ByTheFiles}";
        }

        var more = result.Fits.Hits - before.Fits.Hits;
        var change200 =
            more == 0 ? "as many"
            : more > 0 ? $"{Numbers.Whole(more)} more"
            : $"{Numbers.Whole(-more)} fewer";
        return result.Seasons == before.Seasons && result.Seed == before.Seed
            ? $"The files fit in {Numbers.Whole(before.Fits.Hits)} of the same {Numbers.Whole(before.Seasons)} seasons, "
                + $"this try in {Numbers.Whole(result.Fits.Hits)}: {change200}."
            : $"The files fit in {ChanceWords.OfAllSeasons(before.Fits)}.";
    }
}
