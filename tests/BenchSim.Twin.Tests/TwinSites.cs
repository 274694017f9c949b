using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Tests;
using CsCheck;

namespace BenchSim.Twin.Tests;

/// <summary>
/// The random sites of the season tests, with more kinds of space and more rules: a hot second mat, a third bench in a house opened when needed, a table
/// indoors, flats of two places, light, days off, a medium cooler than the air, an early date for the field and house shells.
/// </summary>
internal static class TwinSites
{
    private static readonly Gen<Func<Scenario, Scenario>> GenSpaces =
        from mats in Gen.Int[0, 8]
        from matC in Gen.Double[12, 38]
        from bench in Gen.Int[0, 10]
        from table in Gen.Int[0, 6]
        from aisle in Gen.Int[0, 2]
        from kind in Gen.Int[0, 3]
        from change in Gen.Int[0, 6]
        select (Func<Scenario, Scenario>)(
            site =>
                site with
                {
                    Houses =
                    [
                        .. site.Houses.Select(house => house with { Heat = Shell }),
                        new House
                        {
                            Id = "cold",
                            Name = "Cold",
                            VentC = 22,
                            DayLiftK = 9,
                        },
                        new House
                        {
                            Id = "third",
                            Name = "Third",
                            NightC = 10,
                            DayC = 16,
                            VentC = 27,
                            Opening = HouseOpening.WhenNeeded,
                            Heat = Shell,
                        },
                    ],
                    Spaces =
                    [
                        .. site.Spaces,
                        new Space
                        {
                            Id = "mat2",
                            Name = "mat2",
                            Kind = SpaceKind.Mat,
                            HouseId = kind == 1 ? "third" : "second",
                            Places = mats,
                            MatC = matC,
                        },
                        new Space
                        {
                            Id = "bench3",
                            Name = "bench3",
                            Kind = SpaceKind.Bench,
                            HouseId = kind == 2 ? "cold" : "third",
                            Places = bench,
                            AislePlaces = aisle,
                        },
                        new Space
                        {
                            Id = "table2",
                            Name = "table2",
                            Kind = SpaceKind.Table,
                            HouseId =
                                kind == 0 ? null
                                : kind == 3 ? "third"
                                : "cold",
                            Places = table,
                            AislePlaces = aisle,
                            Changes =
                            [
                                new PlacesFrom(SmallSite.Monday.AddDays(30), change),
                                new PlacesFrom(SmallSite.Monday.AddDays(60), table),
                            ],
                        },
                    ],
                }
        );

    private static readonly Gen<Func<Scenario, Scenario>> GenWork =
        from offset in Gen.Double[-4, 1]
        from early in Gen.Int[0, 4]
        from lead in Gen.Int[0, 9]
        from week in Gen.Int[0, 3]
        from goal in Gen.Double[0.1, 1]
        from late in Gen.Int[0, 8]
        from light in Gen.Double[0.3, 1]
        from earlyMat in Gen.Double[0.05, 0.9]
        from earlyTable in Gen.Double[0.3, 1]
        from wet in Gen.Double[5, 60]
        select (Func<Scenario, Scenario>)(
            site =>
                site with
                {
                    Rules = site.Rules with
                    {
                        MediumOffsetK = offset,
                        SetOutEarlyDays = early,
                        TableLeadDays = lead,
                        WorkDays = week switch
                        {
                            0 => [DayOfWeek.Tuesday, DayOfWeek.Friday],
                            1 => [.. Enum.GetValues<DayOfWeek>()],
                            _ => site.Rules.WorkDays,
                        },
                        DaysOff = [SmallSite.Monday.AddDays(18), SmallSite.Monday.AddDays(45)],
                        ServiceGoal = goal,
                        LateDays = late,
                        Light = [1, 1, light, (1 + light) / 2, 1, 1, 1, 1, 1, 1, 1, 1],
                        EarlyOffMatAt = earlyMat,
                        EarlyTableAt = earlyTable,
                        WetLimitMm = wet,
                    },
                }
        );

    private static readonly Gen<Func<Scenario, Scenario>> GenTrays =
        from flatPlaces in Gen.Int[1, 2]
        from seeds in Gen.Int[1, 3]
        from ownBenches in Gen.Int[0, 3]
        from hottest in Gen.Double[10, 40]
        select (Func<Scenario, Scenario>)(
            site =>
                site with
                {
                    TrayTypes = [.. site.TrayTypes.Select(type => type.IsFlat ? type with { PlacesEach = flatPlaces } : type)],
                    Batches =
                    [
                        .. site.Batches.Select(
                            (batch, index) => index % 3 == 0 && batch.Method == Method.Direct ? batch with { SeedsPerCell = seeds } : batch
                        ),
                    ],
                    Crops =
                    [
                        .. site.Crops.Select(
                            (crop, index) =>
                                index switch
                                {
                                    0 => crop with { MaxMatC = hottest },
                                    1 => crop with
                                    {
                                        Benches =
                                            ownBenches == 0 ? []
                                            : ownBenches == 1 ? ["bench3", "bench"]
                                            : ["bench2"],
                                    },
                                    _ => crop with { MinNightC = ownBenches == 3 ? 12 : null },
                                }
                        ),
                    ],
                }
        );

    /// <summary>Wide random sites.</summary>
    public static readonly Gen<Scenario> Wide =
        from site in RandomSites.GenScenario
        from spaces in GenSpaces
        from work in GenWork
        from trays in GenTrays
        select trays(work(spaces(site)));

    private static HouseHeat Shell { get; } =
        new()
        {
            Shell = HouseShell.Hoop(6, 15),
            Covering = "film",
            UValue = 4.5,
            AirChanges = 0.7,
            Fuel = Fuels.All[0],
            Efficiency = 0.8,
        };

    /// <summary>The same site with nothing left to chance.</summary>
    public static Scenario WithoutLuck(Scenario site) =>
        site with
        {
            Crops =
            [
                .. site.Crops.Select(crop =>
                    crop with
                    {
                        EmergeCv = 0,
                        GrowthCv = 0,
                        EmergeSigma = 0,
                        StandLoss = 0,
                        PotUpLoss = 0,
                        GerminationCurve = [],
                    }
                ),
            ],
            Batches = [.. site.Batches.Select(batch => batch with { Germination = 1 })],
        };
}
