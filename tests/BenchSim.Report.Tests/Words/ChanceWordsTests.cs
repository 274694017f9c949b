using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Words;

/// <summary>What docs/decisions/017-writing-chances.md promises. The intervals are made up: what is held is how they are written.</summary>
public class ChanceWordsTests
{
    [Theory]
    [InlineData(0, "0 %", "0 %")]
    [InlineData(1, "100 %", "100 %")]
    [InlineData(0.0004, "under 0.1 %", "under 0.1 %")]
    [InlineData(0.99996, "over 99.9 %", "over 99.9 %")]
    [InlineData(0.004, "0.4 %", "0.4 %")]
    [InlineData(0.996, "99.6 %", "99.6 %")]
    [InlineData(0.345, "35 %", "34.5 %")]
    [InlineData(0.9, "90 %", "90 %")]
    [InlineData(0.2825, "28 %", "28.3 %")]
    public void A_share_is_whole_and_a_chance_in_tenths(double share, string whole, string tenths) =>
        Assert.Equal((whole, tenths), (ChanceWords.Percent(share), ChanceWords.Fine(share)));

    [Theory]
    [InlineData(0, "none")]
    [InlineData(0.0099, "under 1 in 100")]
    [InlineData(0.01, "1 %")]
    [InlineData(0.934, "93.4 %")]
    [InlineData(0.99, "99 %")]
    [InlineData(0.9901, "better than 99 in 100")]
    [InlineData(1, "better than 99 in 100")]
    public void Nobody_is_sure_of_a_stand(double chance, string text) => Assert.Equal(text, ChanceWords.Stand(chance));

    // A percentage that somebody wrote is given back as it was written, not rounded as a measured one.
    [Theory]
    [InlineData(0.29, "29 %")]
    [InlineData(0.9, "90 %")]
    [InlineData(0.925, "92.5 %")]
    [InlineData(0.9999, "99.99 %")]
    public void Settings_keep_their_decimals(double share, string text) => Assert.Equal(text, ChanceWords.Setting(share));

    [Theory]
    [InlineData(340, 1000, 0.3113, 0.3699, "34 % (31.1 to 37)", "34 % of 1,000 seasons (95 % interval 31.1 to 37 %)")]
    [InlineData(995, 1000, 0.9884, 0.9979, "99.5 % (98.8 to 99.8)", "99.5 % of 1,000 seasons (95 % interval 98.8 to 99.8 %)")]
    [InlineData(1000, 1000, 0.9962, 1, "100 % (99.6 to 100)", "all 1,000 seasons (95 % interval 99.6 to 100 %)")]
    [InlineData(0, 1000, 0, 0.0038, "0 % (0 to 0.4)", "none of 1,000 seasons (95 % interval 0 to 0.4 %)")]
    [InlineData(3, 7, 0.158, 0.75, "3 of 7", "3 of 7 seasons (95 % interval 15.8 to 75 %)")]
    [InlineData(1, 1, 0.207, 1, "1 of 1", "the one season played")]
    public void A_chance_is_told_with_its_interval(int hits, int seasons, double low, double high, string cell, string sentence)
    {
        var chance = new Chance(hits, seasons, low, high);

        Assert.Equal((cell, sentence), (ChanceWords.Cell(chance), ChanceWords.OfAllSeasons(chance)));
    }

    [Theory]
    [InlineData(0.0425, "4.3", "+4.3", "4.25")]
    [InlineData(-0.0425, "-4.3", "-4.3", "-4.25")]
    [InlineData(-0.0001, "0", "0", "-0.01")]
    [InlineData(0, "0", "0", "0")]
    public void Differences_are_in_points(double share, string points, string signed, string fine) =>
        Assert.Equal((points, signed, fine), (ChanceWords.Points(share), ChanceWords.SignedPoints(share), ChanceWords.FinePoints(share)));
}
