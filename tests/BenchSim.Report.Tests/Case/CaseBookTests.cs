using BenchSim.Report.Case;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Case;

public sealed class CaseBookTests
{
    private static readonly string[] s_sections =
    [
        "1. Question and answer",
        "2. Method in plain words",
        "spaces through the season",
        "4. Money",
        "5. Uncertainty",
        "6. Cautions",
        "Appendix: reporting checklist STRESS-DES",
    ];

    [Fact]
    public void The_answer_has_its_interval_and_its_seasons()
    {
        var text = Text(CaseSample.Spring());

        // 110 and 180 of 200 seasons: 55 and 90 %; 70 more are 35 percentage points, from 28 to 42.1.
        AssertSays(
            text,
            "With \"more-mats\" the plan fits in 90 % of seasons instead of 55 %: 35 percentage points more (28 to 42.1); "
                + "70 of 200 seasons fit only with it, 0 only without."
        );

        // Wilson's interval of 110 of 200: (p + z²/2n ± z √(p(1-p)/n + z²/4n²)) / (1 + z²/n) = 0.481 to 0.617; of 180: 0.851 to 0.934.
        AssertSays(
            text,
            "Without it the plan fits in 55 % of 200 seasons (95 % interval 48.1 to 61.7 %); with it in 90 % of 200 seasons (95 % "
                + "interval 85.1 to 93.4 %)."
        );
        AssertSays(text, "Question: Do the mats carry us through April? What does \"more-mats\" change?");
        AssertSays(text, "Plants out in time: 4,120 plants instead of 4,000, 120 more (100 to 140).");
        AssertSays(text, "Cost of fuel and mat electricity: $841 instead of $800, $41 more ($39 to $43).");
        AssertSays(text, "\"Heat mats\", whole tray places: 54 places instead of 38 places.");

        // 900 to 905 with half a width of 30 is no difference: it stands in the table alone.
        AssertSays(text, "late plant-days900905+5-25 to +35");
        Assert.DoesNotContain("Latelate", text, StringComparison.Ordinal);
    }

    // 110 of 200 seasons: Wilson's interval as above.
    [Fact]
    public void What_the_chance_rests_on_is_luck_and_the_values_behind_it()
    {
        const string Over = "Over the ranges of the 7 values that may be wrong it is 20 to 80 %, 50 % in the middle.";
        var text = Text(CaseSample.Spring() with { OverValues = Over });

        const string Luck = "The plan as it is fits in 55 % of 200 seasons, by luck alone 48.1 to 61.7 %.";
        AssertSays(text, Luck);
        AssertSays(text, Over);
        AssertSays(Text(CaseSample.Run(SyntheticStudy.Spring()) with { OverValues = Over }), Over);
    }

    // A tray wants the first space on its list; a second house only takes what the first has no room for.
    [Fact]
    public void A_space_that_is_no_first_choice_is_not_told_as_unwanted()
    {
        var spring = CaseSample.Spring();
        SpaceResult Overflow(SpaceResult space) =>
            space.Space.Kind == SpaceKind.Bench ? space with { Wanted = [.. space.Wanted.Select(day => day with { P50 = 0 })] } : space;
        var text = Text(spring with { Changed = spring.Changed! with { Spaces = [.. spring.Changed.Spaces.Select(Overflow)] } });
        AssertSays(text, "places, no tray's first choice, it takes what finds no place elsewhere,");
        AssertSays(text, "Both are judged by this one rule.");
    }

    [Fact]
    public void A_plan_by_itself_is_answered_by_the_verdict()
    {
        var study = SyntheticStudy.Spring();
        var text = Text(CaseSample.Run(study));
        var verdict = Verdict.Of(study);

        AssertSays(text, $"Answer: {verdict.Headline} {verdict.Chance}");
        AssertSays(text, verdict.Sentences[0]);
        AssertSays(text, "There is no money case here: this report looks at one plan by itself.");
        Assert.All(verdict.LeavesOut, sentence => AssertSays(text, sentence));
    }

    [Fact]
    public void Mishaps_are_told_with_what_they_cost()
    {
        var study = SyntheticStudy.Spring();
        Mishap heater = new()
        {
            Id = "heater",
            Name = "A night without heat",
            Chance = 0.1,
            From = new DateOnly(2027, 3, 1),
            To = new DateOnly(2027, 4, 15),
            SpaceId = "main",
            Loss = 0.3,
        };
        var text = Text(
            CaseSample.Run(
                study with
                {
                    Plan = study.Plan with { Scenario = study.Plan.Scenario with { Mishaps = [heater] } },
                    PlantsLostToMishaps = study.PlantsLate,
                }
            )
        );
        AssertSays(
            text,
            "Mishaps, each at most once a season: \"A night without heat\" in 10 % of seasons, on a day from 1 March 2027 to 15 April 2027 "
                + "(Main house benches: 30 % of the plants lost)."
        );
        AssertSays(text, "plants lost to mishaps" + Numbers.Short(study.PlantsLate.Mean));
        AssertSays(text, "mishaps by their chance, at most once a season");
        AssertSays(text, "But for the mishaps counted, pests, disease, breakdowns,");
        Assert.DoesNotContain("ishap", Text(CaseSample.Run(study)).Replace("No mishap is counted", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Money_is_told_with_its_spread_and_what_one_must_believe()
    {
        var text = Text(CaseSample.WithMoney(CaseSample.Spring()));

        AssertSays(
            text,
            "With the figures given it pays on average: over 10 years the net present value is $622 (95 % interval $313 to $930, "
                + "200 seasons). Not counted, as it has no price: labour."
        );
        AssertSays(text, "It pays in 97 % of 10,000 runs of 10 years drawn from the 200 seasons played (95 % interval 93 to 99 %).");
        AssertSays(text, "net benefit of a year$210$170 to $250");
        AssertSays(text, "It pays if the value of a plant on time is at least $1.33 ($1.10 to $1.70); $2.00 is given.");
        AssertSays(text, "No life up to 60 years makes it pay, though other seasons might have shown something else.");
        AssertSays(text, "It pays whatever the discount rate; 5 % is given.");
        AssertSays(text, "a plant more in time is worth $2.00. Their source, in the words of the variant: “made up”.");
        AssertSays(text, "This is a calculation for planning, not financial advice.");
        AssertSays(
            text,
            "Ask about permits first. Whether a structure stands up to snow and wind is for a licensed engineer and the local "
                + "codes; gas and electrical work is for licensed people."
        );
    }

    [Theory]
    [Trait("Category", "Slow")]
    [InlineData(CasePaper.A4, 210, 297)]
    [InlineData(CasePaper.Letter, 215.9, 279.4)]
    public void Every_case_has_its_sections_in_two_to_six_pages_behind_the_summary(CasePaper paper, double width, double height)
    {
        var tiny = SyntheticStudy.Tiny();
        CaseInput[] cases =
        [
            CaseSample.Run(tiny, paper),
            CaseSample.Run(tiny with { Fits = Figures.Chance(0, tiny.Seasons) }, paper),
            CaseSample.Run(SyntheticStudy.Tiny(1), paper),
            CaseSample.Run(SyntheticStudy.Large(), paper),
            CaseSample.Spring(paper),
            CaseSample.WithMoney(CaseSample.Spring(paper)),
            CaseSample.Hostile(paper),
        ];
        foreach (var input in cases)
        {
            var pdf = CaseBook.Write(input, CaseSample.Inputs);
            var text = string.Concat(PdfReader.Texts(pdf));
            var at = 0;
            foreach (var section in s_sections)
            {
                at = text.IndexOf(section, at, StringComparison.Ordinal);
                Assert.True(at >= 0, section);
            }

            var sizes = PdfReader.Sizes(pdf).ToArray();
            Assert.InRange(sizes.Length, 2, input.Comparison is null ? 6 : 7);
            Assert.All(sizes, size => Assert.Equal((width, height), (Math.Round(size.Width, 1), Math.Round(size.Height, 1))));
        }
    }

    // What a lender reads is one page, whatever stands in the files; the report itself begins on the next.
    [Theory]
    [InlineData(CasePaper.A4)]
    [InlineData(CasePaper.Letter)]
    public void The_summary_of_a_change_is_the_first_page_and_no_more(CasePaper paper)
    {
        var spring = CaseSample.Spring(paper);
        const string Over = "Over the ranges of the 1,398 values that may be wrong it is 12.3 to 98.7 %, 55.5 % in the middle.";
        foreach (var input in new[] { spring, CaseSample.WithMoney(spring), CaseSample.Hostile(paper) with { OverValues = Over } })
        {
            var pages = PdfReader.Texts(CaseBook.Write(input, CaseSample.Inputs));
            string[] parts =
            [
                "Summary for a lender",
                "What is asked for",
                "What it brings",
                "What it costs, and when it is paid back",
                "What this rests on",
                "Cautions",
                "financial advice",
                "page 1 of",
            ];
            var at = 0;
            foreach (var part in parts)
            {
                at = pages[0].IndexOf(part, at, StringComparison.Ordinal);
                Assert.True(at >= 0, part);
            }

            Assert.StartsWith("1. Question and answer", pages[1], StringComparison.Ordinal);
        }

        Assert.DoesNotContain("Summary for a lender", Text(CaseSample.Run(SyntheticStudy.Tiny())), StringComparison.Ordinal);
    }

    // 4,000 and 4,120 plants in time, 120 more (100 to 140); $2,000 to build is what the sample's terms say, and 10 years of use.
    [Fact]
    public void The_summary_says_what_is_asked_for_what_it_brings_and_when_it_is_paid_back()
    {
        var input = CaseSample.WithMoney(CaseSample.Spring());
        var page = PdfReader.Texts(CaseBook.Write(input, CaseSample.Inputs))[0];
        Assert.Contains(
            $"{InvestNames.Money(input.Money!.Terms.Capital, "$")} to build or buy what \"more-mats\" changes, for 10 years of use.",
            page,
            StringComparison.Ordinal
        );
        Assert.Contains("+120 (+100 to +140)", page, StringComparison.Ordinal);
        Assert.Contains("55 %90 %+35 points (+28 to +42.1)", page, StringComparison.Ordinal);
        Assert.Contains("years until it is paid back", page, StringComparison.Ordinal);
        Assert.Contains("It pays if the value of a plant on time is at least $1.33", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(CasePaper.A4, 210, 297)]
    [InlineData(CasePaper.Letter, 215.9, 279.4)]
    public void Strange_names_stay_within_the_page_and_show_as_boxes(CasePaper paper, double width, double height)
    {
        var pdf = CaseBook.Write(CaseSample.Hostile(paper), CaseSample.Inputs);

        var pages = PdfReader.Sizes(pdf).Length;
        for (var page = 1; page <= pages; page++)
        {
            foreach ((var letter, var left, var top, var right, var bottom) in PdfReader.Letters(pdf, page))
            {
                Assert.True(left >= 19.9 && right <= width - 19.9, $"page {page}: \"{letter}\" from {left} to {right}");
                Assert.True(top >= 19 && bottom <= height - 8, $"page {page}: \"{letter}\" from {top} to {bottom}");
            }
        }

        var text = string.Concat(PdfReader.Texts(pdf));
        Assert.Contains("□", text, StringComparison.Ordinal);
        Assert.Contains("WideWide", text, StringComparison.Ordinal);
        Assert.Contains("Not drawn: 2 spaces", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_case_gives_the_same_bytes_and_another_paper_others()
    {
        var input = CaseSample.WithMoney(CaseSample.Spring());
        var first = CaseBook.Write(input, CaseSample.Inputs);

        Assert.Equal(first, CaseBook.Write(CaseSample.WithMoney(CaseSample.Spring()), CaseSample.Inputs));
        Assert.NotEqual(first, CaseBook.Write(input with { Paper = CasePaper.Letter }, CaseSample.Inputs));
    }

    [Fact]
    public void Parts_that_do_not_belong_together_are_refused()
    {
        var spring = CaseSample.Spring();
        Assert.Throws<ArgumentException>(() => CaseBook.Write(spring with { Changed = null }, []));
        Assert.Throws<ArgumentException>(() => CaseBook.Write(spring with { Base = SyntheticStudy.Spring(20) }, []));
        Assert.Throws<ArgumentException>(() =>
            CaseBook.Write(spring with { Base = spring.Base with { Fits = Figures.Chance(111, 200) } }, [])
        );
        Assert.Throws<ArgumentException>(() => CaseBook.Write(CaseSample.WithMoney(spring) with { Changed = null, Comparison = null }, []));
    }

    internal static string Text(CaseInput input) => string.Concat(PdfReader.Texts(CaseBook.Write(input, CaseSample.Inputs)));

    // The reader gives the lines of a paragraph without the spaces between them.
    internal static void AssertSays(string text, string words) =>
        Assert.Contains(Squeezed(words), Squeezed(text), StringComparison.Ordinal);

    private static string Squeezed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
