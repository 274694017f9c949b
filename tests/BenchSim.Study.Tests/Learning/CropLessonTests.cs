using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Stands;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;
using BenchSim.Study.Learning;
using MathNet.Numerics;
using static Support.SmallSite;

namespace BenchSim.Study.Tests.Learning;

/// <summary>
/// From a played season by way of its log to what it teaches of the crop. The values that the crop truly has are drawn from what it may
/// have before anything is counted; then the share of the law after that lies below the truth is uniform (simulation-based calibration:
/// Talts, Betancourt, Simpson, Vehtari and Gelman 2018, arXiv 1804.06788).
/// </summary>
public class CropLessonTests
{
    private const int Parts = 10;
    private const int Truths = 300;
    private const ulong Seed = 3;

    // So seldom each of the four kinds of value fails by chance; the seeds are fixed.
    private const double ErrorChance = 0.001;

    private static readonly Deviations s_deviations = new(0.2, 0.25, 0.4);

    private static readonly Crop s_crop = Crop() with
    {
        EmergeHeat = 50,
        EmergeSigma = 0.15,
        EmergeCv = 0.2,
        Germination = 0.85,
        StandLoss = 0.08,
        StandLossCorrelation = 0.05,
        GrowthBaseC = 5,
        GrowthCapC = 28,
        GrowthDays = 24,
        GrowthCv = 0.15,
        HoldDays = 30,
        DiscardAfterDays = 60,
        Sources = Crop()
            .Sources.Add("emerge_heat", new Provenance(Season.Values.Trust.Memory, ""))
            .Add("germination", new Provenance(Season.Values.Trust.Assumption, ""))
            .Add("stand_loss", new Provenance(Season.Values.Trust.Assumption, ""))
            .Add("days_to_ready", new Provenance(Season.Values.Trust.Seen, "")),
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

    [Fact]
    [Trait("Category", "Slow")]
    public void What_is_learned_is_as_uncertain_as_it_says()
    {
        var ranks = LearnedKinds.All.ToDictionary(kind => kind, _ => new int[Parts]);
        var random = new Random(11);
        for (var truth = 0; truth < Truths; truth++)
        {
            var crop = s_crop with
            {
                EmergeHeat = s_crop.EmergeHeat * Math.Exp(s_deviations.Remembered * Probit(random)),
                Germination = Share(s_crop.Germination, s_deviations.Assumed, random),
                StandLoss = Share(s_crop.StandLoss, s_deviations.Assumed, random),
                GrowthDays = s_crop.GrowthDays * Math.Exp(s_deviations.Read * Probit(random)),
            };
            foreach (var value in Lessons(new LoggedSeason(Plan(Farm(crop, 5)), Seed, truth), s_crop).Values)
            {
                var rank = Enumerable.Range(1, Parts - 1).Count(part => value.Quantile(part / (double)Parts) < value.Kind.Of(crop));
                ranks[value.Kind][rank]++;
            }
        }

        var told = string.Join('\n', ranks.Select(each => $"{each.Key}: {string.Join(' ', each.Value)}"));
        foreach (var kind in LearnedKinds.All.Where(kind => kind != LearnedKind.PotUpLoss))
        {
            Assert.Equal(Truths, ranks[kind].Sum());
            Assert.True(Chance(ranks[kind]) > ErrorChance, told);
        }
    }

    // A value read in a source, of batches of cv 0.3: d = 0.15, sigma^2 = ln 1.09. The crop truly takes half as much heat again, and each
    // batch its own, E B. Counts of 600 seeds on every day leave little doubt of a batch's own, so the mean logarithm is the closed normal
    // form: sum of (ln(E B / 50) + sigma^2/2) / sigma^2 over 1/d^2 + n/sigma^2, within a hundredth.
    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    public void One_batch_moves_a_value_a_little_and_twenty_nearly_all_the_way(int batches)
    {
        const double Deviation = 0.15;
        var (before, variance) = (
            s_crop with
            {
                EmergeCv = 0.3,
                Sources = Crop().Sources.Add("emerge_heat", new(Season.Values.Trust.Seen, "")),
            },
            Math.Log(1.09)
        );
        var truth = before with { EmergeHeat = 75 };
        var season = new LoggedSeason(Plan(Farm(truth, batches)), Seed, 0, looked: 600, countedOn: [.. Enumerable.Range(2, 14)]);
        var learned = Lessons(season, before).Values.Single(value => value.Kind == LearnedKind.EmergeHeat);
        Assert.Equal(batches, learned.Batches);
        var sum = season.BatchHeats.Sum(heat => Math.Log(heat / 50) + (variance / 2));
        var precision = (1 / (Deviation * Deviation)) + (batches / variance);
        Assert.Equal(sum / variance / precision, Math.Log(learned.Value.New / 50), 0.01);

        // Of the way of the logarithm from 50 to 75, in the mean over the luck of the batches, one goes 0.21 and twenty 0.84.
        var way = batches / variance / precision;
        Assert.Equal(batches == 1 ? 0.21 : 0.84, way, 0.005);
    }

    private static CropLessons Lessons(LoggedSeason season, Crop before)
    {
        var crops = new Dictionary<string, Crop>(StringComparer.Ordinal) { [before.Id] = before };
        return CropLessons.Of(before, [LearnedSeason.Of("2027", season.Log(), crops)], before == s_crop ? s_deviations : Deviations.Usual);
    }

    // Every week a batch; the second and the fourth are of one packet, and the others of packets without a test.
    private static Scenario Farm(Crop crop, int batches) =>
        Support.SmallSite.Scenario(
            [Mat(1000) with { MatC = 22 }, Bench(2000), Table(2000)],
            [
                .. Enumerable
                    .Range(0, batches)
                    .Select(batch =>
                        Batch($"b{batch}", 200, Monday.AddDays(batches > 10 ? batch : 7 * batch)) with
                        {
                            Germination = batch % 2 == 0 ? crop.Germination : 0.8,
                            TakesCropGermination = batch % 2 == 0,
                            PacketId = batch is 1 or 3 ? "shared" : null,
                        }
                    ),
            ],
            new SiteRules { GerminationSample = 60, ForecastNights = 2 },
            [crop],
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

    private static double Probit(Random random) => Normal.Quantile(Math.Max(random.NextDouble(), 1e-12));

    private static double Share(double value, double deviation, Random random) =>
        BetaLaw.Of(value, ShareLesson.Worth(value, deviation)).Quantile(Math.Max(random.NextDouble(), 1e-12));

    // Of ranks at least as uneven, by chi-square.
    private static double Chance(int[] ranks)
    {
        var expected = ranks.Average();
        var sum = ranks.Sum(count => (count - expected) * (count - expected) / expected);
        return SpecialFunctions.GammaUpperRegularized((ranks.Length - 1) / 2.0, sum / 2);
    }
}
