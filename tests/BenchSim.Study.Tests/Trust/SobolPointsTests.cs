using BenchSim.Engine.Randomness;
using BenchSim.Study.Trust;

namespace BenchSim.Study.Tests.Trust;

public sealed class SobolPointsTests
{
    // The points that Joe and Kuo print beside their direction numbers, three dimensions, the first ten.
    private static readonly double[][] s_published =
    [
        [0, 0, 0],
        [0.5, 0.5, 0.5],
        [0.75, 0.25, 0.25],
        [0.25, 0.75, 0.75],
        [0.375, 0.375, 0.625],
        [0.875, 0.875, 0.125],
        [0.625, 0.125, 0.875],
        [0.125, 0.625, 0.375],
        [0.1875, 0.3125, 0.9375],
        [0.6875, 0.8125, 0.4375],
    ];

    [Fact]
    public void The_first_points_are_those_published()
    {
        for (var point = 0; point < s_published.Length; point++)
        {
            double[] made = [.. Enumerable.Range(0, 3).Select(dimension => SobolPoints.Plain(point, dimension))];
            Assert.Equal(s_published[point], made);
        }
    }

    // Another engine: scipy 1.10.1, qmc.Sobol(256, scramble=False), points 1, 2, 3, 100 and 255 of some dimensions.
    [Theory]
    [InlineData(1, 255, 0.5)]
    [InlineData(3, 255, 0.25)]
    [InlineData(100, 9, 0.6953125)]
    [InlineData(100, 99, 0.8828125)]
    [InlineData(255, 199, 0.60546875)]
    [InlineData(255, 255, 0.51953125)]
    public void Points_of_many_dimensions_are_those_of_another_engine(int point, int dimension, double expected) =>
        Assert.Equal(expected, SobolPoints.Plain(point, dimension));

    // What makes a net: of 2^m points each of 2^m equal parts of a dimension holds one, before the scrambling and after it.
    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(255)]
    public void Each_part_of_a_dimension_holds_one_point(int dimension)
    {
        const int points = 64;
        var key = PhiloxKey.Of(5, "net");
        Assert.Equal(Enumerable.Range(0, points), Parts(point => SobolPoints.Plain(point, dimension)));
        Assert.Equal(Enumerable.Range(0, points), Parts(point => SobolPoints.Scrambled(point, dimension, key)));

        static IEnumerable<int> Parts(Func<int, double> at) =>
            Enumerable.Range(0, points).Select(point => (int)(at(point) * points)).Order();
    }

    [Fact]
    public void Other_luck_scrambles_otherwise()
    {
        var (one, other) = (PhiloxKey.Of(1, "net"), PhiloxKey.Of(2, "net"));
        Assert.NotEqual(SobolPoints.Scrambled(3, 4, one), SobolPoints.Scrambled(3, 4, other));
    }
}
