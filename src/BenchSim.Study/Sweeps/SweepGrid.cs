using System.Collections.Immutable;

namespace BenchSim.Study.Sweeps;

/// <summary>
/// The tasks of a sweep, numbered from 1: all folders, their plans, the sets of values and the blocks of seasons, the folder slowest and
/// the block fastest. What a number stands for is worked out; no list of the tasks is kept.
/// </summary>
public sealed class SweepGrid
{
    /// <summary>Most tasks of a sweep.</summary>
    public const int MostTasks = 10_000_000;

    // Plans of all folders before each, and of all at the end.
    private readonly ImmutableArray<long> _before;
    private readonly int _seasonsPerTask;

    /// <summary>Lays the tasks out.</summary>
    /// <param name="plans">For each folder the number of its plans, each 1 or more.</param>
    /// <param name="valueSets">Sets of values that are played besides the values as given, 0 or more.</param>
    /// <param name="seasons">Seasons of each plan and set, 1 or more.</param>
    /// <param name="seasonsPerTask">Seasons of a block, 1 or more; the last block may have fewer.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than <see cref="MostTasks"/>, or less than there must be.</exception>
    public SweepGrid(IReadOnlyCollection<int> plans, int valueSets, int seasons, int seasonsPerTask)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentOutOfRangeException.ThrowIfLessThan(plans.Count, 1, nameof(plans));
        ArgumentOutOfRangeException.ThrowIfLessThan(plans.Min(), 1, nameof(plans));
        ArgumentOutOfRangeException.ThrowIfNegative(valueSets);
        ArgumentOutOfRangeException.ThrowIfLessThan(seasons, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(seasonsPerTask, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(TasksOf(plans, valueSets, seasons, seasonsPerTask), MostTasks, nameof(plans));
        var before = ImmutableArray.CreateBuilder<long>(plans.Count + 1);
        long sum = 0;
        before.Add(sum);
        foreach (var count in plans)
        {
            before.Add(sum += count);
        }

        _before = before.MoveToImmutable();
        _seasonsPerTask = seasonsPerTask;
        (Sets, Seasons) = (1 + valueSets, seasons);
        Blocks = BlocksOf(seasons, seasonsPerTask);
        Tasks = (int)(sum * TasksOfPlan);
    }

    /// <summary>Number of tasks.</summary>
    public int Tasks { get; }

    /// <summary>Folders.</summary>
    public int Folders => _before.Length - 1;

    /// <summary>Sets of values, the values as given among them.</summary>
    public int Sets { get; }

    /// <summary>Blocks of seasons.</summary>
    public int Blocks { get; }

    /// <summary>Seasons of each plan and set.</summary>
    public int Seasons { get; }

    /// <summary>Tasks of one plan: they follow one another.</summary>
    public int TasksOfPlan => Sets * Blocks;

    /// <summary>Plans of all folders.</summary>
    public int Plans => (int)_before[^1];

    /// <summary>How many tasks so much would be.</summary>
    /// <inheritdoc cref="SweepGrid(IReadOnlyCollection{int}, int, int, int)" path="/param"/>
    public static long TasksOf(IEnumerable<int> plans, int valueSets, int seasons, int seasonsPerTask)
    {
        // A hundred thousand folders of a hundred thousand variants are no number that needs to be exact.
        var tasks = (decimal)plans.Sum(count => (long)count) * (1 + (decimal)valueSets) * BlocksOf(seasons, seasonsPerTask);
        return tasks > long.MaxValue ? long.MaxValue : (long)tasks;
    }

    /// <summary>Number of plans of a folder.</summary>
    public int PlansOf(int folder) => (int)(_before[folder + 1] - _before[folder]);

    /// <summary>What a task plays.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such task.</exception>
    public SweepCell this[int number]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(number, Tasks);
            var (plan, rest) = Math.DivRem(number - 1, TasksOfPlan);
            var (set, block) = Math.DivRem(rest, Blocks);
            var found = _before.BinarySearch(plan);
            var folder = found >= 0 ? found : ~found - 1;
            return new SweepCell(folder, (int)(plan - _before[folder]), set, block);
        }
    }

    /// <summary>The number of the task that plays a cell, from 1.</summary>
    public int NumberOf(SweepCell cell) =>
        (int)(((_before[cell.Folder] + cell.Plan) * TasksOfPlan) + ((long)cell.Set * Blocks) + cell.Block) + 1;

    /// <summary>The seasons of a block.</summary>
    /// <param name="block">The block, from 0.</param>
    /// <returns>The first season, from 0, and how many.</returns>
    public (int First, int Count) SeasonsOf(int block)
    {
        var first = block * _seasonsPerTask;
        return (first, Math.Min(_seasonsPerTask, Seasons - first));
    }

    private static int BlocksOf(int seasons, int seasonsPerTask) => (int)(((long)seasons + seasonsPerTask - 1) / seasonsPerTask);
}
