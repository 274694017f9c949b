using System.Collections.Immutable;
using BenchSim.Cli.Printing;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Commands;

/// <summary>A scenario folder, read and planned, or what is wrong with it.</summary>
/// <param name="Plan">The plan, with the warnings of both reading and planning; null when there is any fault.</param>
/// <param name="Faults">What is wrong, in order of place.</param>
/// <param name="Inputs">The files that were read.</param>
internal sealed record OpenedScenario(SeasonPlan? Plan, ImmutableArray<Fault> Faults, ImmutableArray<InputFile> Inputs)
{
    /// <summary>Open flats that a batch could be sown dense in, in order of id.</summary>
    public ImmutableArray<TrayType> OpenFlats { get; private init; } = [];

    public static OpenedScenario Open(string directory) => Of(ScenarioFolder.Read(directory));

    /// <summary>The same from the files that were read before.</summary>
    /// <param name="files">The files.</param>
    /// <param name="unread">Names of files that were not read, but that the reading warned of.</param>
    public static OpenedScenario Again(IEnumerable<InputFile> files, IEnumerable<string> unread) =>
        Of(ScenarioFolder.ReadKept(files, unread));

    private static OpenedScenario Of(FolderReading reading)
    {
        if (reading.Scenario is not { } scenario)
        {
            return new OpenedScenario(null, FaultList.Sorted(reading.Faults), reading.Inputs);
        }

        var planned = SeasonPlanner.Make(scenario);
        return planned.Plan is { } plan
            ? new OpenedScenario(plan with { Warnings = FaultList.Sorted([.. reading.Warnings, .. plan.Warnings]) }, [], reading.Inputs)
            {
                OpenFlats = reading.OpenFlats,
            }
            : new OpenedScenario(null, FaultList.Sorted(planned.Faults), reading.Inputs);
    }
}
