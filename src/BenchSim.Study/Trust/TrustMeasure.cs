using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Trust;

/// <summary>What is read off the seasons of value sets.</summary>
/// <param name="Id">Name in JSON: "fits", "late_plant_days", "waiting:table".</param>
/// <param name="Name">What it is called: "seasons that fit".</param>
public sealed record TrustMeasure(string Id, string Name)
{
    /// <summary>Whether it is a share of seasons.</summary>
    public bool IsShare { get; private init; }

    /// <summary>Reads it off a season of a plan.</summary>
    internal Func<SeasonPlan, Func<SeasonResult, double>> ReaderOf { get; init; } = _ => _ => 0;

    /// <summary>Whether the season fits.</summary>
    public static TrustMeasure Fits { get; } =
        new("fits", "seasons that fit") { IsShare = true, ReaderOf = _ => season => season.Fits ? 1 : 0 };

    /// <summary>Late plant-days.</summary>
    public static TrustMeasure LatePlantDays { get; } =
        new("late_plant_days", "late plant-days") { ReaderOf = _ => season => MeasuredSeason.LatePlantDaysOf(season.Batches) };

    /// <summary>Wanted plants out in time.</summary>
    public static TrustMeasure PlantsInTime { get; } =
        new("plants_in_time", "plants out in time") { ReaderOf = _ => season => season.PlantsInTime };

    /// <summary>The measures of a plan: those that all have, and the worst day of each space.</summary>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<TrustMeasure> All(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [Fits, LatePlantDays, PlantsInTime, .. plan.Scenario.Spaces.Select(WorstOf)];
    }

    private static TrustMeasure WorstOf(Space space, int at) =>
        new($"waiting:{space.Id}", $"trays that wait for {space.Name} on the worst day")
        {
            ReaderOf = _ => season => season.Waiting[at].Max(),
        };
}
