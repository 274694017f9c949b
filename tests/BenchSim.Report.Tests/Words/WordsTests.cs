using BenchSim.Report.Charts;
using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
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
    [InlineData("a\u202Eb\u2066c", 20, "a\uFFFDb\uFFFDc")]
    public void Long_text_is_shortened_by_what_a_reader_counts(string text, int most, string brief) =>
        Assert.Equal(brief, PlainText.Short(text, most));

    [Theory]
    [InlineData("Main House #2", "main-house-2")]
    [InlineData("../../etc", "etc")]
    [InlineData("מצע", "space")]
    [InlineData("", "space")]
    public void File_names_hold_letters_digits_and_hyphens(string text, string part) =>
        Assert.Equal(part, PlainText.FilePart(text, "space"));

    [Theory]
    [InlineData(0, "no trays")]
    [InlineData(1, "1 tray")]
    [InlineData(1234, "1,234 trays")]
    public void Nouns_agree_with_their_number(double value, string text) => Assert.Equal(text, Numbers.Count(value, "tray", "trays"));

    // Where at least eight seasons of ten agree, the ends of all of them show what the ninth and tenth may be.
    [Theory]
    [InlineData(8, 12, 17, 3, 20, "12 (8 to 17)")]
    [InlineData(0, 0, 0, 0, 23, "0 (at most 23)")]
    [InlineData(450, 450, 450, 0, 450, "450 (0 to 450 over all)")]
    [InlineData(12, 12, 12, 3, 15, "12 (3 to 15 over all)")]
    [InlineData(12, 12, 12, 12, 12, "12")]
    public void Cells_show_both_ends(double p10, double p50, double p90, double least, double most, string text) =>
        Assert.Equal(text, Spreads.Cell(new Estimate(p50, 1, p10, p50, p90, p90, least, most, 100)));

    [Theory]
    [InlineData(12, 12, 12, 12, 12, 1000, "12 trays in every season")]
    [InlineData(12, 8, 17, 0, 30, 1000, "typically 12 trays (between 8 and 17 in eight seasons of ten)")]
    [InlineData(0, 0, 4, 0, 9, 1000, "no trays in most seasons, but 4 or more in one season of ten")]
    [InlineData(0, 0, 0, 0, 9, 1000, "no trays in at least eight seasons of ten (0 to 9 over all)")]
    [InlineData(12, 8, 17, 7, 20, 12, "typically 12 trays (between 7 and 20 over 12 seasons)")]
    [InlineData(1, 1, 1, 1, 1, 1, "1 tray in the one season played")]
    public void Amounts_are_told_with_their_spread(
        double p50,
        double p10,
        double p90,
        double least,
        double most,
        int seasons,
        string text
    ) => Assert.Equal(text, Spreads.Amount(new Estimate(p50, 0, p10, p50, p90, p90, least, most, seasons), "tray", "trays"));

    [Fact]
    public void Dates_are_told_with_their_spread()
    {
        var dates = new Dates(SyntheticPlan.Tiny());
        DateOnly Day(int month, int day) => new(2027, month, day);

        Assert.Equal(
            "typically on 5 April (between 1 and 11 April in eight seasons of ten)",
            dates.Typical(new(Day(4, 1), Day(4, 5), Day(4, 11), 900, 1000))
        );
        Assert.Equal(
            "typically on 5 April (between 28 March and 11 April in eight seasons of " + "ten)",
            dates.Typical(new(Day(3, 28), Day(4, 5), Day(4, 11), 900, 1000))
        );
        Assert.Equal(
            "typically on 5 April (between 1 and 11 April in most of those 9 " + "seasons)",
            dates.Typical(new(Day(4, 1), Day(4, 5), Day(4, 11), 9, 1000))
        );
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
        var batch = SyntheticStudy.Tiny().Batches[0];
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
        var batch = SyntheticStudy.Tiny().Batches[0];
        DateOnly first = new(2027, 2, 1);
        DateSpread never = new(null, null, null, 0, 40);
        DateSpread sown = new(first, first, first, 40, 40);

        var standing = BatchBar.Of(batch with { SownFirst = sown, OffMat = never, OnTable = never, OutLast = never }, first, 69);
        var unsown = BatchBar.Of(batch with { SownFirst = never, OffMat = never, OnTable = never, OutLast = never }, first, 69);

        Assert.Equal((0, 69), standing.Bench);
        Assert.Null(standing.Table);
        Assert.Null(unsown.Bench);
    }

    [Fact]
    public void A_date_of_few_seasons_is_told_with_their_number()
    {
        var dates = new Dates(SyntheticStudy.Tiny().Plan);
        DateOnly day = new(2027, 4, 5);

        Assert.Equal(
            "5 Apr (1 Apr to 11 Apr), in 4 of 1,000 seasons",
            dates.Cell(new DateSpread(new(2027, 4, 1), day, new(2027, 4, 11), 4, 1000))
        );
        Assert.Equal("5 Apr", dates.Cell(new DateSpread(day, day, day, 1000, 1000)));
        Assert.Equal("–", dates.Cell(new DateSpread(null, null, null, 0, 1000)));
    }

    [Fact]
    public void A_batch_sown_in_few_seasons_or_mostly_thrown_out_has_no_bar_but_a_note()
    {
        var batch = SyntheticStudy.Tiny().Batches[0];
        DateOnly first = new(2027, 2, 1);
        DateSpread In(int seasons) => new(first.AddDays(9), first.AddDays(9), first.AddDays(9), seasons, 1000);
        Estimate two = new(2, 0, 2, 2, 2, 2, 2, 2, 1000);
        var thrown = batch with { SownFirst = In(1000), OutLast = In(4), Discarded = batch.Discarded.SetItem("OverHeld", two) };

        var rare = BatchBar.Of(batch with { SownFirst = In(4) }, first, 69);
        var gone = BatchBar.Of(thrown, first, 69);
        var usual = BatchBar.Of(thrown with { OutLast = In(500) }, first, 69);

        Assert.Equal(("sown in 4 of 1,000 seasons", null, null), (rare.Note, rare.Mat, rare.Bench));
        Assert.Equal(("out in 4 of 1,000 seasons, else thrown out", null, null), (gone.Note, gone.Mat, gone.Bench));
        Assert.Null(usual.Note);
        Assert.Equal("never out: thrown out", BatchBar.Of(Thrown("NeverCameUp"), first, 69).Note);
        Assert.Null(BatchBar.Of(Thrown("Surplus"), first, 69).Note);

        BatchResult Thrown(string reason) =>
            batch with
            {
                SownFirst = In(1000),
                OutLast = new(null, null, null, 0, 1000),
                Discarded = batch.Discarded.SetItem("OverHeld", two with { P50 = 0 }).SetItem(reason, two),
            };
    }

    [Fact]
    public void Batches_that_seldom_go_out_are_not_counted_by_their_few_dates()
    {
        // Two batches: the first goes out in 4 seasons of 1,000, 20 days late, and is sown in those alone; the second always, on time.
        var study = SyntheticStudy.Tiny() with { Seasons = 1000 };
        DateOnly day = new(2027, 4, 5);
        DateSpread few = new(day, day, day, 4, 1000);
        Estimate late = new(20, 0, 20, 20, 20, 20, 20, 20, 4);
        var never = Figures.Chance(0, 1000);
        var seldom = study.Batches[1] with { SownFirst = few, OutLast = few, DaysLate = late, Complete = never };
        var always = study.Batches[0] with
        {
            SownFirst = few with { Happened = 1000 },
            OutLast = few with { Happened = 1000 },
            DaysLate = new(0, 0, 0, 0, 0, 0, 0, 0, 1000),
            Complete = never,
        };
        string[] ids = [seldom.Plan.Order.Id, always.Plan.Order.Id];

        // Wilson for 0 of 1,000: high 3.84146 / 1003.84146 = 0.0038.
        Assert.Equal(
            "Median dates of 1,000 seasons. By the median no batch that goes out is more than 3 days late. In most seasons no tray "
                + $"of {ids[0]} goes to the field. The least reliable are {ids[0]} and {ids[1]}: complete in time in none of 1,000 "
                + "seasons (95 % interval 0 to 0.4 %).",
            BatchesSection.Reading(study with { Batches = [always, seldom] })
        );
    }

    [Theory]
    [InlineData(0, " Where a crop may stand elsewhere, others take the rest: all benches together have places enough that day.")]
    [InlineData(34, " Where a crop may stand elsewhere, others take a part: all benches together are 34 places short that day.")]
    [InlineData(64, "")]
    public void A_bench_that_lacks_places_its_neighbours_have_is_told_so(int lackedByAll, string end)
    {
        // The first of two benches would take 64 places more than it has on day 5, all benches together as many more as given.
        var study = SyntheticStudy.Spring(seasons: 30);
        var kind = study.Groups.Select((group, index) => (group, index)).Single(item => item.group.Kind == SpaceKind.Bench).index;
        var bench = study.Spaces.First(space => space.Space.Kind == SpaceKind.Bench);
        var benches = study.Groups[kind];
        DaySpread none = new(0, 0, 0, 0, 0, 0);
        var wanted = bench.Places[5] + 64;
        var wantedOfAll = benches.Places[5] + lackedByAll;
        bench = bench with
        {
            Wanted = [.. bench.Wanted.Select((_, day) => day == 5 ? new DaySpread(wanted, wanted, wanted, wanted, wanted, wanted) : none)],
        };
        benches = benches with
        {
            Wanted = benches.Wanted.SetItem(5, new DaySpread(wantedOfAll, wantedOfAll, wantedOfAll, wantedOfAll, wantedOfAll, wantedOfAll)),
        };
        study = study with { Groups = study.Groups.SetItem(kind, benches) };

        Assert.EndsWith(
            "64 places short on that date." + end,
            OccupancySection.Reading(bench, study, new Dates(study.Plan)),
            StringComparison.Ordinal
        );
    }

    // Aisle places that no relief opens are not used, and not told.
    [Theory]
    [InlineData(true, true)]
    [InlineData(false, false)]
    public void A_space_says_how_many_of_its_trays_may_stand_in_the_aisle(bool isOpen, bool isTold)
    {
        var study = SyntheticStudy.Spring(seasons: 30);
        var scenario = study.Plan.Scenario;
        var rules = scenario.Rules with { Reliefs = isOpen ? [Relief.Aisle] : [] };
        study = study with { Plan = study.Plan with { Scenario = scenario with { Rules = rules } } };
        var bench = study.Spaces.First(space => space.Peak.Most > 0);
        bench = bench with { Space = bench.Space with { AislePlaces = 8 } };

        var told = OccupancySection.Reading(bench, study, new Dates(study.Plan));
        Assert.Equal(isTold, told.Contains(". Up to 8 of these places are in the aisle.", StringComparison.Ordinal));
        Assert.Equal(isTold, told.Contains("aisle", StringComparison.Ordinal));
    }

    // 63.1 give or take 0.3 is 62.8 to 63.4: in whole numbers both ends would be 63.
    [Fact]
    public void An_interval_narrower_than_the_rounding_is_told_finer()
    {
        var narrow = new Estimate(63.1, 0.3, 49, 63, 65, 65, 40, 70, 1000);
        static string Whole(double value) => value.ToString("0", null);
        static string Tenths(double value) => value.ToString("0.0", null);
        Assert.Equal(
            "63.1 tray-days on average (95 % interval 62.8 to 63.4), between 49 and 65 tray-days in eight seasons of ten",
            Spreads.Mean(narrow, Whole, " tray-days", Tenths)
        );
        Assert.Equal(
            "63 tray-days on average (95 % interval 62 to 64), between 49 and 65 tray-days in eight seasons of ten",
            Spreads.Mean(narrow with { HalfWidth = 1 }, Whole, " tray-days", Tenths)
        );
    }
}
