using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Json;

/// <summary>What a sweep says.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the sweep.</param>
/// <param name="Goal">Share of seasons that a plan must fit in, to count among those that fit.</param>
/// <param name="Seasons">Seasons of each plan and set of values.</param>
/// <param name="ValueSets">Sets of values beside the values as given.</param>
/// <param name="Tasks">Number of tasks.</param>
/// <param name="Sentences">What it says as a whole, in words.</param>
/// <param name="Folders">The folders, in the order of the file.</param>
internal sealed record SweepDocument(
    int Version,
    string Name,
    double Goal,
    int Seasons,
    int ValueSets,
    int Tasks,
    ImmutableArray<string> Sentences,
    ImmutableArray<JsonSweptFolder> Folders
)
{
    public static SweepDocument Of(SweepResult result, IEnumerable<string> sentences) =>
        new(
            JsonDialect.Version,
            result.Name,
            result.Goal,
            result.Seasons,
            result.ValueSets,
            result.Tasks,
            [.. sentences],
            [.. result.Folders.Select(folder => JsonSweptFolder.Of(folder, result))]
        );
}

/// <summary>What a sweep says of a folder.</summary>
/// <param name="Folder">The folder, as the file of the sweep has it.</param>
/// <param name="Site">Name of the site or case.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="UncertainValues">Values that may be wrong.</param>
/// <param name="BestVariant">Variant that fits most often; null for the plan itself.</param>
/// <param name="Plans">Its plans, in the order of the file.</param>
internal sealed record JsonSweptFolder(
    string Folder,
    string Site,
    string Seed,
    int UncertainValues,
    string? BestVariant,
    ImmutableArray<JsonSweptPlan> Plans
)
{
    public static JsonSweptFolder Of(SweptFolder folder, SweepResult result) =>
        new(
            folder.Name,
            folder.Site,
            folder.Seed.ToString(CultureInfo.InvariantCulture),
            folder.UncertainValues,
            folder.Best.Variant,
            [.. folder.Plans.Select(plan => JsonSweptPlan.Of(plan, result))]
        );
}

/// <summary>What a sweep says of a plan.</summary>
/// <param name="Variant">Name of the variant; null for the plan itself.</param>
/// <param name="MeetsGoal">Whether it fits as often as it must.</param>
/// <param name="Fits">Chance that a season fits at the values as given, days of weather hold excepted.</param>
/// <param name="FitsWeatherCounted">The same with every late day counted.</param>
/// <param name="FitsOverSets">Share of seasons that fit over the sets of values; null without sets.</param>
/// <param name="PlantsWanted">Plants that the plan wants.</param>
/// <param name="PlantsInTime">Wanted plants out in time.</param>
/// <param name="PlantsInTimeOverSets">Mean of them over the sets of values; null without sets.</param>
/// <param name="LatePlantDays">Late plant-days.</param>
/// <param name="Spaces">Its spaces.</param>
internal sealed record JsonSweptPlan(
    string? Variant,
    bool MeetsGoal,
    JsonChance Fits,
    JsonChance FitsWeatherCounted,
    JsonSweepRange? FitsOverSets,
    long PlantsWanted,
    JsonMean PlantsInTime,
    JsonSweepRange? PlantsInTimeOverSets,
    JsonMean LatePlantDays,
    ImmutableArray<JsonSweptSpace> Spaces
)
{
    public static JsonSweptPlan Of(SweptPlan plan, SweepResult result) =>
        new(
            plan.Variant,
            result.IsGood(plan),
            JsonChance.Of(plan.Row.Fits),
            JsonChance.Of(plan.Row.FitsWeatherCounted),
            JsonSweepRange.Of(plan.Row.FitsOverSets),
            plan.Row.PlantsWanted,
            MeanOf(plan.Row.PlantsInTime),
            JsonSweepRange.Of(plan.Row.PlantsOverSets),
            MeanOf(plan.Row.LatePlantDays),
            [.. plan.Spaces.Select((space, at) => new JsonSweptSpace(space.Id, JsonChance.Of(plan.Row.Short[at]), plan.Row.WorstShort[at]))]
        );

    private static JsonMean MeanOf(SweepMean mean) => new(mean.Mean, double.IsNaN(mean.HalfWidth) ? null : mean.HalfWidth);
}

/// <summary>A figure over sets of values.</summary>
/// <param name="Low">5 % of the sets lie below.</param>
/// <param name="Middle">Half of them lie below.</param>
/// <param name="High">5 % lie above.</param>
internal sealed record JsonSweepRange(double Low, double Middle, double High)
{
    public static JsonSweepRange? Of(SweepRange? range) => range is { } known ? new(known.Low, known.Middle, known.High) : null;
}

/// <summary>How short a space is.</summary>
/// <param name="Space">Id of the space.</param>
/// <param name="Short">Chance that trays wait for a place in it in a season.</param>
/// <param name="WorstShort">Places missing on the worst day of a season, mean.</param>
internal sealed record JsonSweptSpace(string Space, JsonChance Short, double WorstShort);
