using System.Security.Cryptography;
using BenchSim.Report.Case;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Case;

public sealed class CaseChecklistTests
{
    // STRESS-DES: Monks and others (2019), Journal of Simulation 13(1), 55-67; the items as transcribed with
    // their full text by the first author's group.
    private static readonly (string Number, string Name)[] s_published =
    [
        ("1.1", "Purpose of the model"),
        ("1.2", "Model outputs"),
        ("1.3", "Experimentation aims"),
        ("2.1", "Base model overview diagram"),
        ("2.2", "Base model logic"),
        ("2.3", "Scenario logic"),
        ("2.4", "Algorithms"),
        ("2.5.1", "Components: entities"),
        ("2.5.2", "Components: activities"),
        ("2.5.3", "Components: resources"),
        ("2.5.4", "Components: queues"),
        ("2.5.5", "Components: entry/exit points"),
        ("3.1", "Data sources"),
        ("3.2", "Pre-processing"),
        ("3.3", "Input parameters"),
        ("3.4", "Assumptions"),
        ("4.1", "Initialisation"),
        ("4.2", "Run length"),
        ("4.3", "Estimation approach"),
        ("5.1", "Software or programming language"),
        ("5.2", "Random sampling"),
        ("5.3", "Model execution"),
        ("5.4", "System specification"),
        ("6.1", "Computer model sharing statement"),
    ];

    [Fact]
    public void Every_published_item_is_answered_in_order()
    {
        foreach (var input in new[] { CaseSample.Run(SyntheticStudy.Tiny()), CaseSample.WithMoney(CaseSample.Spring()) })
        {
            var items = CaseChecklist.Items(input, CaseSample.Inputs);
            Assert.Equal(s_published, items.Select(item => (item.Number, item.Name)));
            Assert.All(items, item => Assert.True(item.Answer.Length > 20, item.Number));
        }
    }

    [Fact]
    public void The_answers_are_those_of_this_run()
    {
        var input = CaseSample.Spring();
        var answers = CaseChecklist
            .Items(input, CaseSample.Inputs)
            .ToDictionary(item => item.Number, item => item.Answer, StringComparer.Ordinal);

        Assert.Contains("Do the mats carry us through April?", answers["1.1"], StringComparison.Ordinal);
        Assert.Contains("Scenario \"more-mats\"", answers["1.3"], StringComparison.Ordinal);
        Assert.Contains("12 batches", answers["2.5.1"], StringComparison.Ordinal);
        Assert.Contains("Heat mats (mat, 38)", answers["2.5.3"], StringComparison.Ordinal);

        // The hash is that of the file's bytes, by the library of the run-time.
        Assert.Contains(
            $"plan.csv (SHA-256 {Convert.ToHexStringLower(SHA256.HashData("batch,crop\n"u8))[..12]})",
            answers["3.1"],
            StringComparison.Ordinal
        );
        Assert.Contains("1 February 2027", answers["4.1"], StringComparison.Ordinal);
        Assert.StartsWith("150 days", answers["4.2"], StringComparison.Ordinal);

        // Half of the Wilson interval of 110 of 200, 0.4807 to 0.6174, and of 180 of 200, 0.8506 to 0.9343.
        Assert.Contains("200 seasons of each scenario", answers["4.3"], StringComparison.Ordinal);
        Assert.Contains(
            "6.8 percentage points without \"more-mats\" and 4.2 percentage points with it",
            answers["4.3"],
            StringComparison.Ordinal
        );
        Assert.Contains("BenchSim 1.2.3, build of the model 0123456789abcdef", answers["5.1"], StringComparison.Ordinal);
        Assert.Contains("seed 20270401", answers["5.2"], StringComparison.Ordinal);
        Assert.EndsWith("benchsim compare inputs --with more-mats --case", answers["6.1"], StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_mended_in_a_weather_record_is_told()
    {
        var input = CaseSample.Run(SyntheticStudy.Tiny());
        string Told(WeatherInput weather)
        {
            var plan = input.Base.Plan with { Scenario = input.Base.Plan.Scenario with { Weather = weather } };
            return CaseChecklist
                .Items(input with { Base = input.Base with { Plan = plan } }, CaseSample.Inputs)
                .Single(item => item.Number == "3.2")
                .Answer;
        }

        const string mended = "gaps of up to three days are filled on a straight line";
        Assert.Contains(mended, Told(new RecordedWeather([], null, "weather.csv")), StringComparison.Ordinal);
        Assert.Contains(mended, Told(SyntheticHeat.Weather("weather.csv", 12)), StringComparison.Ordinal);
        Assert.DoesNotContain(mended, Told(SyntheticHeat.Normals("site.toml")), StringComparison.Ordinal);
    }
}
