using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"review" sets a season that is over beside the plan that was agreed.</summary>
public sealed class ReviewTests
{
    private const string Plan = "id,crop,grower,plants,trays,sow\na,lettuce,Ada,200,5,2027-03-01\nb,lettuce,Ben,200,5,2027-03-15\n";

    private static readonly string[] s_bases = ["counted", "played", "assumed"];

    private static readonly string[] s_quantiles = ["p10", "p50", "p90"];

    private const string Head = "date,batch,what,trays,from,space,count,minutes,note\n";

    // The dates agreed are those of "check"; a goes out 2 days after its date, b on it.
    [Fact]
    public void Says_what_went_out_what_was_written_down_and_what_the_forecast_was_worth()
    {
        using var farm = Farm();
        Assert.Equal(0, Call.Run("agree", farm.Path, "--bill=equal", "--on=2027-01-15").Code);

        // What is edited later does not change what was agreed.
        farm.Write("plan.csv", Plan.Replace("2027-03-15", "2027-03-22", StringComparison.Ordinal));
        var review = Call.Run("review", farm.Path, "--seasons=20");
        Assert.Equal((0, ""), (review.Code, review.Error));
        Assert.InRange(FirstScreen.Of(review, farm.Path).Length, 1, 24);
        review.Says(
            "of 2 batches agreed on 15 January 2027, 2 are in the field by the log, 2 of them no more than 3 days late.",
            "5 of 6 jobs due on what was begun have a line (83 %); of the others nobody knows the day.",
            "Work: 0.5 hours timed in 1 line, for which the site's minutes give 0.3;"
        );
        review.Says("Set out 2 2 100 % 0 2");
        Assert.DoesNotContain("No agreement", review.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_agreement_it_says_so_and_takes_the_plan_as_it_is()
    {
        using var farm = Farm();
        var review = Call.Run("review", farm.Path, "--seasons=5");
        review.Says(
            "of 2 batches planned, 2 are in the field by the log",
            "No agreement of this season is kept in the folder, so it is set beside the plan as it is now, later edits included."
        );

        // One of another year is none of this season.
        Directory.CreateDirectory(farm.In("agreed/2026-01-15"));
        farm.Write("agreed/2026-01-15/agreed.txt", "bill = equal\n");
        farm.Write("agreed/2026-01-15/plan.csv", Plan.Replace("2027", "2026", StringComparison.Ordinal));
        farm.Write("agreed/2026-01-15/site.toml", FarmFolder.GoodSite.Replace("2027", "2026", StringComparison.Ordinal));
        Call.Run("review", farm.Path, "--seasons=5").Says("of 2 batches planned,", "No agreement of this season");
    }

    [Fact]
    public void Gives_machines_every_figure_with_where_it_comes_from()
    {
        using var farm = Farm();
        using var json = JsonDocument.Parse(Call.Run("review", farm.Path, "--seasons=5", "--json").Output);
        var root = json.RootElement;
        Assert.Equal((JsonValueKind.Null, 5), (root.GetProperty("agreed_on").ValueKind, root.GetProperty("seasons").GetInt32()));
        var figures = root.GetProperty("figures").EnumerateArray().ToArray();
        Assert.All(figures, figure => Assert.Contains(figure.GetProperty("basis").GetString(), s_bases, StringComparer.Ordinal));
        var timed = figures.Single(figure => figure.GetProperty("figure").GetString() == "hours_timed");
        Assert.Equal((0.5, "counted"), (timed.GetProperty("value").GetDouble(), timed.GetProperty("basis").GetString()));
        var out0 = root.GetProperty("batches")[0].GetProperty("jobs").EnumerateArray().Last();
        Assert.Equal(("Set out", 2), (out0.GetProperty("job").GetString(), out0.GetProperty("days_late").GetInt32()));
        Assert.True(root.GetProperty("weeks").GetArrayLength() > 3);
        Assert.Equal(1, root.GetProperty("fuel_lines_unread").GetInt32());
    }

    [Fact]
    public void All_of_it_stands_below_the_first_screen()
    {
        using var farm = Farm();
        Call.Run("review", farm.Path, "--seasons=5", "--all")
            .Says(
                "Figures, and where each comes from",
                "Batch by batch",
                "What was forecast each Monday, and what came",
                "Work that was timed",
                "No house has fuel: shell or heater is not given.",
                "1 line of fuel not used",
                "Whether a purchase would have helped: write it as a variant"
            );
    }

    [Fact]
    public void Without_lines_there_is_nothing_to_review()
    {
        using var farm = Farm();
        farm.Write("log.csv", Head);
        var review = Call.Run("review", farm.Path);
        Assert.Equal((2, ""), (review.Code, review.Output));
        Assert.StartsWith("There is nothing to review: the folder has no log.csv with lines.", review.Error, StringComparison.Ordinal);
        farm.Write("log.csv", Head + "2027-03-01,z,sown,5,,bench,,,\n");
        Assert.Contains("log.csv:2:12: ", Call.Run("review", farm.Path).Error, StringComparison.Ordinal);
    }

    // What "run --today" says on the morning of each Monday, with the log as it was then, is what the review says was forecast.
    [Fact]
    public void A_forecast_is_that_of_run_on_the_same_morning()
    {
        using var farm = Farm();
        var log = File.ReadAllLines(farm.In("log.csv"));
        using var json = JsonDocument.Parse(Call.Run("review", farm.Path, "--seasons=20", "--json").Output);
        var weeks = json.RootElement.GetProperty("weeks").EnumerateArray().ToArray();
        Assert.True(weeks.Length > 3);
        foreach (var week in weeks)
        {
            var monday = week.GetProperty("monday").GetString()!;
            farm.Write(
                "log.csv",
                string.Concat(log.Where((row, at) => at == 0 || string.CompareOrdinal(row, monday) < 0).Select(row => row + "\n"))
            );
            Assert.Equal(0, Call.Run("run", farm.Path, "--today", monday, "--seasons=20", "--out", farm.In("out")).Code);
            using var result = JsonDocument.Parse(File.ReadAllText(farm.In("out/result.json")));
            foreach (var forecast in week.GetProperty("batches").EnumerateArray())
            {
                var batch = result
                    .RootElement.GetProperty("batches")
                    .EnumerateArray()
                    .Single(each => each.GetProperty("id").GetString() == forecast.GetProperty("batch").GetString());
                var median = batch.GetProperty("out_median");
                Assert.Equal(20, median.GetProperty("happened").GetInt32());
                foreach (var quantile in s_quantiles)
                {
                    Assert.Equal(median.GetProperty(quantile).GetString(), forecast.GetProperty(quantile).GetString());
                }
            }
        }
    }

    [Fact]
    public void The_same_season_gives_the_same_review()
    {
        using var farm = Farm();
        string Told(string threads) => Call.Run("review", farm.Path, "--seasons=8", "--json", threads).Output;
        Assert.Equal(Told("--threads=1"), Told("--threads=2"));
    }

    private static FarmFolder Farm()
    {
        var farm = new FarmFolder(site: FarmFolder.GoodSite + "\n[play]\nseasons = 40\n", plan: Plan);
        using var check = JsonDocument.Parse(Call.Run("check", farm.Path, "--json").Output);
        DateOnly Agreed(int batch, string job) =>
            DateOnly.ParseExact(check.RootElement.GetProperty("batches")[batch].GetProperty(job).GetString()!, "yyyy-MM-dd");
        farm.Write(
            "log.csv",
            Head
                + "2027-03-01,a,sown,5,,bench,,30,\n2027-03-15,b,sown,5,,bench,,,\n2027-03-16,,fuel,,,,100,,gallons\n"
                + $"{Agreed(0, "table"):yyyy-MM-dd},a,moved,5,,table,,,\n"
                + $"{Agreed(0, "set_out").AddDays(2):yyyy-MM-dd},a,set out,5,,,,,\n{Agreed(1, "set_out"):yyyy-MM-dd},b,set out,5,,,,,\n"
        );
        return farm;
    }
}
