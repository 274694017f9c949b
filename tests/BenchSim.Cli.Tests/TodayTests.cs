using System.Globalization;
using System.Text;
using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"check --today" says what stands where by the log; without it, and without a log, all is as before.</summary>
public sealed class TodayTests
{
    private const string Plan =
        "id,crop,plants,trays,sow,method,flat,flats\n" + "a,tomato,200,5,2027-03-01,,,\nb,tomato,400,9,2027-03-08,pot up,open-flat,3\n";

    private const string Head = "date,batch,what,trays,flats,from,space,count,of,note\n";

    // 5 trays on the mats, 3 moved to the bench, 1 of them missing at the count: 2 on the mats, 2 on the bench; 2 of 3 flats sown.
    private const string Log =
        Head
        + "2027-03-01,a,sown,5,,,mats,,,\n2027-03-10,a,moved,3,,,bench,,,\n2027-03-08,b,sown,,2,,mats,,,\n"
        + "2027-03-12,a,counted,2,,,bench,,,\n";

    [Fact]
    public void Says_first_what_stands_what_is_due_and_what_a_count_put_right()
    {
        using var farm = Farm(Log);
        var today = Call.Run("check", farm.Path, "--today", "2027-03-12");
        Assert.Equal(
            """
            Test farm on Friday 12 March 2027: 4 trays and 2 flats stand, of 2 batches. 2
            jobs are due and not confirmed.
            """.ReplaceLineEndings("\n"),
            string.Join('\n', FirstScreen.Of(today, farm.Path).Take(2))
        );
        today.Says(
            "Not sown, so due now: sow 1 flat of b (8 March).",
            "Put right by counts: 1 tray of a missing from bench (12 March).",
            "The log has 4 lines, the latest of 12 March."
        );
        Assert.Contains("  mats   mat        2      2      4      10     6\n", today.Output, StringComparison.Ordinal);
        Assert.Contains("  bench  bench      2      0      2      60    58\n", today.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_all_of_it_batch_by_batch()
    {
        using var farm = Farm(Log);
        var lines = Call.Run("check", farm.Path, "--today=2027-03-12", "--all").Output.Split('\n').Select(line => line.TrimEnd());
        foreach (
            var line in new[]
            {
                "  mats   a      site        2         2027-03-01  2027-03-01  -",
                "  mats   b      site               2  2027-03-08  2027-03-08  -",
                "  bench  a      site        2         2027-03-10  2027-03-01  -",
                "  2027-03-12  a      bench  trays           3        2             -1",
                "  a      trays          5     5              4        0            0           0        1",
                "  b      flats          3     2       0      2        0            0           0        0",
            }
        )
        {
            Assert.Contains(line, lines, StringComparer.Ordinal);
        }
    }

    [Fact]
    public void Gives_machines_the_same()
    {
        using var farm = Farm(Log);
        using var document = JsonDocument.Parse(Call.Run("check", farm.Path, "--today=2027-03-12", "--json").Output);
        var root = document.RootElement;
        Assert.Equal("2027-03-12", root.GetProperty("today").GetString());
        Assert.Equal([6, 58, 40], root.GetProperty("spaces").EnumerateArray().Select(space => space.GetProperty("free").GetInt32()));
        Assert.Equal([0, 1], root.GetProperty("batches").EnumerateArray().Select(batch => batch.GetProperty("to_sow").GetInt32()));
        Assert.Equal(-1, root.GetProperty("counted_otherwise")[0].GetProperty("unexplained").GetInt32());
    }

    [Fact]
    public void A_line_of_a_later_day_is_a_fault()
    {
        using var farm = Farm(Log);
        var today = Call.Run("check", farm.Path, "--today", "2027-03-11");
        Assert.Equal((2, ""), (today.Code, today.Output));
        Assert.StartsWith(
            "log.csv:5:1: date is 2027-03-12, after the day asked for, 2027-03-11; mend the date, or ask for a later day\n",
            today.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_log_that_goes_on_long_after_the_day_is_one_fault()
    {
        using var farm = Farm(Log + string.Concat(Enumerable.Range(13, 5).Select(day => $"2027-03-{day},,walked,,,,mats,,,\n")));
        var today = Call.Run("check", farm.Path, "--today", "2027-03-11");
        Assert.Equal((2, ""), (today.Code, today.Output));
        Assert.StartsWith(
            "log.csv:5:1: 6 rows from here on are of days after the day asked for, 2027-03-11: up to 2027-03-17; "
                + "ask for that day or a later one, such as --today 2027-03-17, or mend the dates\n1 fault found.",
            today.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_day_of_another_year_is_refused()
    {
        using var farm = Farm(null);
        var today = Call.Run("check", farm.Path, "--today=2026-11-30");
        Assert.Equal((2, ""), (today.Code, today.Output));
        Assert.StartsWith(
            "--today 2026-11-30 is not of this season, which goes from 2027-01-18 to ",
            today.Error,
            StringComparison.Ordinal
        );
    }

    // The day may change between the two calls: then the second of two tries is of one day.
    [Fact]
    public void Without_a_date_it_is_the_day_of_the_calendar()
    {
        using var farm = Farm(null);
        string Now() => DateTime.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var (before, call, after) = (Now(), Call.Run("check", farm.Path, "--today"), Now());
        var given = new[] { before, after }.Select(day => Call.Run("check", farm.Path, "--today=" + day));
        Assert.Contains((call.Code, call.Output, call.Error), given.Select(each => (each.Code, each.Output, each.Error)));
    }

    [Theory]
    [InlineData("--sources")]
    [InlineData("--stand")]
    public void What_tells_of_the_plan_does_not_go_with_it(string option)
    {
        using var farm = Farm(null);
        var today = Call.Run("check", farm.Path, "--today=2027-03-12", option);
        Assert.Equal(2, today.Code);
        Assert.StartsWith($"{option} does not go with --today: ", today.Error, StringComparison.Ordinal);
    }

    // The log is read, and its faults are told, but the plan and its answer stay what they were.
    [Theory]
    [InlineData("check", "--all")]
    [InlineData("check", "--json")]
    [InlineData("run", "--no-report", "--seasons=5", "--json")]
    [InlineData("bottlenecks", "--seasons=5", "--json")]
    public void A_log_changes_no_other_answer(string command, params string[] options)
    {
        using var with = Farm(Log);
        using var without = Farm(null);
        Assert.Equal(
            Call.Run([command, without.Path, .. options]).Output.Replace(without.Path, "", StringComparison.Ordinal),
            Call.Run([command, with.Path, .. options]).Output.Replace(with.Path, "", StringComparison.Ordinal)
        );
    }

    // 400 batches of long names, each sown, moved and counted otherwise.
    [Fact]
    public void Fits_a_screen_whatever_is_in_the_log()
    {
        var (plan, log) = (new StringBuilder("id,crop,plants,trays,sow\n"), new StringBuilder(Head));
        for (var batch = 0; batch < 400; batch++)
        {
            var id = $"a-batch-with-quite-a-long-name-that-nobody-would-type-{batch}";
            plan.Append(CultureInfo.InvariantCulture, $"{id},tomato,100,9,2027-03-01\n");
            log.Append(CultureInfo.InvariantCulture, $"2027-03-01,{id},sown,7,,,mats,,,\n2027-03-05,{id},moved,3,,,bench,,,\n");
            log.Append(CultureInfo.InvariantCulture, $"2027-03-09,{id},counted,2,,,bench,,,\n");
        }

        using var farm = new FarmFolder(plan: plan.ToString());
        farm.Write("log.csv", log.ToString());
        _ = FirstScreen.Of(Call.Run("check", farm.Path, "--today=2027-05-12"), farm.Path);
    }

    private static FarmFolder Farm(string? log)
    {
        var farm = new FarmFolder(plan: Plan);
        if (log is not null)
        {
            farm.Write("log.csv", log);
        }

        return farm;
    }
}
