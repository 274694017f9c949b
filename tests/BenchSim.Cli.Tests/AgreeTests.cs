using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"agree" shows the rules for the bill, and keeps what was agreed.</summary>
public sealed class AgreeTests
{
    private const string Plan = "id,crop,grower,plants,trays,sow\na,lettuce,Ada,200,5,2027-03-01\nb,lettuce,Ben,200,5,2027-03-15\n";

    [Fact]
    public void Without_a_rule_it_shows_the_three_and_keeps_nothing()
    {
        using var farm = Farm();
        var agree = Call.Run("agree", farm.Path);
        Assert.Equal((0, ""), (agree.Code, agree.Error));
        Assert.InRange(FirstScreen.Of(agree, farm.Path).Length, 1, 24);
        agree.Says(
            "2 growers may divide that by three rules.",
            "Keep the plan and a rule (equal, tray-days, full-weeks):",
            "Neither shell nor heater of a house is given, so each day on which trays stand in one counts alike."
        );
        Assert.Contains(
            "grower  batches  equal  tray-days  full-weeks  days in hand  likely late\n",
            agree.Output,
            StringComparison.Ordinal
        );
        Assert.False(Directory.Exists(farm.In("agreed")));
    }

    // Two growers, one rule: half each.
    [Fact]
    public void Gives_machines_every_bill()
    {
        using var farm = Farm();
        using var json = JsonDocument.Parse(Call.Run("agree", farm.Path, "--json", "--seasons=20").Output);
        var root = json.RootElement;
        Assert.Equal(("days", 20), (root.GetProperty("unit").GetString(), root.GetProperty("seasons").GetInt32()));
        var mean = root.GetProperty("mean").GetDouble();
        foreach (var grower in root.GetProperty("growers").EnumerateArray())
        {
            var equal = grower.GetProperty("bills")[0];
            Assert.Equal("equal", equal.GetProperty("rule").GetString());
            Assert.Equal(mean / 2, equal.GetProperty("amount").GetDouble(), 2e-3);
        }
    }

    [Fact]
    public void Keeps_the_files_of_the_plan_and_the_rule_with_the_date()
    {
        using var farm = Farm();
        farm.Write("log.csv", "date,batch,what,trays,space\n2027-03-01,a,sown,5,mats\n");
        var agree = Agree(farm);
        Assert.Equal((0, ""), (agree.Code, agree.Error));
        agree.Says("agreed on 15 January 2027, 2 sowings; the bill is divided by tray-days.");
        var kept = farm.In("agreed/2027-01-15");
        Assert.Equal(
            ["agreed.txt", "plan.csv", "site.toml"],
            Directory
                .EnumerateFiles(kept)
                .Select(file => Path.GetFileName(file))
                .Where(name => name[0] != '.')
                .Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        Assert.Equal(File.ReadAllBytes(farm.In("plan.csv")), File.ReadAllBytes(Path.Combine(kept, "plan.csv")));
        Assert.EndsWith("\nbill = tray-days\n", File.ReadAllText(Path.Combine(kept, "agreed.txt")), StringComparison.Ordinal);

        // It is a scenario folder like any other.
        Assert.Equal(0, Call.Run("check", kept).Code);
    }

    [Fact]
    public void The_same_day_gives_the_same_bytes()
    {
        using var one = Farm();
        using var other = Farm();
        Assert.Equal((0, 0), (Agree(one).Code, Agree(other).Code));
        foreach (var file in Directory.EnumerateFiles(one.In("agreed/2027-01-15")))
        {
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(other.In($"agreed/2027-01-15/{Path.GetFileName(file)}")));
        }
    }

    [Fact]
    public void An_agreement_of_the_day_stays_unless_it_is_to_be_replaced()
    {
        using var farm = Farm();
        Agree(farm);
        var again = Call.Run("agree", farm.Path, "--bill=equal", "--on=2027-01-15");
        Assert.Equal((2, ""), (again.Code, again.Output));
        Assert.StartsWith("There is an agreement of 2027-01-15 already, and it stays as it is.", again.Error, StringComparison.Ordinal);
        Assert.Contains("bill = tray-days", File.ReadAllText(farm.In("agreed/2027-01-15/agreed.txt")), StringComparison.Ordinal);

        Assert.Equal(0, Call.Run("agree", farm.Path, "--bill=equal", "--on=2027-01-15", "--replace").Code);
        Assert.Contains("bill = equal", File.ReadAllText(farm.In("agreed/2027-01-15/agreed.txt")), StringComparison.Ordinal);

        // What somebody has changed in it since is not lost unseen.
        farm.Write("agreed/2027-01-15/plan.csv", Plan + "c,lettuce,Ada,50,1,2027-03-15\n");
        var changed = Call.Run("agree", farm.Path, "--bill=equal", "--on=2027-01-15", "--replace");
        Assert.Equal(2, changed.Code);
        Assert.Contains("you changed 'plan.csv'", changed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stopped_one_leaves_nothing_behind_and_a_plan_with_faults_is_not_agreed()
    {
        using var farm = Farm();
        Assert.Equal(130, Call.Run(new CancellationToken(canceled: true), "agree", farm.Path, "--bill=equal", "--on=2027-01-15").Code);
        Assert.False(Directory.Exists(farm.In("agreed")));
        farm.Write("plan.csv", Plan.Replace("lettuce,Ben", "letuce,Ben", StringComparison.Ordinal));
        Assert.Equal(2, Agree(farm).Code);
        Assert.False(Directory.Exists(farm.In("agreed")));
    }

    [Fact]
    public void Check_says_what_has_changed_since_the_latest()
    {
        using var farm = Farm();
        Assert.DoesNotContain("agreed", Call.Run("check", farm.Path).Output, StringComparison.Ordinal);
        Agree(farm);
        Call.Run("check", farm.Path).Says("The plan is as it was agreed on 15 January 2027.");
        farm.Write("plan.csv", Plan.Replace("Ben,200", "Ben,150", StringComparison.Ordinal) + "c,lettuce,Ada,50,1,2027-03-15\n");
        Call.Run("check", farm.Path).Says("Since it was agreed on 15 January 2027, the plan has changed: 1 sowing otherwise and 1 new.");
        using (var json = JsonDocument.Parse(Call.Run("check", farm.Path, "--json").Output))
        {
            var agreed = json.RootElement.GetProperty("agreed");
            Assert.Equal(
                ("2027-01-15", "tray-days", 1, 1, 0),
                (
                    agreed.GetProperty("on").GetString(),
                    agreed.GetProperty("bill").GetString(),
                    agreed.GetProperty("changed").GetInt32(),
                    agreed.GetProperty("new").GetInt32(),
                    agreed.GetProperty("gone").GetInt32()
                )
            );
        }

        Assert.Equal(0, Call.Run("agree", farm.Path, "--bill=equal", "--on=2027-02-01").Code);
        Call.Run("check", farm.Path).Says("The plan is as it was agreed on 1 February 2027.");
    }

    [Fact]
    public void Check_goes_on_where_the_agreed_plan_cannot_be_read_and_says_what_was_changed_in_it()
    {
        using var farm = Farm();
        Agree(farm);
        farm.Write("agreed/2027-01-15/plan.csv", "id,crop\n");
        var check = Call.Run("check", farm.Path);
        Assert.Equal(0, check.Code);
        check.Says("The plan agreed on 15 January 2027 can no longer be read;", "is not as it was written: plan.csv.");
    }

    [Theory]
    [InlineData("bill = halves\n", "agreed/2027-01-15/agreed.txt:1:0: \"bill = halves\" names no rule for the bill; write a line such as")]
    [InlineData("# nothing\n", "agreed/2027-01-15/agreed.txt:0:0: it does not say by which rule the bill is divided; write a line such as")]
    public void A_rule_that_cannot_be_read_is_a_fault_with_its_place(string text, string fault)
    {
        using var farm = Farm();
        Agree(farm);
        farm.Write("agreed/2027-01-15/agreed.txt", text);
        var check = Call.Run("check", farm.Path);
        Assert.Equal(2, check.Code);
        Assert.Contains(fault, check.Error, StringComparison.Ordinal);
    }

    // Nothing that is played knows of it.
    [Fact]
    public void Changes_nothing_of_what_is_played()
    {
        using var farm = Farm();
        var before = Call.Run("run", farm.Path, "--no-report", "--json").Output;
        Agree(farm);
        Assert.Equal(before, Call.Run("run", farm.Path, "--no-report", "--json").Output);
    }

    [Theory]
    [InlineData("--on=2027-01-15", "--on goes with --bill; name a rule, or leave it out.")]
    [InlineData("--replace", "--replace goes with --bill; name a rule, or leave it out.")]
    [InlineData("--bill=halves", "--bill \"halves\" cannot be used; write equal or tray-days or full-weeks.")]
    [InlineData("--bill=equal --seasons=5", "--seasons does not go with --bill: nothing is played for it; leave it out.")]
    public void Options_that_do_not_go_together_are_refused(string options, string why)
    {
        using var farm = Farm();
        var agree = Call.Run(["agree", farm.Path, .. options.Split(' ')]);
        Assert.Equal(2, agree.Code);
        Assert.StartsWith(why, agree.Error, StringComparison.Ordinal);
    }

    private static Call Agree(FarmFolder farm) => Call.Run("agree", farm.Path, "--bill", "tray-days", "--on", "2027-01-15");

    private static FarmFolder Farm() => new(site: FarmFolder.GoodSite + "\n[play]\nseasons = 40\n", plan: Plan);
}
