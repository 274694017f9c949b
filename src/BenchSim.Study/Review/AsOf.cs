using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Study.Review;

/// <summary>A season as it stood on a morning that is over.</summary>
internal static class AsOf
{
    /// <summary>
    /// The plan, to be played from a day on with what was known that morning: the rows that had been written before it and the weather
    /// observed up to the day before. No forecast of the weather of then is kept.
    /// </summary>
    /// <param name="plan">The plan, with the log and the weather of the whole season.</param>
    /// <param name="day">The day, one of the season.</param>
    public static SeasonPlan Of(SeasonPlan plan, DateOnly day) => Of(plan, day, row => row.Date < day && (row.Entered ?? row.Date) < day);

    /// <summary>The plan, to be played from a day on with what is known today of the days before, whenever it was written down.</summary>
    /// <param name="plan">The plan, with the log and the weather of the whole season.</param>
    /// <param name="day">The day, one of the season.</param>
    public static SeasonPlan Known(SeasonPlan plan, DateOnly day) => Of(plan, day, row => row.Date < day);

    private static SeasonPlan Of(SeasonPlan plan, DateOnly day, Func<LogEntry, bool> isKnown)
    {
        var scenario = plan.Scenario with { Log = [.. plan.Scenario.Log.Where(isKnown)], Seen = plan.Scenario.Seen with { Forecast = [] } };
        var then = plan with { Scenario = scenario };
        return then with
        {
            Scenario = scenario with { Known = SeenDays.Of(scenario, day) },
            Past = LedgerPast.Of(then, BenchLedger.Of(scenario, scenario.Log, day), day),
        };
    }
}
