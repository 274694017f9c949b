using System.Collections.Immutable;
using BenchSim.Cli.Printing;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Cli.Commands;

/// <summary>A scenario folder, read and planned, or what is wrong with it.</summary>
/// <param name="Plan">The plan, with the warnings of both reading and planning; null when there is any fault.</param>
/// <param name="Faults">What is wrong, in order of place.</param>
/// <param name="Inputs">The files that were read.</param>
internal sealed record OpenedScenario(SeasonPlan? Plan, ImmutableArray<Fault> Faults, ImmutableArray<InputFile> Inputs)
{
    public static OpenedScenario Open(string directory)
    {
        FolderReading reading = ScenarioFolder.Read(directory);
        if (reading.Scenario is not { } scenario)
            return new OpenedScenario(null, FaultList.Sorted(reading.Faults), reading.Inputs);

        PlanResult planned = SeasonPlanner.Make(scenario);
        return planned.Plan is { } plan
            ? new OpenedScenario(plan with { Warnings = FaultList.Sorted([.. reading.Warnings, .. plan.Warnings]) }, [], reading.Inputs)
            : new OpenedScenario(null, FaultList.Sorted(planned.Faults), reading.Inputs);
    }
}
