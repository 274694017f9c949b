using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a plan as it was understood.</summary>
internal static class PlanPrinter
{
    private const double PoorGermination = 0.7;

    /// <summary>Prints the plan.</summary>
    /// <param name="desk">Where to.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="settings">What was asked for.</param>
    public static void Print(Desk desk, SeasonPlan plan, CheckSettings settings)
    {
        // Hundreds of years of weather are drawn and counted while the plan is written.
        var climate = Task.Run(() => ClimateSummary.Of(plan));
        Task doubts = Task.Run(() => _ = (plan.Scenario.Weather as GeneratedWeather)?.Fitted?.Report);
        PrintHead(desk, plan);
        PrintBatches(desk, plan);
        if (settings.Stand)
        {
            StandPrinter.Print(desk, plan);
        }

        PrintHouses(desk, plan.Scenario);
        PrintSpaces(desk, plan.Scenario);
        doubts.GetAwaiter().GetResult();
        ClimatePrinter.Print(desk, plan, climate.GetAwaiter().GetResult());
        RulePrinter.Print(desk, plan.Scenario);
        SourcePrinter.Print(desk, plan.Scenario, settings.Sources);
        PrintWarnings(desk, plan);
        desk.Say("No faults. Play it with:");
        desk.Say($"  {RootMenu.ProgramName} run {Shell.Word(settings.Directory)}");
    }

    /// <summary>Prints a heading with an empty line above it.</summary>
    public static void Heading(Desk desk, string heading)
    {
        desk.Say();
        desk.Say(heading);
    }

    private static void PrintHead(Desk desk, SeasonPlan plan)
    {
        var scenario = plan.Scenario;
        desk.Say(SafeText.Short(scenario.Name, 100));
        if (scenario.Question.Length > 0)
        {
            desk.SayWrapped($"Question: {scenario.Question}");
        }

        desk.SayWrapped(
            $"Season: {Figures.Date(scenario.Window.Opens)} to {Figures.Date(scenario.Window.Closes)}. A season is played for {Figures.Count(plan.Days, "day", "days")}, to {Figures.Date(plan.LastDay)}, so that late trays are seen to the end."
        );
        desk.SayWrapped($"Weather: {Weather(scenario)}.");
        desk.SayWrapped($"Play: {Figures.Count(scenario.Play.Seasons, "season", "seasons")}, seed {scenario.Play.Seed}.");
    }

    private static string Weather(Scenario scenario) =>
        scenario.Weather switch
        {
            ConstantWeather same =>
                $"the same every day: {Figures.Temperature(same.TminC, scenario.Units)} to {Figures.Temperature(same.TmaxC, scenario.Units)}, rain {Figures.Rain(same.RainMm, scenario.Units)}",
            RecordedWeather { FixedYear: { } year } record => $"the year {year} of {SafeText.Short(record.File, 60)}, every season",
            RecordedWeather record =>
                $"a year of {SafeText.Short(record.File, 60)} for each season, {Figures.Count(record.Days.Length, "day", "days")} in all",
            GeneratedWeather drawn => $"drawn anew for each season by a generator made from {SafeText.Short(drawn.Model.Source, 100)}",
            _ => "as site.toml says",
        };

    private static void PrintBatches(Desk desk, SeasonPlan plan)
    {
        var growers = plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Count();
        Heading(
            desk,
            $"Plan: {Figures.Count(plan.Batches.Length, "batch", "batches")}, {Figures.Count(growers, "grower", "growers")}, "
                + $"{Figures.Count(plan.Batches.Sum(batch => (long)batch.Order.Plants), "plant", "plants")}, {Figures.Count(plan.Batches.Sum(batch => (long)batch.Trays), "tray", "trays")}, "
                + $"{Figures.Count(plan.Batches.Sum(batch => (long)batch.Flats), "flat", "flats")}, {Figures.Count(plan.Batches.Sum(batch => batch.Seeds), "seed", "seeds")}"
        );
        var anyAged = plan.Batches.Any(batch => SeedAge.IsAged(plan.Scenario.Rules, batch));
        string[] columns =
        [
            "batch",
            "crop",
            "grower",
            "sow",
            "off mat",
            "pot up",
            "to table",
            "set out",
            ">plants",
            "tray",
            ">trays",
            ">flats",
            ">seeds",
            ">chance of the stand",
        ];
        var table = new TextTable(anyAged ? [.. columns, ">germination"] : columns);
        foreach (var batch in plan.Batches)
        {
            string[] cells =
            [
                batch.Order.Id,
                batch.Crop.Name,
                batch.Order.Grower,
                Figures.Date(batch.SowOn),
                Figures.Date(batch.OffMatOn),
                Figures.Date(batch.PotUpOn),
                Figures.Date(batch.TableOn),
                Figures.Date(batch.SetOutOn),
                Figures.Whole(batch.Order.Plants),
                batch.Tray.Id,
                Figures.Whole(batch.Trays),
                batch.Flats == 0 ? "-" : Figures.Whole(batch.Flats),
                Figures.Whole(batch.Seeds),
                Figures.Percent(batch.StandChance),
            ];
            table.Add(anyAged ? [.. cells, Germination(plan.Scenario.Rules, batch)] : cells);
        }

        table.Print(desk);
        desk.SayWrapped(
            "The chance of the stand is the chance that the trays sown bring the plants wanted. Dates are those of normal weather with room for every tray.",
            2
        );
        if (plan.Batches.Any(batch => batch.Flats > 0))
        {
            desk.SayWrapped(
                "Trays and flats of a batch that is potted up are each the fewest with that chance; both together may have a little less.",
                2
            );
        }

        PrintPoorPlaces(desk, plan);
        if (anyAged)
        {
            desk.SayWrapped(
                "Germination is that of the packet and, where the seed has aged since its test, what is left of it at sowing.",
                2
            );
        }
    }

    // Where much of the seed does not come up for want of warmth, or for too much of it, another place saves seed and trays.
    private static void PrintPoorPlaces(Desk desk, SeasonPlan plan)
    {
        foreach (
            var crop in plan
                .Batches.Where(batch => batch.RelativeGermination < PoorGermination)
                .GroupBy(batch => batch.Crop.Name, StringComparer.Ordinal)
        )
        {
            var least = crop.Min(batch => batch.RelativeGermination);
            desk.SayWrapped(
                $"{SafeText.Short(crop.Key, 40)} comes up at {Figures.Percent(least)} of its best where it is to stand, so {Figures.Percent(crop.Min(batch => batch.RelativeGermination * batch.Germination))} of the seed is expected. "
                    + "A warmer place, or a cooler one, would take less seed; \"check --sources\" has its curve.",
                2
            );
        }
    }

    private static string Germination(SiteRules rules, BatchPlan batch) =>
        SeedAge.IsAged(rules, batch)
            ? $"{Figures.Percent(batch.Order.Germination)} -> {Figures.Percent(batch.Germination)}"
            : Figures.Percent(batch.Germination);

    private static void PrintHouses(Desk desk, Scenario scenario)
    {
        if (scenario.Houses.IsEmpty)
        {
            return;
        }

        Heading(desk, "Houses");
        var table = new TextTable(["house", "name", ">night", ">day", ">vent", "open"]);
        foreach (var house in scenario.Houses)
        {
            table.Add(
                house.Id,
                house.Name,
                house.NightC is { } night ? Figures.Temperature(night, scenario.Units) : "unheated",
                house.DayC is { } day ? Figures.Temperature(day, scenario.Units) : "unheated",
                Figures.Temperature(house.VentC, scenario.Units),
                house.Opening switch
                {
                    HouseOpening.AllSeason => "all season",
                    HouseOpening.FromDate => $"from {Figures.Date(house.OpensOn)}",
                    _ => "when needed",
                }
            );
        }

        table.Print(desk);
    }

    private static void PrintSpaces(Desk desk, Scenario scenario)
    {
        Heading(desk, "Spaces");
        var table = new TextTable(["space", "name", "kind", "house", ">places", "how worked out", "later changes"], longestCell: 120);
        foreach (var space in scenario.Spaces)
        {
            table.Add(
                space.Id,
                SafeText.Short(space.Name, 40),
                space.MatC is { } warmth ? $"heat mat at {Figures.Temperature(warmth, scenario.Units)}" : Kind(space.Kind),
                space.HouseId ?? "outdoors",
                Figures.Whole(space.Places) + (space.AislePlaces > 0 ? $" + {space.AislePlaces} in the aisle" : ""),
                space.PlacesNote,
                space.Changes.IsEmpty
                    ? "-"
                    : string.Join(", ", space.Changes.Select(change => $"{Figures.Date(change.From)}: {Figures.Whole(change.Places)}"))
            );
        }

        table.Print(desk);
    }

    private static string Kind(SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => "heat mat",
            SpaceKind.Bench => "bench",
            _ => "hardening table",
        };

    private static void PrintWarnings(Desk desk, SeasonPlan plan)
    {
        Heading(
            desk,
            plan.Warnings.IsEmpty ? "Nothing else to know." : $"{Figures.Count(plan.Warnings.Length, "thing", "things")} you should know:"
        );
        foreach (var warning in plan.Warnings)
        {
            desk.Say($"  {warning}");
        }

        desk.Say();
    }
}
