using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Learn;

/// <summary>Asks what the logs of one or more seasons teach of the crops, and of the work.</summary>
public sealed record LearnQuestion
{
    /// <summary>The folders of the seasons, the last of them the one whose crops are learned.</summary>
    public required ImmutableArray<ScenarioSource> Scenarios { get; init; }

    /// <summary>How far off values in force may be before anything is counted.</summary>
    public Deviations Deviations { get; init; } = Deviations.Usual;

    /// <summary>True to write what was learned into crops.csv of the last folder; nothing is written unasked.</summary>
    public bool Write { get; init; }

    /// <summary>Learns, and writes where that is asked for.</summary>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="FaultsFoundException">A folder or its log has faults: those of all folders.</exception>
    /// <exception cref="RefusedException">A folder has no log or is named twice, or crops.csv cannot be written.</exception>
    public LearnAnswer Ask(CancellationToken cancel)
    {
        RefuseTwice();
        var opened = Open();
        var last = opened[^1].Opened;
        var file = Write ? new CropsFile(Scenarios[^1].Directory, last.Inputs) : null;
        file?.Check();
        var result = Learn(opened, cancel);
        var written = file?.Write(result, cancel);
        return new LearnAnswer(result, Scenarios, written) { ScenarioFolder = Scenarios[^1].Directory, Inputs = last.Inputs };
    }

    private LearnResult Learn(ImmutableArray<OpenedToday> opened, CancellationToken cancel)
    {
        var names = Names(opened);
        var plan = opened[^1].Opened.Plan;

        // What a later season says of a crop is what is learned.
        var inForce = new SortedDictionary<string, Crop>(StringComparer.Ordinal);
        foreach (var crop in opened.SelectMany(each => each.Opened.Plan.Scenario.Crops))
        {
            inForce[crop.Id] = crop;
        }

        var before = inForce.Values.Select(crop => PriorCrop.Of(crop, names)).ToDictionary(crop => crop.Id, StringComparer.Ordinal);
        return LearnRunner.Run(
            plan,
            [.. opened.Zip(names, (each, name) => LearnedSeason.Of(name, each.Underway().Plan, before))],
            inForce.Values.Select(crop => (before[crop.Id], crop)),
            Deviations,
            cancel
        );
    }

    private void RefuseTwice()
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var directory in Scenarios.Select(source => source.Directory).OfType<string>())
        {
            var path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(directory));
            if (!seen.TryAdd(path, directory))
            {
                throw new RefusedException(
                    $"{PlainText.Quote(seen[path])} and {PlainText.Quote(directory)} are the same folder. Name each season once: "
                        + "what its log says would count twice."
                );
            }
        }
    }

    // Every fault of every folder in one pass.
    private ImmutableArray<OpenedToday> Open()
    {
        var opened = ImmutableArray.CreateBuilder<OpenedToday>();
        var faults = new List<Fault>();
        foreach (var source in Scenarios)
        {
            try
            {
                opened.Add(Open(source));
            }
            catch (FaultsFoundException found)
            {
                faults.AddRange(found.Faults.Select(fault => Scenarios.Length == 1 ? fault : In(source, fault)));
            }
        }

        return faults.Count > 0 ? throw new FaultsFoundException(faults) : opened.ToImmutable();
    }

    // As it stands on the day after the last row of its log.
    private static OpenedToday Open(ScenarioSource source)
    {
        var plan = source.Open().Plan;
        var log = plan.Scenario.Log;
        if (log.IsEmpty)
        {
            var where = source.Directory is { } directory ? PlainText.Quote(directory) : "The scenario";
            throw new RefusedException(
                $"{where} has no row in {FileNames.Log}, so there is nothing to learn from. Write down what was done and seen there, "
                    + "or name the folder of a season that has a log."
            );
        }

        var after = log.Max(row => row.Date).AddDays(1);
        return OpenedToday.Of(source, after < plan.LastDay ? after : plan.LastDay);
    }

    private static Fault In(ScenarioSource source, Fault fault)
    {
        var directory = source.Directory ?? "scenario";
        return string.Equals(fault.Place.File, directory, StringComparison.Ordinal)
            ? fault
            : fault with
            {
                Place = fault.Place with { File = $"{Path.TrimEndingDirectorySeparator(directory)}/{fault.Place.File}" },
            };
    }

    // The year; with the folder where two seasons are of one year.
    private ImmutableArray<string> Names(ImmutableArray<OpenedToday> opened)
    {
        string[] years = [.. opened.Select(each => FormattableString.Invariant($"{each.Opened.Plan.FirstDay.Year}"))];
        return
        [
            .. years.Select(
                (year, at) =>
                    years.Count(other => string.Equals(other, year, StringComparison.Ordinal)) == 1
                        ? year
                        : $"{year} in {PlainText.Short(Plain(Scenarios[at].FolderName()), 30)}"
            ),
        ];
    }

    // A folder's name must not be taken for another part of the source that is written of it.
    private static string Plain(string name) => string.Concat(name.Select(each => char.IsLetterOrDigit(each) ? each : '-'));
}

/// <summary>What the logs teach.</summary>
/// <param name="Result">What they teach.</param>
/// <param name="Scenarios">The folders of the seasons.</param>
/// <param name="Written">What was written; null where nothing was asked to be.</param>
public sealed record LearnAnswer(LearnResult Result, ImmutableArray<ScenarioSource> Scenarios, WrittenCrops? Written) : Answer
{
    /// <summary>The files of the last folder as they were read.</summary>
    internal ImmutableArray<InputFile> Inputs { get; init; } = [];

    /// <summary>crops.csv of the last folder as it would be written; nothing is.</summary>
    /// <exception cref="FaultsFoundException">With the values learned the folder would have faults.</exception>
    /// <exception cref="RefusedException">The crops are in a workbook.</exception>
    public TaughtCrops Crops() => new CropsFile(ScenarioFolder, Inputs).Teach(Result);

    /// <inheritdoc />
    public override FirstScreen? Screen => LearnScreen.Of(this);

    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(
            LearnDocument.Of(Result, Written is { Crops.IsEmpty: false } ? Written.File : null, Written?.IsChanged ?? false)
        );

    private protected override void Tell(Passages passages) => LearnTelling.Tell(passages, this);
}
