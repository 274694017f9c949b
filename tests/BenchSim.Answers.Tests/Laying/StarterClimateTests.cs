using BenchSim.Answers.Laying;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Tests.Laying;

/// <summary>What is said of a starter's climate is what its normals give.</summary>
public sealed class StarterClimateTests
{
    private const int Years = 2000;

    public static TheoryData<string> Climates => [.. StarterClimate.All.Select(climate => climate.Id)];

    // Of two thousand drawn years the median last frost is known to about a day; what is said is rounded to a few.
    [Theory]
    [MemberData(nameof(Climates))]
    public void Frosts_and_the_coldest_night_come_when_it_is_said(string id)
    {
        var climate = StarterClimate.All.Single(each => each.Id == id);
        var (usual, late, coldest) = Drawn(climate.Normals.Normals.ToModel());
        var found = $"last frosts on days {usual} and {late}, coldest {coldest:0.0} C";
        Assert.True(Math.Abs(usual - climate.UsualFrostIn(2027).DayOfYear) <= 3, found);
        Assert.True(Math.Abs(late - climate.LateFrostIn(2027).DayOfYear) <= 3, found);
        Assert.True(Math.Abs(coldest - climate.ColdestC) <= 1.5, found);
    }

    // November to July of so many drawn years: median and ninth tenth of the last frosts, median of the coldest nights.
    private static (int Usual, int Late, double Coldest) Drawn(WeatherModel model)
    {
        var first = new DateOnly(2026, 11, 1);
        var newYear = new DateOnly(2027, 1, 1).DayNumber - first.DayNumber;
        var generator = new WeatherGenerator(model);
        var (low, high, rain) = (new double[newYear + 212], new double[newYear + 212], new double[newYear + 212]);
        var (last, lowest) = (new List<int>(), new List<double>());
        for (var year = 0; year < Years; year++)
        {
            generator.Draw(2027, year, first, low, high, rain);
            last.Add(Array.FindLastIndex(low, celsius => celsius <= 0) - newYear + 1);
            lowest.Add(low.Min());
        }

        last.Sort();
        lowest.Sort();
        return (last[Years / 2], last[Years * 9 / 10], lowest[Years / 2]);
    }
}
