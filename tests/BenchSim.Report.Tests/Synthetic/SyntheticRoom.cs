using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>Who waits for whom, and what more room saves, with figures made up for the words and tables.</summary>
internal static class SyntheticRoom
{
    private static readonly Measure s_late = Measures.LatePlantDays;

    /// <summary>Trays not sown wait for the first space in two weeks, trays there for the second in one; trays
    /// of the second never wait.</summary>
    public static ImmutableArray<WaitResult> Waits(SeasonPlan plan) =>
        [Wait(plan, null, 0, (4, 20), (5, 8)), Wait(plan, 0, 1, (5, 2)), Wait(plan, 1, 2)];

    /// <summary>The first space saves 400 of 1,000 late plant-days, the second nothing, the third makes it
    /// worse; the second and third help together.</summary>
    public static BottleneckResult Bottlenecks(SeasonPlan plan)
    {
        var spaces = plan.Scenario.Spaces;
        return new BottleneckResult
        {
            Plan = plan,
            Seasons = 200,
            Seed = 1,
            Confidence = 0.95,
            Comparisons = 27,
            EachConfidence = 1 - (0.05 / 27),
            Fits = Figures.Chance(100, 200),
            LatePlantDays = 1000,
            Unlimited = [Trial(spaces[0], null, -400, 30), Trial(spaces[1], null, 0, 0), Trial(spaces[2], null, 50, 0)],
            Larger = [Trial(spaces[0] with { UnitPlaces = 8 }, 8, -120.5, 4), Trial(spaces[1], 24, -3, 0, 12), Trial(spaces[2], 15, 0, 0)],
            Pairs =
            [
                new BottleneckPair
                {
                    First = spaces[1],
                    Second = spaces[2],
                    Fits = Fits(40),
                    LatePlantDays = Late(-600, 20),
                    AgainstFirst = Late(-600, 30),
                    AgainstSecond = Late(-650, 30),
                    BeyondSum = Late(-650, 40),
                },
            ],
            Waits = Waits(plan),
        };
    }

    private static BottleneckTrial Trial(Space space, int? added, double late, int onlyVariant, double half = 10) =>
        new()
        {
            Space = space,
            PlacesAdded = added,
            PlantsInTime = Change(0, 0) with { Measure = Measures.PlantsInTime },
            LatePlantDays = Late(late, half),
            Fits = Fits(onlyVariant),
            Waited = [Change(0, 0), Change(0, 0), Change(0, 0)],
            Growing = Change(0, 0),
        };

    /// <summary>A difference of a mean of 1,000, of 150 of 200 seasons.</summary>
    public static MeasureChange Change(double difference, double half) => Late(difference, half);

    private static MeasureChange Late(double difference, double half) =>
        new()
        {
            Measure = s_late,
            Base = 1000,
            Variant = 1000 + difference,
            Difference = difference,
            HalfWidth = difference == 0 ? 0 : half,
            Differing = difference == 0 ? 0 : 150,
            VarianceRatio = 10,
        };

    private static FitChange Fits(int onlyVariant) =>
        new()
        {
            Base = Figures.Chance(100, 200),
            Variant = Figures.Chance(100 + onlyVariant, 200),
            Both = 100,
            OnlyBase = 0,
            OnlyVariant = onlyVariant,
            Low = onlyVariant > 10 ? 0.05 : -0.01,
            High = 0.3,
            VarianceRatio = 3,
        };

    private static WaitResult Wait(SeasonPlan plan, int? from, int by, params (int Week, int Days)[] waits)
    {
        var weeks = Enumerable.Repeat(new DaySpread(0, 0, 0, 0, 0, 0), (plan.Days + 6) / 7).ToArray();
        foreach ((var week, var days) in waits)
        {
            weeks[week] = new DaySpread(days, 0, days, 2 * days, 2 * days, 3 * days);
        }

        var all = waits.Sum(wait => wait.Days);
        return new WaitResult
        {
            From = from is { } at ? plan.Scenario.Spaces[at] : null,
            By = plan.Scenario.Spaces[by],
            ByWeek = [.. weeks],
            TrayDays = new Estimate(all, all == 0 ? 0 : 1, 0, all, 2 * all, 2 * all, 0, 3 * all, 200),
            Happens = Figures.Chance(all == 0 ? 0 : 120, 200),
        };
    }
}
