using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// Which temperatures and heat sums a plan needs: the airs (outdoors first, then each house), the media (each air with the offset, then
/// each mat temperature), and the distinct laws of emergence and growth of its crops.
/// </summary>
internal sealed class ClimateLayout
{
    private readonly int[] _airOfSpace;
    private readonly int[] _mediumOfSpace;
    private readonly int[] _emergenceOfCrop;
    private readonly int[] _growthOfCrop;
    private readonly int[] _numberOfAir;
    private readonly int[] _warmthSlots;
    private readonly int[,] _emergenceSlots;
    private readonly int[,] _growthSlots;

    /// <summary>Makes the layout of a plan.</summary>
    /// <param name="scenario">Scenario of the plan.</param>
    /// <param name="slots">Numbers what is asked for, with that of other plans of the same weather.</param>
    public ClimateLayout(Scenario scenario, HeatSlots slots)
    {
        var houses = scenario
            .Houses.Select((house, index) => (house.Id, Air: index + 1))
            .ToDictionary(pair => pair.Id, pair => pair.Air, StringComparer.Ordinal);
        var airs = scenario.Houses.Length + 1;
        ImmutableArray<MatSetting> mats =
        [
            .. scenario.Spaces.Where(space => space.MatC.HasValue).Select(MatSetting.Of).Distinct().OrderBy(mat => mat.SetC),
        ];
        _airOfSpace = [.. scenario.Spaces.Select(space => space.HouseId is { } id ? houses[id] : 0)];
        _mediumOfSpace =
        [
            .. scenario.Spaces.Select(
                (space, index) => space.MatC is not null ? airs + mats.IndexOf(MatSetting.Of(space)) : _airOfSpace[index]
            ),
        ];
        ImmutableArray<HeatLaw> emergences = [.. scenario.Crops.Select(EmergenceOf).Distinct()];
        ImmutableArray<HeatLaw> growths = [.. scenario.Crops.Select(GrowthOf).Distinct()];
        _emergenceOfCrop = [.. scenario.Crops.Select(crop => emergences.IndexOf(EmergenceOf(crop)))];
        _growthOfCrop = [.. scenario.Crops.Select(crop => growths.IndexOf(GrowthOf(crop)))];

        _numberOfAir = [slots.AirOf(null), .. scenario.Houses.Select(house => slots.AirOf(house.AirAt(scenario.Latitude)))];
        (bool IsMat, int Number)[] media =
        [
            .. _numberOfAir.Select(number => (false, number)),
            .. mats.Select(mat => (true, slots.MatOf(mat))),
        ];
        _warmthSlots = [.. media.Select(medium => slots.Of(new HeatSlot(HeatLaw.Warmth, medium.IsMat, medium.Number)))];
        _emergenceSlots = new int[emergences.Length, media.Length];
        for (var law = 0; law < emergences.Length; law++)
        {
            for (var medium = 0; medium < media.Length; medium++)
            {
                _emergenceSlots[law, medium] = slots.Of(new HeatSlot(emergences[law], media[medium].IsMat, media[medium].Number));
            }
        }

        _growthSlots = new int[growths.Length, airs];
        for (var law = 0; law < growths.Length; law++)
        {
            for (var air = 0; air < airs; air++)
            {
                _growthSlots[law, air] = slots.Of(new HeatSlot(growths[law], false, _numberOfAir[air]));
            }
        }
    }

    /// <summary>The air a space stands in: 0 outdoors, else the position of its house, from 1.</summary>
    public int AirOf(int space) => _airOfSpace[space];

    /// <summary>The medium of a space.</summary>
    public int MediumOf(int space) => _mediumOfSpace[space];

    /// <summary>The law of emergence of a crop.</summary>
    public int EmergenceOf(int crop) => _emergenceOfCrop[crop];

    /// <summary>The law of growth of a crop.</summary>
    public int GrowthOf(int crop) => _growthOfCrop[crop];

    /// <summary>Number of an air; houses of the same air have one number.</summary>
    public int NumberOf(int air) => _numberOfAir[air];

    /// <summary>Number of the temperature sum of a medium.</summary>
    public int WarmthSlot(int medium) => _warmthSlots[medium];

    /// <summary>Number of the heat sum of a law of emergence in a medium.</summary>
    public int EmergenceSlot(int emergence, int medium) => _emergenceSlots[emergence, medium];

    /// <summary>Number of the heat sum of a law of growth in an air.</summary>
    public int GrowthSlot(int growth, int air) => _growthSlots[growth, air];

    private static HeatLaw EmergenceOf(Crop crop) =>
        HeatLaw.Emergence(crop.EmergeBaseC, crop.EmergeOptimumC, crop.EmergePlateauC, crop.EmergeCeilingC);

    private static HeatLaw GrowthOf(Crop crop) => HeatLaw.Growth(crop.GrowthBaseC, crop.GrowthCapC);
}
