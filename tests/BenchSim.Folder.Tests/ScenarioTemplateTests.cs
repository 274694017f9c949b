using System.Text;
using System.Text.RegularExpressions;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Folder.Tests;

public partial class ScenarioTemplateTests
{
    [Fact]
    public void The_starter_folder_reads_without_faults_or_warnings()
    {
        using var folder = new TestFolder(null, null);
        foreach (var file in ScenarioTemplate.Files())
        {
            folder.Write(file.Name, [.. file.Bytes]);
        }

        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        Assert.NotNull(reading.Scenario);
        // Six rows; broccoli is sown three times and lettuce four.
        Assert.Equal(11, reading.Scenario.Batches.Length);
        Assert.Equal(
            ["basil", "broccoli", "lettuce", "onion", "pepper", "tomato"],
            reading.Scenario.Crops.Select(crop => crop.Id).ToArray()
        );
    }

    // A line that begins with "# key = value" shows what may be written there, so it must read without a fault too.
    [Fact]
    public void What_the_starter_folder_shows_as_comments_reads_too()
    {
        using var folder = new TestFolder(null, null);
        foreach (var file in ScenarioTemplate.Files())
        {
            var lines = Encoding.UTF8.GetString([.. file.Bytes]).Split('\n');
            folder.Write(file.Name, file.Name == "site.toml" ? string.Join('\n', lines.Select(Uncommented)) : string.Join('\n', lines));
        }

        var scenario = folder.Read() is { Faults: [], Warnings: [], Scenario: { } read } ? read : null;
        Assert.NotNull(scenario);
        Assert.NotNull(scenario.Rules.SeedStorage);
        Assert.Equal("$", scenario.Rules.Prices.Currency);
        Assert.IsType<GeneratedWeather>(scenario.Weather);
    }

    [Fact]
    public void The_starter_folder_works_out_fuel_and_electricity()
    {
        using var folder = new TestFolder(null, null);
        foreach (var file in ScenarioTemplate.Files())
        {
            folder.Write(file.Name, [.. file.Bytes]);
        }

        var scenario = folder.Read().Scenario!;
        Assert.Equal("propane", scenario.Houses[0].Heat?.Fuel.Id);

        // 12 places of 19.5 W.
        Assert.Equal(234, scenario.Spaces[0].Power!.Watts, 9);
    }

    // The first thing a new user plays should be a plan that can succeed. The seed is the file's, so the count is the same each time; a
    // plan that fits in three seasons of four has less than one chance in 10^12 of fitting in fewer than 100 of 200.
    [Fact]
    public void The_plan_of_the_starter_folder_is_in_time_and_fits_in_most_seasons()
    {
        using var folder = new TestFolder(null, null);
        foreach (var file in ScenarioTemplate.Files())
        {
            folder.Write(file.Name, [.. file.Bytes]);
        }

        var scenario = folder.Read().Scenario!;
        var made = SeasonPlanner.Make(scenario);
        Assert.Empty(made.Faults);
        Assert.DoesNotContain(made.Plan!.Warnings, warning => warning.Place.File == "plan.csv");
        var player = new SeasonPlayer(made.Plan, scenario.Play.Seed);
        var result = new SeasonResult();
        var fitting = 0;
        for (var season = 0; season < 200; season++)
        {
            player.Play(season, PlaceLimits.AsGiven, result);
            fitting += result.Fits ? 1 : 0;
        }

        Assert.InRange(fitting, 100, 200);
    }

    [Fact]
    public void The_same_files_come_every_time() =>
        Assert.Equal(["README.md", "plan.csv", "site.toml"], ScenarioTemplate.Files().Select(file => file.Name).ToArray());

    // The live weather is constant; the normals beside it take its place.
    private static string Uncommented(string line) =>
        line switch
        {
            "kind = \"constant\"" or "low = \"52 F\"" or "high = \"68 F\"" or "rain = \"0.1 in\"" or "[weather]" => "",
            _ when line.Contains("kind = \"normals\"", StringComparison.Ordinal) => "[weather]\nkind = \"normals\"",
            _ when line.Contains("kind = \"record\"", StringComparison.Ordinal)
                    || line.Contains("file = \"weather.csv\"", StringComparison.Ordinal) => "",
            _ => KeyInComment().Replace(line, "${key}"),
        };

    [GeneratedRegex(@"^# +(?<key>[a-z_]+ = .*|\[+[a-z_]+\]+)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyInComment();
}
