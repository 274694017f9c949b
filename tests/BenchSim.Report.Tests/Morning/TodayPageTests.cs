using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using BenchSim.Report.Labels;
using BenchSim.Report.Morning;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;
using BenchSim.Study.Billing;
using BenchSim.Study.Coming;
using static BenchSim.Report.Tests.Morning.TodaySample;

namespace BenchSim.Report.Tests.Morning;

/// <summary>The page of a day, of a sheet made by hand.</summary>
public partial class TodayPageTests
{
    [Fact]
    public void Its_parts_stand_in_their_order()
    {
        Assert.Equal(
            [
                "Thursday 18 March 2027: Small site",
                "To do today and this week",
                "What stands where",
                "Due by the plan, and not confirmed",
                "Late, and why",
                "Room left",
                "Cold night: cover, carry in",
                "Done today",
                "Ada, Thu 18 Mar",
                "Ben, Thu 18 Mar",
                "Last day to sow again",
            ],
            Headings().Matches(Html(Of())).Select(heading => Plain(heading.Groups["text"].Value)),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void Says_the_day_it_was_made_for_and_the_last_line_of_the_log()
    {
        Assert.Contains("The last line of the log is of Wed 17 Mar, 1 day ago; it has 3 lines.", Text(Of()), StringComparison.Ordinal);
        Assert.Contains("The log has no lines yet, so nothing counts as sown.", Text(Of(Site with { Log = [] })), StringComparison.Ordinal);
    }

    // What is due and comes too has one number; what is due alone is numbered after what comes.
    [Fact]
    public void Each_job_has_one_number()
    {
        var sheet = Of(
            jobs: [Job(WorkKind.SetOut, 0, 6, Likelihood.Likely), Job(WorkKind.PotUp, 1, 12, Likelihood.Maybe, 2, 4)],
            due:
            [
                new DueJob(WorkKind.OffMat, 1, 3, AreFlats: true, 0, Today.AddDays(-2)),
                new DueJob(WorkKind.SetOut, 0, 6, false, 2, Today),
            ]
        );
        Assert.Equal(
            [(1, WorkKind.SetOut, 1), (2, WorkKind.PotUp, 0), (3, WorkKind.OffMat, 1)],
            sheet.Jobs.Select(job => (job.Number, job.Kind, job.Due.Length))
        );
        var text = Text(sheet);
        Assert.Contains("1 Set out: early plain, Ada 6 trays likely today", text, StringComparison.Ordinal);
        Assert.Contains(
            "2 Pot up: late plain, Ben trays filled from the flats 12 trays maybe Sat 20 to Mon 22 Mar",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "3 Move off the mats: late plain, Ben in Mat by the log 3 flats Tue 16 Mar, 2 days ago",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("1 Set out: early plain, Ada in Table by the log 6 trays Thu 18 Mar", text, StringComparison.Ordinal);
    }

    // What stands on the labels, beside the name of the batch wherever it is named.
    [Fact]
    public void Each_batch_is_named_with_its_short_code()
    {
        var sheet = Of(
            jobs: [Job(WorkKind.SetOut, 0, 6, Likelihood.Likely), Job(WorkKind.PotUp, 1, 12, Likelihood.Maybe, 2, 4)],
            due: [new DueJob(WorkKind.OffMat, 1, 3, AreFlats: true, 0, Today.AddDays(-2))]
        );
        var html = Html(sheet);
        var labels = TrayLabel.All(sheet.Plan, ShortCodes.Of(sheet.Plan), sheet.Plan.FirstDay, sheet.Plan.LastDay);
        var named = Named().Matches(html);
        Assert.Equal(Regex.Count(html, "<th scope=\"row\">[^<]*<b>", RegexOptions.None, TimeSpan.FromSeconds(1)), named.Count);
        Assert.NotEmpty(named);
        Assert.All(named, each =>
        {
            var id = each.Groups["id"].Value;
            Assert.Equal(labels.First(label => label.Batch.Order.Id == id).Short, each.Groups["code"].Value);
        });
    }

    [Fact]
    public void Jobs_have_words_and_no_percentages_and_the_words_are_told_once()
    {
        var html = Html(Of(jobs: [Job(WorkKind.SetOut, 0, 6, Likelihood.Sure)]));
        var jobs = html[html.IndexOf("id=\"todo\"", StringComparison.Ordinal)..html.IndexOf("id=\"stands\"", StringComparison.Ordinal)];
        Assert.DoesNotContain("%", jobs, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(html, "at least 9 of 10 seasons played", RegexOptions.None, TimeSpan.FromSeconds(1)));
        Assert.Contains("1 ok, 2 8, 4 no", Plain(jobs), StringComparison.Ordinal);
    }

    // The mat has 0 - day places free, the bench 1 - day, the table 2 - day: by hand below.
    [Fact]
    public void Room_left_is_told_for_ten_days()
    {
        var text = Text(Of());
        Assert.Contains("Space Th 18 Fr 19 Sa 20 Su 21 Mo 22 Tu 23 We 24 Th 25 Fr 26 Sa 27", text, StringComparison.Ordinal);
        Assert.Contains("table 2 1 – – – – – – – –", text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Late_is_told_with_how_likely_how_many_days_and_why()
    {
        var sheet = Of(
            Site with
            {
                Log = Site.Log.SetItem(0, Site.Log[0] with { Date = SmallSite.Monday.AddDays(2) }),
            },
            due: [new DueJob(WorkKind.SetOut, 0, 6, AreFlats: false, 2, Today.AddDays(-1))],
            late:
            [
                new ComingDelay
                {
                    Batch = 0,
                    Likelihood = Likelihood.Sure,
                    Days = 6,
                    IsShort = false,
                    IsHeld = true,
                    NoRoomIn = 2,
                },
            ]
        );
        Assert.Contains(
            "early plain, Ada for 22 Mar sure about 6 days Sown 2 days late; set out: due 17 Mar, no line yet (number 1); "
                + "no place in time: Table; the weather holds what is ready.",
            Text(sheet),
            StringComparison.Ordinal
        );
        Assert.Contains("No batch is likely to be late.", Text(Of()), StringComparison.Ordinal);
    }

    // Metric, in steps of 1 C; tonight's low is tomorrow's of the forecast, 2.4 C: the line of 2. Covered below 5 C: 2 - 1.67; carried in
    // when 2 K of cover and 1.67 K in hand leave less than 0: below -0.33, from the line of -1 on.
    [Fact]
    public void The_cold_night_card_has_seven_lines_around_tonights_forecast()
    {
        var sheet = Of(WithForecast((9, 14, 0), (2.4, 12, 0), (1, 11, 0)));
        Assert.Equal([4.0, 3.0, 2.0, 1.0, 0.0, -1.0, -2.0], sheet.Cold.Nights.Select(night => night.LowC));
        Assert.Equal(2, sheet.Cold.Tonight);
        Assert.Equal("2.4 1     ", string.Join(" ", sheet.Cold.Lows));
        var text = Text(sheet);
        Assert.Contains("4 6 trays: early (6) none 3 as above none 2 tonight as above none", text, StringComparison.Ordinal);
        Assert.Contains("-1 none 6 trays: early (6) 6", text, StringComparison.Ordinal);
        Assert.Contains("The advice keeps 1.7 °C in hand.", text, StringComparison.Ordinal);
        Assert.Contains("Forecast: next.csv, to Sat 20 Mar.", text, StringComparison.Ordinal);
        Assert.Contains(
            "The cover is taken to add 2 °C. Free on the benches indoors by the log: 60 places.",
            text,
            StringComparison.Ordinal
        );
    }

    // In Fahrenheit in steps of 2: 2.4 C is 36.3 F, on the page 36.
    [Fact]
    public void In_Fahrenheit_its_steps_are_two_degrees()
    {
        var sheet = Of(WithForecast((9, 14, 0), (2.4, 12, 0)) with { Units = UnitSystem.Imperial });
        Assert.Equal([40, 38, 36, 34, 32, 30, 28], sheet.Cold.Nights.Select(night => Math.Round((night.LowC * 1.8) + 32, 6)));
        Assert.Contains("Low, °F", Text(sheet), StringComparison.Ordinal);
        Assert.Contains("The advice keeps 3 °F in hand.", Text(sheet), StringComparison.Ordinal);
    }

    // Without a forecast the first line is that of the warmest night on which something is covered: 5 + 1.67, in whole degrees 7.
    [Fact]
    public void Without_a_forecast_it_begins_where_something_is_to_be_covered()
    {
        var sheet = Of();
        Assert.Null(sheet.Cold.Tonight);
        Assert.Equal(7, sheet.Cold.Nights[0].LowC);
        Assert.Contains("No forecast is in the folder.", Text(sheet), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(24, 0, "Up to 24 °C and dry by the forecast: open the vents early, and water a second time after noon.")]
    [InlineData(23.6, 0, "Up to 24 °C and dry by the forecast:")]
    [InlineData(23.4, 0, "Up to 23 °C by the forecast. From 24 °C on, and dry:")]
    [InlineData(30, 4, "Up to 30 °C by the forecast. From 24 °C on, and dry:")]
    public void A_hot_and_dry_day_tomorrow_means_vents_and_a_second_watering(double high, double rain, string words)
    {
        Assert.Contains(words, Text(Of(WithForecast((9, 14, 0), (8, high, rain)))), StringComparison.Ordinal);
        Assert.Contains("No forecast is known. If it says 24 °C or more and dry:", Text(Of()), StringComparison.Ordinal);
    }

    [Fact]
    public void It_never_promises_and_sends_nobody_to_sleep()
    {
        var text = Text(Of(WithForecast((9, 14, 0), (2.4, 12, 0))));
        Assert.DoesNotContain("safe", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(
            "This is no alarm: have one that works without mains or internet, and two people who answer it.",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Blank_lines_have_the_columns_of_the_log_in_their_order()
    {
        Assert.Contains("date batch what trays flats from space count of minutes by entered note", Text(Of()), StringComparison.Ordinal);
    }

    // Ben's page: 3 flats by 3 days, 9 of 6 x 17 + 9 = 111 tray-days; what the spaces hold in all, and nothing of Ada's batch.
    [Fact]
    public void A_growers_page_holds_that_growers_batches_alone()
    {
        var html = Html(
            Of(
                jobs: [Job(WorkKind.SetOut, 0, 6, Likelihood.Sure), Job(WorkKind.PotUp, 1, 12, Likelihood.Sure)],
                late:
                [
                    new ComingDelay
                    {
                        Batch = 0,
                        Likelihood = Likelihood.Sure,
                        Days = 6,
                        IsShort = true,
                        IsHeld = false,
                        NoRoomIn = null,
                    },
                ]
            )
        );
        var ben = html[html.IndexOf("id=\"grower2\"", StringComparison.Ordinal)..html.IndexOf("id=\"again\"", StringComparison.Ordinal)];
        Assert.DoesNotContain("early", ben, StringComparison.Ordinal);
        Assert.DoesNotContain("Ada", ben, StringComparison.Ordinal);
        var text = Plain(ben);
        Assert.Contains("2 Pot up: late", text, StringComparison.Ordinal);
        Assert.Contains("late plain, Ben 3 flats 15 Mar", text, StringComparison.Ordinal);
        Assert.Contains("9 tray-days by the log, of 111 of all growers", text, StringComparison.Ordinal);
        Assert.Contains("Mat: 3 of 20 places. bench: 0 of 60 places. Table: 6 of 60 places.", text, StringComparison.OrdinalIgnoreCase);
    }

    // Of a bill of 150.00 Ben's part is 60.00: 40 %. What falls to Ada does not stand on his page.
    [Theory]
    [InlineData(BillUnit.Money, "60.00 of 150 for fuel and mats, 40 %, divided by tray-days, as agreed.")]
    [InlineData(BillUnit.Heat, "60 kWh of 150 kWh for heat and mats, 40 %, divided by tray-days, as agreed.")]
    [InlineData(BillUnit.Days, "60 of 150 days with trays in a heated house, 40 %, divided by tray-days, as agreed.")]
    public void A_growers_page_has_the_own_part_of_the_bill_by_the_rule_agreed(BillUnit unit, string bill)
    {
        var html = Html(Of() with { Bill = new BillSoFar(BillRule.TrayDays, unit, ["Ada", "Ben"], [90, 60]) });
        var ben = html[html.IndexOf("id=\"grower2\"", StringComparison.Ordinal)..html.IndexOf("id=\"again\"", StringComparison.Ordinal)];
        Assert.Contains(bill, Plain(ben), StringComparison.Ordinal);
        Assert.DoesNotContain("90", Plain(ben), StringComparison.Ordinal);
    }

    [Fact]
    public void One_grower_alone_needs_no_page_of_their_own() =>
        Assert.DoesNotContain(
            "id=\"grower1\"",
            Html(Of(Site with { Batches = [.. Site.Batches.Select(order => order with { Grower = "Ada" })] })),
            StringComparison.Ordinal
        );

    // Sown on 1 March it is wanted on the 22nd: 3 days late are allowed. On the 18th it is too late to sow that again.
    [Fact]
    public void The_last_day_to_sow_again_is_past_where_it_is()
    {
        var text = Text(Of());
        Assert.Contains("early plain, Ada past 25 Mar", text, StringComparison.Ordinal);
        Assert.Matches("late plain, Ben (Thu|Fri) (18|19) Mar", text);
    }

    // Room to sow "late" again, 3 flats on the mat, which has 0 places less each day: none. With 5 on the second day: all.
    [Theory]
    [InlineData(0, "for 0 of 3 flats")]
    [InlineData(2, "for 2 of 3 flats")]
    [InlineData(5, "yes")]
    public void Beside_the_last_day_to_sow_again_stands_whether_there_is_room(int free, string room)
    {
        var sheet = Of();
        var mat = Enumerable.Range(0, 10).Select(day => day == 1 ? free : 0).ToImmutableArray();
        sheet = sheet with
        {
            Coming = sheet.Coming with { Free = sheet.Coming.Free.SetItem(0, mat) },
            LastSowings = [null, Today.AddDays(3)],
        };
        Assert.Contains($"late plain, Ben Sun 21 Mar {room} ", Text(sheet), StringComparison.Ordinal);
    }

    // The house is at 20 C, and the crop bears 0 C. With a low of -10 C the flats on the mat are too cold in hours; with 8 C nothing is.
    [Fact]
    public void If_a_heater_stops_tonight_the_page_says_what_is_too_cold_when_it_is_noticed()
    {
        Scenario With(double low)
        {
            var site = WithForecast((12, 20, 0), (low, 20, 0));
            var body = new HouseBody
            {
                Shell = HouseShell.Hoop(6, 14),
                Covering = "double polyethylene",
                UValue = 4.5,
                AirChanges = 1,
                Transmission = 0.6,
            };
            return site with { Houses = [site.Houses[0] with { Body = body }] };
        }

        var cold = Text(Of(With(-10)));
        Assert.Contains("If a heater stops tonight", cold, StringComparison.Ordinal);
        Assert.Matches("8 hours [-−]1[0-9.]+ °C to [-−][0-9.]+ °C 3 flats ?: late none", cold);
        Assert.Contains("Main: no frost inside", Text(Of(With(8))), StringComparison.Ordinal);
        Assert.Contains("Nothing that stands in it would be too cold within 8 hours.", Text(Of(With(8))), StringComparison.Ordinal);

        // Without a forecast it says nothing of tonight.
        Assert.DoesNotContain("If a heater stops", Text(Of()), StringComparison.Ordinal);
    }

    [Fact]
    public void Names_of_ill_will_stay_names()
    {
        const string Evil = "<script>alert(1)</script>";
        var html = Html(
            Of(
                Site with
                {
                    Name = Evil,
                    Spaces = [.. Site.Spaces.Select(space => space with { Name = Evil })],
                    Batches = [.. Site.Batches.Select((order, at) => order with { Grower = $"{Evil}{at}", Variety = Evil })],
                    Seen = new SeenWeather([], []) { ForecastFile = Evil },
                },
                jobs: [Job(WorkKind.SetOut, 0, 6, Likelihood.Sure) with { From = 2 }, Job(WorkKind.OffMat, 1, 3, Likelihood.Sure)]
            )
        );
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    // The style between its marks, hashed here.
    [Fact]
    public void A_server_can_name_its_style()
    {
        var html = Html(Of());
        const string Open = "<style>";
        var style = html[(html.IndexOf(Open, StringComparison.Ordinal) + Open.Length)..html.IndexOf("</style>", StringComparison.Ordinal)];
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(style)));
        Assert.Equal($"'sha256-{hash}'", TodayFolder.StyleSource);
    }

    private static string Html(TodaySheet sheet) => Encoding.UTF8.GetString(TodayFolder.Page(sheet));

    private static string Text(TodaySheet sheet)
    {
        var html = Html(sheet);
        return Plain(html[html.IndexOf("<main>", StringComparison.Ordinal)..]);
    }

    // Cells and lines with a blank between them; the short codes have a test of their own.
    private static string Plain(string html) =>
        Blanks().Replace(WebUtility.HtmlDecode(Marks().Replace(Inline().Replace(Codes().Replace(html, ""), ""), " ")), " ").Trim();

    [GeneratedRegex(
        "<b><bdi>(?<id>[^<]*)</bdi></b> <span class=\"code\"><bdi>(?<code>[^<]*)</bdi></span> ",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Named();

    [GeneratedRegex("<span class=\"code\">.*?</span> ", RegexOptions.None, 1000)]
    private static partial Regex Codes();

    [GeneratedRegex("<h[12][^>]*>(?<text>.*?)</h[12]>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Headings();

    [GeneratedRegex("</?(?:b|bdi)(?: [^>]*)?>", RegexOptions.None, 1000)]
    private static partial Regex Inline();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Marks();

    [GeneratedRegex("\\s+", RegexOptions.None, 1000)]
    private static partial Regex Blanks();
}
