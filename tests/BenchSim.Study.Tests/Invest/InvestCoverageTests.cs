using System.Collections.Immutable;
using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Study.Invest;
using BenchSim.Study.Tests.Precision;
using Xunit.Abstractions;

namespace BenchSim.Study.Tests.Invest;

/// <summary>
/// 200 repeated small studies of a case with a known answer: how often the 95 % intervals of the chance that it pays and of what one must
/// believe cover it. The benefit of a year follows a normal law with mean 100 and deviation 120; ten years at 6 %. Present value of the
/// benefits: mean 100 a, a = (1 - 1.06^-10) / 0.06; deviation 120 sqrt((1 - 1.06^-20) / (1.06^2 - 1)). With a true coverage of 95 % fewer
/// than 180 of 200 cover with a chance of 1 in 860, were the seed not fixed.
/// </summary>
[Trait("Category", "Slow")]
public class InvestCoverageTests(ITestOutputHelper output)
{
    private const int Studies = 200;
    private const double Capital = 620;
    private const int Seasons = 50;

    [Fact]
    public void Intervals_of_a_money_case_cover_the_truth_in_at_least_180_studies_of_200()
    {
        var mean = 100 * (1 - Math.Pow(1.06, -10)) / 0.06;
        var deviation = 120 * Math.Sqrt((1 - Math.Pow(1.06, -20)) / ((1.06 * 1.06) - 1));
        var chance = Normal.Cumulative((mean - Capital) / deviation);
        var results = new InvestResult[Studies];
        Parallel.For(0, Studies, study => results[study] = Play(study));

        var pays = results.Count(result => result.Pays.Low <= chance && chance <= result.Pays.High);
        var capital = results
            .Select(result => result.BreakEvens.Single(each => each.Input == InvestInput.Capital))
            .Count(each => each.Low <= mean && mean <= each.High);
        output.WriteLine($"chance that it pays, true {chance:P1}: {pays} of {Studies}; break-even capital: {capital} of {Studies}");
        Assert.InRange(pays, 180, Studies);
        Assert.InRange(capital, 180, Studies);
    }

    // A plant is worth a hundredth, so that whole plants are fine enough.
    private static InvestResult Play(int study)
    {
        var terms = new InvestTerms
        {
            Capital = Capital,
            LifeYears = 10,
            DiscountRate = 0.06,
            PlantOnTime = 0.01,
        };
        var plan = Plans.Small();
        plan = plan with { Scenario = plan.Scenario with { Invest = terms } };
        var parts = SeasonPart.Of(plan, plan);
        var seasons = new MoneySeasons(parts, Seasons);
        var luck = new Luck();
        for (var season = 0; season < Seasons; season++)
        {
            var benefit = 100 + (120 * Normal.Quantile(luck.Begin(study, season).Next() + 1e-12));
            for (var part = 0; part < parts.Length; part++)
            {
                seasons.Set(season, part, parts[part].Kind == MoneyKind.Plants ? (long)Math.Round(100 * benefit) : 0, 0);
            }
        }

        return new InvestCase(plan, "normal", plan, seasons, (ulong)study).ToResult(CancellationToken.None);
    }
}
