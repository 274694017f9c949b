using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Opening;

/// <summary>Where a scenario and its variants come from: a folder on a disk, or texts in memory.</summary>
public abstract class ScenarioSource
{
    /// <summary>The folder, as the user wrote it; null for texts in memory.</summary>
    public virtual string? Directory => null;

    private protected virtual KeptOpenings? Kept => null;

    /// <summary>A scenario folder.</summary>
    /// <param name="directory">Its path.</param>
    public static ScenarioSource Folder(string directory)
    {
        ArgumentNullException.ThrowIfNull(directory);
        return new OnDisk(directory);
    }

    /// <summary>The files of a scenario folder, kept elsewhere.</summary>
    /// <param name="files">The files, names relative to the folder; each name once.</param>
    /// <param name="others">Names of files that stand in the folder too, and that a reader would warn of.</param>
    /// <param name="kept">Keeps what does not change from one opening to the next; null for nothing kept.</param>
    /// <param name="directory">The folder that they stand in, where what is kept beside them is of use; null for none.</param>
    public static ScenarioSource Files(
        IEnumerable<InputFile> files,
        IEnumerable<string> others,
        KeptOpenings? kept = null,
        string? directory = null
    )
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(others);
        return new InMemory([.. files], [.. others], kept, directory);
    }

    /// <summary>The same scenario, under way: its seasons are played from a day on, the days before as its log has them.</summary>
    /// <param name="today">The day; null for whole seasons.</param>
    public ScenarioSource On(DateOnly? today) => today is { } day ? new Underway(this, day) : this;

    /// <summary>Name of the folder, without those above it; "scenario" for texts in memory.</summary>
    internal string FolderName() =>
        Directory is null ? "scenario" : Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(Directory)));

    /// <summary>Reads and plans the scenario.</summary>
    /// <exception cref="FaultsFoundException">It has faults.</exception>
    /// <exception cref="RefusedException">It is under way, and its day is not of the season.</exception>
    public virtual OpenedScenario Open()
    {
        var reading = Read(null);
        var scenario = reading.Scenario ?? throw new FaultsFoundException(reading.Faults);
        var planned = SeasonPlanner.Make(scenario, Kept?.Dates);
        var plan = planned.Plan ?? throw new FaultsFoundException(planned.Faults);
        return new OpenedScenario(
            plan with
            {
                Warnings = FaultsFoundException.Sorted([.. reading.Warnings, .. plan.Warnings]),
            },
            reading.Inputs,
            reading.OpenFlats
        );
    }

    /// <summary>Reads and plans the scenario with a variant laid over it.</summary>
    /// <param name="variant">Name of the variant; null for the scenario as it is.</param>
    /// <exception cref="FaultsFoundException">The scenario or the variant has faults.</exception>
    internal OpenedScenario OpenWith(string? variant)
    {
        var opened = Open();
        if (variant is null)
        {
            return opened;
        }

        var variants = OpenVariants(opened.Plan, [variant]);
        return opened with
        {
            Plan = variants.Plans[0].Plan,

            // A variant is played by the log and the weather of its base, which are no files of its own.
            Inputs = opened.From is null
                ? variants.Inputs
                :
                [
                    .. variants
                        .Inputs.UnionBy(opened.Inputs, input => input.Name, StringComparer.Ordinal)
                        .OrderBy(Name, StringComparer.Ordinal),
                ],
        };

        static string Name(InputFile input) => input.Name;
    }

    /// <summary>Reads variants and plans them against the base.</summary>
    /// <param name="basePlan">Plan of the base.</param>
    /// <param name="names">Names of the variants.</param>
    /// <param name="replan">True when all of them are planned anew; false for those that say so themselves.</param>
    /// <exception cref="FaultsFoundException">Some of them have faults: those of all of them.</exception>
    internal OpenedVariants OpenVariants(SeasonPlan basePlan, IEnumerable<string> names, bool replan = false)
    {
        var plans = ImmutableArray.CreateBuilder<(string, SeasonPlan)>();
        var faults = new List<Fault>();
        var inputs = new SortedDictionary<string, InputFile>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var reading = Read(name);
            foreach (var input in reading.Inputs)
            {
                inputs[input.Name] = input;
            }

            if (reading.Scenario is not { } scenario)
            {
                faults.AddRange(reading.Faults);
                continue;
            }

            var planned = VariantPlanner.Make(basePlan, replan ? scenario with { IsPlannedAnew = true } : scenario);
            if (planned.Plan is { } plan)
            {
                var warnings = FaultsFoundException.Sorted([.. reading.Warnings, .. plan.Warnings]);
                plans.Add((name, plan with { Warnings = warnings }));
            }

            faults.AddRange(planned.Faults.Select(fault => InVariant(fault, name)));
        }

        return faults.Count > 0
            ? throw new FaultsFoundException(faults.Distinct())
            : new OpenedVariants(plans.ToImmutable(), [.. inputs.Values]);
    }

    /// <summary>Reads a variant that is not written yet, and plans it against the base.</summary>
    /// <param name="opened">The base, with the files it was read from.</param>
    /// <param name="text">The variant; it says nothing of the weather.</param>
    /// <param name="over">The file of a variant that is laid over it; null for none. It is played in the weather of the base.</param>
    /// <returns>The plan, or every fault.</returns>
    internal static PlanResult OpenText(OpenedScenario opened, string text, InputFile? over = null)
    {
        const string Name = "unwritten";
        var below = FileNames.OfVariant(Name);
        var reading = ScenarioFolder.ReadKept(
            [
                .. opened.Inputs.Where(file => !string.Equals(file.Name, over?.Name, StringComparison.Ordinal)),
                InputFile.Of(below, text),
                .. over is null ? [] : new[] { over },
            ],
            variant: over is null ? Name : Path.GetFileNameWithoutExtension(over.Name),
            weather: opened.Plan.Scenario.Weather,
            below: over is null ? null : Name
        );
        return reading.Scenario is { } scenario ? VariantPlanner.Make(opened.Plan, scenario) : new PlanResult(null, reading.Faults);
    }

    private protected abstract FolderReading Read(string? variant);

    // A batch that the variant does not touch can become impossible in it, as in an unheated house: its place is in the plan, its cause is
    // not.
    private static Fault InVariant(Fault fault, string name) =>
        fault.Place.File.StartsWith(FileNames.VariantFolder + "/", StringComparison.Ordinal)
            ? fault
            : fault with
            {
                What = $"in the variant \"{name}\": {fault.What}",
            };

    private sealed class OnDisk(string directory) : ScenarioSource
    {
        public override string? Directory => directory;

        private protected override FolderReading Read(string? variant) =>
            variant is null ? ScenarioFolder.Read(directory) : ScenarioFolder.ReadVariant(directory, variant);
    }

    private sealed class Underway(ScenarioSource whole, DateOnly today) : ScenarioSource
    {
        public override string? Directory => whole.Directory;

        private protected override KeptOpenings? Kept => whole.Kept;

        public override OpenedScenario Open() => OpenedToday.Of(whole, today).Underway();

        private protected override FolderReading Read(string? variant) => whole.Read(variant);
    }

    private sealed class InMemory(ImmutableArray<InputFile> files, ImmutableArray<string> others, KeptOpenings? kept, string? directory)
        : ScenarioSource
    {
        public override string? Directory => directory;

        private protected override KeptOpenings? Kept => kept;

        private protected override FolderReading Read(string? variant) =>
            ScenarioFolder.ReadKept(files, others, variant, records: kept?.Records);
    }
}

/// <summary>A scenario, read and planned.</summary>
/// <param name="Plan">The plan, with the warnings of both reading and planning.</param>
/// <param name="Inputs">The files that were read.</param>
/// <param name="OpenFlats">Open flats that a batch could be sown dense in, in order of id.</param>
public sealed record OpenedScenario(SeasonPlan Plan, ImmutableArray<InputFile> Inputs, ImmutableArray<TrayType> OpenFlats)
{
    /// <summary>From what its seasons are played; null for whole ones.</summary>
    public PlayedFrom? From { get; init; }
}

/// <summary>Variants of a scenario, read and planned against the base.</summary>
/// <param name="Plans">Names and plans in the order asked for.</param>
/// <param name="Inputs">The files that were read, those of the base too, in order of name.</param>
internal sealed record OpenedVariants(ImmutableArray<(string Name, SeasonPlan Plan)> Plans, ImmutableArray<InputFile> Inputs);
