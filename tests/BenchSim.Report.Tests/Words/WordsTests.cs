using BenchSim.Report.Charts;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Words;

public class WordsTests
{
    [Theory]
    [InlineData("short", 10, "short")]
    [InlineData("exactly-10", 10, "exactly-10")]
    [InlineData("one too many", 11, "one too ma…")]
    [InlineData("🍅🍆🌽🥬", 3, "🍅🍆…")]
    [InlineData(" two\nlines ", 20, "two lines")]
    [InlineData("a\u202Eb\u2066c", 20, "abc")]
    public void Long_text_is_shortened_by_what_a_reader_counts(string text, int most, string brief) => Assert.Equal(brief, PlainText.Short(text, most));

    [Theory]
    [InlineData("Main House #2", "main-house-2")]
    [InlineData("../../etc", "etc")]
    [InlineData("מצע", "space")]
    [InlineData("", "space")]
    public void File_names_hold_letters_digits_and_hyphens(string text, string part) => Assert.Equal(part, PlainText.FilePart(text));

    [Theory]
    [InlineData(0, "no trays")]
    [InlineData(1, "1 tray")]
    [InlineData(1234, "1,234 trays")]
    public void Nouns_agree_with_their_number(double value, string text) => Assert.Equal(text, Numbers.Count(value, "tray", "trays"));

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1, "100")]
    [InlineData(0.0004, "under 0.1")]
    [InlineData(0.99996, "over 99.9")]
    [InlineData(0.004, "0.4")]
    [InlineData(0.996, "99.6")]
    [InlineData(0.345, "35")]
    public void Percentages_never_reach_0_or_100_unless_they_are(double share, string text) => Assert.Equal(text, Numbers.Percent(share));

    [Theory]
    [InlineData(12, 12, 12, 12, 12, 1000, "12 trays in every season")]
    [InlineData(12, 8, 17, 0, 30, 1000, "typically 12 trays (between 8 and 17 in eight seasons of ten)")]
    [InlineData(0, 0, 4, 0, 9, 1000, "no trays in most seasons, but 4 or more in one season of ten")]
    [InlineData(0, 0, 0, 0, 9, 1000, "no trays in at least eight seasons of ten (0 to 9 over all)")]
    [InlineData(12, 8, 17, 7, 20, 12, "typically 12 trays (between 7 and 20 over 12 seasons)")]
    [InlineData(1, 1, 1, 1, 1, 1, "1 tray in the one season played")]
    public void Amounts_are_told_with_their_spread(double p50, double p10, double p90, double least, double most, int seasons, string text) =>
        Assert.Equal(text, Spreads.Amount(new Estimate(p50, 0, p10, p50, p90, p90, least, most, seasons), "tray", "trays"));

    [Fact]
    public void Dates_are_told_with_their_spread()
    {
        var dates = new Dates(SyntheticPlan.Tiny());
        DateOnly Day(int month, int day) => new(2027, month, day);

        Assert.Equal("typically on 5 April (between 1 and 11 April in eight seasons of ten)", dates.Typical(new(Day(4, 1), Day(4, 5), Day(4, 11), 900, 1000)));
        Assert.Equal("typically on 5 April (between 28 March and 11 April in eight seasons of "
            + "ten)", dates.Typical(new(Day(3, 28), Day(4, 5), Day(4, 11), 900, 1000)));
        Assert.Equal("typically on 5 April (between 1 and 11 April in most of those 9 "
            + "seasons)", dates.Typical(new(Day(4, 1), Day(4, 5), Day(4, 11), 9, 1000)));
        Assert.Equal("on 5 April in the one season in which it happens", dates.Typical(new(Day(4, 5), Day(4, 5), Day(4, 5), 1, 1000)));
        Assert.Equal("on 5 April", dates.Typical(new(Day(4, 5), Day(4, 5), Day(4, 5), 1, 1)));
        Assert.Null(dates.Typical(new(null, null, null, 0, 1000)));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(5, 1)]
    [InlineData(24, 5)]
    [InlineData(60, 20)]
    [InlineData(170, 50)]
    [InlineData(420, 100)]
    public void A_scale_has_round_marks_and_reaches_over_its_largest(int largest, int step)
    {
        var scale = new PlaceScale(largest);

        Assert.Equal(step, scale.Step);
        Assert.True(scale.Top > largest);
        Assert.True(scale.Marks.Count() <= 7);
    }

    [Fact]
    public void A_batch_whose_medians_cross_is_drawn_in_order()
    {
        BatchResult batch = SyntheticStudy.Tiny().Batches[0];
        DateOnly first = new(2027, 2, 1);
        DateSpread On(int day) => new(first.AddDays(day), first.AddDays(day), first.AddDays(day), 40, 40);

        var bar = BatchBar.Of(batch with { SownFirst = On(5), OffMat = On(14), OnTable = On(13), OutLast = On(20) }, first, 69);

        Assert.Equal((5, 13), bar.Mat);
        Assert.Equal((13, 13), bar.Bench);
        Assert.Equal((13, 20), bar.Table);
    }

    [Fact]
    public void A_batch_that_never_leaves_is_drawn_to_the_last_day_and_one_never_sown_not_at_all()
    {
        BatchResult batch = SyntheticStudy.Tiny().Batches[0];
        DateOnly first = new(2027, 2, 1);
        DateSpread never = new(null, null, null, 0, 40);
        DateSpread sown = new(first, first, first, 40, 40);

        var standing = BatchBar.Of(batch with { SownFirst = sown, OffMat = never, OnTable = never, OutLast = never }, first, 69);
        var unsown = BatchBar.Of(batch with { SownFirst = never, OffMat = never, OnTable = never, OutLast = never }, first, 69);

        Assert.Equal((0, 69), standing.Bench);
        Assert.Null(standing.Table);
        Assert.Null(unsown.Bench);
    }
}
