using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>
/// Why a batch is late, or a space is full: who waits for what, and who holds the places. Safe to show anywhere, as the names in it are
/// shortened, on one line and without control characters.
/// </summary>
public static class WhySentences
{
    private const int LongestName = 40;
    private const int MostNamed = 8;

    // Days a tray below which nothing is said of a wait.
    private const double Hardly = 0.05;

    /// <summary>A batch over the seasons: when it goes out, what it waits for, and what is lost of it.</summary>
    /// <param name="result">The seasons.</param>
    /// <param name="batch">The batch.</param>
    public static ImmutableArray<string> Of(StudyResult result, BatchResult batch)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(batch);
        var dates = new Dates(result.Plan);
        var last = dates.Typical(batch.OutLast);
        return
        [
            $"Planned to go out on {dates.Plain(batch.Plan.SetOutOn)}; "
                + (last is null ? "no tray of it goes out in any season played." : $"its last trays go out {last}."),
            $"All its plants are in time in {ChanceWords.OfAllSeasons(batch.Complete)}.",
            Waits(result, batch),
            .. Lost(result, batch),
        ];
    }

    /// <summary>A space in one week of the play: how full it is, and who waits for it.</summary>
    /// <param name="result">The seasons.</param>
    /// <param name="space">The space.</param>
    /// <param name="week">The week, 0 the one that begins on the first day.</param>
    public static ImmutableArray<string> Of(StudyResult result, SpaceResult space, int week)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(space);
        var dates = new Dates(result.Plan);
        var first = SeasonResult.DaysAWeek * week;
        var days = Enumerable.Range(first, Math.Min(SeasonResult.DaysAWeek, result.Plan.Days - first));
        var fullest = days.MaxBy(day => (space.Waiting[day].P90, space.Held[day].P50));
        WaitResult[] waits =
        [
            .. result
                .Waits.Where(wait => wait.By == space.Space && wait.ByWeek[week].Most > 0)
                .OrderByDescending(wait => wait.ByWeek[week].Mean),
        ];
        return
        [
            $"On {dates.Plain(dates.Day(fullest))} {Numbers.Whole(space.Held[fullest].P50)} of "
                + $"{Numbers.Count(space.Places[fullest], "place", "places")} are held in a middling season.",
            .. waits.Select(wait => $"{PlainText.Capital(WaitSentences.From(wait))} wait for it: {Week(wait.ByWeek[week])}."),
            .. waits.Length == 0 ? [$"No tray waits for it in this week in {SavingWords.Any(result.Seasons)}."] : Array.Empty<string>(),
        ];
    }

    /// <summary>A space on one day of one season: who holds the places, and what waits.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="space">The space.</param>
    /// <param name="day">The day.</param>
    public static ImmutableArray<string> Of(SeasonPlan plan, Space space, FullDay day)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(space);
        ArgumentNullException.ThrowIfNull(day);
        var dates = new Dates(plan);
        var on = PlainText.Capital(dates.Plain(dates.Day(day.Day)));
        return
        [
            day.Places == 0
                ? $"{on}: {SavingWords.Name(space)} has no place open."
                : $"{on}: {Numbers.Whole(day.Held)} of {Numbers.Count(day.Places, "place", "places")} held"
                    + (day.Holders.IsEmpty ? "." : $" by {Named([.. day.Holders.Select(each => $"{Id(each.Batch)} {each.Places}")])}."),
            day.Waiting.IsEmpty
                ? "Nothing waits."
                : $"Waiting: {Named([.. day.Waiting.OrderByDescending(each => each.Places).Select(each => Waiting(plan, each))])}.",
        ];
    }

    private static string Week(DaySpread week)
    {
        var middling = Numbers.Count(week.P50, "tray-day", "tray-days");
        return week.P50 == week.P90
            ? $"{middling} in this week in a middling season, and as many in a bad one"
            : $"{middling} in this week in a middling season, {Numbers.Whole(week.P90)} or more in one of ten";
    }

    private static string Waiting(SeasonPlan plan, WaitingTrays trays)
    {
        var count = trays.IsFlat ? Numbers.Count(trays.Count, "flat", "flats") : Numbers.Count(trays.Count, "tray", "trays");
        var where = trays.From is { } space ? $"on {PlainText.Short(plan.Scenario.Spaces[space].Name, LongestName)}" : "not sown yet";
        return $"{Id(trays.Batch)}, {count} {where}";
    }

    // Semicolons, for the parts hold commas.
    private static string Named(string[] parts) =>
        string.Join("; ", parts.Take(MostNamed)) + (parts.Length > MostNamed ? $"; {Numbers.Whole(parts.Length - MostNamed)} more" : "");

    private static string Waits(StudyResult result, BatchResult batch)
    {
        var trays = VerdictDecides.TraysOf(batch);
        string[] spaces =
        [
            .. result
                .Spaces.Select((space, at) => (space.Space, Days: batch.BlockedTrayDays[at].Mean / trays))
                .Where(each => each.Days >= Hardly)
                .OrderByDescending(each => each.Days)
                .Select(each => $"{Numbers.Short(each.Days)} for {SavingWords.Name(each.Space)}"),
        ];
        var held = VerdictDecides.DaysHeld(batch);
        var waits =
            spaces.Length == 0
                ? "Its trays hardly wait for a place"
                : $"Days that a tray waits for a place, on average: {PlainText.List(spaces)}";
        return held < Hardly ? $"{waits}." : $"{waits}. The weather alone holds it {Numbers.Short(held)} days.";
    }

    private static IEnumerable<string> Lost(StudyResult result, BatchResult batch)
    {
        var late = VerdictDecides.LateShare(batch);
        if (late > 0)
        {
            var inHand = batch.Plan.DaysInHand;
            yield return $"{PlainText.Capital(ChanceWords.Percent(late))} of its plants miss their date, on average; in normal weather and "
                + $"with room it is ready {Numbers.Count(Math.Abs(inHand), "day", "days")} {(inHand < 0 ? "after" : "before")} its date.";
        }

        var noun = batch.Plan.Flats > 0 ? "trays or flats" : "trays";
        if (batch.GivenUp.Mean >= Hardly)
        {
            yield return $"Given up unsown, on average: {Numbers.Short(batch.GivenUp.Mean)} {noun}.";
        }

        var thrown = batch.Discarded.Where(pair => pair.Key != nameof(DiscardReason.Surplus)).Sum(pair => pair.Value.Mean);
        if (thrown >= Hardly)
        {
            yield return $"Thrown out, on average: {Numbers.Short(thrown)} {noun} of {Numbers.Count(result.Seasons, "season", "seasons")}.";
        }
    }

    private static string Id(string batch) => PlainText.Short(batch, LongestName);
}
