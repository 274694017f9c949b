using BenchSim.Season.Inputs;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Evidence;

/// <summary>
/// A farm with room, whose luck is wide and whose weather is drawn: batches are sown from March into May, three of them in flats, three of
/// one packet.
/// </summary>
internal static class UnderwayFarm
{
    private static readonly Crop s_crop = Crop() with
    {
        EmergeHeat = 50,
        EmergeSigma = 0.15,
        EmergeCv = 0.2,
        GerminationCurve = [new GerminationPoint(5, 40), new GerminationPoint(20, 95), new GerminationPoint(35, 50)],
        Germination = 0.85,
        StandLoss = 0.06,
        StandLossCorrelation = 0.1,
        GrowthBaseC = 5,
        GrowthCapC = 28,
        GrowthDays = 24,
        GrowthCv = 0.15,
        PotUpDays = 9,
        PotUpLoss = 0.05,
        HoldDays = 12,
        DiscardAfterDays = 25,
        FlatDiscardDays = 30,
    };

    private static readonly MonthWeather s_month = new()
    {
        WetAfterDry = 0.2,
        WetAfterWet = 0.5,
        RainShape = 0.8,
        RainScaleMm = 6,
        TminWetC = 9,
        TminDryC = 8,
        TmaxWetC = 16,
        TmaxDryC = 19,
        TminSdC = 2.5,
        TmaxSdC = 4,
        TminYearShare = 0.1,
        TmaxYearShare = 0.1,
    };

    public static Scenario Scenario { get; } =
        Support.SmallSite.Scenario(
            [Mat(100) with { MatC = 22 }, Bench(200), Table(200)],
            [
                .. Enumerable
                    .Range(0, 7)
                    .Select(batch =>
                        (
                            batch % 4 == 2
                                ? PotUpBatch($"b{batch}", 300, Monday.AddDays(14 * batch))
                                : Batch($"b{batch}", 200, Monday.AddDays(14 * batch))
                        ) with
                        {
                            Germination = 0.85,
                            PacketId = batch % 4 == 1 ? "shared" : null,
                        }
                    ),
            ],
            new SiteRules { GerminationSample = 60, ForecastNights = 2 },
            [s_crop],
            new GeneratedWeather(
                new WeatherModel
                {
                    Months = [.. Enumerable.Repeat(s_month, 12)],
                    Residuals = ResidualModel.UnitedStatesAverage,
                    LeastRangeC = 1,
                    Source = "test",
                },
                null
            )
        ) with
        {
            Houses =
            [
                new House
                {
                    Id = "main",
                    Name = "Main",
                    NightC = 12,
                    DayC = 15,
                    VentC = 24,
                    DayLiftK = 8,
                },
            ],
        };
}
