using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>
/// "succession" on paper: a tray sown on a Monday goes out on the third Monday after it, one sown on Thursday 11 March on Thursday 1 April
/// (3 days to come up,
/// 14 to grow, which is Sunday the 28th, to the table on Monday, 3 nights).
/// </summary>
public sealed class SuccessionTests
{
    private const string Plan =
        "id,crop,grower,plants,sow,every_days,times,method,tray,germination\n"
        + "A,paper,Ada,50,2027-03-01,,,direct,50-cell,100 %\n"
        + "C,paper,Ben,50,2027-03-01,7,2,direct,50-cell,100 %\n";

    [Fact]
    public void Gaps_are_the_days_between_supplies()
    {
        using var folder = new TemporaryFolder();
        var schedules = Schedules(
            Call.Run(
                "succession",
                Farm(folder),
                "--batch",
                "C",
                "--every",
                "10",
                "7",
                "--times",
                "3",
                "--gap",
                "5",
                "--seasons",
                "3",
                "--json"
            )
        );
        Assert.Equal([7, 10], schedules.Select(each => each.GetProperty("every_days").GetInt32()));

        // Every 7 days: out on 22 and 29 March and 5 April; 5 days of supply each leave 2 and 2 days without.
        // Every 10 days: sown on 1 March, 11 March and, the 21st being a Sunday, 22 March; out on 22 March, 1 and 12 April; 5 and 6 days
        // without.
        Assert.Equal(
            [4.0, 11.0],
            schedules.Select(each => each.GetProperty("figures").GetProperty("gap_days").GetProperty("mean").GetDouble())
        );
        Assert.Equal(
            "2027-04-05 2027-04-12",
            string.Join(' ', schedules.Select(each => each.GetProperty("figures").GetProperty("last_set_out").GetString()))
        );
        Assert.All(schedules, each =>
            Assert.Equal(
                (3, 0),
                (
                    each.GetProperty("figures").GetProperty("fits").GetProperty("hits").GetInt32(),
                    each.GetProperty("figures").GetProperty("without_gap").GetProperty("hits").GetInt32()
                )
            )
        );
        Assert.All(schedules, each =>
            Assert.Equal(
                (0.0, 0.0),
                (
                    each.GetProperty("figures").GetProperty("late_plant_days").GetProperty("mean").GetDouble(),
                    each.GetProperty("figures").GetProperty("never_out").GetProperty("mean").GetDouble()
                )
            )
        );
    }

    [Fact]
    public void The_harvest_of_the_crop_is_taken_where_no_gap_is_asked_for()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder);
        var without = Call.Run("succession", farm, "--batch", "C", "--every", "7", "--times", "3", "--all");
        Assert.Equal(2, without.Code);
        Assert.Contains("How long one set-out of \"paper\" supplies is not known. Add --gap DAYS", without.Error, StringComparison.Ordinal);

        var crops = Path.Combine(farm, "crops.csv");
        var lines = File.ReadAllLines(crops);
        File.WriteAllText(crops, $"{lines[0]},harvest_after_days,harvest_days\n{lines[1]},30,5\n");
        var with = Call.Run("succession", farm, "--batch", "C", "--every", "7", "--times", "3", "--seasons", "3", "--all");
        Assert.Equal((0, ""), (with.Code, with.Error));
        Assert.Contains("7 days 3 150 2027-04-05 100 %", with.Sentences, StringComparison.Ordinal);
        with.Says("One set-out supplies for 5 days, from 30 days after the day on which half of its trays are out.");
    }

    [Fact]
    public void A_schedule_past_the_season_is_said_and_the_others_are_played()
    {
        using var folder = new TemporaryFolder();
        var call = Call.Run(
            "succession",
            Farm(folder),
            "--batch",
            "C",
            "--every",
            "31",
            "--times",
            "2",
            "3",
            "--gap",
            "5",
            "--seasons",
            "2",
            "--all"
        );
        Assert.Equal(0, call.Code);
        call.Says("Every 31 days, 3 times, was not played: its last date is after the season closes.", "31 days 2 100 2027-04-22");
    }

    // The schedule that the plan has is the plan.
    [Fact]
    public void The_plans_own_schedule_fits_as_often_as_the_plan_and_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        string[] trial =
        [
            "succession",
            spring,
            "--batch",
            "lettuce",
            "--every",
            "7",
            "--times",
            "4",
            "--gap",
            "9",
            "--seasons",
            "40",
            "--json",
            "--threads",
        ];
        var call = Call.Run([.. trial, "1"]);
        Assert.Equal(call.Output, Call.Run([.. trial, "3"]).Output);
        using var run = JsonDocument.Parse(Call.Run("run", spring, "--seasons", "40", "--no-report", "--json").Output);
        Assert.Equal(
            run.RootElement.GetProperty("fits").GetProperty("hits").GetInt32(),
            Assert.Single(Schedules(call)).GetProperty("figures").GetProperty("fits").GetProperty("hits").GetInt32()
        );
    }

    [Theory]
    [InlineData("c", "The plan has no line \"c\"; did you mean \"C\"")]
    [InlineData("C-1", "\"C-1\" is one succession of a line; name the line as plan.csv does, without its number.")]
    public void A_line_that_is_not_there_is_refused(string batch, string message)
    {
        using var folder = new TemporaryFolder();
        var call = Call.Run("succession", Farm(folder), "--batch", batch, "--every", "7", "--times", "3", "--gap", "5");
        Assert.Equal((2, ""), (call.Code, call.Output));
        Assert.Contains(message, call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_another_line_has_is_refused()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder);
        File.AppendAllText(Path.Combine(farm, "plan.csv"), "C-3,paper,Ada,50,2027-03-01,,,direct,50-cell,100 %\n");
        var call = Call.Run("succession", farm, "--batch", "C", "--every", "7", "--times", "3", "--gap", "5");
        Assert.Equal(2, call.Code);
        Assert.Contains("A succession would be named \"C-3\", and another line has that name.", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--every", "0")]
    [InlineData("--every", "week")]
    [InlineData("--times", "1")]
    [InlineData("--gap", "0")]
    public void Numbers_that_cannot_be_are_refused(string option, string value)
    {
        using var folder = new TemporaryFolder();
        string[] given = option switch
        {
            "--every" => ["--times", "3"],
            "--times" => ["--every", "7"],
            _ => ["--every", "7", "--times", "3"],
        };
        var call = Call.Run(["succession", Farm(folder), "--batch", "C", .. given, option, value]);
        Assert.Equal(2, call.Code);
        Assert.Contains($"{option} \"{value}\" cannot be used", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_many_schedules_are_refused()
    {
        using var folder = new TemporaryFolder();
        string[] many = [.. Enumerable.Range(2, 11).Select(number => $"{number}")];
        var call = Call.Run(["succession", Farm(folder), "--batch", "C", "--every", .. many, "--times", .. many, "--gap", "5"]);
        Assert.Equal(2, call.Code);
        Assert.Contains("make more than 100 schedules", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var folder = new TemporaryFolder();
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(
            130,
            Call.Run(stop.Token, "succession", Farm(folder), "--batch", "C", "--every", "7", "--times", "3", "--gap", "5").Code
        );
    }

    private static JsonElement[] Schedules(Call call)
    {
        Assert.Equal((0, ""), (call.Code, call.Error));
        return [.. JsonDocument.Parse(call.Output).RootElement.GetProperty("schedules").EnumerateArray()];
    }

    private static string Farm(TemporaryFolder folder)
    {
        var farm = PaperFarm.In(folder);
        File.WriteAllText(Path.Combine(farm, "plan.csv"), Plan);
        return farm;
    }
}
