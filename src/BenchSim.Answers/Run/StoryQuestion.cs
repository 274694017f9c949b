using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Engine.Randomness;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Answers.Run;

/// <summary>Asks for the story of one batch in one season.</summary>
public sealed record StoryQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Variant to play; null for the scenario as it is.</summary>
    public string? Variant { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Season, from 1.</summary>
    public required int Season { get; init; }

    /// <summary>Batch id as the user wrote it.</summary>
    public required string Batch { get; init; }

    /// <summary>Plays the season.</summary>
    /// <param name="watch">Stops it.</param>
    /// <exception cref="FaultsFoundException">The scenario or the variant has faults.</exception>
    /// <exception cref="RefusedException">There is no such season or batch.</exception>
    public StoryAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var plan = Scenario.OpenWith(Variant).Plan;
        var options = Play.Of(plan);
        if (Season > options.Seasons)
        {
            throw new RefusedException(
                $"There is no season {Numbers.Whole(Season)}: the play has seasons 1 to {Numbers.Whole(options.Seasons)}. "
                    + "Choose one of them, or play more with --seasons."
            );
        }

        var id = FindBatch(plan);
        watch.Cancel.ThrowIfCancellationRequested();
        return new StoryAnswer(id, Season, options.Seed, SeasonStory.Tell(plan, options.Seed, Season - 1, id).Lines);
    }

    private string FindBatch(SeasonPlan plan)
    {
        // A keyboard may write an accent as a character of its own where the plan does not, or the other way round.
        var wanted = LatinAccents.Join(PlainText.OneLine(Batch).Trim());
        string[] known = [.. plan.Batches.Select(batch => batch.Order.Id)];
        if (Array.Find(known, id => string.Equals(LatinAccents.Join(id), wanted, StringComparison.Ordinal)) is { } found)
        {
            return found;
        }

        var near = NearNames.Of(wanted, known);
        throw new RefusedException(
            $"The plan has no batch {PlainText.Quote(Batch)}. "
                + (
                    near.IsEmpty
                        ? "The first column of \"benchsim check\" lists all batches."
                        : $"Near names: {string.Join(", ", near.Select(name => PlainText.Short(name, 60)))}."
                )
        );
    }
}

/// <summary>The story of one batch in one season.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Season">Season, from 1.</param>
/// <param name="Seed">Seed of all luck.</param>
/// <param name="Lines">The story.</param>
public sealed record StoryAnswer(string Batch, int Season, ulong Seed, ImmutableArray<string> Lines) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(new StoryDocument(JsonDialect.Version, Batch, Season, Seed.ToString(CultureInfo.InvariantCulture), Lines));

    private protected override void Tell(Passages passages)
    {
        foreach (var line in Lines)
        {
            passages.Line(line);
        }
    }
}
