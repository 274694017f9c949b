using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"trust" says how sure the answer is when the values under it may be wrong.</summary>
public sealed class TrustTests
{
    // scenarios/by-hand writes every value of its own, and every one of its weather: nothing is in doubt, and the answer is that of a run.
    [Fact]
    public void Where_every_value_is_the_users_own_nothing_is_in_doubt()
    {
        using var folder = new TemporaryFolder();
        var trust = Call.Run("trust", PaperFarm.In(folder), "--seasons", "10", "--json");
        Assert.Equal((0, ""), (trust.Code, trust.Error));
        using var answer = JsonDocument.Parse(trust.Output);
        Assert.Equal(0, answer.RootElement.GetProperty("values").GetArrayLength());

        using var run = JsonDocument.Parse(Call.Run("run", folder.In("paper"), "--no-report", "--json").Output);
        Assert.Equal(run.RootElement.GetProperty("fits").GetRawText(), answer.RootElement.GetProperty("fits").GetRawText());
        Call.Run("trust", folder.In("paper"), "--seasons", "10").Says("All values behind that are yours, so none is taken to be wrong.");
    }

    // Where the paper farm's growing days may be a quarter more or less, that value alone may be wrong.
    [Fact]
    public void A_row_of_ranges_puts_a_value_in_doubt()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        folder.Write("paper/ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,+25 %,uniform\n");
        var call = Call.Run("trust", scenario, "--seasons", "10", "--sets", "32", "--json", "--out", folder.In("out"));
        Assert.Equal((0, ""), (call.Code, call.Error));
        using var answer = JsonDocument.Parse(call.Output);
        var value = Assert.Single(answer.RootElement.GetProperty("values").EnumerateArray());
        Assert.Equal("days_to_ready", value.GetProperty("what").GetString());
        Assert.Equal(call.Output, File.ReadAllText(folder.In("out/trust.json")));
        Assert.True(File.Exists(folder.In("out/charts/values.png")));
        Assert.True(File.Exists(folder.In("out/tables/values.csv")));
    }

    [Fact]
    public void The_answer_does_not_depend_on_threads()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        folder.Write("paper/ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,+25 %,uniform\ngrowth_cv,,0.01,0.2,\n");
        string[] words = ["trust", scenario, "--seasons", "10", "--sets", "32", "--json", "--threads"];
        Assert.Equal(Call.Run([.. words, "1"]).Output, Call.Run([.. words, "3"]).Output);
    }

    [Fact]
    public void A_run_says_how_far_the_values_may_move_it_only_for_the_same_files()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        folder.Write("paper/ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,+25 %,uniform\n");
        Assert.Equal(0, Call.Run("trust", scenario, "--seasons", "10", "--sets", "32", "--out", folder.In("out")).Code);
        using var trust = JsonDocument.Parse(File.ReadAllText(folder.In("out/trust.json")));
        var fits = trust.RootElement.GetProperty("figures")[0];

        var run = Call.Run("run", scenario, "--no-report", "--json", "--trust", folder.In("out"));
        Assert.Equal((0, ""), (run.Code, run.Error));
        using var answer = JsonDocument.Parse(run.Output);
        var known = answer.RootElement.GetProperty("trust");
        Assert.Equal(1, known.GetProperty("values").GetInt32());
        Assert.Equal(fits.GetProperty("low").GetRawText(), known.GetProperty("low").GetRawText());
        Call.Run("run", scenario, "--no-report", "--trust", folder.In("out"))
            .Says("Over the range of the one value that may be wrong it is ");

        folder.Write("paper/ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-20 %,+25 %,uniform\n");
        var other = Call.Run("run", scenario, "--no-report", "--trust", folder.In("out"));
        Assert.Equal(2, other.Code);
        Assert.Contains("is of other files: \"ranges.csv\" is not as then. Ask \"trust\" again.", other.Error, StringComparison.Ordinal);
        Assert.Contains(
            "holds no answer of \"trust\" that this version can read",
            Call.Run("run", scenario, "--no-report", "--trust", folder.In("paper/plan.csv")).Error,
            StringComparison.Ordinal
        );
    }

    // The case says the command that makes it again: the study of the values first, with the options it was asked with.
    [Fact]
    public void A_case_says_how_far_the_values_may_move_the_plan_as_it_is()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        folder.Write("paper/ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,+25 %,uniform\n");
        folder.Write("paper/variants/back.toml", "[rules]\nmove_back = true\n");
        Assert.Equal(0, Call.Run("trust", scenario, "--seasons", "10", "--sets", "32", "--seed", "7", "--out", folder.In("trust")).Code);

        string[] compare = ["compare", scenario, "--with", "back", "--seasons", "50", "--seed", "3", "--case", "--out", folder.In("case")];
        Assert.Equal((0, ""), Ended(Call.Run([.. compare, "--trust", folder.In("trust")])));
        var with = File.ReadAllBytes(folder.In("case/case.pdf"));
        Assert.Equal((0, ""), Ended(Call.Run(compare)));
        Assert.NotEqual(File.ReadAllBytes(folder.In("case/case.pdf")), with);

        // In the folder of the case, as its last line says.
        string[] again = ["trust", folder.In("case/inputs"), "--sets", "32", "--seasons", "10", "--seed", "7", "--out", folder.In("again")];
        Assert.Equal(0, Call.Run(again).Code);
        compare[1] = folder.In("case/inputs");
        compare[^1] = folder.In("second");
        Assert.Equal((0, ""), Ended(Call.Run([.. compare, "--trust", folder.In("again")])));
        Assert.Equal(with, File.ReadAllBytes(folder.In("second/case.pdf")));

        static (int, string) Ended(Call call) => (call.Code, call.Error);
    }

    // At the values given, what the variant brings a year is the net present value of "invest" over the present value of 1 in each of ten
    // years at 6 %: (1 - 1.06^-10) / 0.06 = 7.3600870514.
    [Fact]
    public void Where_the_variant_has_its_terms_the_choice_is_one_of_money()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        folder.Write("paper/ranges.csv", "what,of,low,high,shape\ndays_to_ready,,-25 %,+25 %,uniform\n");
        folder.Write(
            "paper/variants/back.toml",
            "[rules]\nmove_back = true\n[invest]\ncapital = 300\nlife_years = 10\ndiscount_rate = \"6 %\"\n"
                + "plant_on_time = 0.5\nupkeep = 4\n"
        );
        string[] played = ["--with", "back", "--seed", "5", "--json"];
        var invest = Call.Run(["invest", scenario, .. played]);
        Assert.Equal((0, ""), (invest.Code, invest.Error));
        var trust = Call.Run(["trust", scenario, .. played, "--seasons", "40", "--sets", "32"]);
        Assert.Equal((0, ""), (trust.Code, trust.Error));

        using var money = JsonDocument.Parse(invest.Output);
        using var answer = JsonDocument.Parse(trust.Output);
        var net = money.RootElement.GetProperty("net_present_value").GetProperty("mean").GetDouble();
        var choice = answer.RootElement.GetProperty("choice");
        Assert.Equal(net / 7.3600870514, choice.GetProperty("money").GetProperty("gain_given").GetDouble(), 1e-4);
        Assert.Equal(JsonValueKind.Array, choice.GetProperty("worth").ValueKind);
        Call.Run(["trust", scenario, "--with", "back", "--seasons", "40", "--sets", "32"]).Says("After all it costs, it brings ");
    }

    [Fact]
    public void An_answer_with_a_number_that_is_none_is_no_answer()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        Assert.Equal(0, Call.Run("trust", scenario, "--seasons", "10", "--sets", "32", "--seed", "7", "--out", folder.In("out")).Code);
        var text = File.ReadAllText(folder.In("out/trust.json"));
        folder.Write("out/trust.json", text.Replace("\"seed\": \"7\"", "\"seed\": \"99999999999999999999\"", StringComparison.Ordinal));
        var call = Call.Run("run", scenario, "--no-report", "--trust", folder.In("out"));
        Assert.Equal(2, call.Code);
        Assert.Contains("holds no answer of \"trust\" that this version can read", call.Error, StringComparison.Ordinal);
    }

    // A variant that was asked about is no file of the plan; another day is another answer.
    [Fact]
    public void A_run_takes_the_answer_of_a_choice_but_not_of_another_day()
    {
        using var folder = new TemporaryFolder();
        var scenario = PaperFarm.In(folder);
        folder.Write("paper/variants/back.toml", "[rules]\nmove_back = true\n");
        Assert.Equal(0, Call.Run("trust", scenario, "--with", "back", "--seasons", "10", "--out", folder.In("out")).Code);
        Assert.Equal(0, Call.Run("run", scenario, "--no-report", "--trust", folder.In("out")).Code);

        var later = Call.Run("run", scenario, "--no-report", "--trust", folder.In("out"), "--today", "2027-03-02");
        Assert.Equal(2, later.Code);
        Assert.Contains(
            "is of whole seasons, and this run is of those from 2027-03-02 on. Ask \"trust\" for the same days.",
            later.Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("--sets \"31\" cannot be used; write a whole number from 32 to 65,536", "--sets", "31")]
    [InlineData("--seasons \"9\" cannot be used; write a whole number from 10 to 10,000", "--seasons", "9")]
    [InlineData("--with is empty; write a name.", "--with", "")]
    [InlineData("variants:0:0: there is no variant \"none\"", "--with", "none")]
    public void What_cannot_be_asked_is_one_sentence(string why, params string[] words)
    {
        using var folder = new TemporaryFolder();
        var call = Call.Run(["trust", PaperFarm.In(folder), .. words]);
        Assert.Equal(2, call.Code);
        Assert.StartsWith(why, call.Error, StringComparison.Ordinal);
        Assert.Equal("", call.Output);
    }
}
