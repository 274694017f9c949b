using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"--today" of the commands that play seasons: they play from a day on, the days before as the log has them.</summary>
public sealed class UnderwayTests
{
    private const string Plan = "id,crop,plants,trays,sow,earlier,later\na,lettuce,200,5,2027-03-01,,\nb,lettuce,200,5,2027-03-22,3,3\n";
    private const string Head = "date,batch,what,trays,space\n";
    private const string Sown = Head + "2027-03-01,a,sown,5,mats\n2027-03-09,a,moved,5,bench\n";

    public static TheoryData<string> Commands =>
        [
            "run --no-report",
            "run --no-report --with larger",
            "compare --with larger",
            "bottlenecks",
            "size --space bench",
            "size --space bench --with larger",
            "mend",
            "level",
            "dense",
        ];

    // Nothing done, nothing over: the answer without a day, byte for byte.
    [Theory]
    [MemberData(nameof(Commands))]
    public void On_the_opening_day_with_an_empty_log_every_command_answers_as_before(string command)
    {
        using var farm = Farm(Head);
        foreach (var form in new[] { "--all", "--json" })
        {
            Assert.Equal(Ask(farm, command, form), Ask(farm, command, form, "--today=2027-01-18"));
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void In_mid_season_every_command_says_from_which_day_it_was_played_and_on_what(string command)
    {
        using var farm = Farm(Sown);
        var call = Ask(farm, command, "--today=2027-03-16");
        Assert.Equal(("", 0), (call.Error, call.Code));
        Assert.Contains(" from 16 March 2027 on: ", FirstScreen.Of(call, farm.Path)[0], StringComparison.Ordinal);
        call.Says("The days before are those of the log, and nothing that is due lacks a line.");
        Ask(farm, command, "--today=2027-03-16", "--all")
            .Says(
                "Played from 16 March 2027 on:",
                "Weather: no days observed, 57 from 18 January to 15 March taken as normal; no days forecast; then that of each season."
            );
        using var document = JsonDocument.Parse(Ask(farm, command, "--today=2027-03-16", "--json").Output);
        Assert.Equal("2027-03-16", document.RootElement.GetProperty("today").GetString());
        Assert.Equal(57, document.RootElement.GetProperty("days_taken_as_normal").GetArrayLength());
        Assert.Equal(JsonValueKind.Object, document.RootElement.GetProperty("answer").ValueKind);
    }

    // The same seasons: what "run --today" plays is the base that "compare --today" sets its variants beside.
    [Fact]
    public void A_variant_fits_as_often_as_when_it_is_compared()
    {
        using var farm = Farm(Sown);
        foreach (var with in new[] { "", " --with larger" })
        {
            using var run = Answer(farm, $"run --no-report{with}");
            using var compare = Answer(farm, "compare --with larger");
            var comparison = compare.RootElement.GetProperty("answer").GetProperty("comparison");
            var side = with.Length == 0 ? comparison : comparison.GetProperty("variants")[0];
            Assert.True(
                JsonElement.DeepEquals(side.GetProperty("fits"), run.RootElement.GetProperty("answer").GetProperty("fits")),
                $"{with}: {side}"
            );
        }
    }

    [Theory]
    [InlineData(
        "[[plan]]\nbatch = \"a\"\nsow = 2027-03-04\n",
        "batch \"a\" would be sown 2027-03-04 instead of 2027-03-01, and by the log it has been sown; leave its sow date as it was"
    )]
    [InlineData("[[plan]]\nbatch = \"a\"\ndrop = true\n", "batch \"a\" is left out, and by the log it has been sown; leave it in")]
    [InlineData(
        "[[plan]]\nbatch = \"a\"\ntrays = 8\n",
        "batch \"a\" would be sown otherwise, and by the log it has been sown; "
            + "leave its crop, trays, flats, seed and method as they were; plants and set_out may change"
    )]
    [InlineData(
        "[[plan]]\nbatch = \"a\"\nset_out = 2027-03-12\n",
        "batch \"a\" would be wanted 2027-03-12, which is over on 2027-03-16; write a set_out of that day or later"
    )]
    [InlineData(
        "[[plan]]\nbatch = \"b\"\nsow = 2027-03-15\n",
        "batch \"b\" would have to be sown on 2027-03-15, which is over on 2027-03-16; let it be sown on that day or later"
    )]
    [InlineData(
        "[[house]]\nid = \"main\"\nopen = 2027-03-01\n",
        "the house \"main\" would be open on other days before 2027-03-16, which are over; "
            + "open it on that day or later, or leave it as it was"
    )]
    public void A_variant_that_would_change_what_is_over_is_a_fault(string variant, string fault)
    {
        using var farm = Farm(Sown);
        farm.Write("variants/larger.toml", variant);
        var call = Ask(farm, "compare --with larger", "--today=2027-03-16");
        Assert.Equal((2, ""), (call.Code, call.Output));
        Assert.Contains(fault, call.Error, StringComparison.Ordinal);

        // A season that has not begun may be planned as one likes.
        Assert.Equal(0, Ask(farm, "compare --with larger").Code);
    }

    [Fact]
    public void A_space_in_which_something_stood_cannot_be_taken_out()
    {
        using var farm = Farm(Sown);
        farm.Write("variants/larger.toml", "remove = [\"mats\"]\n");
        Assert.Contains(
            "batch \"a\" has stood in \"mats\", which is taken out; leave that space where it is; it may have other places from today on",
            Ask(farm, "compare --with larger", "--today=2027-03-16").Error,
            StringComparison.Ordinal
        );
    }

    // a is sown, so planning anew moves b alone; more slack would have sown a sooner too.
    [Fact]
    public void Planned_anew_only_what_is_still_to_come_moves()
    {
        using var farm = new FarmFolder(plan: "id,crop,plants,trays,set_out\na,lettuce,200,5,2027-05-03\nb,lettuce,200,5,2027-06-07\n");
        farm.Write("variants/larger.toml", "[rules]\nslack_days = 7\n");
        using var document = JsonDocument.Parse(Call.Run("check", farm.Path, "--json").Output);
        var sow = document.RootElement.GetProperty("batches")[0].GetProperty("sow").GetString();
        farm.Write("log.csv", Head + $"{sow},a,sown,5,bench\n");
        Ask(farm, "compare --with larger --replan --all").Says("2 of 2 sowings move (7 days earlier)");
        Ask(farm, "compare --with larger --replan --all", $"--today={sow}").Says("1 of 2 sowings moves (7 days earlier): b");
    }

    // What the program may move is what is still to come: b may be sown 3 days sooner or later, a stands on a bench.
    [Fact]
    public void Levelling_leaves_sowings_that_were_made()
    {
        using var farm = Farm(Sown);
        farm.Write("plan.csv", Plan.Replace("2027-03-01,,", "2027-03-01,3,3", StringComparison.Ordinal));
        Ask(farm, "level --all", "--today=2027-03-16").Says("2 sowings, of which 1 may move.");
        Ask(farm, "level --all").Says("2 sowings, of which 2 may move.");
    }

    [Fact]
    public void Dense_sowing_is_asked_of_what_is_not_sown_yet()
    {
        using var farm = Farm(Sown);
        farm.Write("plan.csv", Plan.Replace("lettuce", "tomato", StringComparison.Ordinal));
        Ask(farm, "dense --all", "--today=2027-03-16").Says("Tomato (1 sowing; the plan sows it directly)");
        farm.Write("log.csv", Sown + "2027-03-22,b,sown,5,mats\n");
        Ask(farm, "dense --all", "--today=2027-03-23").Says("all of it has been sown");
    }

    [Fact]
    public void A_case_does_not_go_with_a_day()
    {
        using var farm = Farm(Sown);
        Assert.Contains(
            "--case does not go with --today yet; leave one of the two out.",
            Ask(farm, "compare --with larger --case", "--today=2027-03-16").Error,
            StringComparison.Ordinal
        );
    }

    private static JsonDocument Answer(FarmFolder farm, string command) =>
        JsonDocument.Parse(Ask(farm, command, "--today=2027-03-16", "--json").Output);

    private static Call Ask(FarmFolder farm, string command, params string[] more)
    {
        var words = command.Split(' ');
        return Call.Run([words[0], farm.Path, .. words[1..], "--seasons=40", .. more]);
    }

    private static FarmFolder Farm(string log)
    {
        var farm = new FarmFolder(plan: Plan);
        farm.Write("log.csv", log);
        farm.Write("variants/larger.toml", "[[space]]\nid = \"bench\"\nplaces = 80\n");
        return farm;
    }
}
