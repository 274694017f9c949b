using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Variants;

/// <summary>The table [invest] of a variant: what it says is read as it stands, and what is wrong in it is said with its place.</summary>
public class InvestTests
{
    private const string Three = "[invest]\ncapital = 12000\nlife_years = 15\ndiscount_rate = \"6 %\"\n";

    public static TheoryData<string, string> Faults =>
        new()
        {
            {
                "[invest]\ncapital = 12000\ndiscount_rate = 0.06\n",
                "variants/v.toml:1:1: [invest] has no life_years; add a line such as life_years = 15"
            },
            { "invest = 3\n", "variants/v.toml:1:10: invest is not a section; write [invest] with its keys below it" },
            { Three + "upkeap = 3\n", "variants/v.toml:5:1: there is no key \"upkeap\" in [invest]; did you mean \"upkeep\"" },
            { Three + "upkeep = -3\n", "variants/v.toml:5:10: upkeep is \"-3\"; write a value 0 or more" },
            {
                Three + "bought_in_share = 0.5\n",
                "variants/v.toml:5:1: bought_in_share is given but bought_in_price is not; add a line such as bought_in_price = "
                    + "0.60, or leave both out"
            },
            {
                Three + "bought_in_price = 0.5\n",
                "variants/v.toml:5:1: bought_in_price is given but bought_in_share is not; add a line such as bought_in_share = "
                    + "\"50 %\", or leave both out"
            },
            {
                Three + "capital_range = 9000\n",
                "variants/v.toml:5:17: capital_range is not a list; write a list such as capital_range = [least, greatest]"
            },
            {
                Three + "capital_range = [9000]\n",
                "variants/v.toml:5:1: capital_range does not hold two values; write two: the least and the greatest"
            },
            {
                Three + "capital_range = [15000, 9000]\n",
                "variants/v.toml:5:18: capital_range begins with 15000, above its end 9000; write the least first"
            },
            {
                Three + "capital_range = [15000, 19000]\n",
                "variants/v.toml:5:1: capital_range is 15000 to 19000, and capital lies outside it; widen it, or change capital"
            },
            { Three + "life_years_range = [0, 20]\n", "variants/v.toml:5:21: life_years_range is 0; write a whole number, from 1 to 60" },
        };

    [Fact]
    public void Every_key_is_read()
    {
        using var folder = VariantTests.Folder(
            Three
                + "plant_on_time = 0.9\nbought_in_share = \"25 %\"\nbought_in_price = 0.5\nupkeep = 150\nresidual = 2000\nbasis = "
                + "\"a guess\"\ndiscount_rate_range = [\"3 %\", \"10 %\"]\n"
        );
        var terms = ScenarioFolder.ReadVariant(folder.Path, "v").Scenario!.Invest!;
        Assert.Equal(
            (12000.0, 15, 0.06, 150.0, 2000.0, "a guess"),
            (terms.Capital, terms.LifeYears, terms.DiscountRate, terms.Upkeep, terms.Residual, terms.Basis)
        );
        Assert.Equal(new InvestRange(0.03, 0.10), Assert.Single(terms.Ranges).Value);

        // A quarter is bought in at 0.50, three quarters lose 0.90: 0.125 + 0.675.
        Assert.Equal(0.8, terms.PlantWorth, 1e-12);
    }

    [Fact]
    public void The_base_and_a_variant_without_the_table_have_no_terms()
    {
        using var folder = VariantTests.Folder("# nothing\n");
        Assert.Null(folder.Read().Scenario!.Invest);
        Assert.Null(ScenarioFolder.ReadVariant(folder.Path, "v").Scenario!.Invest);
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_stands_in_the_variant(string variant, string fault)
    {
        using var folder = VariantTests.Folder(variant);
        Assert.Equal([fault], ScenarioFolder.ReadVariant(folder.Path, "v").Faults.Select(each => each.ToString()).ToArray());
    }
}
