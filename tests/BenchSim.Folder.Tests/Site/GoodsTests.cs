using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;

namespace BenchSim.Folder.Tests.Site;

/// <summary>[seed], [prices] and the price of a batch's seed. A section put before [weather] in the good site begins on line 24.</summary>
public class GoodsTests
{
    [Fact]
    public void Storage_and_prices_are_read()
    {
        using var folder = new TestFolder(
            With(
                "[seed]\nmoisture = \"7 %\"\nstorage = \"50 F\"\n[prices]\ncurrency = \"$\"\nlabour_hour = 18\nmix_litre = "
                    + "0.12\nthousand_seeds = 40.5"
            ),
            "id,crop,plants,sow,thousand_seeds\na,tomato,100,2027-03-01,250\nb,tomato,100,2027-03-01,\n"
        );
        var reading = folder.Read();
        Assert.Empty(reading.Warnings);
        var scenario = reading.Scenario!;
        // 50 F = 10 C.
        Assert.Equal(new SeedStorage(7, 10), scenario.Rules.SeedStorage);
        Assert.Equal(
            new Prices
            {
                Currency = "$",
                LabourHour = 18,
                MixLitre = 0.12,
                ThousandSeeds = 40.5,
            },
            scenario.Rules.Prices
        );
        Assert.Equal([250, null], scenario.Batches.Select(batch => batch.ThousandSeeds).ToArray());
    }

    [Fact]
    public void Without_the_sections_seed_does_not_age_and_nothing_has_a_price()
    {
        using var folder = new TestFolder();
        var rules = folder.Read().Scenario!.Rules;
        Assert.Null(rules.SeedStorage);
        Assert.Equal(new Prices(), rules.Prices);
    }

    [Fact]
    public void Moisture_outside_what_was_measured_is_a_warning()
    {
        using var folder = new TestFolder(With("[seed]\nmoisture = \"16 %\"\nstorage = \"5 C\""));
        var reading = folder.Read();
        Assert.NotNull(reading.Scenario);
        Assert.Equal(
            "site.toml:25:12: moisture is \"16 %\", and the life of seed was measured at about 5 % to 15 %; trust the age of seed "
                + "less, or test it again before sowing",
            Assert.Single(reading.Warnings).ToString()
        );
    }

    [Theory]
    [InlineData(
        "[seed]\nmoisture = \"8 %\"",
        "site.toml:25:1: moisture is given but storage is not; add a line such as storage = \"50 F\", or leave both out"
    )]
    [InlineData(
        "[seed]\nstorage = \"50 F\"",
        "site.toml:25:1: storage is given but moisture is not; add a line such as moisture = \"8 %\", or leave both out"
    )]
    [InlineData("[seed]\nmoisture = 8\nstorage = 5", "site.toml:25:12: moisture is 8, which is more than all; write 8 % or 0.08")]
    [InlineData(
        "[seed]\nmoisture = 0.3\nstorage = 5",
        "site.toml:25:12: moisture is \"0.3\"; write a share above 0 % and below 30 %; packed seed has about 5 % to 15 %"
    )]
    [InlineData(
        "[seed]\nmoisture = 0.1\nstorage = \"-30 C\"",
        "site.toml:26:11: storage is \"-30 C\", which is -30 C; write a temperature from -20 C to 50 C"
    )]
    [InlineData(
        "[prices]\ncurrency = \"a very long one\"",
        "site.toml:25:12: currency is \"a very long one\", which has 15 characters; write a sign or a code of at most 10 characters"
    )]
    [InlineData(
        "[prices]\ncurrency = \"\\u202E\"",
        "site.toml:25:12: currency is \"[U+202E]\", which holds a line break or an invisible character; write the name on one line "
            + "with visible characters"
    )]
    [InlineData("[prices]\nlabour_hour = -1", "site.toml:25:15: labour_hour is \"-1\"; write a value 0 or more")]
    [InlineData("[prices]\nlabor_hour = 18", "site.toml:25:1: there is no key \"labor_hour\" in [prices]; did you mean \"labour_hour\"")]
    public void Bad_goods_say_where_and_what(string lines, string message) =>
        Assert.Equal(message, Assert.Single(TestFolder.Faults(With(lines))));

    [Fact]
    public void A_bad_price_of_seed() =>
        Assert.Equal(
            "plan.csv:2:25: thousand_seeds is \"1,250\", which may be 1250 or 1.25; write 1250 or 1.25",
            Assert.Single(TestFolder.Faults(plan: "id,crop,plants,sow,thousand_seeds\na,tomato,100,2027-03-01,\"1,250\"\n"))
        );

    private static string With(string lines) => TestFolder.Site("[weather]", $"{lines}\n[weather]");
}
