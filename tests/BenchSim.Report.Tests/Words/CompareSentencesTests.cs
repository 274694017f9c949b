using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Words;

/// <summary>What a variant changes, word for word.</summary>
public class CompareSentencesTests
{
    [Fact]
    public void The_same_seasons_fit() =>
        Assert.Equal(
            "The same seasons fit with and without \"slow\": 12 of 20.",
            CompareSentences.Fits(
                "slow",
                new FitChange
                {
                    Base = Figures.Chance(12, 20),
                    Variant = Figures.Chance(12, 20),
                    Both = 12,
                    OnlyBase = 0,
                    OnlyVariant = 0,
                    Low = 0,
                    High = 0,
                    VarianceRatio = double.NaN,
                },
                20
            )
        );

    // 4 give or take 1.
    [Fact]
    public void More_work() =>
        Assert.Equal(
            "With \"slow\" the work takes 4 more hours (3 to 5).",
            CompareSentences.Real("slow", Change(Measures.LabourHours, 4, 1, 20))
        );

    [Fact]
    public void The_same_in_every_season() =>
        Assert.Equal(
            "The plants out in time: the same in every one of 20 seasons.",
            CompareSentences.NotReal(Change(Measures.PlantsInTime, 0, 0, 0), 20)
        );

    [Fact]
    public void Intervals_that_allow_for_each_other() =>
        Assert.Equal(
            "The intervals allow for 39 comparisons made here (Bonferroni): all of them hold at once with 95 % confidence.",
            CompareSentences.Allowance(39)
        );

    private static MeasureChange Change(Measure measure, double difference, double half, int differing) =>
        new()
        {
            Measure = measure,
            Base = 100,
            Variant = 100 + difference,
            Difference = difference,
            HalfWidth = half,
            Differing = differing,
            VarianceRatio = 1,
        };
}
