using System.Collections.Immutable;
using System.Text;
using BenchSim.Folder.Files;
using BenchSim.Folder.Plan;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Csv;

/// <summary>Dates as spreadsheets of several countries write them. Which of two numbers is the day is never guessed.</summary>
public class DateTests
{
    private const string Head = "id,crop,plants,sow\n";

    [Theory]
    [InlineData("2027-04-03")]
    [InlineData("2027-4-3")]
    [InlineData("2027/04/03")]
    [InlineData("2027.4.3")]
    [InlineData("3-Apr-2027")]
    [InlineData("3-Apr-27")]
    [InlineData("03-APR-2027")]
    [InlineData("3 April 2027")]
    [InlineData("\"Apr 3, 2027\"")]
    [InlineData("\"April 3rd, 2027\"")]
    [InlineData("\"Saturday, April 3, 2027\"")]
    [InlineData("2027-04-03 00:00:00")]
    [InlineData("2027-Apr-03")]
    [InlineData("week of 3 Apr 2027")]
    [InlineData("Wk of 2027-04-03")]
    [InlineData("w/o 3-Apr-27")]
    public void A_date_of_one_meaning(string written)
    {
        using var folder = new TestFolder(plan: Head + $"a,tomato,100,{written}\n");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        Assert.Equal(new DateOnly(2027, 4, 3), Assert.Single(reading.Scenario!.Batches).Sow);
    }

    // 15 is no month, so 3/4 in the same column is the third of April, or the fourth of March.
    [Theory]
    [InlineData("3/4/2027", "15/4/2027", "2027-04-03", "2027-04-15", "day first", "dmy")]
    [InlineData("3/4/2027", "4/15/2027", "2027-03-04", "2027-04-15", "month first", "mdy")]
    [InlineData("3.4.27", "15.4.27", "2027-04-03", "2027-04-15", "day first", "dmy")]
    public void A_day_above_twelve_tells_the_column(string one, string two, string first, string second, string how, string order)
    {
        var plan = Head + $"a,tomato,100,{one}\nb,tomato,100,{two}\n";
        using var folder = new TestFolder(plan: plan);
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal([DateOnly.Parse(first), DateOnly.Parse(second)], reading.Scenario!.Batches.Select(batch => batch.Sow!.Value));
        Assert.Equal(
            $"plan.csv:3:14: the dates of sow are read {how}, because of \"{two}\" in row 3, column D, batch \"b\"; "
                + $"write date_order = \"{order}\" under [site] to say so",
            Assert.Single(reading.Warnings).ToString()
        );

        // What it says to write takes the warning away.
        using var settled = new TestFolder(Ordered(order), plan);
        Assert.Empty(settled.Read().Warnings);
        Assert.Equal(reading.Scenario.Batches.Select(batch => batch.Sow), settled.Read().Scenario!.Batches.Select(batch => batch.Sow));
    }

    [Fact]
    public void A_column_that_may_be_read_two_ways_is_one_fault()
    {
        const string Plan =
            "id,crop,plants,sow\n\na,tomato,100,3/4/2027\nb,tomato,100,5/4/2027\nc,tomato,9,2027-04-06\nd,tomato,9,6/4/2027\n";
        var fault = Assert.Single(TestFolder.Faults(plan: Plan));
        Assert.Equal(
            "plan.csv:3:14: sow is \"3/4/2027\" in row 3, column D, batch \"a\", which may be 3 April or 4 March, "
                + "and 2 more of the column likewise; write date_order = \"dmy\" or date_order = \"mdy\" under [site] of site.toml",
            fault
        );
        Assert.Equal(new DateOnly(2027, 4, 3), Sown("dmy"));
        Assert.Equal(new DateOnly(2027, 3, 4), Sown("mdy"));

        DateOnly? Sown(string order)
        {
            using var folder = new TestFolder(Ordered(order), Plan);
            var reading = folder.Read();
            Assert.Empty(reading.Faults);
            return reading.Scenario!.Batches[0].Sow;
        }
    }

    [Fact]
    public void A_column_of_both_is_one_fault() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,100,15/4/2027\nb,tomato,100,4/15/2027\nc,tomato,100,3/4/2027\n"),
            "plan.csv:3:14: sow is \"4/15/2027\" in row 3, column D, batch \"b\", with the month first, and \"15/4/2027\" in row 2, "
                + "column D, batch \"a\", with the day first; write all dates of the column year-month-day such as 2027-03-15"
        );

    [Fact]
    public void A_date_against_the_order_of_the_site()
    {
        var plan = Head + "a,tomato,100,15/4/2027\nb,tomato,100,3/4/2027\n";
        var fault = Assert.Single(TestFolder.Faults(Ordered("mdy"), plan));
        Assert.Equal(
            "plan.csv:2:14: sow is \"15/4/2027\" in row 2, column D, batch \"a\", and there is no month 15; "
                + "site.toml says date_order = \"mdy\": write 2027-04-15, or another date_order",
            fault
        );
        Assert.Empty(TestFolder.Faults(Ordered("mdy"), plan.Replace("15/4/2027", "2027-04-15", StringComparison.Ordinal)));
        Assert.Empty(TestFolder.Faults(Ordered("dmy"), plan));
    }

    [Fact]
    public void A_date_without_a_year_and_one_that_is_none() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(plan: Head + "a,tomato,100,3-Apr\nb,tomato,100,soon\nc,tomato,100,31/4/2027\n"),
            "plan.csv:2:14: sow is \"3-Apr\", which has no year; write the year too: year-month-day such as 2027-04-03",
            "plan.csv:3:14: sow is \"soon\", which is not a date; write year-month-day such as 2027-03-15",
            "plan.csv:4:14: sow is 2027-04-31, which is not in the calendar; April 2027 has 30 days"
        );

    [Fact]
    public void Two_digit_years_with_the_year_first_where_the_site_says_so()
    {
        using var folder = new TestFolder(Ordered("ymd"), Head + "a,tomato,100,27/4/3\n");
        Assert.Equal(new DateOnly(2027, 4, 3), Assert.Single(folder.Read().Scenario!.Batches).Sow);
    }

    // In site.toml each date stands for itself.
    [Theory]
    [InlineData(
        "opens = 18/1/2027",
        "site.toml:4:9: a date in this form is a text and goes in quotation marks; write opens = \"18/1/2027\""
    )]
    [InlineData(
        "opens = 18-Jan-2027",
        "site.toml:4:9: a date in this form is a text and goes in quotation marks; write opens = 2027-01-18"
    )]
    [InlineData(
        "opens = \"2/1/2027\"",
        "site.toml:4:9: opens is \"2/1/2027\", which may be 2 January or 1 February; write 2027-01-02 or 2027-02-01"
    )]
    [InlineData(
        "opens = 2/1/2027",
        "site.toml:4:9: opens is \"2/1/2027\", which may be 2 January or 1 February; write 2027-01-02 or 2027-02-01"
    )]
    public void A_date_of_the_site(string line, string message)
    {
        Assert.Equal(message, Assert.Single(TestFolder.Faults(TestFolder.Site("opens = 2027-01-18", line))));
        var typed = message[(message.LastIndexOf("; write ", StringComparison.Ordinal) + 8)..].Split(" or ")[0];
        typed = typed.StartsWith("opens", StringComparison.Ordinal) ? typed : "opens = " + typed;
        Assert.Empty(TestFolder.Faults(TestFolder.Site("opens = 2027-01-18", typed)));
    }

    // Of 3/4 and 15/4 the first alone would have two meanings: in a file by itself both have the year first.
    [Fact]
    public void A_plan_to_be_written_anew_has_dates_of_one_meaning()
    {
        const string Plan = "id;sow;tested_on;note\r\na;\"3/4/2027\";2026-11-02;3/4/2027\r\nb;15/4/2027;;\r\n";
        Assert.Equal(
            "id;sow;tested_on;note\r\na;2027-04-03;2026-11-02;3/4/2027\r\nb;2027-04-15;;\r\n",
            Encoding.UTF8.GetString(PlanAsCsv.Of(InputFile.Of("plan.csv", Plan), null).AsSpan())
        );
        var plain = InputFile.Of("plan.csv", "id,sow\na,2027-4-3\n");
        Assert.Equal(plain.Bytes.ToArray(), PlanAsCsv.Of(plain, DateOrder.DayFirst).ToArray());
    }

    [Fact]
    public void Successions_of_other_dates_move_from_their_first()
    {
        var moved = MovedPlan.Write(
            PlanAsCsv.Of(InputFile.Of("plan.csv", "id,crop,plants,sow,every_days,times\na,tomato,9,15/3/2027,7,2\n"), null),
            ImmutableDictionary<string, DateOnly>.Empty.Add("a-2", new DateOnly(2027, 3, 20))
        );
        Assert.Equal(
            "id,crop,plants,sow,every_days,times\na-1,tomato,9,2027-03-15,,\na-2,tomato,9,2027-03-20,,\n",
            Encoding.UTF8.GetString(moved.AsSpan())
        );
    }

    private static string Ordered(string order) =>
        TestFolder.Site("name = \"Test farm\"", $"name = \"Test farm\"\ndate_order = \"{order}\"");
}
