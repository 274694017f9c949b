using System.Text;
using System.Xml.Linq;
using BenchSim.Report.Html;
using BenchSim.Report.Tables;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Html;

/// <summary>Who waits for whom, and what holds the plan back, on the page and in words.</summary>
public class RoomSectionTests
{
    private static readonly StudyResult s_result = With(SyntheticStudy.Tiny());

    // 28 of 30 tray-days are those of sowings: 93 %. Week 4 begins 28 days after 1 February: on 1 March.
    [Fact]
    public void One_line_says_who_waits_most_for_what_and_when() =>
        Assert.Equal(
            "Trays not sown yet wait most, for \"Heat mats\": 28 tray-days on average (95 % interval 27 to "
                + "29), between 0 and 56 tray-days in eight seasons of ten, 93 % of all waiting; the worst week begins on 1 March, "
                + "with 20 on average (200 seasons played).",
            WaitSentences.Reading(s_result.Waits, s_result.Plan)
        );

    [Fact]
    public void Nobody_waits_is_said_in_words_and_draws_nothing()
    {
        var quiet = s_result with { Waits = [s_result.Waits[2]] };

        Assert.Equal("No tray waits for a place in any season played.", WaitSentences.Reading(quiet.Waits, quiet.Plan));
        var section = Section(quiet, "waits");
        Assert.Empty(section.Descendants("rect"));
        Assert.Empty(section.Descendants("table"));
    }

    [Fact]
    public void The_strip_has_a_cell_a_week_and_the_table_the_same_figures()
    {
        var section = Section(s_result, "waits");
        var weeks = (s_result.Plan.Days + 6) / 7;

        // The pair that never waits has no row.
        Assert.Equal(2 * weeks, section.Descendants("rect").Count());
        Assert.Equal(weeks + 1, section.Descendants("tbody").Single().Elements("tr").Count());
        string[] march =
        [
            .. section.Descendants("tr").Single(row => row.Element("th")?.Value == "2027-03-01").Elements("td").Select(cell => cell.Value),
        ];
        Assert.Equal("20 (40)|–", string.Join('|', march));
        Assert.Equal(
            "full4",
            section
                .Descendants("g")
                .Single(cell => cell.Value.Contains("not sown, for Heat mats, week from 1 March", StringComparison.Ordinal))
                .Element("rect")!
                .Attribute("class")!
                .Value
        );
    }

    [Fact]
    public void The_findings_are_said_in_plain_words()
    {
        string[] sentences = [.. BottleneckSentences.Of(s_result.Bottlenecks!)];

        Assert.Equal(
            "The bottleneck is \"Heat mats\": without a limit there, 400 of 1,000 late plant-days a season would be saved (390 to 410); "
                + "the plan would fit in 65 % of seasons instead of 50 %.",
            sentences[0]
        );
        Assert.Equal(
            "\"Main house\" and \"Table\" help only together: without a limit on both, 600 late plant-days a season would be saved "
                + "(580 to 620), 650 more than each alone adds up to (610 to 690); the plan would fit in 70 % of seasons instead of 50 %.",
            sentences[1]
        );
        Assert.Equal(
            "One mat more for \"Heat mats\" (8 places) would save 121 late plant-days a season (111 to 131); "
                + "no clear change in the chance that the plan fits.",
            sentences[2]
        );
        Assert.Equal(
            "About a tenth more room on \"Main house\" (24 places) makes no clear difference: -9 to 15 late plant-days "
                + "saved a season.",
            sentences[3]
        );
        Assert.Equal("\"Main house\" without limit, alone, changes no late plant-day in any of 200 seasons.", sentences[5]);
        Assert.Equal(
            "\"Table\" without limit, alone, makes it worse: 50 more late plant-days a season (40 to 60); the plays do not show why.",
            sentences[6]
        );
    }

    // Late plant-days are ruled by the few plants that never get out; a grower feels how many are in time.
    [Fact]
    public void Plants_in_time_come_before_late_plant_days()
    {
        var found = s_result.Bottlenecks!;
        var more = SyntheticRoom.Change(250, 40) with { Measure = Measures.PlantsInTime };
        var unsure = SyntheticRoom.Change(-3, 12);
        string[] sentences =
        [
            .. BottleneckSentences.Of(
                found with
                {
                    Unlimited = [found.Unlimited[1] with { PlantsInTime = more, LatePlantDays = unsure }, found.Unlimited[0]],
                    Larger =
                    [
                        found.Larger[1] with
                        {
                            PlantsInTime = more,
                            LatePlantDays = SyntheticRoom.Change(60, 10),
                        },
                        found.Larger[1] with
                        {
                            PlantsInTime = SyntheticRoom.Change(-20, 5),
                            LatePlantDays = unsure,
                        },
                    ],
                    Pairs = [],
                }
            ),
        ];
        var wanted = Numbers.Whole(found.Plan.Batches.Sum(batch => batch.Order.Plants));
        Assert.Equal(
            "The bottleneck is \"Main house\": without a limit there, 250 more plants a season would be out in time (210 to 290), of "
                + $"{wanted} wanted.",
            sentences[0]
        );
        Assert.Equal(
            "About a tenth more room on \"Main house\" (24 places) would bring 250 more plants out in time a season (210 to 290), but make "
                + "60 more late plant-days (50 to 70); the plays do not show why.",
            sentences[1]
        );
        Assert.Equal(
            "About a tenth more room on \"Main house\" (24 places) makes it worse: 20 fewer plants in time a season (15 to 25); the plays "
                + "do not show why.",
            sentences[2]
        );
    }

    [Fact]
    public void A_harm_has_the_reason_that_the_plays_show_and_no_other()
    {
        var found = s_result.Bottlenecks!;
        string Said(BottleneckTrial trial) => BottleneckSentences.Of(found with { Unlimited = [trial], Pairs = [] })[4];
        var harm = found.Unlimited[2];
        var none = SyntheticRoom.Change(0, 0);
        const string worse = "\"Table\" without limit, alone, makes it worse: 50 more late plant-days a season (40 to 60); ";
        Assert.Equal(
            worse + "trays then wait 80 tray-days more for places on hardening tables.",
            Said(harm with { Waited = [none, SyntheticRoom.Change(-30, 5), SyntheticRoom.Change(80, 5)] })
        );
        Assert.Equal(
            worse + "trays then grow slower, 1.5 days more from sowing to field size.",
            Said(harm with { Growing = SyntheticRoom.Change(1.5, 0.5), Waited = [none, none, SyntheticRoom.Change(3, 5)] })
        );
        Assert.Equal(
            worse
                + "trays then wait 90 tray-days more for places on benches, and trays then grow slower, 2 days more from sowing to field "
                + "size.",
            Said(harm with { Growing = SyntheticRoom.Change(2, 0.5), Waited = [none, SyntheticRoom.Change(90, 5), none] })
        );
    }

    [Fact]
    public void A_trial_that_is_unsure_does_not_hide_the_bottleneck_behind_it()
    {
        var found = s_result.Bottlenecks!;
        string[] sentences =
        [
            .. BottleneckSentences.Of(found with { Unlimited = [found.Unlimited[1], found.Unlimited[0], .. found.Unlimited[2..]] }),
        ];

        Assert.StartsWith("The bottleneck is \"Heat mats\": ", sentences[0], StringComparison.Ordinal);
        Assert.Equal("\"Main house\" without limit, alone, changes no late plant-day in any of 200 seasons.", sentences[5]);
    }

    [Fact]
    public void Without_a_bottleneck_or_late_plants_it_says_so()
    {
        var found = s_result.Bottlenecks!;

        Assert.StartsWith(
            "No space is a bottleneck by itself: ",
            BottleneckSentences.Of(found with { Unlimited = found.Unlimited.RemoveAt(0) })[0],
            StringComparison.Ordinal
        );
        Assert.StartsWith(
            "No plant is late in any of 200 seasons",
            BottleneckSentences.Of(found with { LatePlantDays = 0 })[0],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void One_season_is_told_as_one()
    {
        var found = s_result.Bottlenecks!;
        string[] sentences = [.. BottleneckSentences.Of(found with { Seasons = 1, Pairs = [One(found.Pairs[0])] })];

        Assert.Equal(
            "One season cannot tell a bottleneck from chance. In it, one space alone without limit saves at most 400 of 1,000 late "
                + "plant-days.",
            sentences[0]
        );
        Assert.Equal(
            "\"Main house\" and \"Table\" together, without limit on both, save 600 late plant-days in that season, 650 more than the two "
                + "save apart.",
            sentences[^1]
        );

        static BottleneckPair One(BottleneckPair pair) =>
            pair with
            {
                LatePlantDays = pair.LatePlantDays with { HalfWidth = double.NaN },
                AgainstFirst = pair.AgainstFirst with { HalfWidth = double.NaN },
                AgainstSecond = pair.AgainstSecond with { HalfWidth = double.NaN },
                BeyondSum = pair.BeyondSum with { HalfWidth = double.NaN },
            };
    }

    [Fact]
    public void The_section_of_bottlenecks_is_there_only_where_it_was_asked_for()
    {
        Assert.Equal(7, Section(s_result, "bottlenecks").Descendants("tbody").Single().Elements("tr").Count());
        var without = Page(s_result with { Bottlenecks = null });
        Assert.DoesNotContain(without.Descendants("section"), section => section.Attribute("id")!.Value == "bottlenecks");
        Assert.DoesNotContain(without.Descendants("nav").Descendants("a"), link => link.Attribute("href")!.Value == "#bottlenecks");
    }

    [Fact]
    public void Names_from_a_file_are_only_text()
    {
        var hostile = s_result with { Waits = [s_result.Waits[0] with { By = s_result.Waits[0].By with { Name = "<b>=1+1</b>" } }] };

        Assert.Empty(Section(hostile, "waits").Descendants("b"));
        var named = s_result with { Waits = [s_result.Waits[0] with { By = s_result.Waits[0].By with { Id = "=1+1" } }] };
        Assert.Contains(",'=1+1,", Encoding.UTF8.GetString(WaitTable.Write(named)), StringComparison.Ordinal);
    }

    private static StudyResult With(StudyResult result) =>
        result with
        {
            Waits = SyntheticRoom.Waits(result.Plan),
            Bottlenecks = SyntheticRoom.Bottlenecks(result.Plan),
        };

    private static XDocument Page(StudyResult result) =>
        XDocument.Parse(ReportPage.Write(result, [], null).Replace("<!DOCTYPE html>\n", "", StringComparison.Ordinal));

    private static XElement Section(StudyResult result, string id) =>
        Page(result).Descendants("section").Single(section => section.Attribute("id")!.Value == id);
}
