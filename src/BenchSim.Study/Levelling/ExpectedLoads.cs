using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Study.Levelling;

/// <summary>
/// What each batch is expected to take on each day it may be sown on: places held, summed over seasons without limits of place. All choices
/// are played on
/// the same luck. Sums are whole numbers and stay so: no rounding comes between the play and the search.
/// </summary>
internal sealed class ExpectedLoads
{
    private readonly SeasonPlan _plan;
    private readonly LevelOptions _options;
    private readonly ImmutableArray<ImmutableArray<BatchPlan>> _choices;

    /// <summary>Prepares the plays.</summary>
    public ExpectedLoads(SeasonPlan plan, LevelOptions options)
    {
        _options = options;
        _choices = SowingChoices.Of(plan);

        // Dates that move later are played to the end too.
        var longer = _choices
            .SelectMany((choices, batch) => choices.Select(choice => choice.SetOutOn.DayNumber - plan.Batches[batch].SetOutOn.DayNumber))
            .Append(0)
            .Max();
        _plan = plan with { Days = plan.Days + longer };
        Groups = new LevelGroups(_plan);
    }

    /// <summary>The groups, over all days of the play.</summary>
    public LevelGroups Groups { get; }

    /// <summary>Batches that may be sown on more than one day, by position in the plan.</summary>
    public IEnumerable<int> Movable => Enumerable.Range(0, _choices.Length).Where(batch => _choices[batch].Length > 1);

    /// <summary>Plays of all the seasons: one for the plan, and one for each further choice of the batch that has most.</summary>
    public int Plays => _choices.Max(choices => choices.Length);

    /// <summary>The choices of a batch.</summary>
    public ImmutableArray<BatchPlan> ChoicesOf(int batch) => _choices[batch];

    /// <summary>Plays and puts the problem.</summary>
    /// <param name="progress">Told the seasons played, of <see cref="Plays"/> times the seasons.</param>
    /// <param name="cancel">Stops the play.</param>
    public LevelProblem Problem(IProgress<int>? progress, CancellationToken cancel)
    {
        int[] movable = [.. Movable];
        var loads = movable.ToDictionary(batch => batch, batch => new long[_choices[batch].Length][][]);
        var others = Empty();
        for (var play = 0; play < Plays; play++)
        {
            int[] chosen = [.. Enumerable.Range(0, _choices.Length).Select(batch => Choice(batch, play))];
            var sums = Play(chosen, Shifted(progress, play), cancel);
            for (var batch = 0; batch < chosen.Length; batch++)
            {
                if (loads.TryGetValue(batch, out var ofBatch) && play < ofBatch.Length)
                {
                    Groups.Add(batch, sums[batch], ofBatch[chosen[batch]] = Empty());
                }
                else if (ofBatch is null && play == 0)
                {
                    Groups.Add(batch, sums[batch], others);
                }
            }
        }

        return new LevelProblem(
            [
                .. movable.Select(batch =>
                    _choices[batch].Select((choice, at) => new SowingChoice(Shift(batch, choice), loads[batch][at])).ToArray()
                ),
            ],
            others,
            [
                .. Groups.All.Select(group =>
                    group.Places.Select(places => (long)Math.Floor((places * _options.ExpectedSeasons * _options.Fill) + 1e-6)).ToArray()
                ),
            ]
        )
        {
            Growers = GrowersOf(movable),
        };
    }

    private int[] GrowersOf(int[] movable)
    {
        string[] names = [.. _plan.Batches.Select(batch => batch.Order.Grower).Distinct(StringComparer.Ordinal)];
        return [.. movable.Select(batch => Array.IndexOf(names, _plan.Batches[batch].Order.Grower))];
    }

    private int Shift(int batch, BatchPlan choice) => choice.SowOn.DayNumber - _plan.Batches[batch].SowOn.DayNumber;

    // The first play is the plan itself; the others take the further choices of each batch in turn. A batch that has none left stands as
    // planned.
    private int Choice(int batch, int play)
    {
        var planned = _choices[batch].IndexOf(_plan.Batches[batch]);
        return play == 0 || play >= _choices[batch].Length ? planned
            : play <= planned ? play - 1
            : play;
    }

    private long[][][] Play(int[] chosen, IProgress<int>? progress, CancellationToken cancel)
    {
        var plan = _plan with { Batches = [.. chosen.Select((choice, batch) => _choices[batch][choice])] };
        SeasonPlayer first = new(plan, _options.Seed);
        var options = new StudyOptions
        {
            Seasons = _options.ExpectedSeasons,
            Seed = _options.Seed,
            Threads = _options.Threads,
        };
        return new ParallelSeasons<long[][][]>(options, progress, cancel).Run(Sums, () => Worker(first), Merge);
    }

    // The trial plays the first seasons; what is expected comes from those after them.
    private Action<int, long[][][]> Worker(SeasonPlayer first)
    {
        var wanted = new WantedPlaces(first.Another());
        return (season, sums) =>
        {
            wanted.Play(_options.Seasons + season);
            for (var batch = 0; batch < sums.Length; batch++)
            {
                for (var kind = 0; kind < sums[batch].Length; kind++)
                {
                    var held = wanted.ByBatch[batch][kind];
                    var sum = sums[batch][kind];
                    for (var day = 0; day < sum.Length; day++)
                    {
                        sum[day] += held[day];
                    }
                }
            }
        };
    }

    private long[][][] Sums()
    {
        var kinds = Enum.GetValues<SpaceKind>().Length;
        return [.. _choices.Select(_ => Enumerable.Range(0, kinds).Select(_ => new long[_plan.Days]).ToArray())];
    }

    private static void Merge(long[][][] sum, long[][][] other)
    {
        for (var batch = 0; batch < sum.Length; batch++)
        {
            for (var kind = 0; kind < sum[batch].Length; kind++)
            {
                for (var day = 0; day < sum[batch][kind].Length; day++)
                {
                    sum[batch][kind][day] += other[batch][kind][day];
                }
            }
        }
    }

    private long[][] Empty() => [.. Groups.All.Select(_ => new long[_plan.Days])];

    private Later? Shifted(IProgress<int>? progress, int play) =>
        progress is null ? null : new Later(progress, play * _options.ExpectedSeasons);

    private sealed class Later(IProgress<int> progress, int before) : IProgress<int>
    {
        public void Report(int value) => progress.Report(before + value);
    }
}
