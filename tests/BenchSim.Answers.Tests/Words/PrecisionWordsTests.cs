using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Run;
using BenchSim.Answers.Words;
using BenchSim.Study.Precision;

namespace BenchSim.Answers.Tests.Words;

/// <summary>Why a play that looked for precision stopped, word for word, on a plan that fits in every season (scenarios/by-hand).</summary>
public sealed class PrecisionWordsTests
{
    // 10 points are enough for any share after 93 seasons, the first look is at half of them. 47 of 47 begin at 47 / 50.8415 = 92.4 %.
    [Fact]
    public void An_interval_that_is_narrow_enough() =>
        Assert.Equal(
            "Asked for: a 95 % interval of the chance that the plan fits of no more than 10 percentage points to either side. The play was "
                + "looked at after 47 seasons. It stopped there because the interval was narrow enough: the plan fits in 100 % of 47 "
                + "seasons (95 % interval 92.4 to 100 %, 3.78 points to either side).",
            Why(new PrecisionGoal { Chance = 0.1, Least = 40 })
        );

    // 30 of 30 begin at 30 / 33.8415 = 88.65 %.
    [Fact]
    public void No_more_seasons_allowed() =>
        Assert.EndsWith(
            "It stopped there because no more seasons were allowed (--most); the interval is still wider than asked: the plan fits in 100 "
                + "% of 30 seasons (95 % interval 88.6 to 100 %, 5.68 points to either side).",
            Why(
                new PrecisionGoal
                {
                    Chance = 0.01,
                    Least = 30,
                    Most = 30,
                }
            ),
            StringComparison.Ordinal
        );

    private static string Why(PrecisionGoal goal) =>
        PrecisionWords.WhyItStopped(
            new RunQuestion
            {
                Scenario = ScenarioSource.Folder(Repository.File("scenarios/by-hand")),
                Precision = goal,
                NoReport = true,
            }
                .Ask(new PlayWatch(CancellationToken.None))
                .Precision!
        );
}
