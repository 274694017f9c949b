using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Tests;
using CsCheck;

namespace BenchSim.Twin.Tests;

/// <summary>
/// The random sites of the season tests, with more kinds of space and more rules: a hot second mat, a third bench in a house opened when
/// needed, a table indoors, flats of two places, light, days off, a medium cooler than the air, an early date for the field and house
/// shells.
/// </summary>
internal static class TwinSites
{
    private static readonly Gen<Func<Scenario, Scenario>> s_genSpaces =
        from mats in Gen.Int[0, 8]
        from matC in Gen.Double[12, 38]
        from bench in Gen.Int[0, 10]
        from table in Gen.Int[0, 6]
        from aisle in Gen.Int[0, 2]
        from kind in Gen.Int[0, 3]
        from change in Gen.Int[0, 6]
        from latitude in Gen.Double[0, 60]
        select (Func<Scenario, Scenario>)(
            site =>
                site with
                {
                    Latitude = latitude < 20 ? null : latitude,
                    Houses =
                    [
                        .. site.Houses.Select(house => house with { Body = Body, Heat = Heat }),
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
                            Body = Body,
                            Heat = Heat,
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
                            IsChamber = aisle == 2,
                            HouseId =
                                aisle == 2 ? null
                                : kind == 1 ? "third"
                                : "second",
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

    private static readonly Gen<Func<Scenario, Scenario>> s_genWork =
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
        from rowCover in Gen.Double[0, 3]
        from lowTunnel in Gen.Double[0, 5]
        from tunnel in Gen.Double[0, 8]
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
                        RowCoverGainK = rowCover,
                        LowTunnelGainK = lowTunnel,
                        TunnelGainK = tunnel,
                    },
                }
        );

    private static readonly Gen<Func<Scenario, Scenario>> s_genTrays =
        from flatPlaces in Gen.Int[1, 2]
        from seeds in Gen.Int[1, 3]
        from ownBenches in Gen.Int[0, 3]
        from hottest in Gen.Double[10, 40]
        from level in Gen.Double[0, 0.95]
        from finish in Gen.Int[0, 5]
        from share in Gen.Double[0.1, 0.95]
        from covers in Gen.Int[0, 4]
        from below in Gen.Double[0, 5]
        from field in Gen.Double[-1, 4]
        select (Func<Scenario, Scenario>)(
            site =>
                site with
                {
                    TrayTypes = [.. site.TrayTypes.Select(type => type.IsFlat ? type with { PlacesEach = flatPlaces } : type)],
                    Batches =
                    [
                        .. site
                            .Batches.Select(
                                (batch, index) =>
                                    index % 3 == 0 && batch.Method == Method.Direct ? batch with { SeedsPerCell = seeds } : batch
                            )
                            .Select((batch, index) => batch with { FieldCover = (FieldCover)((index * covers) % 4) })
                            .Select(
                                (batch, index) =>
                                    ((finish + index) % 4) switch
                                    {
                                        0 => batch with { Finish = ["bench3"], FinishAt = share },
                                        1 => batch with { Finish = ["bench2", "bench3"], FinishAfterDays = finish * 4 },
                                        _ => batch,
                                    }
                            ),
                    ],
                    Crops =
                    [
                        .. site
                            .Crops.Select(crop =>
                                crop with
                                {
                                    DamageBelowC = crop.TableAboveC - below,
                                    FieldAboveC = crop.TableAboveC + field,
                                }
                            )
                            .Select(
                                (crop, index) =>
                                    index switch
                                    {
                                        0 => crop with
                                        {
                                            MaxMatC = hottest,
                                            WrittenEmergePlateauC =
                                                crop.EmergeOptimumC + (level * (crop.EmergeCeilingC - crop.EmergeOptimumC)),
                                        },
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
        from spaces in s_genSpaces
        from work in s_genWork
        from trays in s_genTrays
        select trays(work(spaces(site)));

    private static HouseBody Body { get; } =
        new()
        {
            Shell = HouseShell.Hoop(6, 15),
            Covering = "film",
            UValue = 4.5,
            AirChanges = 0.7,
            Transmission = 0.6,
        };

    private static HouseHeat Heat { get; } = new() { Fuel = Fuels.All[0], Efficiency = 0.8 };

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
