using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

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
        TellWarnings(words, answer.Warnings);
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
        MishapTelling.Tell(words, plan.Scenario);
        RuleTelling.Tell(words, plan.Scenario);
        SourceTelling.Tell(words, plan.Scenario, question.Sources);
    }

    /// <summary>Tells what was asked for by an option of its own.</summary>
    public static void TellAsked(Passages words, SeasonPlan plan, CheckQuestion question)
    {
        if (question.Stand)
        {
            StandTelling.Tell(words, plan);
        }

        if (question.Sources)
        {
            SourceTelling.Tell(words, plan.Scenario, all: true);
        }
    }

    private static void TellHead(Passages words, SeasonPlan plan)
    {
        var scenario = plan.Scenario;
        if (scenario.Question.Length > 0)
        {
            words.Sentence($"Question: {scenario.Question}");
        }

        words.Sentence(
            $"Season: {Dates.Iso(scenario.Window.Opens)} to {Dates.Iso(scenario.Window.Closes)}. A season is played for "
                + $"{Numbers.Count(plan.Days, "day", "days")}, to {Dates.Iso(plan.LastDay)}, so that late trays are seen to the end."
        );
        words.Sentence($"Weather: {Weather(scenario)}.");
        words.Sentence($"Play: {Numbers.Count(scenario.Play.Seasons, "season", "seasons")}, seed {scenario.Play.Seed}.");
    }

    private static string Weather(Scenario scenario) =>
        scenario.Weather switch
        {
            ConstantWeather same => $"the same every day: {Quantity.Temperature.Write(same.TminC, scenario.Units)} to "
                + $"{Quantity.Temperature.Write(same.TmaxC, scenario.Units)}, rain {Quantity.Rain.Write(same.RainMm, scenario.Units)}",
            RecordedWeather { FixedYear: { } year } record => $"the year {year} of {PlainText.Short(record.File, 60)}, every season",
            RecordedWeather record =>
                $"a year of {PlainText.Short(record.File, 60)} for each season, {Numbers.Count(record.Days.Length, "day", "days")} in all",
            GeneratedWeather drawn => $"drawn anew for each season by a generator made from {PlainText.Short(drawn.Model.Source, 100)}",
            _ => "as site.toml says",
        };

    private static void TellBatches(Passages words, SeasonPlan plan)
    {
        var growers = plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal).Count();
        words.Heading(
            $"Plan: {Numbers.Count(plan.Batches.Length, "batch", "batches")}, {Numbers.Count(growers, "grower", "growers")}, "
                + $"{Numbers.Count(plan.Batches.Sum(batch => (long)batch.Order.Plants), "plant", "plants")}, "
                + $"{Numbers.Count(plan.Batches.Sum(batch => (long)batch.Trays), "tray", "trays")}, "
                + $"{Numbers.Count(plan.Batches.Sum(batch => (long)batch.Flats), "flat", "flats")}, "
                + $"{Numbers.Count(plan.Batches.Sum(batch => batch.Seeds), "seed", "seeds")}"
        );
        var anyAged = plan.Batches.Any(batch => SeedAge.IsAged(plan.Scenario.Rules, batch));
        var anyFinish = plan.Batches.Any(batch => batch.FinishOn is not null);
        string[] columns =
        [
            "batch",
            "crop",
            "grower",
            "sow",
            "off mat",
            "pot up",
            .. anyFinish ? new[] { "finish" } : [],
            "to table",
            "set out",
            ">days in hand",
            ">plants",
            "tray",
            ">trays",
            ">flats",
            ">seeds",
            ">chance of enough plants",
        ];
        var table = words.Table(anyAged ? [.. columns, ">germination"] : columns);
        foreach (var batch in plan.Batches)
        {
            string[] cells =
            [
                batch.Order.Id,
                batch.CropAndVariety,
                batch.Order.Grower,
                Dates.Iso(batch.SowOn),
                Dates.IsoOrDash(batch.OffMatOn),
                Dates.IsoOrDash(batch.PotUpOn),
                .. anyFinish ? new[] { Dates.IsoOrDash(batch.FinishOn) } : [],
                Dates.Iso(batch.TableOn),
                Dates.Iso(batch.SetOutOn),
                Numbers.Whole(batch.DaysInHand),
                Numbers.Whole(batch.Order.Plants),
                batch.Tray.Id,
                Numbers.Whole(batch.Trays),
                batch.Flats == 0 ? "-" : Numbers.Whole(batch.Flats),
                Numbers.Whole(batch.Seeds),
                ChanceWords.Stand(batch.StandChance),
            ];
            table.Add(anyAged ? [.. cells, Germination(plan.Scenario.Rules, batch)] : cells);
        }

        foreach (var sentence in ClusterWords.ByCrop(plan))
        {
            words.Sentence(sentence, 2);
        }

        words.Sentence(
            "The chance of enough plants is the chance that the trays sown bring the plants you want. "
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

    // Where much of the seed does not come up as it lies too cool, or too warm, another place saves seed and trays.
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
                $"{PlainText.Short(crop.Key, 40)} comes up at {ChanceWords.Percent(least)} of its best where it is to stand, so "
                    + $"{ChanceWords.Percent(crop.Min(batch => batch.RelativeGermination * batch.Germination))} of the seed is expected. "
                    + "A warmer place, or a cooler one, would take less seed; \"check --sources\" has its curve.",
                2
            );
        }
    }

    private static string Germination(SiteRules rules, BatchPlan batch) =>
        SeedAge.IsAged(rules, batch)
            ? $"{ChanceWords.Fine(batch.Order.Germination)} -> {ChanceWords.Fine(batch.Germination)}"
            : ChanceWords.Fine(batch.Germination);

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
                house.NightC is { } night ? Quantity.Temperature.Write(night, scenario.Units) : "unheated",
                house.DayC is { } day ? Quantity.Temperature.Write(day, scenario.Units) : "unheated",
                Quantity.Temperature.Write(house.VentC, scenario.Units),
                house.Opening switch
                {
                    HouseOpening.AllSeason => "all season",
                    HouseOpening.FromDate => $"from {Dates.IsoOrDash(house.OpensOn)}",
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
                PlainText.Short(space.Name, 40),
                space.MatC is { } warmth
                    ? $"{(space.IsChamber ? "chamber" : "heat mat")} at {Quantity.Temperature.Write(warmth, scenario.Units)}"
                    : Kind(space.Kind),
                space.HouseId ?? (space.IsChamber ? "-" : "outdoors"),
                Numbers.Whole(space.Places) + (space.AislePlaces > 0 ? $" + {space.AislePlaces} in the aisle" : ""),
                space.PlacesNote,
                space.Changes.IsEmpty
                    ? "-"
                    : string.Join(", ", space.Changes.Select(change => $"{Dates.Iso(change.From)}: {Numbers.Whole(change.Places)}"))
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

    private static void TellWarnings(Passages words, ImmutableArray<Fault> warnings)
    {
        if (warnings.IsEmpty)
        {
            return;
        }

        words.Line($"{Numbers.Count(warnings.Length, "thing", "things")} you should know:");
        foreach (var warning in warnings)
        {
            words.Line($"{warning}", 2);
        }

        words.Gap();
    }
}
