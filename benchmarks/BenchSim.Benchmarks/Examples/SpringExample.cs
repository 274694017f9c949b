using System.Collections.Immutable;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Benchmarks.Examples;

/// <summary>The spring example as it is read from its folder.</summary>
internal static class SpringExample
{
    /// <summary>The plan, and the files it was read from.</summary>
    public static (SeasonPlan Plan, ImmutableArray<InputFile> Inputs) Read() => Planned(ScenarioFolder.Read(Folder));

    /// <summary>The plan with one of its variants laid over it.</summary>
    /// <param name="variant">Name of the variant.</param>
    public static SeasonPlan Read(string variant) => Planned(ScenarioFolder.ReadVariant(Folder, variant)).Plan;

    private static string Folder => Checkout.PathTo("scenarios", "two-house-spring");

    private static (SeasonPlan Plan, ImmutableArray<InputFile> Inputs) Planned(FolderReading reading) =>
        (SeasonPlanner.Make(reading.Scenario!).Plan!, reading.Inputs);
}
