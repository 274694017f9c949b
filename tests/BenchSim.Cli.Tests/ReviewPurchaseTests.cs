using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"review --with" judges a purchase on top of what would have cost nothing.</summary>
[Trait("Category", "Slow")]
public sealed class ReviewPurchaseTests
{
    private const string Log = "date,batch,what,trays,space\n2027-03-15,a,sown,20,mats\n";

    // More benches help whoever leaves the second house shut; who opens it in time has room enough without them.
    [Fact]
    public void What_a_free_change_does_too_is_not_counted_for_the_purchase()
    {
        using var farm = LateHouse();
        var purchase = Judged(farm);
        Assert.Contains(purchase.GetProperty("free_changes").EnumerateArray(), change =>
            change.GetString()!.StartsWith("open second", StringComparison.Ordinal)
        );
        Assert.InRange(Gain(purchase, "alone_fits_change"), 0.1, 1);
        Assert.Equal(0, Gain(purchase, "fits_change"));

        var review = Call.Run("review", farm.Path, "--with=benches", "--seasons=100");
        Assert.InRange(FirstScreen.Of(review, farm.Path).Length, 1, 24);
        review.Says(
            "On top of what would have cost nothing, \"benches\" would have changed nothing that shows.",
            "What costs nothing: second open on",
            "with \"benches\" on top"
        );
    }

    // Where nothing that is free is to be had, what is gained on top is what is gained alone.
    [Fact]
    public void Without_free_changes_all_of_the_gain_is_that_of_the_purchase()
    {
        using var farm = LateHouse();
        farm.Write("not-here.txt", "open\nheat\nrelief\ndense\nfinish\nslack\nsow\nlevel\n");
        var purchase = Judged(farm);
        Assert.Equal(0, purchase.GetProperty("free_changes").GetArrayLength());
        Assert.Equal(purchase.GetProperty("agreed").GetRawText(), purchase.GetProperty("free").GetRawText());
        foreach (var change in new[] { "fits_change", "late_change" })
        {
            Assert.Equal(purchase.GetProperty("alone_" + change).GetRawText(), purchase.GetProperty(change).GetRawText());
        }

        Assert.InRange(Gain(purchase, "fits_change"), 0.1, 1);
        Call.Run("review", farm.Path, "--with=benches", "--seasons=100", "--all")
            .Says(
                "Nothing that costs nothing was found to help.",
                "\"benches\" would have made the plan fit more often.",
                "in drawn weather, as none of this season was observed"
            );
    }

    // A farm whose every day was observed at 12 to 20 C is played as one whose weather is nothing but that.
    [Fact]
    public void It_is_played_in_the_weather_that_was()
    {
        using var constant = LateHouse();
        constant.Write("not-here.txt", "open\nheat\nrelief\ndense\nfinish\nslack\nsow\nlevel\n");
        using var observed = LateHouse();
        observed.Write("not-here.txt", "open\nheat\nrelief\ndense\nfinish\nslack\nsow\nlevel\n");
        var opens = new DateOnly(2027, 1, 18);
        var days = Enumerable.Range(0, 164).Select(day => opens.AddDays(day)).ToArray();
        observed.Write("seen.csv", "date,tmin,tmax,rain\n" + string.Concat(days.Select(day => $"{day:yyyy-MM-dd},12,20,0\n")));
        observed.Write(
            "site.toml",
            File.ReadAllText(observed.In("site.toml"))
                .Replace("kind = \"constant\"", "kind = \"normals\"\nobserved = \"seen.csv\"", StringComparison.Ordinal)
                .Replace(
                    "low = \"12 C\"",
                    $"temperature_unit = \"C\"\nlow = [{Months("12")}]\nrain_unit = \"mm\"\nrain = [{Months("30")}]",
                    StringComparison.Ordinal
                )
                .Replace("high = \"20 C\"", $"high = [{Months("20")}]\nrain_days = [{Months("8")}]", StringComparison.Ordinal)
        );
        foreach (var farm in new[] { constant, observed })
        {
            farm.Write("log.csv", Log + "2027-06-29,,walked,,table\n");
        }

        var (still, drawn) = (Judged(constant), Judged(observed));
        Assert.Equal(0, still.GetProperty("days_observed").GetInt32());
        Assert.Equal(163, drawn.GetProperty("days_observed").GetInt32());
        Assert.Equal(still.GetProperty("agreed").GetRawText(), drawn.GetProperty("agreed").GetRawText());
        Assert.Equal(still.GetProperty("bought").GetRawText(), drawn.GetProperty("bought").GetRawText());
    }

    [Fact]
    public void What_is_no_purchase_or_does_not_lie_on_the_plan_is_refused()
    {
        using var farm = LateHouse();
        foreach (var other in new[] { "drop = true", "plants = 50", "shift_days = 14" })
        {
            farm.Write("variants/fewer.toml", $"[[plan]]\nbatch = \"a\"\n{other}\n");
            var fewer = Call.Run("review", farm.Path, "--with=fewer", "--seasons=5");
            Assert.Equal((2, ""), (fewer.Code, fewer.Output));
            Assert.Contains("has other sowings than the plan", fewer.Error, StringComparison.Ordinal);
        }

        var unknown = Call.Run("review", farm.Path, "--with=bench", "--seasons=5");
        Assert.Equal(2, unknown.Code);
        Assert.Contains("there is no variant \"bench\"", unknown.Error, StringComparison.Ordinal);

        // A bench that came after the agreement has no kind there.
        Assert.Equal(0, Call.Run("agree", farm.Path, "--bill=equal", "--on=2027-01-15").Code);
        farm.Write(
            "site.toml",
            File.ReadAllText(farm.In("site.toml")) + "\n[[space]]\nid = \"late\"\nkind = \"bench\"\nhouse = \"main\"\nplaces = 5\n"
        );
        farm.Write("variants/late.toml", "[[space]]\nid = \"late\"\nplaces = 50\n");
        var late = Call.Run("review", farm.Path, "--with=late", "--seasons=5");
        Assert.Equal(2, late.Code);
        Assert.Contains("variants/late.toml:1:", late.Error, StringComparison.Ordinal);
        Assert.Contains("laid over the plan that is reviewed", late.Error, StringComparison.Ordinal);
    }

    private static FarmFolder LateHouse()
    {
        var farm = MendFarms.WithLateHouse();
        farm.Write("log.csv", Log);
        farm.Write("variants/benches.toml", "[[space]]\nid = \"bench\"\nplaces = 200\n");
        return farm;
    }

    private static JsonElement Judged(FarmFolder farm)
    {
        var call = Call.Run("review", farm.Path, "--with=benches", "--seasons=100", "--json");
        Assert.Equal((0, ""), (call.Code, call.Error));
        return JsonDocument.Parse(call.Output).RootElement.GetProperty("purchase");
    }

    private static string Months(string value) => string.Join(", ", Enumerable.Repeat(value, 12));

    private static double Gain(JsonElement purchase, string change) => purchase.GetProperty(change).GetProperty("difference").GetDouble();
}
