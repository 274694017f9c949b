using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;
using CsCheck;
using static Support.SmallSite;

namespace BenchSim.Season.Tests;

/// <summary>
/// Random small sites: tight and roomy, direct and dense, labour short and not, cold and wet spells, reliefs, closing benches.
/// </summary>
internal static class RandomSites
{
    private static readonly Gen<Crop> s_genCrop =
        from heat in Gen.Double[15, 90]
        from sigma in Gen.Double[0, 0.3]
        from cv in Gen.Double[0, 0.3]
        from leave in Gen.Double[0.2, 0.95]
        from growth in Gen.Double[5, 25]
        from potUp in Gen.Double[2, 10]
        from nights in Gen.Int[0, 6]
        from above in Gen.Double[2, 9]
        from hold in Gen.Int[1, 6]
        from discard in Gen.Int[1, 12]
        from loss in Gen.Double[0, 0.2]
        from lumps in Gen.Double[-0.1, 0.5]
        from bottom in Gen.Bool
        select Crop() with
        {
            EmergeHeat = heat,
            EmergeSigma = sigma,
            EmergeCv = cv,
            GrowthCv = cv,
            LeaveMatAt = leave,
            GrowthDays = growth,
            PotUpDays = potUp,
            HardeningNights = nights,
            TableAboveC = above,
            FieldAboveC = above - 1,
            DamageBelowC = above - 3,
            HoldDays = hold,
            DiscardAfterDays = hold + discard,
            FlatDiscardDays = hold + discard,
            StandLoss = loss,
            StandLossCorrelation = Math.Max(0, lumps),
            PotUpLoss = loss,
            BottomHeat = bottom,
            EmergeGiveUpDays = 10 + discard,
            GerminationCurve = [new GerminationPoint(5, 20), new GerminationPoint(20, 90), new GerminationPoint(35, 10)],
        };

    private static readonly Gen<BatchOrder> s_genBatch =
        from plants in Gen.Int[1, 600]
        from sow in Gen.Int[0, 50]
        from crop in Gen.Int[0, 2]
        from grower in Gen.Int[0, 2]
        from potUp in Gen.Bool
        from big in Gen.Int[0, 4]
        from germination in Gen.Double[0.6, 1]
        from seeds in Gen.Int[20, 300]
        from backward in Gen.Bool
        select (potUp ? PotUpBatch("x", plants, Monday.AddDays(sow), seeds) : Batch("x", plants, Monday.AddDays(sow))) with
        {
            CropId = $"crop{crop}",
            Grower = $"grower{grower}",
            TrayId = big == 0 ? "big" : "50",
            Germination = germination,
            SetOut = backward ? Monday.AddDays(sow + 60) : null,
        };

    private static readonly Gen<SiteRules> s_genRules =
        from sow in Gen.Int[0, 12]
        from potUp in Gen.Int[0, 12]
        from setOut in Gen.Int[0, 12]
        from wait in Gen.Int[0, 4]
        from giveUp in Gen.Int[0, 14]
        from moveBack in Gen.Bool
        from cover in Gen.Int[0, 4]
        from reliefs in Gen.Int[0, 4]
        from forecast in Gen.Int[0, 4]
        from round in Gen.Int[0, 3]
        select new SiteRules
        {
            SowTraysADay = sow == 0 ? null : sow + 2,
            PotUpTraysADay = potUp == 0 ? null : potUp,
            SetOutTraysADay = setOut == 0 ? null : setOut + 1,
            SowWaitDays = wait,
            SowGiveUpDays = wait + giveUp,
            MoveBack = moveBack,
            CoverGainK = cover,
            ForecastNights = forecast,
            Reliefs = reliefs switch
            {
                0 => [Relief.Aisle, Relief.OffMatEarly, Relief.TableEarly],
                1 => [Relief.TableEarly],
                2 => [Relief.OffMatEarly, Relief.Aisle],
                _ => [],
            },
            RoundAt = round == 0 ? new TimeOnly(9, 30) : new TimeOnly(8, 0),
        };

    private static readonly Gen<RecordedWeather> s_genWeather =
        from start in Gen.Double[-2, 8]
        from swings in Gen.Double[0, 6].Array[400]
        from rains in Gen.Double[0, 30].Array[400]
        select new RecordedWeather(
            [
                .. Enumerable
                    .Range(0, 400)
                    .Select(day => new DailyWeather(
                        Monday.AddDays(day - 40),
                        start + (day / 12.0) - swings[day],
                        start + (day / 12.0) + 8 + swings[day],
                        rains[day] > 20 ? rains[day] : 0
                    )),
            ],
            2027,
            "weather.csv"
        );

    private static readonly Gen<Mishap> s_genMishap =
        from chance in Gen.Double[0, 1.5]
        from day in Gen.Int[0, 70]
        from days in Gen.Int[0, 20]
        from hits in Gen.Int[0, 5]
        from loss in Gen.Double[0, 1.2]
        select new Mishap
        {
            Id = $"mishap of {day}",
            Name = "Mishap",
            Chance = Math.Min(1, chance),
            From = Monday.AddDays(day),
            To = Monday.AddDays(day + days),
            HouseId = hits is 1 or 4 ? "main" : null,
            SpaceId =
                hits == 2 ? "mat"
                : hits == 4 ? "bench"
                : null,
            CropId = hits == 3 ? "crop1" : null,
            Loss = Math.Min(1, loss),
        };

    /// <summary>Random scenarios that have a plan.</summary>
    public static readonly Gen<Scenario> GenScenario =
        from crops in s_genCrop.Array[3]
        from batches in s_genBatch.Array[1, 12]
        from mats in Gen.Int[0, 12]
        from bench in Gen.Int[0, 25]
        from second in Gen.Int[1, 15]
        from table in Gen.Int[1, 12]
        from change in Gen.Int[0, 12]
        from aisle in Gen.Int[0, 3]
        from opening in Gen.Int[0, 2]
        from rules in s_genRules
        from weather in s_genWeather
        from mishaps in s_genMishap.Array[0, 3]
        select Scenario(
            [
                Mat(mats),
                Bench(bench) with
                {
                    AislePlaces = aisle,
                    Changes = [new PlacesFrom(Monday.AddDays(40), Math.Max(0, bench - change))],
                },
                Bench(second, "bench2", "second") with
                {
                    AislePlaces = aisle,
                },
                Table(table),
            ],
            batches.Select((batch, index) => batch with { Id = $"b{index}" }),
            rules,
            crops.Select((crop, index) => crop with { Id = $"crop{index}" }),
            weather
        ) with
        {
            Houses =
            [
                new House
                {
                    Id = "main",
                    Name = "Main",
                    NightC = 17,
                    DayC = 18,
                    VentC = 25,
                    DayLiftK = 6,
                },
                new House
                {
                    Id = "second",
                    Name = "Second",
                    NightC = 13,
                    DayC = 13,
                    Opening = (HouseOpening)opening,
                    OpensOn = opening == 1 ? Monday.AddDays(20) : null,
                },
            ],
            Mishaps = [.. mishaps.DistinctBy(mishap => mishap.Id, StringComparer.Ordinal)],
            Play = new PlaySettings(1, 11),
        };
}
