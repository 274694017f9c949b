using System.Collections.Immutable;
using BenchSim.Cli.Printing;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Commands;

/// <summary>The variants of a scenario folder, read and planned against the base, or what is wrong with any of them.</summary>
/// <param name="Plans">Names and plans in the order asked for; empty when there is any fault.</param>
/// <param name="Faults">What is wrong, in order of place.</param>
internal sealed record OpenedVariants(ImmutableArray<(string Name, SeasonPlan Plan)> Plans, ImmutableArray<Fault> Faults)
{
    /// <summary>The files that were read, those of the base too, in order of name.</summary>
    public ImmutableArray<InputFile> Inputs { get; private init; } = [];

    public static OpenedVariants Open(string directory, SeasonPlan basePlan, IEnumerable<string> names)
    {
        var plans = ImmutableArray.CreateBuilder<(string, SeasonPlan)>();
        var faults = new List<Fault>();
        var inputs = new SortedDictionary<string, InputFile>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            var reading = ScenarioFolder.ReadVariant(directory, name);
            foreach (var input in reading.Inputs)
            {
                inputs[input.Name] = input;
            }

            if (reading.Scenario is not { } scenario)
            {
                faults.AddRange(reading.Faults);
                continue;
            }

            var planned = VariantPlanner.Make(basePlan, scenario);
            if (planned.Plan is { } plan)
            {
                plans.Add((name, plan));
            }

            faults.AddRange(planned.Faults.Select(fault => InVariant(fault, name)));
        }

        return faults.Count > 0
            ? new OpenedVariants([], FaultList.Sorted(faults.Distinct()))
            : new OpenedVariants(plans.ToImmutable(), []) { Inputs = [.. inputs.Values] };
    }

    // A batch that the variant does not touch can become impossible in it, as in an unheated house: its place is in the plan, its cause is not.
    private static Fault InVariant(Fault fault, string name) =>
        fault.Place.File.StartsWith(FolderReference.VariantFolder + "/", StringComparison.Ordinal)
            ? fault
            : fault with
            {
                What = $"in the variant \"{name}\": {fault.What}",
            };
}
