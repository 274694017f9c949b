using System.Globalization;
using BenchSim.Report.Papers;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Tests.Papers;

public class CalendarFileTests
{
    [Fact]
    public void Another_reader_finds_one_event_for_each_job_on_its_day()
    {
        var content = PaperSample.Of(SyntheticPlan.Spring());
        var calendar = SmallCalendar.Read(CalendarFile.Write(content));

        Assert.Equal(("2.0", "Two-house spring"), (calendar.Head["VERSION"], calendar.Head["X-WR-CALNAME"]));
        var jobs = calendar.Events.Where(each => each["CATEGORIES"] != "Cover").ToArray();
        Assert.Equal(content.Tasks.Length, jobs.Length);
        foreach ((var task, var job) in content.Tasks.Zip(jobs))
        {
            // An event that lasts the day ends, by RFC 5545 section 3.6.1, on the day after.
            Assert.Equal(task.On.ToString("yyyyMMdd", CultureInfo.InvariantCulture), job["DTSTART;VALUE=DATE"]);
            Assert.Equal(task.On.AddDays(1).ToString("yyyyMMdd", CultureInfo.InvariantCulture), job["DTEND;VALUE=DATE"]);
            Assert.StartsWith(
                $"{TaskWords.Job(task.Kind)}: {task.Batch.Order.Id}, {task.Pieces} ",
                job["SUMMARY"],
                StringComparison.Ordinal
            );
            Assert.Equal("20270201T000000Z", job["DTSTAMP"]);
        }

        Assert.Equal(calendar.Events.Count, calendar.Events.Select(each => each["UID"]).Distinct(StringComparer.Ordinal).Count());
    }

    // Of 20 years, a night counts from 2 on. The first crop's are Monday, Wednesday, Thursday, Saturday and Sunday; the second gives reason
    // to watch Tuesday too, and so joins Monday to Thursday in one event.
    [Theory]
    [InlineData(0, "20270503-20270504 20270505-20270507 20270508-20270510")]
    [InlineData(2, "20270503-20270507 20270508-20270510")]
    public void Only_nights_worth_watching_have_an_event_those_in_a_row_one(int onTuesday, string expected)
    {
        var content = PaperSample.Of(SyntheticPlan.Tiny());
        var first = content.Nights[0];
        TableWeek Week(Crop crop, params int[] coldYears) =>
            first with
            {
                Monday = new DateOnly(2027, 5, 3),
                Crop = crop,
                Years = 20,
                Nights = [.. coldYears.Select((years, at) => new TableNight(new DateOnly(2027, 5, 3).AddDays(at), 5, years, 0))],
            };
        var other = first.Crop with { Id = "other", Name = "Other" };
        content = content with { Nights = [Week(first.Crop, 2, 1, 3, 4, 0, 2, 20), Week(other, 0, onTuesday, 0, 0, 1)] };
        var covers = Covers(content);

        Assert.Equal(expected, string.Join(' ', covers.Select(each => $"{each["DTSTART;VALUE=DATE"]}-{each["DTEND;VALUE=DATE"]}")));
        Assert.Equal(covers.Length, covers.Select(each => each["UID"]).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(onTuesday > 0, covers[0]["DESCRIPTION"].Contains("Other, 4 May: cover it below ", StringComparison.Ordinal));
        Assert.Contains("a chance of 10 % to 100 % a night.", covers[^1]["DESCRIPTION"], StringComparison.Ordinal);
    }

    [Fact]
    public void Weeks_with_cold_nights_have_an_event_over_their_nights()
    {
        // 4 C every night, and the crops are covered below 7 C: every night on the table is cold.
        var content = PaperSample.Of(SyntheticPlan.Tiny());
        var covers = Covers(content);

        Assert.Equal(content.Nights.DistinctBy(week => (week.Monday, week.Table.Id)).Count(), covers.Length);
        var first = content.Nights[0];
        Assert.Equal(first.Nights[0].On.ToString("yyyyMMdd", CultureInfo.InvariantCulture), covers[0]["DTSTART;VALUE=DATE"]);
        Assert.Equal(first.Nights[^1].On.AddDays(1).ToString("yyyyMMdd", CultureInfo.InvariantCulture), covers[0]["DTEND;VALUE=DATE"]);
        Assert.Contains("cover it below 45 °F, a chance of 100 % a night.", covers[0]["DESCRIPTION"], StringComparison.Ordinal);
    }

    private static Dictionary<string, string>[] Covers(PaperContent content) =>
        [.. SmallCalendar.Read(CalendarFile.Write(content)).Events.Where(each => each["CATEGORIES"] == "Cover")];

    [Fact]
    public void Hostile_names_stay_text_and_start_no_line_of_their_own()
    {
        var content = PaperSample.Of(PaperSample.Hostile());
        var calendar = SmallCalendar.Read(CalendarFile.Write(content));

        Assert.Equal(content.Tasks.Length, calendar.Events.Count(each => each["CATEGORIES"] != "Cover"));
        Assert.Contains(calendar.Events, each => each["DESCRIPTION"].Contains("<script>alert('x')</script>", StringComparison.Ordinal));
        Assert.Contains(calendar.Events, each => each["SUMMARY"].Contains("\"He said, 'no';\"", StringComparison.Ordinal));
        Assert.Contains(calendar.Events, each => each["SUMMARY"].Contains("日本語の名前", StringComparison.Ordinal));
        Assert.All(calendar.Events, each => Assert.DoesNotContain('\u202E', string.Concat(each.Values)));
    }

    [Fact]
    public void An_event_keeps_its_identifier_when_its_date_moves()
    {
        var plan = SyntheticPlan.Tiny();
        var later = plan with { Batches = [.. plan.Batches.Select(batch => batch with { SetOutOn = batch.SetOutOn.AddDays(7) })] };
        string Identifier(SeasonPlan of) =>
            SmallCalendar
                .Read(CalendarFile.Write(PaperSample.Of(of)))
                .Events.First(each =>
                    each["CATEGORIES"] == "Set out" && each["SUMMARY"].Contains(plan.Batches[0].Order.Id, StringComparison.Ordinal)
                )["UID"];
        Assert.Equal(Identifier(plan), Identifier(later));
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes() =>
        Assert.Equal(
            CalendarFile.Write(PaperSample.Of(SyntheticPlan.Spring())),
            CalendarFile.Write(PaperSample.Of(SyntheticPlan.Spring()))
        );
}
