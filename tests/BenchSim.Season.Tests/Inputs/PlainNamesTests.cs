using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Inputs;

public class PlainNamesTests
{
    [Theory]
    [InlineData("weather.csv", true)]
    [InlineData("variants/more mats.toml", true)]
    [InlineData(".hidden", true)]
    [InlineData("a..b", true)]
    [InlineData("", false)]
    [InlineData("/weather.csv", false)]
    [InlineData("a//b", false)]
    [InlineData("a/", false)]
    [InlineData("..", false)]
    [InlineData("../weather.csv", false)]
    [InlineData("a./b", false)]
    [InlineData(" a", false)]
    [InlineData("a ", false)]
    [InlineData("a/b ", false)]
    [InlineData("a\nb", false)]
    [InlineData("C:weather.csv", false)]
    [InlineData("a\\b", false)]
    [InlineData("?", false)]
    [InlineData("w\u202e", false)]
    [InlineData("\u05de\u05d6\u05d2.csv", true)]
    [InlineData("a|b", false)]
    public void A_plain_name_can_be_stored_anywhere(string name, bool isPlain) => Assert.Equal(isPlain, PlainNames.IsPlain(name));
}
