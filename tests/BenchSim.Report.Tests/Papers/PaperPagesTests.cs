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
        // One crop with a price of 25 a thousand, 720 seeds from ten trays of 72; 34 litres of mix at 0.30: 18.00 and 10.20.
        var plan = SyntheticPlan.Tiny();
        var batch = plan.Batches[0] with { Trays = 10, Seeds = 720, Flat = null, Flats = 0, PotUpOn = null };
        var content = PaperSample.Of(plan with { Batches = [batch] });
        var html = OrderPage.Write(content);

        Assert.Contains(
            "<td class=\"number\">720</td><td class=\"number\">$25.00</td><td class=\"number\">$18.00</td>",
            html,
            StringComparison.Ordinal
        );
        Assert.Contains("<b>34.0 litres</b>, which is <b>1.2 cubic feet</b>", html, StringComparison.Ordinal);
        Assert.Contains("$10.20", html, StringComparison.Ordinal);
        Assert.Contains("Seed and mix together: <b>$28.20</b>", html, StringComparison.Ordinal);
        Assert.Contains("no spare seed", html, StringComparison.Ordinal);
        var csv = Encoding.UTF8.GetString(OrderTable.Write(content.Needs));
        Assert.Contains("seed,Tomato,,,720,seeds,,25,1000 seeds,18\r\n", csv, StringComparison.Ordinal);
        Assert.Contains("mix,potting mix,,,34,litres,,0.3,litre,10.2\r\n", csv, StringComparison.Ordinal);
    }

    [Fact]
    public void A_window_of_dates_keeps_what_lies_in_it()
    {
        var plan = SyntheticPlan.Spring();
        var day = plan.Batches[0].SowOn;
        var content = PaperContent.Of(plan, day, day.AddDays(6));
        Assert.NotEmpty(content.Tasks);
        Assert.All(content.Tasks, task => Assert.InRange(task.On.DayNumber, day.DayNumber, day.DayNumber + 6));
        Assert.Equal(
            plan.Batches.Where(batch => batch.SowOn >= day && batch.SowOn <= day.AddDays(6)).Sum(batch => batch.Seeds),
            content.Needs.Seeds.Sum(seed => seed.Seeds)
        );
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
