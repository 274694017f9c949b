using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"print --today" writes the page of a day.</summary>
public sealed class PrintTodayTests
{
    private const string Plan = "id,crop,grower,plants,trays,sow\na,lettuce,Ada,200,5,2027-03-01\nb,lettuce,Ben,200,5,2027-03-15\n";

    private const string Log = "date,batch,what,trays,space\n2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n";

    [Fact]
    public void Writes_one_page_beside_the_scenario_and_says_what_it_holds()
    {
        using var farm = Farm();
        var print = Call.Run("print", farm.Path, "--today", "2027-03-16");
        Assert.Equal((0, ""), (print.Code, print.Error));
        Assert.Contains("The page of Tuesday 16 March 2027:\n", print.Output, StringComparison.Ordinal);
        print.Says("by 40 seasons played on from the log; 1 due and not confirmed.");
        var page = File.ReadAllText(Path.Combine(farm.Path + "-today", "today.html"));
        Assert.Contains("Tuesday 16 March 2027", page, StringComparison.Ordinal);
        Directory.Delete(farm.Path + "-today", recursive: true);
    }

    [Fact]
    public void The_same_log_gives_the_same_page_and_an_earlier_page_is_replaced()
    {
        using var farm = Farm();
        string Page()
        {
            Assert.Equal(0, Call.Run("print", farm.Path, "--today=2027-03-16", "--out", farm.In("out")).Code);
            return File.ReadAllText(farm.In("out/today.html"));
        }

        Assert.Equal(Page(), Page());
        Assert.Equal(0, Call.Run("print", farm.Path, "--today=2027-03-17", "--out", farm.In("out")).Code);
        Assert.Contains("Wednesday 17 March 2027", File.ReadAllText(farm.In("out/today.html")), StringComparison.Ordinal);
    }

    // 5 trays of b are due since Monday the 15th and have no line: they can be sown today, in every season.
    [Fact]
    public void Gives_machines_the_numbered_jobs()
    {
        using var farm = Farm();
        using var json = JsonDocument.Parse(Call.Run("print", farm.Path, "--today=2027-03-16", "--out", farm.In("out"), "--json").Output);
        var root = json.RootElement;
        Assert.Equal(("2027-03-16", "today.html"), (root.GetProperty("today").GetString(), root.GetProperty("file").GetString()));
        var job = root.GetProperty("jobs")[0];
        Assert.Equal(
            (1, "Sow", "b", "Ben", 5, "sure", "2027-03-16", "2027-03-16", "2027-03-15"),
            (
                job.GetProperty("number").GetInt32(),
                job.GetProperty("job").GetString(),
                job.GetProperty("batch").GetString(),
                job.GetProperty("grower").GetString(),
                job.GetProperty("pieces").GetInt32(),
                job.GetProperty("likelihood").GetString(),
                job.GetProperty("first").GetString(),
                job.GetProperty("last").GetString(),
                job.GetProperty("due_since").GetString()
            )
        );
    }

    // What a line of the day itself says has been done before its round: it is no job any more.
    [Fact]
    public void What_was_done_this_morning_is_not_listed()
    {
        using var farm = Farm();
        farm.Write("log.csv", Log + "2027-03-16,b,sown,5,mats\n");
        using var json = JsonDocument.Parse(Call.Run("print", farm.Path, "--today=2027-03-16", "--out", farm.In("out"), "--json").Output);
        Assert.DoesNotContain(json.RootElement.GetProperty("jobs").EnumerateArray(), job =>
            job.GetProperty("job").GetString() == "Sow" || job.GetProperty("due_since").ValueKind != JsonValueKind.Null
        );
    }

    // Ada's trays stand in the house from 1 to 15 March: 15 days, which by tray-days are hers and equally 7.5 each.
    [Theory]
    [InlineData("tray-days", "15 of 15 days", "0 of 15 days")]
    [InlineData("equal", "7.5 of 15 days", "7.5 of 15 days")]
    public void A_growers_page_has_the_bill_so_far_by_the_rule_agreed(string rule, string ada, string ben)
    {
        using var farm = Farm();
        string[] Pages()
        {
            Assert.Equal(0, Call.Run("print", farm.Path, "--today=2027-03-16", "--out", farm.In("out")).Code);
            return File.ReadAllText(farm.In("out/today.html")).Split("id=\"grower")[1..];
        }

        Assert.All(Pages(), page => Assert.DoesNotContain("as agreed", page, StringComparison.Ordinal));
        Assert.Equal(0, Call.Run("agree", farm.Path, "--bill", rule, "--on=2027-01-15").Code);
        var pages = Pages();
        Assert.Equal(2, pages.Length);
        Assert.Contains(ada, pages[0], StringComparison.Ordinal);
        Assert.Contains(ben, pages[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--from=2027-03-01")]
    [InlineData("--to=2027-03-01")]
    [InlineData("--week=2027-03-01")]
    [InlineData("--grower=Ada")]
    [InlineData("--what=list")]
    [InlineData("--labels=a4-21")]
    [InlineData("--used=3")]
    public void What_belongs_to_the_papers_of_the_season_does_not_go_with_it(string option)
    {
        using var farm = Farm();
        var print = Call.Run("print", farm.Path, "--today=2027-03-16", option);
        Assert.Equal(2, print.Code);
        Assert.StartsWith($"{option.Split('=')[0]} does not go with --today: ", print.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_of_a_later_day_and_a_day_of_another_year_are_refused_and_nothing_is_written()
    {
        using var farm = Farm();
        var early = Call.Run("print", farm.Path, "--today=2027-03-08");
        Assert.Equal(2, early.Code);
        Assert.StartsWith("log.csv:3:1: date is 2027-03-09, after the day asked for, 2027-03-08;", early.Error, StringComparison.Ordinal);
        var other = Call.Run("print", farm.Path, "--today=2026-11-30");
        Assert.Equal(2, other.Code);
        Assert.StartsWith("--today 2026-11-30 is not of this season", other.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(farm.Path + "-today"));
    }

    [Fact]
    public void A_folder_that_is_not_of_its_kind_is_left_alone()
    {
        using var farm = Farm();
        Assert.Equal(0, Call.Run("print", farm.Path, "--out", farm.In("papers"), "--what=list").Code);
        var print = Call.Run("print", farm.Path, "--today=2027-03-16", "--out", farm.In("papers"));
        Assert.Equal(2, print.Code);
        Assert.True(File.Exists(farm.In("papers/work-list.html")));
    }

    [Fact]
    public void A_stopped_play_leaves_nothing_behind()
    {
        using var farm = Farm();
        Assert.Equal(130, Call.Run(new CancellationToken(canceled: true), "print", farm.Path, "--today=2027-03-16").Code);
        Assert.False(Directory.Exists(farm.Path + "-today"));
    }

    private static FarmFolder Farm()
    {
        var farm = new FarmFolder(site: FarmFolder.GoodSite + "\n[play]\nseasons = 40\n", plan: Plan);
        farm.Write("log.csv", Log);
        return farm;
    }
}
