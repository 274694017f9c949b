using System.Collections.Immutable;
using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Files;
using BenchSim.Folder.Reference;
using BenchSim.Folder.Sweeps;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Marks;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>A folder of a sweep, read and planned with all that is played of it.</summary>
/// <param name="Seed">Seed of all luck.</param>
/// <param name="Values">Its sets of values.</param>
/// <param name="Plans">Its plans, in the order of the sweep.</param>
internal sealed record OpenedFolder(ulong Seed, SweepValues Values, ImmutableArray<OpenedPlan> Plans)
{
    /// <summary>Opens a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="settings">The sweep.</param>
    /// <exception cref="FaultsFoundException">It has faults; their places begin with the folder.</exception>
    public static OpenedFolder Open(SweepFolder folder, SweepSettings settings)
    {
        var source = ScenarioSource.Folder(folder.Directory);
        try
        {
            var opened = source.Open();
            var plans = ImmutableArray.CreateBuilder<OpenedPlan>(folder.Variants.Length);
            var faults = new List<Fault>();
            foreach (var variant in folder.Variants)
            {
                try
                {
                    plans.Add(PlanOf(source, opened, variant, settings.IsPlannedAnew));
                }
                catch (FaultsFoundException found)
                {
                    faults.AddRange(found.Faults);
                }
            }

            var seed = settings.Seed ?? opened.Plan.Scenario.Play.Seed;
            return faults.Count > 0
                ? throw new FaultsFoundException(faults.Distinct())
                : new OpenedFolder(seed, new SweepValues(opened.Plan, settings.ValueSets, seed), plans.DrainToImmutable());
        }
        catch (FaultsFoundException found)
        {
            throw new FaultsFoundException(found.Faults.Select(fault => In(folder.Directory, fault)));
        }
    }

    private static OpenedPlan PlanOf(ScenarioSource source, OpenedScenario opened, string? variant, bool isPlannedAnew)
    {
        if (variant is null)
        {
            return new OpenedPlan(null, opened.Plan, HashOf(opened.Inputs));
        }

        // The plan itself is part of what a variant is made of: its dates, and the values that may be wrong.
        var variants = source.OpenVariants(opened.Plan, [variant], isPlannedAnew);
        var all = opened.Inputs.Concat(variants.Inputs).DistinctBy(input => input.Name, StringComparer.Ordinal);
        return new OpenedPlan(variant, variants.Plans[0].Plan, HashOf(all.OrderBy(input => input.Name, StringComparer.Ordinal)));
    }

    private static string HashOf(IEnumerable<InputFile> inputs) =>
        Convert.ToHexStringLower(
            Sha256.HashData(Encoding.UTF8.GetBytes(string.Concat(inputs.Select(input => $"{WrittenAnswer.HashOf(input)}  {input.Name}\n"))))
        );

    // A fault of the folder as a whole names it already.
    private static Fault In(string directory, Fault fault) =>
        string.Equals(fault.Place.File, directory, StringComparison.Ordinal)
            ? fault
            : fault with
            {
                Place = fault.Place with { File = Path.Combine(directory, fault.Place.File) },
            };
}

/// <summary>A plan of a folder of a sweep.</summary>
/// <param name="Variant">Name of the variant; null for the plan itself.</param>
/// <param name="Plan">The plan.</param>
/// <param name="FilesHash">Hash of all files that it was made of.</param>
internal sealed record OpenedPlan(string? Variant, SeasonPlan Plan, string FilesHash);
