using BenchSim.Answers.Words;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Run;

/// <summary>Tells what has changed since an earlier report.</summary>
internal static class SinceWords
{
    private const int MostFiles = 3;
    private const int MostBatches = 3;
    private const int LongestName = 24;

    /// <summary>The change in a sentence or two.</summary>
    public static string Short(SinceReport since) =>
        since.IsNothing
            ? $"Since {Report(since)} nothing has changed: the same files, and the same answer."
            : $"Since {Report(since)}: {Files(since)}; {Fit(since)}; {Late(since)}.";

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(SinceReport since)
    {
        yield return Short(since);
        if (since.IsNothing)
        {
            yield break;
        }

        if (!since.IsSamePlay)
        {
            var seed = PlainText.Short(since.Then.Seed, LongestName);
            yield return $"It played {Numbers.Count(since.Then.Seasons, "season", "seasons")} with seed {seed}: "
                + "some of the difference may be chance.";
        }

        var batches = since.Batches;
        if (!batches.IsEmpty)
        {
            var others = batches.Length - MostBatches;
            var more = others > 0 ? $"; and {Numbers.Count(others, "more batch", "more batches")}" : "";
            yield return $"Plants that miss their date, batch by batch: {string.Join("; ", batches.Take(MostBatches).Select(Batch))}{more}.";
        }
    }

    private static string Report(SinceReport since)
    {
        var with = since.Then.Variant is { } variant ? $" with {PlainText.Quote(PlainText.Short(variant, LongestName))}" : "";
        return since.Then.Today is { } day ? $"the report of {Dates.Full(day)}{with}" : $"the report of the whole season{with}";
    }

    private static string Files(SinceReport since)
    {
        string[] all =
        [
            .. since.Changed.Select(name => $"{Name(name)} changed"),
            .. since.New.Select(name => $"{Name(name)} is new"),
            .. since.Gone.Select(name => $"{Name(name)} is gone"),
        ];
        return all.Length == 0 ? "no file changed"
            : all.Length <= MostFiles ? PlainText.List(all)
            : $"{string.Join(", ", all.Take(MostFiles))} and {Numbers.Count(all.Length - MostFiles, "more file", "more files")} changed";
    }

    private static string Fit(SinceReport since) =>
        $"fits {ChanceWords.Fine(since.Then.Fits)} then, {ChanceWords.Fine(since.Now.Fits.Share)} now";

    private static string Late(SinceReport since) =>
        $"plants that miss their date {Numbers.Short(since.Then.Late)} then, {Numbers.Short(since.Late)} now, a season on average";

    private static string Batch((string Batch, double Then, double Now) each) =>
        $"{PlainText.Short(each.Batch, LongestName)} {Numbers.Short(each.Then)} then, {Numbers.Short(each.Now)} now";

    private static string Name(string file) => PlainText.Short(file, LongestName);
}
