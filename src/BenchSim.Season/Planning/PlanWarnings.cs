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

        AddDaysNotWorked(scenario, batches, warnings);
        AddHotMats(scenario, batches, warnings);
        PublishedWeeks.Add(scenario, batches, warnings);
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

        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (var batch in batches)
        {
            var crop = batch.Crop;
            if (
                batch.Tables.All(table =>
                    WeatherHold.FromTable(every.NightC(climates.Layout.AirOf(table)), AnyDay, scenario.Rules, crop.TableAboveC)
                )
            )
            {
                Held($"every night on the hardening table is colder than the {Degrees(crop.TableAboveC)} that it wants there");
            }
            else if (crop.HardeningNights > 0 && batch.Tables.All(table => IsCarriedIn(batch, table)))
            {
                Held($"trays are carried in for every night on the hardening table, which is colder than {Degrees(crop.DamageBelowC)}");
            }
            else if (WeatherHold.IsWet(every.Weather, AnyDay, scenario.Rules) && !batch.Order.FieldCover.KeepsRainOff())
            {
                Held("the field is too wet every day");
            }
            else if (WeatherHold.FromField(every.Weather, AnyDay, scenario.Rules, crop.FieldAboveC, batch.Order.FieldCover))
            {
                Held(
                    $"every night has {Degrees(same.TminC + scenario.Rules.FieldGainK(batch.Order.FieldCover))}"
                        + (
                            batch.Order.FieldCover == FieldCover.Open
                                ? ", "
                                : $" under its {PlanFields.FieldCoverWord[batch.Order.FieldCover]}, "
                        )
                        + $"and it goes to the field only where nights have {Degrees(crop.FieldAboveC)} or more"
                );
            }

            void Held(string why)
            {
                var what = $"no tray of \"{crop.Id}\" ever goes out: {why}";
                if (said.Add(what))
                {
                    warnings.Add(new Fault(batch.Order.Place, what, "give warmer or drier weather, or a record of the site's own"));
                }
            }
        }

        // A night that is not looked at beforehand hardens nothing all the same.
        bool IsCarriedIn(BatchPlan batch, int table) =>
            WeatherHold.UnderCover(every.NightC(climates.Layout.AirOf(table))[AnyDay], scenario.Rules, batch.Crop.TableAboveC)
            < batch.Crop.DamageBelowC;

        string Degrees(double celsius) => UnitWords.Temperature(celsius, scenario.Units);
    }

    // Trays move on work days alone: what is asked for on another day happens on the next one, of a line of the plan the first.
    private static void AddDaysNotWorked(Scenario scenario, ImmutableArray<BatchPlan> batches, ImmutableArray<Fault>.Builder warnings)
    {
        if (scenario.Rules.Rounds == RoundKind.AnyTime)
        {
            return;
        }

        foreach (var batch in batches.Where(batch => IsOff(batch.Order.Sow)).DistinctBy(batch => batch.Order.Place))
        {
            Say(batch.Order, "sown", batch.Order.Sow!.Value, $"it is sown on {Day(batch.SowOn)}", "sow");
        }

        foreach (var order in batches.Select(batch => batch.Order).Where(order => IsOff(order.SetOut)).DistinctBy(order => order.Place))
        {
            var wanted = order.SetOut!.Value;
            var first = scenario.Rules.WorkDayFrom(wanted.AddDays(-scenario.Rules.SetOutEarlyDays));
            Say(order, "set out", wanted, $"its trays go out on {Day(first)} at the earliest", "set_out");
        }

        bool IsOff(DateOnly? date) => date is { } day && !scenario.Rules.IsWorkDay(day);

        void Say(BatchOrder order, string what, DateOnly on, string then, string column) =>
            warnings.Add(
                new Fault(
                    order.Place,
                    $"batch \"{order.Id}\" is to be {what} on {Day(on)}, which is not a work day: {then}",
                    $"move {column} to a work day, or add the day to work_days"
                )
            );

        static string Day(DateOnly date) => FormattableString.Invariant($"{date:dddd} {date:yyyy-MM-dd}");
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

    // Above the end of the plateau a hotter mat is a slower one.
    private static void AddHotMats(Scenario scenario, ImmutableArray<BatchPlan> batches, ImmutableArray<Fault>.Builder warnings)
    {
        // What is written in whole degrees Fahrenheit or in tenths of a degree Celsius is the same temperature.
        const double SameK = 0.05;
        foreach (
            var (batch, mat) in batches
                .SelectMany(batch => batch.Mats.Select(mat => (Batch: batch, Mat: scenario.Spaces[mat])))
                .DistinctBy(pair => (pair.Batch.Crop.Id, pair.Mat.Id))
        )
        {
            var crop = batch.Crop;
            if (mat.MatC is not { } matC || matC <= crop.EmergePlateauC + SameK)
            {
                continue;
            }

            var best = UnitWords.Temperature(crop.EmergePlateauC, scenario.Units);
            var days = crop.EmergeHeat / EmergenceRate.Of(crop, crop.EmergePlateauC);
            var rate = EmergenceRate.Of(crop, matC);
            var there =
                rate > 0 ? FormattableString.Invariant($"half the seedlings take {crop.EmergeHeat / rate:0.0} days") : "nothing comes up";
            warnings.Add(
                new Fault(
                    batch.Order.Place,
                    $"mat \"{mat.Id}\" is set to {UnitWords.Temperature(matC, scenario.Units)}, "
                        + $"and \"{crop.Id}\" comes up fastest up to {best}: "
                        + FormattableString.Invariant($"{there} on that mat, against {days:0.0} days at {best}"),
                    $"set the mat to {best} or below, or keep the crop off it by max_mat in crops.csv"
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
