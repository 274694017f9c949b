using BenchSim.Answers.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Levelling;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Tests.Words;

/// <summary>What levelling found, word for word.</summary>
public sealed class LevelWordsTests
{
    [Theory]
    [InlineData(LevelVerdict.NothingMayMove, "Nothing moves: no sowing may. ")]
    [InlineData(LevelVerdict.NothingIsOver, "Nothing moves: the expected trays have room as planned. ")]
    [InlineData(LevelVerdict.NothingHelps, "Nothing moves: no move within the days allowed leaves fewer trays without a place.")]
    [InlineData(LevelVerdict.Keep, "Keep the plan as it is. ")]
    [InlineData(LevelVerdict.Adopt, "Use the levelled plan: in the same seasons there are 300 fewer late plant-days a season ")]
    public void The_verdict(LevelVerdict verdict, string begin) =>
        Assert.StartsWith(begin, LevelWords.Verdict(Result(verdict)), StringComparison.Ordinal);

    [Fact]
    public void A_choice_that_is_proved() =>
        Assert.Equal(
            "No choice of days within the tolerances leaves fewer place-days over: this is proved. None as good moves fewer days in all.",
            LevelWords.Proof(Result(LevelVerdict.Adopt))
        );

    private static LevelResult Result(LevelVerdict verdict)
    {
        var plan = SmallSite.Plan(
            SmallSite.Scenario([SmallSite.Mat(4), SmallSite.Bench(20), SmallSite.Table(20)], [SmallSite.Batch("B", 100, SmallSite.Monday)])
        );
        return new LevelResult
        {
            Plan = plan,
            Options = new LevelOptions { Seasons = 20, Seed = 1 },
            Movable = 1,
            Verdict = verdict,
            Groups = [],
            OverBefore = 6,
            OverAfter = 0,
            OverBound = 0,
            IsOverProved = true,
            ShiftDays = 3,
            ShiftBound = 3,
            IsShiftProved = true,
            Moves = [new MovedSowing("B", "Ben", new(2027, 3, 1), new(2027, 3, 4), new(2027, 3, 22), new(2027, 3, 25))],
            Levelled = plan,
            Trial = new CompareResult
            {
                Base = plan,
                Seasons = 20,
                Seed = 1,
                Confidence = 0.95,
                Comparisons = 2,
                EachConfidence = 0.975,
                Measures = [Measures.LatePlantDays],
                Variants =
                [
                    new VariantResult
                    {
                        Name = "levelled",
                        Plan = plan,
                        Fits = new FitChange
                        {
                            Base = new Chance(20, 20, 0.84, 1),
                            Variant = new Chance(20, 20, 0.84, 1),
                            Both = 20,
                            OnlyBase = 0,
                            OnlyVariant = 0,
                            Low = 0,
                            High = 0,
                            VarianceRatio = double.NaN,
                        },
                        Changes =
                        [
                            new MeasureChange
                            {
                                Measure = Measures.LatePlantDays,
                                Base = 300,
                                Variant = 0,
                                Difference = -300,
                                HalfWidth = 0,
                                Differing = 20,
                                VarianceRatio = double.NaN,
                            },
                        ],
                    },
                ],
            },
        };
    }
}
