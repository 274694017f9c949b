using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Succession;

namespace BenchSim.Answers.Succession;

/// <summary>Asks what comes of a line of the plan sown every so many days, so many times.</summary>
public sealed record SuccessionQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Id of the line.</summary>
    public required string Batch { get; init; }

    /// <summary>Days from one sowing to the next, each number once, in rising order.</summary>
    public required ImmutableArray<int> Every { get; init; }

    /// <summary>Numbers of sowings, each once, in rising order.</summary>
    public required ImmutableArray<int> Times { get; init; }

    /// <summary>Days that one set-out supplies; null to take the crop's harvest.</summary>
    public int? Gap { get; init; }

    /// <summary>How each schedule is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Plays every schedule.</summary>
    /// <param name="watch">Watches the plays.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">There is no such line, or how long one set-out supplies is not known.</exception>
    public SuccessionAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var plan = Scenario.Open().Plan;
        var line = LineOf(plan);
        var supply = SupplyOf(plan, line);
        Schedule[] schedules = [.. Every.SelectMany(every => Times.Select(times => new Schedule(every, times)))];
        var options = Play.Of(plan);
        var seasons = (int)Math.Min(int.MaxValue, (long)options.Seasons * schedules.Length);
        var result = watch.Over(seasons, progress => SuccessionRunner.Play(plan, line, schedules, supply, options, progress, watch.Cancel));
        return new SuccessionAnswer(result) { ScenarioFolder = Scenario.Directory };
    }

    private SuccessionLine LineOf(SeasonPlan plan)
    {
        var batches = plan.Scenario.Batches;
        var line = SuccessionLine.Find(plan.Scenario, Batch) ?? throw NoLine(batches);
        for (var index = 0; index < Times[^1]; index++)
        {
            var id = line.Succession(Every[0], index).Id;
            if (batches.Any(order => string.Equals(order.Id, id, StringComparison.Ordinal) && !line.Orders.Contains(order)))
            {
                throw new RefusedException(
                    $"A succession would be named {PlainText.Quote(id)}, and another line has that name. Rename one of the two in plan.csv."
                );
            }
        }

        return line;
    }

    private RefusedException NoLine(ImmutableArray<BatchOrder> batches)
    {
        if (batches.Any(order => string.Equals(order.Id, Batch, StringComparison.Ordinal)))
        {
            return new RefusedException(
                $"{PlainText.Quote(Batch)} is one succession of a line; name the line as plan.csv does, without its number."
            );
        }

        var near = NearNames.Of(Batch, batches.GroupBy(order => order.Place).Select(Name));
        var meant = near.IsEmpty
            ? "; name a batch as plan.csv does."
            : $"; did you mean {string.Join(" or ", near.Select(PlainText.Quote))}?";
        return new RefusedException($"The plan has no line {PlainText.Quote(Batch)}{meant}");

        static string Name(IEnumerable<BatchOrder> orders) => orders.Skip(1).Any() ? orders.First().Id[..^2] : orders.First().Id;
    }

    private SupplyRule SupplyOf(SeasonPlan plan, SuccessionLine line)
    {
        if (Gap is { } gap)
        {
            return new SupplyRule(0, gap);
        }

        var crop = plan.Scenario.Crops.First(crop => string.Equals(crop.Id, line.Orders[0].CropId, StringComparison.Ordinal));
        if (crop is { HarvestAfterDays: { } after, HarvestDays: { } days })
        {
            return new SupplyRule(after, days);
        }

        throw new RefusedException(
            $"How long one set-out of {PlainText.Quote(crop.Id)} supplies is not known. "
                + "Add --gap DAYS, or write harvest_after_days and harvest_days for it in crops.csv."
        );
    }
}

/// <summary>What comes of schedules of successions.</summary>
/// <param name="Result">The schedules.</param>
public sealed record SuccessionAnswer(SuccessionResult Result) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(SuccessionDocument.Of(Result));

    /// <inheritdoc />
    public override FirstScreen? Screen => SuccessionScreen.Of(this);

    private protected override void Tell(Passages passages) => SuccessionTelling.Tell(passages, Result);
}
