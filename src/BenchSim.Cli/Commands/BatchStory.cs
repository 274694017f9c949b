using System.Collections.Immutable;
using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study;

namespace BenchSim.Cli.Commands;

/// <summary>The story of one batch in one season.</summary>
internal static class BatchStory
{
    /// <summary>Prints the story.</summary>
    /// <param name="desk">Where to.</param>
    /// <param name="json">True for output that machines read.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How it is played.</param>
    /// <param name="season">Season, from 1.</param>
    /// <param name="batch">Batch id as the user wrote it.</param>
    /// <exception cref="RefusedException">There is no such season or batch.</exception>
    public static int Print(Desk desk, bool json, SeasonPlan plan, StudyOptions options, int season, string batch)
    {
        if (season > options.Seasons)
        {
            throw new RefusedException(
                $"There is no season {Figures.Whole(season)}: the play has seasons 1 to {Figures.Whole(options.Seasons)}. Choose one of them, or play more with --seasons."
            );
        }

        var id = FindBatch(plan, batch);
        desk.Cancel.ThrowIfCancellationRequested();
        var story = SeasonStory.Tell(plan, options.Seed, season - 1, id);
        if (json)
        {
            PrintJson(desk, id, season, options.Seed, story.Lines);
        }
        else
        {
            PrintLines(desk, story.Lines);
        }

        return ExitCode.Done;
    }

    private static string FindBatch(SeasonPlan plan, string written)
    {
        // A keyboard may write an accent as a character of its own where the plan does not, or the other way round.
        var wanted = LatinAccents.Join(SafeText.OneLine(written).Trim());
        string[] known = [.. plan.Batches.Select(batch => batch.Order.Id)];
        if (Array.Find(known, id => string.Equals(LatinAccents.Join(id), wanted, StringComparison.Ordinal)) is { } found)
        {
            return found;
        }

        var near = NearNames.Of(wanted, known);
        throw new RefusedException(
            $"The plan has no batch {SafeText.Quote(written)}. "
                + (
                    near.IsEmpty
                        ? "The first column of \"benchsim check\" lists all batches."
                        : $"Near names: {string.Join(", ", near.Select(name => SafeText.Short(name, 60)))}."
                )
        );
    }

    private static void PrintLines(Desk desk, ImmutableArray<string> lines)
    {
        foreach (var line in lines)
        {
            desk.Say(line);
        }
    }

    private static void PrintJson(Desk desk, string batch, int season, ulong seed, ImmutableArray<string> lines) =>
        desk.SayJson(json =>
        {
            json.WriteString("batch", batch);
            json.WriteNumber("season", season);
            json.WriteNumber("seed", seed);
            json.WriteStartArray("story");
            foreach (var line in lines)
            {
                json.WriteStringValue(line);
            }

            json.WriteEndArray();
        });
}
