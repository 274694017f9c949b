using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using MathNet.Numerics;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Evidence;

/// <summary>
/// A forecast from a log is right as often as it says: where a season is played, looked at on a day, and forecast from its log, the day on
/// which a batch truly went out, and the plants that it truly brought, have any rank among those forecast with the same chance. One batch
/// is drawn from each season, since those of a season share its weather.
/// </summary>
public class ForecastTests
{
    private const int Seasons = 400;
    private const int Forecasts = 19;
    private const int InnerFrom = 2;
    private const int InnerTo = 16;

    // So seldom each of the six ranks fails by chance; the seeds are fixed.
    private const double ErrorChance = 0.001;

    private static readonly SeasonPlan s_plan = Plan(UnderwayFarm.Scenario);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_truth_has_any_rank_among_what_is_forecast(int quarters)
    {
        var today = s_plan.Days * quarters / 4;
        var random = new Random(quarters);
        var (days, plants) = (new int[Forecasts + 1], new int[Forecasts + 1]);
        for (var season = 0; season < FixedSample.CasesOf(Seasons); season++)
        {
            var truth = new TrueSeason(s_plan, 3, season, today);
            var batch = truth.Standing[random.Next(truth.Standing.Count)];
            var forecast = Forecast(truth.Log(), season, batch);
            var outcome = truth.Result.Batches[batch];
            days[Rank(forecast.Days, Day(outcome), random)]++;
            plants[Rank(forecast.Plants, outcome.PlantsOut, random)]++;
        }

        Assert.True(Chance(days) > ErrorChance, $"days: {string.Join(' ', days)}");
        Assert.True(Chance(plants) > ErrorChance, $"plants: {string.Join(' ', plants)}");
    }

    // Of the same seasons: without what is known, with what was done, and with what was seen too.
    [Fact]
    public void The_more_is_known_the_narrower_is_the_forecast()
    {
        var today = s_plan.Days / 2;
        var random = new Random(9);
        var (byDays, byPlants) = (new double[3], new double[3]);
        for (var season = 0; season < FixedSample.CasesOf(150); season++)
        {
            var truth = new TrueSeason(s_plan, 3, season, today);
            var batch = truth.Standing[random.Next(truth.Standing.Count)];
            var log = truth.Log();
            SeasonPlan[] known = [log with { Past = log.Past! with { TellsOfLuck = false } }, truth.Log(withLooks: false), log];
            foreach (var (index, plan) in known.Index())
            {
                var (days, plants) = Forecast(plan, season, batch);
                byDays[index] += days[InnerTo] - days[InnerFrom];
                byPlants[index] += plants[InnerTo] - plants[InnerFrom];
            }
        }

        Assert.True(byDays[2] < byDays[0], string.Join(' ', byDays));
        Assert.True(byDays[1] < byDays[0], string.Join(' ', byDays));
        Assert.True(byPlants[2] < 0.9 * byPlants[1], string.Join(' ', byPlants));
        Assert.True(byPlants[1] < 1.02 * byPlants[0], string.Join(' ', byPlants));
    }

    private static (int[] Days, int[] Plants) Forecast(SeasonPlan plan, int season, int batch)
    {
        var (player, result) = (new SeasonPlayer(plan, (ulong)(1000 + season)), new SeasonResult());
        var (days, plants) = (new int[Forecasts], new int[Forecasts]);
        for (var forecast = 0; forecast < Forecasts; forecast++)
        {
            player.Play(forecast, PlaceLimits.AsGiven, result);
            (days[forecast], plants[forecast]) = (Day(result.Batches[batch]), result.Batches[batch].PlantsOut);
        }

        Array.Sort(days);
        Array.Sort(plants);
        return (days, plants);
    }

    private static int Day(BatchOutcome batch) => batch.OutMedian < 0 ? s_plan.Days : batch.OutMedian;

    // Whole numbers tie; ties are broken at random.
    private static int Rank(int[] forecast, int truth, Random random) =>
        forecast.Count(each => each < truth) + random.Next(forecast.Count(each => each == truth) + 1);

    // Of ranks at least as uneven, by chi-square.
    private static double Chance(int[] ranks)
    {
        var expected = ranks.Average();
        var sum = ranks.Sum(count => (count - expected) * (count - expected) / expected);
        return SpecialFunctions.GammaUpperRegularized((ranks.Length - 1) / 2.0, sum / 2);
    }
}
