using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>
/// The site in the days that are over. Their weather is known, so nothing that is asked here differs from season to season; what is done
/// on the first day that is played is seen as by the midnight that opens it.
/// </summary>
internal sealed class PastSite
{
    private readonly double _roundHour;

    public PastSite(SeasonPlan plan, SeasonPast past, SeasonClimate climate)
    {
        (Plan, Past, Climate) = (plan, past, climate);
        _roundHour = Scenario.Rules.RoundAt.ToTimeSpan().TotalHours;
    }

    public SeasonPlan Plan { get; }

    public Scenario Scenario => Plan.Scenario;

    public SeasonPast Past { get; }

    public SeasonClimate Climate { get; }

    /// <summary>Instant of the round of a day.</summary>
    public double RoundOf(int day) => (day * 24.0) + _roundHour;

    /// <summary>Instant up to which heat counts for what was done or seen on a day.</summary>
    public double SeenAt(int day) => Math.Min(RoundOf(day), Past.Today * 24.0);

    /// <summary>The work days before a day, the latest first, down to a first one.</summary>
    public IEnumerable<int> WorkDaysBefore(int day, int first)
    {
        for (var before = day - 1; before >= first; before--)
        {
            if (Scenario.Rules.IsWorkDay(Plan.FirstDay.AddDays(before)))
            {
                yield return before;
            }
        }
    }

    public SpaceKind KindOf(int space) => Scenario.Spaces[space].Kind;
}
