using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Shards;

/// <summary>Plays a share of the seasons of a run, and adds what the shares counted (docs/decisions/010-parts-of-a-run.md).</summary>
public static class PartRunner
{
    /// <summary>Plays one share. The same plan, seasons, seed and share give the same bytes, whatever the number of threads.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">Seasons of the whole run, seed and threads.</param>
    /// <param name="share">Which share.</param>
    /// <param name="progress">Told how many seasons of the share are done, in rising order; null for nobody.</param>
    /// <param name="cancel">Stops the play within a season or so.</param>
    /// <returns>What was counted, to be added by <see cref="Add"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share without seasons, fewer than 0 threads, or a plan of no days.</exception>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public static byte[] Play(SeasonPlan plan, StudyOptions options, Share share, IProgress<int>? progress, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        SeasonPlayer first = new(plan, options.Seed);
        return Play(plan, options, share, () => PlanSeasons.By(first.Another()), progress, cancel);
    }

    /// <summary>The same with another maker of players: one player a thread.</summary>
    internal static byte[] Play(
        SeasonPlan plan,
        StudyOptions options,
        Share share,
        Func<PlaySeason> makePlayer,
        IProgress<int>? progress,
        CancellationToken cancel
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegative(options.Threads, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(plan.Days, 1, nameof(plan));
        (var first, var count) = share.IsPossible ? share.SeasonsOf(options.Seasons) : (0, 0);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1, nameof(share));
        var tally = new PlanSeasons(
            new PlanShape(plan),
            options with
            {
                Seasons = count,
            },
            makePlayer,
            progress,
            cancel,
            first: first
        ).Run();
        TallyWriter writer = new(tally.Seasons);
        tally.Exchange(writer);
        return writer.ToBytes();
    }

    /// <summary>Adds all shares of a run: the answer is that of the run in one piece, to the last bit.</summary>
    /// <param name="plan">The plan that was played.</param>
    /// <param name="seasons">Seasons of the whole run.</param>
    /// <param name="seed">Seed of the run.</param>
    /// <param name="counts">What each share counted, number 1 first.</param>
    /// <exception cref="ArgumentException">No shares, or more than seasons.</exception>
    /// <exception cref="PartRefusedException">A share does not hold the counts of its seasons.</exception>
    public static StudyResult Add(SeasonPlan plan, int seasons, ulong seed, IReadOnlyList<ReadOnlyMemory<byte>> counts)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(counts);
        if (counts.Count == 0 || counts.Count > seasons)
        {
            throw new ArgumentException("As many shares as seasons, or fewer, and one or more.", nameof(counts));
        }

        PlanShape shape = new(plan);
        SeasonTally sum = new(shape);
        for (var at = 0; at < counts.Count; at++)
        {
            sum.Merge(Read(shape, counts[at], new Share(at + 1, counts.Count), seasons));
        }

        return sum.ToResult(seed);
    }

    private static SeasonTally Read(PlanShape shape, ReadOnlyMemory<byte> bytes, Share share, int seasons)
    {
        (_, var count) = share.SeasonsOf(seasons);
        SeasonTally tally = new(shape);
        TallyReader reader = new(bytes, count);
        try
        {
            tally.Exchange(reader);
            reader.End();
        }
        catch (FormatException wrong)
        {
            throw new PartRefusedException(share.Number, wrong);
        }

        return tally.Seasons == count ? tally : throw new PartRefusedException(share.Number);
    }
}
