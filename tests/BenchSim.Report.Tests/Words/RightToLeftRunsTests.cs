using BenchSim.Report.Words;

namespace BenchSim.Report.Tests.Words;

public sealed class RightToLeftRunsTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("Tomato", "Tomato")]
    [InlineData("אבג", "גבא")]
    [InlineData("אב גד x", "דג בא x")]
    [InlineData("b1 אב", "b1 בא")]
    [InlineData("12 אב", "12 בא")]
    [InlineData("Tomato אב 12 גד red", "Tomato דג 12 בא red")]
    [InlineData("אב 2027", "2027 בא")] // UAX 9: a number behind right-to-left letters belongs to their run
    [InlineData("lettuce-אב-7", "lettuce-7-בא")]
    [InlineData("אב: places by day", "בא: places by day")]
    public void Right_to_left_letters_stand_in_the_order_seen(string text, string seen) => Assert.Equal(seen, RightToLeftRuns.AsSeen(text));
}
