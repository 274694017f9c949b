using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Season.Values;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>Adds the results of a sweep's tasks, one after the other: no more than those of one plan are summed at a time.</summary>
/// <param name="sweep">The sweep.</param>
/// <param name="tasks">Where the results are.</param>
internal sealed class SweepMerger(OpenedSweep sweep, TaskFolder tasks)
{
    private readonly TasksLacking _lacking = new();

    /// <summary>Adds them.</summary>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The result; null where some are lacking.</returns>
    /// <exception cref="FaultsFoundException">Some folders have faults: those of all of them.</exception>
    public (SweepResult? Result, TasksLacking Lacking) Merge(CancellationToken cancel)
    {
        var folders = ImmutableArray.CreateBuilder<SweptFolder>();
        var faults = new List<Fault>();
        for (var folder = 0; folder < sweep.Grid.Folders; folder++)
        {
            try
            {
                folders.Add(Folder(folder, sweep.Folder(folder), cancel));
            }
            catch (FaultsFoundException found)
            {
                faults.AddRange(found.Faults);
            }
        }

        if (faults.Count > 0)
        {
            throw new FaultsFoundException(faults);
        }

        return (_lacking.Count == 0 ? Result(folders.DrainToImmutable()) : null, _lacking);
    }

    private SweptFolder Folder(int folder, OpenedFolder opened, CancellationToken cancel)
    {
        var plans = ImmutableArray.CreateBuilder<SweptPlan>();
        for (var plan = 0; plan < opened.Plans.Length; plan++)
        {
            if (Row(new SweepCell(folder, plan, 0, 0), opened, cancel) is { } row)
            {
                var of = opened.Plans[plan];
                plans.Add(new SweptPlan(of.Variant, [.. of.Plan.Scenario.Spaces.Select(space => (space.Id, space.Name))], row));
            }
        }

        var site = opened.Plans[0].Plan.Scenario.Name;
        return new SweptFolder(sweep.File.Folders[folder].Name, site, opened.Seed, opened.Values.Values, plans.DrainToImmutable());
    }

    private SweepResult Result(ImmutableArray<SweptFolder> folders) =>
        new()
        {
            Name = sweep.File.Settings.Name,
            Goal = sweep.File.Settings.Goal,
            Seasons = sweep.Grid.Seasons,
            ValueSets = sweep.Grid.Sets - 1,
            Tasks = sweep.Grid.Tasks,
            Folders = folders,
        };

    // Null once any task is lacking: the rest is looked at only to name what else is.
    private SweepRow? Row(SweepCell first, OpenedFolder folder, CancellationToken cancel)
    {
        var plan = folder.Plans[first.Plan].Plan;
        var sum = new SweepSum(plan, sweep.Grid.Sets);
        var start = sweep.Grid.NumberOf(first);
        for (var number = start; number < start + sweep.Grid.TasksOfPlan; number++)
        {
            cancel.ThrowIfCancellationRequested();
            var cell = sweep.Grid[number];
            var counts = tasks.Read(number, sweep.KeyOf(cell, folder), out var state);

            // Only a result that was made up by hand has other seasons or spaces: its key and its last line vouch for it.
            if (
                counts is not null
                && (counts.Seasons != sweep.Grid.SeasonsOf(cell.Block).Count || counts.ShortSeasons.Length != plan.Scenario.Spaces.Length)
            )
            {
                (counts, state) = (null, TaskState.Damaged);
            }

            if (counts is null)
            {
                _lacking.Add(number, state);
            }
            else if (_lacking.Count == 0)
            {
                sum.Add(cell.Set, counts);
            }
        }

        return _lacking.Count == 0 ? sum.ToRow(first) : null;
    }
}
