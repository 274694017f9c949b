using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What counting needs to know of a plan, worked out once and shared by all threads.</summary>
public sealed class PlanShape
{
    /// <summary>Works it out.</summary>
    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is null.</exception>
    public PlanShape(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        var scenario = plan.Scenario;
        Places = [.. scenario.Spaces.Select(space => PlacesByDay(plan, space))];
        Groups =
        [
            .. Enum.GetValues<SpaceKind>()
                .Select(kind => new SpaceGroup(kind, Of(kind), Sum(Of(kind))))
                .Where(group => group.Spaces.Length > 0),
        ];
        Wanted = [.. plan.Batches.Select(batch => batch.Order.Plants)];
        PlantsWanted = Wanted.Sum();
        Waits = WaitPair.Of(plan);
        SetOutDay = [.. plan.Batches.Select(batch => batch.SetOutOn.DayNumber - plan.FirstDay.DayNumber)];
        Growers = [.. plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal)];

        int[] Of(SpaceKind kind) => [.. Enumerable.Range(0, scenario.Spaces.Length).Where(space => scenario.Spaces[space].Kind == kind)];
        int[] Sum(int[] spaces) => [.. Enumerable.Range(0, plan.Days).Select(day => spaces.Sum(space => Places[space][day]))];
    }

    /// <summary>The plan.</summary>
    public SeasonPlan Plan { get; }

    /// <summary>Days played.</summary>
    public int Days => Plan.Days;

    /// <summary>Weeks played, the first from day 0, the last perhaps not whole.</summary>
    internal int Weeks => (Plan.Days + SeasonResult.DaysAWeek - 1) / SeasonResult.DaysAWeek;

    /// <summary>Places by space and day.</summary>
    public int[][] Places { get; }

    /// <summary>Mats, benches and tables, those there are.</summary>
    internal SpaceGroup[] Groups { get; }

    /// <summary>Who can wait for whom.</summary>
    internal WaitPair[] Waits { get; }

    /// <summary>Plants wanted by batch.</summary>
    internal int[] Wanted { get; }

    /// <summary>Plants wanted in all.</summary>
    internal int PlantsWanted { get; }

    /// <summary>Planned day of setting out by batch.</summary>
    internal int[] SetOutDay { get; }

    /// <summary>Growers in order of first appearance in the plan: the order of a season's result.</summary>
    internal string[] Growers { get; }

    // A house that opens on a date has no places before it. One opened "when needed" can be used on any day.
    private static int[] PlacesByDay(SeasonPlan plan, Space space)
    {
        var house = plan.Scenario.Houses.FirstOrDefault(each => string.Equals(each.Id, space.HouseId, StringComparison.Ordinal));
        var opens = house?.Opening == HouseOpening.FromDate ? house.OpensOn : null;
        var places = new int[plan.Days];
        for (var day = 0; day < places.Length; day++)
        {
            var date = plan.FirstDay.AddDays(day);
            if (date < opens)
            {
                continue;
            }

            places[day] = space.Places;
            foreach (var change in space.Changes)
            {
                if (change.From <= date)
                {
                    places[day] = change.Places;
                }
            }
        }

        return places;
    }
}
