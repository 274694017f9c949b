using BenchSim.Answers.Words;
using BenchSim.Study.Mending;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Tests.Words;

/// <summary>A step that helps one figure and harms another says so.</summary>
public sealed class MendEffectTests
{
    // Fits in so many of 40 seasons, and plants that miss their date in a usual and in a bad year.
    [Theory]
    [InlineData(20, 50, 90, "In a bad year 100 plants miss their date, then 90; fits 40 %, then 50 %.")]
    [InlineData(16, 50, 100, "In a bad year 100 plants miss their date, then 100; fits 40 %, then 40 %.")]
    [InlineData(20, 50, 1650, "Fits 40 %, then 50 %; but in a bad year more plants miss their date: 100, then 1,650.")]
    [InlineData(12, 50, 90, "In a bad year 100 plants miss their date, then 90; but the plan fits in fewer seasons: 40 %, then 30 %.")]
    [InlineData(
        12,
        50,
        110,
        "In a bad year more plants miss their date: 100, then 110; and the plan fits in fewer seasons: 40 %, then 30 %."
    )]
    [InlineData(
        20,
        60,
        90,
        "In a bad year 100 plants miss their date, then 90; fits 40 %, then 50 %. In a usual year more miss it: 50, then 60."
    )]
    public void Every_figure_that_gets_worse_is_said_to(int fits, int usual, int bad, string said) =>
        Assert.Equal(said, MendSentences.Effect(Figures(16, 50, 100), Figures(fits, usual, bad)));

    private static MendFigures Figures(int fits, int usual, int bad)
    {
        var chance = new Chance(fits, 40, 0, 1);
        return new MendFigures
        {
            Fits = chance,
            FitsWeatherCounted = chance,
            LateUsual = usual,
            LateBad = bad,
            Late = usual,
            WorkHours = 0,
            Money = null,
        };
    }
}
