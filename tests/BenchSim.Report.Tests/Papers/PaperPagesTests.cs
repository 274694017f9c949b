using System.Text;
using BenchSim.Report.Papers;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Papers;

/// <summary>The work list and the order as pages and as CSV.</summary>
public class PaperPagesTests
{
    [Fact]
    public void The_work_list_has_a_section_a_week_and_a_box_a_job()
    {
        var content = PaperSample.Of(SyntheticPlan.Spring());
        var html = WorkListPage.Write(content);

        Assert.Equal(content.Mondays.Length, Count(html, "<section class=\"week\""));
        Assert.Equal(content.Tasks.Length, Count(html, "<td class=\"tick\">"));
        Assert.All(content.Mondays, monday => Assert.Equal(DayOfWeek.Monday, monday.DayOfWeek));
        Assert.Contains("These are the dates of the plan: normal weather, and a place for every tray.", html, StringComparison.Ordinal);
        Assert.Contains("not a forecast", html, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_which_work_its_hours_are_of()
    {
        var plan = SyntheticPlan.Spring();
        Assert.Contains(
            "The hours are those of sowing, potting up, moving and loading. Watering, covering against cold nights, thinning and washing "
                + "trays are not counted.",
            WorkListPage.Write(PaperSample.Of(plan)),
            StringComparison.Ordinal
        );
        var rules = plan.Scenario.Rules;
        var more = plan with
        {
            Scenario = plan.Scenario with
            {
                Rules = rules with
                {
                    Minutes = rules.Minutes with { Water = 20 },
                    Seconds = new WorkSeconds { ThinCell = 2 },
                },
            },
        };
        var html = WorkListPage.Write(PaperSample.Of(more));
        Assert.Contains(
            "The hours are those of sowing, thinning, potting up, moving and loading. Covering against cold nights and washing trays are "
                + "not counted.",
            html,
            StringComparison.Ordinal
        );

        // The first line of the page and one line a week.
        var content = PaperSample.Of(more);
        Assert.Contains($" of work, and {BenchSim.Report.Words.WorkWords.Hours(content.WateringHours)} of watering.</p>", html);
        Assert.Equal(1 + content.Mondays.Length, Count(html, " of watering."));
    }

    [Fact]
    public void A_week_that_plans_more_than_fits_says_so()
    {
        // No place of any kind: every week with trays in it says so, once for each kind that is short.
        var plan = SyntheticPlan.Spring();
        var content = PaperSample.Of(
            plan with
            {
                Scenario = plan.Scenario with
                {
                    Spaces = [.. plan.Scenario.Spaces.Select(space => space with { Places = 0, Changes = [] })],
                },
            }
        );
        var html = WorkListPage.Write(content);
        var sentences = content
            .Shortages.Select(shortage => (BenchSim.Season.Planning.TableNights.MondayOf(shortage.On), shortage.Kind))
            .Where(each => content.Mondays.Contains(each.Item1))
            .Distinct()
            .Count();
        Assert.True(sentences > 10);
        Assert.Equal(sentences, Count(html, "<b>Too many for the places.</b>"));
        Assert.Contains("on the heat mats, and there are 0. What finds no place waits.", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_chance_of_a_cold_night_is_in_the_list()
    {
        // 4 C every night under crops that are covered below 7 C (45 F): a hundred in a hundred, on the grey ground of what comes often.
        var html = WorkListPage.Write(PaperSample.Of(SyntheticPlan.Tiny()));
        Assert.Contains("45 °F</td>", html, StringComparison.Ordinal);
        Assert.Contains("<td class=\"night often\">100</td>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Carry trays in", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script")]
    [InlineData("<b>&=")]
    [InlineData("\u202E")]
    public void Hostile_names_stay_text(string never)
    {
        var content = PaperSample.Of(PaperSample.Hostile());
        var pages = WorkListPage.Write(content) + OrderPage.Write(content);
        Assert.DoesNotContain(never, pages, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", pages, StringComparison.Ordinal);
        Assert.DoesNotContain("://", pages, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void No_cell_of_a_table_begins_a_formula()
    {
        var content = PaperSample.Of(PaperSample.Hostile());
        foreach (
            var table in new[]
            {
                WorkTable.Work(content),
                WorkTable.Nights(content),
                OrderTable.Write(content.Needs),
                LabelTable.Write(content),
            }
        )
        {
            var text = Encoding.UTF8.GetString(table);
            foreach (var start in new[] { "=", "\"=", "+", "@" })
            {
                Assert.DoesNotContain("," + start, text, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_order_says_how_it_is_rounded_and_adds_up()
    {
        // One crop with a price of 25 a thousand, 720 seeds from ten trays of 72; 34 litres of mix, 40 loose, at 0.30:
        // 18.00 and 12.00. 40 / 28.317 = 1.41 cubic feet; a bale of 6.5 holds them.
        var plan = SyntheticPlan.Tiny();
        var batch = plan.Batches[0] with { Trays = 10, Seeds = 720, Flat = null, Flats = 0, PotUpOn = null };
        var content = PaperSample.Of(plan with { Batches = [batch] });
        var html = OrderPage.Write(content);

        Assert.Contains(
            "<td class=\"number\">720</td><td class=\"number\">$25.00</td><td class=\"number\">$18.00</td>",
            html,
            StringComparison.Ordinal
        );
        Assert.Contains("<b>1.4 cubic feet</b> of loose mix, which is 40.0 litres or <b>1 bale</b>", html, StringComparison.Ordinal);
        Assert.Contains("$12.00", html, StringComparison.Ordinal);
        Assert.Contains("Seed and mix together: <b>$30.00</b>", html, StringComparison.Ordinal);
        Assert.Contains("no spare seed", html, StringComparison.Ordinal);
        var csv = Encoding.UTF8.GetString(OrderTable.Write(content.Needs));
        Assert.Contains("seed,Tomato,,,,720,seeds,,25,1000 seeds,18\r\n", csv, StringComparison.Ordinal);
        Assert.Contains("mix,potting mix,,,,40,litres,,0.3,litre,12\r\n", csv, StringComparison.Ordinal);
        Assert.EndsWith("mix,potting mix,,,,1,bales,,,,\r\n", csv, StringComparison.Ordinal);
    }

    [Fact]
    public void A_variety_stands_beside_its_crop_and_has_a_line_of_its_own_in_the_order()
    {
        // Two sowings of one variety are one line, whatever their lines in the plan; a third without one has its own.
        var plan = SyntheticPlan.Tiny();
        BatchPlan Sown(string id, string variety) =>
            plan.Batches[0] with
            {
                Order = plan.Batches[0].Order with { Id = id, Variety = variety, PacketId = null, Place = new(PlanFields.File, id[0], 1) },
                Seeds = 100,
            };
        var content = PaperSample.Of(plan with { Batches = [Sown("a", "Early red"), Sown("b", "Early red"), Sown("c", "")] });

        Assert.Equal([("", 100), ("Early red", 200)], content.Needs.Seeds.Select(seed => (seed.Variety, seed.Seeds)));
        Assert.Contains("<td><bdi>Early red</bdi></td>", OrderPage.Write(content), StringComparison.Ordinal);
        Assert.Contains("Tomato ‘Early red’</bdi>", WorkListPage.Write(content), StringComparison.Ordinal);
        Assert.Contains("Tomato ‘Early red’", Encoding.UTF8.GetString(CalendarFile.Write(content)), StringComparison.Ordinal);
        Assert.Contains(
            "seed,Tomato,Early red,,,200,seeds",
            Encoding.UTF8.GetString(OrderTable.Write(content.Needs)),
            StringComparison.Ordinal
        );
        Assert.Contains(",a,Tomato,Early red,", Encoding.UTF8.GetString(WorkTable.Work(content)), StringComparison.Ordinal);
        Assert.Contains("\r\na,Tomato,Early red,", Encoding.UTF8.GetString(LabelTable.Write(content)), StringComparison.Ordinal);
    }

    // Four seeds of which four are kept are a cluster of four seeds; of which two, of two seedlings; of which one, a single plant.
    [Theory]
    [InlineData(4, 4, "1,200 clusters of 4 seeds wanted")]
    [InlineData(4, 2, "1,200 clusters of 2 seedlings wanted")]
    [InlineData(4, 1, "1,200 plants wanted")]
    [InlineData(1, 4, "1,200 plants wanted")]
    public void Plants_that_stand_together_are_told_as_clusters(int sown, int kept, string words)
    {
        var plan = SyntheticPlan.Tiny();
        var batch = plan.Batches[0] with
        {
            Order = plan.Batches[0].Order with { Plants = 1200, SeedsPerCell = sown },
            Crop = plan.Batches[0].Crop with { KeepPerCell = kept },
            Flat = null,
            Flats = 0,
            PotUpOn = null,
        };
        var list = Encoding.UTF8.GetString(WorkTable.Work(PaperSample.Of(plan with { Batches = [batch] })));
        Assert.Contains(words, list, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_of_dates_keeps_what_lies_in_it()
    {
        var plan = SyntheticPlan.Spring();
        var day = plan.Batches[0].SowOn;
        var content = PaperContent.Of(plan, day, day.AddDays(6), null);
        Assert.NotEmpty(content.Tasks);
        Assert.All(content.Tasks, task => Assert.InRange(task.On.DayNumber, day.DayNumber, day.DayNumber + 6));
        Assert.Equal(
            plan.Batches.Where(batch => batch.SowOn >= day && batch.SowOn <= day.AddDays(6)).Sum(batch => batch.Seeds),
            content.Needs.Seeds.Sum(seed => seed.Seeds)
        );
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
