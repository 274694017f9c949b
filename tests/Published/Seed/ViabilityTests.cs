using BenchSim.Season.Seed;
using BenchSim.Season.Values;
using Published.Weather;

namespace Published.Seed;

/// <summary>The seed viability equation against viability.csv and the worked example of rice.</summary>
public class ViabilityTests
{
    [Fact]
    public void Sigma_of_every_row_at_both_storages()
    {
        var rows = DataFolder.Rows("viability.csv");
        Assert.Equal(37, rows.Count);
        foreach (var row in rows)
        {
            var constants = Constants(row);

            // Printed with one decimal.
            Assert.Equal(DataFolder.Number(row["sigma_days_10pct_5C"]), constants.SigmaDays(new SeedStorage(10, 5)), 0.051);
            Assert.Equal(DataFolder.Number(row["sigma_days_8pct_20C"]), constants.SigmaDays(new SeedStorage(8, 20)), 0.051);
        }
    }

    [Fact]
    public void Rice_at_10_percent_and_5_C()
    {
        // K_E 8.242, C_W 4.345, C_H 0.0307, C_Q 0.000501: sigma 5382.388 days; 98 % falls to 97.64797 % after 365 days.
        var rice = ViabilityTable.FindSpecies("Oryza sativa")!;
        var sigma = rice.SigmaDays(new SeedStorage(10, 5));
        Assert.Equal(5382.388, sigma, 0.0005);
        Assert.Equal(0.9764797, SeedViability.Aged(0.98, 400, 365, sigma), 5e-8);
        Assert.Equal(
            0.9764797,
            SeedViability.AtSowing(0.98, 400, new DateOnly(2025, 3, 1), new DateOnly(2026, 3, 1), rice, new SeedStorage(10, 5)),
            5e-8
        );
    }

    [Fact]
    public void The_table_takes_of_each_species_the_row_of_the_largest_range_and_no_unsafe_one()
    {
        var safe = DataFolder
            .Rows("viability.csv")
            .Where(row =>
                !row["source"].Contains("UNUSABLE", StringComparison.Ordinal)
                && !row["source"].Contains("do not extrapolate", StringComparison.Ordinal)
            );
        var expected = safe.GroupBy(row => row["species"], StringComparer.Ordinal)
            .Select(species => Constants(species.OrderBy(row => row["single_temp_constants"] == "no" ? 0 : 1).First()))
            .OrderBy(constants => constants.Species, StringComparer.Ordinal);
        Assert.Equal(expected, ViabilityTable.Species);
    }

    [Theory]
    [InlineData("Solanum melongena")]
    [InlineData("Solanum macrocarpon")]
    [InlineData("Cucurbita pepo subsp. pepo convar. pepo var. styriaca")]
    public void Unusable_species_have_no_constants(string species) => Assert.Null(ViabilityTable.FindSpecies(species));

    [Theory]
    [InlineData("tomato", "Kruse, Ghiasi, and Schmohl, 2005")]
    [InlineData("lettuce", "Ellis et al., 1989")]
    [InlineData("onion", "Ellis and Roberts, 1981")]
    [InlineData("beet", "Ellis and Hong, 2007")]
    [InlineData("melon", "Kuo, 1991")]
    public void Crops_take_these_rows(string crop, string source) =>
        Assert.Equal(new Provenance(Trust.Seen, source), ViabilityTable.FindCrop(crop)!.Source);

    [Fact]
    public void Short_lived_seed_of_the_table_is_short_lived_in_the_lists()
    {
        // Sensibility: seed_longevity.csv and every extension list give onion, leek and lettuce fewer years than tomato, melon and beet.
        // Ten percent, 5 C.
        double Sigma(string crop) => ViabilityTable.FindCrop(crop)!.Constants.SigmaDays(new SeedStorage(10, 5));
        Assert.True(Sigma("lettuce") < Sigma("tomato"));
        Assert.True(Sigma("tomato") < Sigma("beet"));
        Assert.True(Sigma("pepper") < Sigma("melon"));
    }

    private static ViabilityConstants Constants(Dictionary<string, string> row) =>
        new(
            row["species"],
            DataFolder.Number(row["KE"]),
            DataFolder.Number(row["CW"]),
            DataFolder.Number(row["CH"]),
            DataFolder.Number(row["CQ"]),
            row["single_temp_constants"] == "yes",
            new Provenance(Trust.Seen, row["source"])
        );
}
