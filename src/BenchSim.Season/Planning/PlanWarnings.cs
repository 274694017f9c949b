using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>What the user should know of a plan that is no fault.</summary>
internal static class PlanWarnings
{
    /// <summary>Adds the warnings of a plan.</summary>
    public static void Add(Scenario scenario, ImmutableArray<BatchPlan> batches, ImmutableArray<Fault>.Builder warnings)
    {
        foreach (var batch in batches)
        {
            AddLargerThanMats(scenario, batch, warnings);
            AddOldTest(scenario, batch, warnings);
            AddAfterClosing(scenario, batch, warnings);
        }

        AddDarkDays(scenario, batches, warnings);
        if (scenario.Weather is ConstantWeather same)
        {
            AddHeldForEver(scenario, same, batches, warnings);
        }
    }

    // Where every day is alike, what the weather keeps back on one day it keeps back for ever.
    private static void AddHeldForEver(
        Scenario scenario,
        ConstantWeather same,
        ImmutableArray<BatchPlan> batches,
        ImmutableArray<Fault>.Builder warnings
    )
    {
        const int AnyDay = 2;
        var climates = new PlanClimates(scenario, AnyDay + 1, scenario.Play.Seed);
        var every = climates.Normal();

        // A night that is not looked at beforehand hardens nothing all the same.
        var looking = scenario.Rules with { ForecastNights = Math.Max(1, scenario.Rules.ForecastNights) };
        foreach (var batch in batches.DistinctBy(batch => batch.Crop.Id, StringComparer.Ordinal))
        {
            var crop = batch.Crop;
            if (
                batch.Tables.All(table =>
                    WeatherHold.FromTable(every.NightC(climates.Layout.AirOf(table)), AnyDay, looking, crop.HardenAboveC)
                ) && (crop.HardeningNights > 0 || scenario.Rules.ForecastNights > 0)
            )
            {
                Held($"every night on the hardening table is colder than the {Degrees(crop.HardenAboveC)} that it wants there");
            }
            else if (WeatherHold.IsWet(every.Weather, AnyDay, scenario.Rules))
            {
                Held("the field is too wet every day");
            }
            else if (WeatherHold.FromField(every.Weather, AnyDay, scenario.Rules, crop.FieldAboveC))
            {
                Held(
                    $"every night has {Degrees(same.TminC)}, "
                        + $"and it goes to the field only where nights have {Degrees(crop.FieldAboveC)} or more"
                );
            }

            void Held(string why) =>
                warnings.Add(
                    new Fault(
                        batch.Order.Place,
                        $"no tray of \"{crop.Id}\" ever goes out: {why}",
                        "give warmer or drier weather, or a record of the site's own"
                    )
                );
        }

        string Degrees(double celsius) => UnitWords.Temperature(celsius, scenario.Units);
    }

    private static void AddLargerThanMats(Scenario scenario, BatchPlan batch, ImmutableArray<Fault>.Builder warnings)
    {
        var trays = batch.Flat is null ? batch.Trays : batch.Flats;
        var each = (batch.Flat ?? batch.Tray).PlacesEach;
        var places = batch.Mats.Sum(mat => (long)SpacePlaces.On(scenario, mat, batch.SowOn));
        if (batch.Mats.Length > 0 && (long)trays * each > places)
        {
            warnings.Add(
                new Fault(
                    batch.Order.Place,
                    $"batch \"{batch.Order.Id}\" wants {trays * each} mat places and its mats have {places}: it cannot be sown in one go",
                    "split it into successions, sow it denser, or add mats"
                )
            );
        }
    }

    private static void AddOldTest(Scenario scenario, BatchPlan batch, ImmutableArray<Fault>.Builder warnings)
    {
        if (batch.Order.TestedOn is { } tested && batch.SowOn > tested.AddYears(1) && !SeedAge.IsAged(scenario.Rules, batch))
        {
            warnings.Add(
                new Fault(
                    batch.Order.Place,
                    $"the germination test of batch \"{batch.Order.Id}\" is more than a year old when it is sown; "
                        + "the packet value is taken as it is",
                    "test the seed again, or write a lower germination"
                )
            );
        }
    }

    private static void AddAfterClosing(Scenario scenario, BatchPlan batch, ImmutableArray<Fault>.Builder warnings)
    {
        if (batch.SetOutOn > scenario.Window.Closes)
        {
            warnings.Add(
                new Fault(
                    batch.Order.Place,
                    $"batch \"{batch.Order.Id}\" is to go out on {batch.SetOutOn:yyyy-MM-dd}, "
                        + $"after the season closes on {scenario.Window.Closes:yyyy-MM-dd}",
                    "sow it earlier, or close the season later"
                )
            );
        }
    }

    private static void AddDarkDays(Scenario scenario, ImmutableArray<BatchPlan> batches, ImmutableArray<Fault>.Builder warnings)
    {
        if (
            scenario.Rules.Light.All(factor => factor >= 1)
            && batches.Any(batch => batch.EmergeOn is { Month: < 3 } or { Month: 3, Day: < 15 })
        )
        {
            warnings.Add(
                new Fault(
                    new SourcePlace("site.toml", 0, 0),
                    "seedlings stand in the house before mid-March and growth is not slowed for the short days",
                    "give [rules] light a factor below 1 for the dark months if your house grows slower then"
                )
            );
        }
    }
}
