using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// Which temperatures and heat sums a plan needs: the airs (outdoors first, then each house), the media (each air with the offset, then each
/// mat temperature), and the distinct laws of emergence and growth of its crops. Made once a plan, so that no season computes a table twice.
/// </summary>
internal sealed class ClimateLayout
{
    private readonly int[] airOfSpace;
    private readonly int[] mediumOfSpace;
    private readonly int[] emergenceOfCrop;
    private readonly int[] growthOfCrop;

    public ClimateLayout(Scenario scenario)
    {
        Scenario = scenario;
        var houses = scenario
            .Houses.Select((house, index) => (house.Id, Air: index + 1))
            .ToDictionary(pair => pair.Id, pair => pair.Air, StringComparer.Ordinal);
        Airs = scenario.Houses.Length + 1;
        MatTemperatures = [.. scenario.Spaces.Where(space => space.MatC.HasValue).Select(space => space.MatC!.Value).Distinct().Order()];
        airOfSpace = [.. scenario.Spaces.Select(space => space.HouseId is { } id ? houses[id] : 0)];
        mediumOfSpace =
        [
            .. scenario.Spaces.Select((space, index) => space.MatC is { } set ? Airs + MatTemperatures.IndexOf(set) : airOfSpace[index]),
        ];
        Emergences = [.. scenario.Crops.Select(EmergenceOf).Distinct()];
        Growths = [.. scenario.Crops.Select(GrowthOf).Distinct()];
        emergenceOfCrop = [.. scenario.Crops.Select(crop => Emergences.IndexOf(EmergenceOf(crop)))];
        growthOfCrop = [.. scenario.Crops.Select(crop => Growths.IndexOf(GrowthOf(crop)))];
    }

    public Scenario Scenario { get; }

    /// <summary>Number of airs.</summary>
    public int Airs { get; }

    /// <summary>Number of media.</summary>
    public int Media => Airs + MatTemperatures.Length;

    public ImmutableArray<double> MatTemperatures { get; }

    /// <summary>Base, optimum and ceiling of each law of emergence.</summary>
    public ImmutableArray<(double BaseC, double OptimumC, double CeilingC)> Emergences { get; }

    /// <summary>Base and cap of each law of growth.</summary>
    public ImmutableArray<(double BaseC, double CapC)> Growths { get; }

    public int AirOf(int space) => airOfSpace[space];

    public int MediumOf(int space) => mediumOfSpace[space];

    public int EmergenceOf(int crop) => emergenceOfCrop[crop];

    public int GrowthOf(int crop) => growthOfCrop[crop];

    private static (double BaseC, double OptimumC, double CeilingC) EmergenceOf(Crop crop) =>
        (crop.EmergeBaseC, crop.EmergeOptimumC, crop.EmergeCeilingC);

    private static (double BaseC, double CapC) GrowthOf(Crop crop) => (crop.GrowthBaseC, crop.GrowthCapC);
}
