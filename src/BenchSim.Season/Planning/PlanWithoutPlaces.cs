using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>
/// A plan with what cannot change a season without limits blotted out: places, names, sources, prices. Two plans that are equal then play
/// the same seasons. What is not named here stays in, so that a new field makes plans differ rather than pass for the same.
/// </summary>
public static class PlanWithoutPlaces
{
    private static readonly ImmutableSortedDictionary<string, Provenance> s_noSources = ImmutableSortedDictionary<string, Provenance>.Empty;

    /// <summary>The plan, blotted.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="same">Makes arrays of the same content the same.</param>
    public static SeasonPlan Of(SeasonPlan plan, SameArrays same)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(same);
        return plan with
        {
            Scenario = Of(plan.Scenario, same),
            Batches = same.Of([.. plan.Batches.Select(batch => Of(batch, same))]),
            SownInTimeDays = plan.SownInTimeDays,
            Warnings = [],
        };
    }

    /// <summary>The scenario, blotted; of its batches nothing stays.</summary>
    internal static Scenario Of(Scenario scenario, SameArrays same) =>
        scenario with
        {
            Name = "",
            Question = "",
            IsPlannedAnew = false,
            Units = default,
            Invest = null,
            Play = new PlaySettings(),
            Houses = same.Of([.. scenario.Houses.Select(Of)]),
            Spaces = same.Of([.. scenario.Spaces.Select(Of)]),
            TrayTypes = [],
            Crops = [],
            Batches = [],
            Supplies = [],
            Ranges = [],
            Log = same.Of(scenario.Log),
            Seen = new SeenWeather(same.Of(scenario.Seen.Observed), same.Of(scenario.Seen.Forecast)),
            Mishaps = same.Of([.. scenario.Mishaps.Select(mishap => mishap with { Name = "" })]),
            Rules = scenario.Rules with
            {
                WorkDays = same.Of(scenario.Rules.WorkDays),
                DaysOff = same.Of(scenario.Rules.DaysOff),
                Light = same.Of(scenario.Rules.Light),
                Reliefs = same.Of(scenario.Rules.Reliefs),
                Prices = new Prices(),
            },
            Weather = Of(scenario.Weather, same),
        };

    private static House Of(House house) =>
        house with
        {
            Name = "",
            Heat = null,
            Body = house.Body is { } body ? body with { Sources = s_noSources } : null,
        };

    private static Space Of(Space space) =>
        space with
        {
            Name = "",
            Places = 0,
            Changes = [],
            AislePlaces = 0,
            UnitPlaces = null,
            PlacesNote = "",
            Power = null,
        };

    /// <summary>A batch, blotted.</summary>
    internal static BatchPlan Of(BatchPlan batch, SameArrays same) =>
        batch with
        {
            Order = batch.Order with { ThousandSeeds = null, Note = "", Place = default, Finish = same.Of(batch.Order.Finish) },
            Crop = batch.Crop with
            {
                Name = "",
                GerminationCurve = same.Of(batch.Crop.GerminationCurve),
                Benches = same.Of(batch.Crop.Benches),
                Mats = same.Of(batch.Crop.Mats),
                Finish = same.Of(batch.Crop.Finish),
                Sources = s_noSources,
            },
            Tray = Of(batch.Tray),
            Flat = batch.Flat is null ? null : Of(batch.Flat),
            Mats = same.Of(batch.Mats),
            Benches = same.Of(batch.Benches),
            Finish = same.Of(batch.Finish),
            Tables = same.Of(batch.Tables),
        };

    private static TrayType Of(TrayType tray) => tray with { Name = "", Sources = s_noSources };

    private static WeatherInput Of(WeatherInput weather, SameArrays same) =>
        weather switch
        {
            RecordedWeather recorded => recorded with { Days = same.Of(recorded.Days), File = "" },
            GeneratedWeather generated => new GeneratedWeather(
                generated.Model with
                {
                    Months = same.Of(generated.Model.Months),
                    Source = "",
                    Assumptions = [],
                },
                null
            ),
            _ => weather,
        };
}
