using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"check --stand" puts the ways to a stand side by side, and aged seed is shown with what is left of it.</summary>
public sealed class StandTests
{
    [Fact]
    public void The_ways_stand_with_trays_seeds_chance_and_cost()
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder, sections: "[prices]\ncurrency = \"EUR\"\nthousand_seeds = 50\nmix_litre = 0\nlabour_hour = 30\n");
        var check = Call.Run("check", farm, "--stand");
        Assert.Equal(0, check.Code);
        string[] lines =
        [
            .. check.Output.Split('\n').Select(line => string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries))),
        ];

        // All seed comes up. 200 plants are 4 trays of 50; a seed costs 0.05, and sowing a tray 4 minutes of an hour of 30, which is 2.
        Assert.Contains("A 200 as planned 4 1 200 better than 99 in 100 EUR 18.00", lines, StringComparer.Ordinal);
        Assert.Contains("A 200 one seed a cell 4 1 200 better than 99 in 100 EUR 18.00", lines, StringComparer.Ordinal);
        Assert.Contains("A 200 two seeds a cell and thin 4 2 400 better than 99 in 100 EUR 28.00", lines, StringComparer.Ordinal);
        Assert.Contains("A 200 an extra tray 5 1 250 better than 99 in 100 EUR 22.50", lines, StringComparer.Ordinal);
        Assert.DoesNotContain(lines, line => line.StartsWith("P 120 ", StringComparison.Ordinal));
        Assert.DoesNotContain("prices of", check.Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Call.Run("check", farm, "--stand", "--json").Output);
        var extra = json.RootElement.GetProperty("stand_ways")[3];
        Assert.Equal("an extra tray", extra.GetProperty("way").GetString());
        Assert.Equal(22.5, extra.GetProperty("cost").GetDouble(), 1e-9);
    }

    [Fact]
    public void Without_prices_there_is_no_cost_and_a_sentence_why()
    {
        using var folder = new TemporaryFolder();
        var check = Call.Run("check", PaperFarm.In(folder), "--stand");
        check.Says("A cost needs the prices of a thousand seeds, a litre of potting mix and an hour of work.");
        Assert.DoesNotContain("Ways to enough plants", Call.Run("check", folder.In("paper")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Aged_seed_is_shown_with_what_is_left_of_it()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Assert.DoesNotContain("germination", Batches(Call.Run("check", spring, "--all")), StringComparison.Ordinal);
        var plan = Path.Combine(spring, "plan.csv");
        File.WriteAllText(
            plan,
            File.ReadAllText(plan)
                .Replace(
                    "150,2027-03-24,2027-05-25,,,direct,72-cell,,,,,,,",
                    "150,2027-03-24,2027-05-25,,,direct,72-cell,,,,,,90 %,2022-03-24",
                    StringComparison.Ordinal
                )
        );
        File.AppendAllText(Path.Combine(spring, "site.toml"), "\n[seed]\nmoisture = \"8 %\"\nstorage = \"10 C\"\n");
        var check = Call.Run("check", spring, "--all");
        Assert.Equal(0, check.Code);

        // Pepper (viability.csv): sigma = 10^(7.767 - 4.67 log10 8 - 0.0329 x 10 - 0.000478 x 100) = 1488.6 days. From 2022-03-24 to
        // 2027-03-24 are 1826 days:
        // probit(0.9) - 1826 / 1488.6 = 1.28155 - 1.22666 = 0.0549, and the normal distribution has 52.2 % below it.
        var peppers = Assert.Single(check.Output.Split('\n'), line => line.StartsWith("  peppers ", StringComparison.Ordinal));
        Assert.EndsWith(" 90 % -> 52.2 %", peppers, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Call.Run("check", spring, "--json").Output);
        var batch = json
            .RootElement.GetProperty("batches")
            .EnumerateArray()
            .First(each => string.Equals(each.GetProperty("id").GetString(), "peppers", StringComparison.Ordinal));
        Assert.True(batch.GetProperty("aged").GetBoolean());
        Assert.Equal(0.9, batch.GetProperty("germination_on_packet").GetDouble(), 1e-12);
        Assert.Equal(0.522, batch.GetProperty("germination").GetDouble(), 0.001);
    }

    private static string Batches(Call check) =>
        check.Output.Split("Houses")[0].Split("\n").First(line => line.StartsWith("  batch ", StringComparison.Ordinal));
}
