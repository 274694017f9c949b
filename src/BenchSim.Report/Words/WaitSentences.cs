using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>Who waits for whom, in plain words. Safe to show anywhere, as the names in it are shortened, on one
/// line and without control characters.</summary>
public static class WaitSentences
{
    /// <summary>One line that says who waits most, for what, and when.</summary>
    /// <param name="waits">Who waits for whom.</param>
    /// <param name="plan">The plan that was played.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public static string Reading(ImmutableArray<WaitResult> waits, SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var most = waits.MaxBy(wait => wait.TrayDays.Mean);
        if (most is null || most.TrayDays.Most == 0)
        {
            return "No tray waits for a place in any season played.";
        }

        double[] weeks = [.. most.ByWeek.Select(week => week.Mean)];
        var worst = Array.IndexOf(weeks, weeks.Max());
        var dates = new Dates(plan);
        var all = waits.Sum(wait => wait.TrayDays.Mean);
        var share = most.TrayDays.Mean < all ? $", {ChanceWords.Percent(most.TrayDays.Mean / all)} of all waiting" : "";
        var mean = most.Happens.Seasons == 1 ? "" : $" on average ({Numbers.Count(most.Happens.Seasons, "season", "seasons")} played)";
        return $"{PlainText.Capital(From(most))} wait most, for {SavingWords.Name(most.By)}: "
            + $"{Spreads.Mean(most.TrayDays, Numbers.Fine, " tray-days", finer: value => value.ToString("#,##0.0", null))}{share}; "
            + $"the worst week begins on {dates.Plain(dates.Day(7 * worst))}, with {Numbers.Fine(weeks[worst])}{mean}.";
    }

    /// <summary>Who waits: "trays on "Main benches"", "trays not sown yet".</summary>
    /// <param name="wait">Who waits for whom.</param>
    /// <exception cref="ArgumentNullException"><paramref name="wait"/> is null.</exception>
    public static string From(WaitResult wait)
    {
        ArgumentNullException.ThrowIfNull(wait);
        return wait.From is { } space ? $"trays on {SavingWords.Name(space)}" : "trays not sown yet";
    }

    /// <summary>Who waits for what, short, for a heading: "Heat mats, for Main benches".</summary>
    /// <param name="wait">Who waits for whom.</param>
    /// <param name="most">Most characters of a name.</param>
    /// <exception cref="ArgumentNullException"><paramref name="wait"/> is null.</exception>
    public static string Heading(WaitResult wait, int most)
    {
        ArgumentNullException.ThrowIfNull(wait);
        var by = PlainText.Short(wait.By.Name, most);
        return wait.From is { } space ? $"{PlainText.Short(space.Name, most)}, for {by}" : $"not sown, for {by}";
    }
}
