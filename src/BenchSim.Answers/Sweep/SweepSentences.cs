using BenchSim.Report.Words;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>The sentences of a sweep, each once.</summary>
internal static class SweepSentences
{
    private const int LongestName = 40;

    /// <summary>What it says as a whole, most important first.</summary>
    public static IEnumerable<string> All(SweepResult result) => [Headline(result), .. Facts(result)];

    /// <summary>How many plans fit as often as they must.</summary>
    public static string Headline(SweepResult result)
    {
        var goal = $"at least {ChanceWords.Setting(result.Goal)} of seasons";
        var folders = Numbers.Count(result.Folders.Length, "folder", "folders");
        var ofPlans = result.Folders.Count(folder => folder.Plans.Any(plan => plan.Variant is null && result.IsGood(plan)));
        var ofBest = result.Folders.Count(folder => result.IsGood(folder.Best));
        var name = PlainText.Short(result.Name, LongestName);
        var hasPlans = result.Folders.Any(folder => folder.Plans.Any(plan => plan.Variant is null));
        if (!HasChoice(result))
        {
            return $"{name}: of {folders} {Some(ofBest)} in {goal}{OfOne(result)}.";
        }

        return hasPlans
            ? $"{name}: of {folders} {Some(ofPlans)} in {goal} as planned, and {Some(ofBest)} with the best of what was tried."
            : $"{name}: of {folders} {Some(ofBest)} in {goal} with the best of what was tried.";
    }

    /// <summary>The facts that decide.</summary>
    public static IEnumerable<string> Facts(SweepResult result)
    {
        var worst = result.WorstFirst.First();
        var best = worst.Best;
        var who = result.Folders.Length == 1 ? "The plan fits" : $"Least of all fits {PlainText.Quote(worst.Name)}";
        yield return $"{who}{OfOne(result)}{With(best, HasChoice(result))} in {ChanceWords.OfAllSeasons(best.Fits)}"
            + (best.Tightest is { } space ? $". Trays wait most often for {PlainText.Short(space.Name, LongestName)}." : ".");
        if (HasChoice(result))
        {
            yield return $"What fits most often: {Winners(result)}.";
        }

        if (Widest(result) is var (folder, range))
        {
            yield return $"Where values may be wrong the answer moves most for {PlainText.Quote(folder.Name)}: "
                + $"it fits{With(folder.Best, HasChoice(result))} in {ChanceWords.FineNumber(range.Low)} to {ChanceWords.Fine(range.High)} "
                + "of seasons over nine in ten of the sets of values.";
        }
    }

    /// <summary>How many tasks were played now.</summary>
    public static string Tasks(TasksPlayed played) =>
        $"{PlainText.Capital(Numbers.Count(played.Played, "task", "tasks"))} played now, "
        + $"{Numbers.Count(played.Found, "result", "results")} there before"
        + (played.Replaced == 0 ? "." : $"; {Numbers.Count(played.Replaced, "earlier result was", "earlier results were")} out of date.");

    private static bool HasChoice(SweepResult result) => result.Folders.Any(folder => folder.Plans.Length > 1);

    // The variant, where it is all that was played.
    private static string OfOne(SweepResult result) =>
        !HasChoice(result) && result.Folders[0].Best.Variant is { } variant ? $" with {PlainText.Quote(variant)}" : "";

    private static string Some(int folders) =>
        folders == 1 ? "1 fits" : $"{(folders == 0 ? "none" : Numbers.Whole(folders))} fit{(folders == 0 ? "s" : "")}";

    private static string With(SweptPlan plan, bool isNamed) =>
        !isNamed ? ""
        : plan.Variant is { } variant ? $" at best, with {PlainText.Quote(variant)},"
        : " at best, as planned,";

    // "longer-table" in 7 of 12 folders, as planned in 5.
    private static string Winners(SweepResult result)
    {
        const int Most = 3;
        var winners = result
            .Folders.GroupBy(folder => folder.Best.Variant ?? "", StringComparer.Ordinal)
            .Select(group => (Variant: group.Key, Folders: group.Count()))
            .OrderByDescending(group => group.Folders)
            .ThenBy(group => group.Variant, StringComparer.Ordinal)
            .ToArray();
        string[] words =
        [
            .. winners
                .Take(Most)
                .Select(group =>
                    $"{(group.Variant.Length == 0 ? "as planned" : PlainText.Quote(group.Variant))} in {Numbers.Whole(group.Folders)}"
                ),
            .. winners.Length > Most ? [$"{Numbers.Whole(winners.Length - Most)} more in the rest"] : Array.Empty<string>(),
        ];
        return $"{PlainText.List(words)} of {Numbers.Count(result.Folders.Length, "folder", "folders")}";
    }

    private static (SweptFolder Folder, SweepRange Range)? Widest(SweepResult result)
    {
        var widest = result
            .Folders.Where(folder => folder.UncertainValues > 0 && folder.Best.Row.FitsOverSets is not null)
            .MaxBy(folder => folder.Best.Row.FitsOverSets is { } range ? range.High - range.Low : 0);
        return widest is { Best.Row.FitsOverSets: { } most } ? (widest, most) : null;
    }
}
