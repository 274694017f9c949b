using BenchSim.Report.Case;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
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
            "Without it the plan fits in 55 % of 200 seasons (95 % interval 48 to 62 %); with it in 90 % of 200 seasons (95 % "
                + "interval 85 to 93 %)."
        );
        AssertSays(text, "Question: Do the mats carry us through April? What does \"more-mats\" change?");
        AssertSays(text, "Plants out in time: 4,120 plants instead of 4,000, 120 more (100 to 140).");
        AssertSays(text, "Cost of fuel and mat electricity: $841 instead of $800, $41 more ($39 to $43).");
        AssertSays(text, "\"Heat mats\", whole tray places: 54 places instead of 38 places.");

        // 900 to 905 with half a width of 30 is no difference: it stands in the table alone.
        AssertSays(text, "late plant-days900905+5-25 to +35");
        Assert.DoesNotContain("Latelate", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_by_itself_is_answered_by_the_verdict()
    {
        var study = SyntheticStudy.Spring();
        var text = Text(CaseSample.Run(study));
        var verdict = Verdict.Of(study);

        AssertSays(text, "Answer: " + verdict.Headline);
        AssertSays(text, verdict.Sentences[0]);
        AssertSays(text, "No money is reckoned here: this report looks at one plan by itself.");
        Assert.All(verdict.LeavesOut, sentence => AssertSays(text, sentence));
    }

    [Fact]
    public void Money_is_told_with_its_spread_and_what_one_must_believe()
    {
        var text = Text(CaseSample.WithMoney(CaseSample.Spring()));

        AssertSays(
            text,
            "With the figures given it pays on average: over 10 years the net present value is $622 (95 % interval $313 to $930, "
                + "200 seasons). Not counted, for want of a price: labour."
        );
        AssertSays(text, "It pays in 97 % of 10,000 lives drawn from the 200 seasons played (95 % interval 93 to 99 %).");
        AssertSays(text, "net benefit of a year$210$170 to $250");
        AssertSays(text, "It pays if the value of a plant on time is at least $1.33 ($1.10 to $1.70); $2.00 is given.");
        AssertSays(text, "No life up to 60 years makes it pay, though other seasons might have said otherwise.");
        AssertSays(text, "It pays whatever the discount rate; 5 % is given.");
        AssertSays(text, "a plant more in time is worth $2.00. Their source, in the words of the variant: “made up”.");
        AssertSays(text, "This is reckoning for planning and no financial advice.");
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
    public void Every_case_has_its_sections_in_two_to_six_pages(CasePaper paper, double width, double height)
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
            Assert.InRange(sizes.Length, 2, 6);
            Assert.All(sizes, size => Assert.Equal((width, height), (Math.Round(size.Width, 1), Math.Round(size.Height, 1))));
        }
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
