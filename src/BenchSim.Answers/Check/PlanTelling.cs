using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Check;

/// <summary>Tells a plan as it was understood.</summary>
internal static class PlanTelling
{
    private const double PoorGermination = 0.7;

    /// <summary>Tells the plan.</summary>
    /// <param name="words">Where to.</param>
    /// <param name="answer">The plan, and what its weather means.</param>
    /// <param name="question">What was asked for.</param>
    public static void Tell(Passages words, CheckAnswer answer, CheckQuestion question)
    {
        var plan = answer.Plan;
        Task doubts = Task.Run(() => _ = (plan.Scenario.Weather as GeneratedWeather)?.Fitted?.Report);
        TellHead(words, plan);
        TellBatches(words, plan);
        if (question.Stand)
        {
            StandTelling.Tell(words, plan);
        }

        TellHouses(words, plan.Scenario);
        TellSpaces(words, plan.Scenario);
        doubts.GetAwaiter().GetResult();
        ClimateTelling.Tell(words, plan, answer.Climate);
        RuleTelling.Tell(words, plan.Scenario);
        SourceTelling.Tell(words, plan.Scenario, question.Sources);
        TellWarnings(words, plan);
        if (question.Scenario.Directory is { } directory)
        {
            words.Line("No faults. Play it with:");
            words.Line($"{Shell.Program} run {Shell.Word(directory)}", 2);
        }
    }

    private static void TellHead(Passages words, SeasonPlan plan)
    {
        var scenario = plan.Scenario;
        words.Line(SafeText.Short(scenario.Name, 100));
        if (scenario.Question.Length > 0)
        {
            words.Sentence($"Question: {scenario.Question}");
        }

        words.Sentence(
            $"Season: {Figures.Date(scenario.Window.Opens)} to {Figures.Date(scenario.Window.Closes)}. A season is played for "
                + $"{Figures.Count(plan.Days, "day", "days")}, to {Figures.Date(plan.LastDay)}, so that late trays are seen to the end."
        );
        words.Sentence($"Weather: {Weather(scenario)}.");
        words.Sentence($"Play: {Figures.Count(scenario.Play.Seasons, "season", "seasons")}, seed {scenario.Play.Seed}.");
    }

    private static string Weather(Scenario scenario) =>
        scenario.Weather switch
        {
            ConstantWeather same => $"the same every day: {Figures.Temperature(same.TminC, scenario.Units)} to "
                + $"{Figures.Temperature(same.TmaxC, scenario.Units)}, rain {Figures.Rain(same.RainMm, scenario.Units)}",
            RecordedWeather { FixedYear: { } year } record => $"the year {year} of {SafeText.Short(record.File, 60)}, every season",
            RecordedWeather record =>
                $"a year of {SafeText.Short(record.File, 60)} for each season, {Figures.Count(record.Days.Length, "day", "days")} in all",
            GeneratedWeather drawn => $"drawn anew for each season by a generator made from {SafeText.Short(drawn.Model.Source, 100)}",
            _ => "as site.toml says",
        };

    private static void TellBatches(Passages words, SeasonPlan plan)
    {
        var growers = plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Count();
        words.Heading(
            $"Plan: {Figures.Count(plan.Batches.Length, "batch", "batches")}, {Figures.Count(growers, "grower", "growers")}, "
                + $"{Figures.Count(plan.Batches.Sum(batch => (long)batch.Order.Plants), "plant", "plants")}, "
                + $"{Figures.Count(plan.Batches.Sum(batch => (long)batch.Trays), "tray", "trays")}, "
                + $"{Figures.Count(plan.Batches.Sum(batch => (long)batch.Flats), "flat", "flats")}, "
                + $"{Figures.Count(plan.Batches.Sum(batch => batch.Seeds), "seed", "seeds")}"
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
        var table = words.Table(anyAged ? [.. columns, ">germination"] : columns);
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

        words.Sentence(
            "The chance of the stand is the chance that the trays sown bring the plants wanted. "
                + "Dates are those of normal weather with room for every tray.",
            2
        );
        if (plan.Batches.Any(batch => batch.Flats > 0))
        {
            words.Sentence(
                "Trays and flats of a batch that is potted up are each the fewest with that chance; both together may have a little less.",
                2
            );
        }

        TellPoorPlaces(words, plan);
        if (anyAged)
        {
            words.Sentence(
                "Germination is that of the packet and, where the seed has aged since its test, what is left of it at sowing.",
                2
            );
        }
    }

    // Where much of the seed does not come up for want of warmth, or for too much of it, another place saves seed and trays.
    private static void TellPoorPlaces(Passages words, SeasonPlan plan)
    {
        foreach (
            var crop in plan
                .Batches.Where(batch => batch.RelativeGermination < PoorGermination)
                .GroupBy(batch => batch.Crop.Name, StringComparer.Ordinal)
        )
        {
            var least = crop.Min(batch => batch.RelativeGermination);
            words.Sentence(
                $"{SafeText.Short(crop.Key, 40)} comes up at {Figures.Percent(least)} of its best where it is to stand, so "
                    + $"{Figures.Percent(crop.Min(batch => batch.RelativeGermination * batch.Germination))} of the seed is expected. "
                    + "A warmer place, or a cooler one, would take less seed; \"check --sources\" has its curve.",
                2
            );
        }
    }

    private static string Germination(SiteRules rules, BatchPlan batch) =>
        SeedAge.IsAged(rules, batch)
            ? $"{Figures.Percent(batch.Order.Germination)} -> {Figures.Percent(batch.Germination)}"
            : Figures.Percent(batch.Germination);

    private static void TellHouses(Passages words, Scenario scenario)
    {
        if (scenario.Houses.IsEmpty)
        {
            return;
        }

        words.Heading("Houses");
        var table = words.Table(["house", "name", ">night", ">day", ">vent", "open"]);
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
    }

    private static void TellSpaces(Passages words, Scenario scenario)
    {
        words.Heading("Spaces");
        var table = words.Table(["space", "name", "kind", "house", ">places", "how worked out", "later changes"], longestCell: 120);
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
    }

    private static string Kind(SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => "heat mat",
            SpaceKind.Bench => "bench",
            _ => "hardening table",
        };

    private static void TellWarnings(Passages words, SeasonPlan plan)
    {
        words.Heading(
            plan.Warnings.IsEmpty ? "Nothing else to know." : $"{Figures.Count(plan.Warnings.Length, "thing", "things")} you should know:"
        );
        foreach (var warning in plan.Warnings)
        {
            words.Line($"{warning}", 2);
        }

        words.Gap();
    }
}
