using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Today;

/// <summary>The first screen of a day: what stands, what is due and has no row, what the counts put right, and the room left.</summary>
internal static class TodayScreen
{
    private const int MostNamed = 4;
    private const int LongestName = 24;

    public static FirstScreen Of(TodayAnswer answer)
    {
        var words = new TodayWords(answer.Plan);
        var spaces = SpaceToday.Of(answer.Plan, answer.Ledger, answer.Today);
        return new FirstScreen(Headline(answer, spaces))
        {
            Facts =
            [
                .. new[]
                {
                    Unsown(answer, words),
                    Due(answer, words),
                    Beyond(answer, words),
                    Counts(answer, words),
                    Latest(answer, words),
                }.OfType<string>(),
            ],
            Warnings =
            [
                .. spaces
                    .Where(space => space.Free < 0)
                    .Take(2)
                    .Select(space =>
                        $"{PlainText.Capital(PlainText.Short(space.Space.Name, LongestName))}: "
                        + $"{Numbers.Count(space.Held, "place is", "places are")} "
                        + $"taken by the log, and there {(space.Places == 1 ? "is 1" : $"are {Numbers.Whole(space.Places)}")}."
                    ),
            ],
            Table = Spaces(spaces),
            Footnote = "By the log up to that day. A job without a line counts as not done; free: the day's places less those taken.",
        };
    }

    /// <summary>The spaces with their room.</summary>
    public static Table Spaces(IEnumerable<SpaceToday> spaces)
    {
        var table = new Table(["space", "kind", ">trays", ">flats", ">taken", ">places", ">free"], LongestName);
        foreach (var space in spaces)
        {
            table.Add(
                space.Space.Name,
                Trade.Code(space.Space),
                Numbers.Whole(space.Trays),
                Numbers.Whole(space.Flats),
                Numbers.Whole(space.Held),
                Numbers.Whole(space.Places),
                Numbers.Whole(space.Free)
            );
        }

        return table;
    }

    private static string Headline(TodayAnswer answer, IReadOnlyList<SpaceToday> spaces)
    {
        var standing = answer.Ledger.Batches.Count(batch => !batch.Piles.IsEmpty);
        var what =
            standing == 0
                ? "nothing stands anywhere"
                : $"{Pieces(spaces.Sum(space => space.Trays), spaces.Sum(space => space.Flats))} stand, of "
                    + Numbers.Count(standing, "batch", "batches");
        var due = answer.Due.Length;
        return $"{FirstScreen.Subject(answer.Plan.Scenario.Name, null)} on {answer.Today.DayOfWeek} {Dates.Full(answer.Today)}: {what}. "
            + (
                due == 0
                    ? "Nothing is due without a line in the log."
                    : $"{Numbers.Count(due, "job is", "jobs are")} due and not confirmed."
            );
    }

    private static string Pieces(int trays, int flats) =>
        flats == 0 ? TodayWords.Pieces(trays, false)
        : trays == 0 ? TodayWords.Pieces(flats, true)
        : $"{TodayWords.Pieces(trays, false)} and {TodayWords.Pieces(flats, true)}";

    private static string? Unsown(TodayAnswer answer, TodayWords words)
    {
        DueJob[] sowings = [.. answer.Due.Where(job => job.Kind == WorkKind.Sow)];
        return sowings.Length == 0 ? null : $"Not sown, so due now: {List(sowings, words.Job)}.";
    }

    private static string? Due(TodayAnswer answer, TodayWords words)
    {
        DueJob[] moves = [.. answer.Due.Where(job => job.Kind != WorkKind.Sow)];
        return moves.Length == 0 ? null : $"Due by the plan, and without a line: {List(moves, words.Job)}.";
    }

    private static string? Beyond(TodayAnswer answer, TodayWords words)
    {
        (int Batch, int More, bool InFlats)[] beyond =
        [
            .. answer
                .Plan.Batches.Select(
                    (batch, index) => (index, answer.Ledger.Batches[index].Sown - DueWork.Planned(batch), batch.Flat is not null)
                )
                .Where(each => each.Item2 > 0),
        ];
        return beyond.Length == 0 ? null : $"Sown beyond the plan: {List(beyond, More)}.";

        string More((int Batch, int More, bool InFlats) each) =>
            $"{TodayWords.Pieces(each.More, each.InFlats)} of {words.Batch(each.Batch)}";
    }

    private static string? Counts(TodayAnswer answer, TodayWords words)
    {
        var ledger = answer.Ledger;
        string[] all =
        [
            .. ledger.Differences.OrderByDescending(each => each.On).Select(words.Difference),
            .. ledger.Elsewhere.OrderByDescending(each => each.On).Select(each => "moved, and not written down: " + words.Elsewhere(each)),
        ];
        return all.Length == 0 ? null : $"Put right by counts: {List(all, text => text)}.";
    }

    private static string Latest(TodayAnswer answer, TodayWords words)
    {
        var log = answer.Plan.Scenario.Log;
        if (log.IsEmpty)
        {
            return answer.HasLog
                ? "The log has no lines yet, so nothing counts as sown."
                : "There is no log.csv yet, so nothing counts as sown. docs/underway.md says what to write.";
        }

        var latest = log.Max(entry => entry.Date);
        var days = answer.Today.DayNumber - latest.DayNumber;
        return $"The log has {Numbers.Count(log.Length, "line", "lines")}, the latest of {words.Date(latest)}"
            + (days == 0 ? "." : $", {Numbers.Count(days, "day", "days")} before.");
    }

    private static string List<T>(IReadOnlyList<T> all, Func<T, string> word) =>
        all.Count <= MostNamed
            ? string.Join("; ", all.Select(word))
            : $"{string.Join("; ", all.Take(MostNamed).Select(word))}; and {Numbers.Whole(all.Count - MostNamed)} more";
}
