using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>
/// Results that look like a real study, from a toy that moves whole batches: good enough for pictures and layout, no model of anything.
/// </summary>
internal static class SyntheticStudy
{
    /// <summary>Four spaces, twelve batches, 130 days, the mats short in April.</summary>
    public static StudyResult Spring(int seasons = 200) => Of(SyntheticPlan.Spring(), seasons);

    /// <summary>Six spaces, sixty batches, 220 days.</summary>
    public static StudyResult Large(int seasons = 100) => Of(SyntheticPlan.Large(), seasons);

    /// <summary>Three spaces, two batches, 90 days.</summary>
    public static StudyResult Tiny(int seasons = 40) => Of(SyntheticPlan.Tiny(), seasons);

    /// <summary>A result for any plan.</summary>
    public static StudyResult Of(SeasonPlan plan, int seasons)
    {
        var capped = new ToySeason[seasons];
        var free = new ToySeason[seasons];
        for (var season = 0; season < seasons; season++)
        {
            capped[season] = ToySeason.Play(plan, season, limited: true);
            free[season] = ToySeason.Play(plan, season, limited: false);
        }

        var toy = new ToySummary(plan, capped, free);
        var wanted = plan.Batches.Sum(batch => batch.Order.Plants);
        var fits = capped.Count(season => season.Fits(plan));
        return new StudyResult
        {
            Plan = plan,
            Seasons = seasons,
            Seed = 20270401,
            Fits = Figures.Chance(fits, seasons),
            FitsWeatherCounted = Figures.Chance(fits - (fits / 5), seasons),
            SownTooLate = Figures.Chance((seasons - fits) / 8, seasons),
            OverHeldForPlace = Figures.Chance(seasons - fits - ((seasons - fits) / 8), seasons),
            TooFewInTime = Figures.Chance(seasons - fits, seasons),
            Causes = ImmutableSortedDictionary.CreateRange(
                new Dictionary<Cause, int>
                {
                    [Cause.Place] = seasons - fits - ((seasons - fits) / 8),
                    [Cause.ThrownOut] = 0,
                    [Cause.Germination] = 0,
                    [Cause.SlowGrowth] = (seasons - fits) / 8,
                    [Cause.Hold] = 0,
                }
            ),
            PlantsWanted = wanted,
            PlantsInTime = toy.Estimate(season => wanted - season.LatePlants(plan)),
            PlantsLate = toy.Estimate(season => season.LatePlants(plan)),
            PlantsShort = toy.Estimate(season => season.LatePlants(plan) / 9),
            LatePlantDays = toy.Estimate(season => season.LatePlants(plan) * 4.5),
            OverHeld = toy.Estimate(season => season.WaitingMost(SpaceKind.Table)),
            Discarded = toy.Estimate(season => season.WaitingMost(SpaceKind.Table) / 4),
            StillStanding = toy.Estimate(_ => 0),
            PlantsLostToMishaps = toy.Estimate(_ => 0),
            ReliefUses =
            [
                .. plan.Scenario.Rules.Reliefs.Select(
                    (_, index) => toy.Estimate(season => season.WaitingMost(SpaceKind.Mat) * (index + 1))
                ),
            ],
            Spaces = toy.Spaces(),
            Groups = toy.Groups(),
            Batches = toy.Batches(),
            Growers = toy.Growers(),
            Houses = SyntheticHeat.Houses(plan, seasons),
            MatPower = SyntheticHeat.Mats(plan, seasons),
            Work = toy.Work(),
        };
    }
}
