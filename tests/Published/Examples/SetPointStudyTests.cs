using System.Globalization;
using BenchSim.Folder;
using BenchSim.Published.Library;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study.Statistics;

namespace BenchSim.Published.Examples;

/// <summary>
/// Colder nights really cost bench days: the night set-point of the spring example's main house from 45 to 65 F on the same plan and luck.
/// What must hold is asserted; the table is kept in the example's README and compared (BENCHSIM_APPROVE=1 writes it anew).
/// </summary>
public class SetPointStudyTests
{
    private const int Seasons = 400;
    private const int PlannedFahrenheit = 60;
    private static readonly string s_folder = Path.Combine(Repository.Root, "scenarios", "two-house-spring");

    [Fact]
    public void Colder_nights_are_cheaper_and_slower_all_the_way()
    {
        var plan = SeasonPlanner.Make(ScenarioFolder.Read(s_folder).Scenario!).Plan!;
        var rows = new[] { 45, 50, 55, 60, 65 }.Select(fahrenheit => Play(plan, fahrenheit)).ToList();
        foreach (var (colder, warmer) in rows.Zip(rows.Skip(1)))
        {
            Assert.True(colder.Gallons.Mean < warmer.Gallons.Mean, $"{colder} burns more than {warmer}");
            Assert.True(colder.BenchDays > warmer.BenchDays, $"{colder} is faster than {warmer}");
            Assert.True(colder.FitsWithRoom <= warmer.FitsWithRoom, $"{colder} fits more often than {warmer}, with room for all");

            // The dates are those of a plan made for 60 F. Warmer than that, trays are ready before they may
            // leave and may be over-held where room is short.
            Assert.True(warmer.Fahrenheit > PlannedFahrenheit || colder.Fits <= warmer.Fits, $"{colder} fits more often than {warmer}");
        }

        Compare([.. rows.Select(Line)]);
    }

    private static Row Play(SeasonPlan plan, int fahrenheit)
    {
        var main = plan.Scenario.Houses[0];
        var scenario = plan.Scenario with { Houses = [main with { NightC = (fahrenheit - 32) / 1.8 }, .. plan.Scenario.Houses.Skip(1)] };
        var player = new SeasonPlayer(plan with { Scenario = scenario }, scenario.Play.Seed);
        var result = new SeasonResult();
        var gallons = new double[Seasons];
        var benchDays = new long[Seasons];
        var (fits, fitsWithRoom) = (0, 0);
        for (var season = 0; season < Seasons; season++)
        {
            player.Play(season, PlaceLimits.None, result);
            fitsWithRoom += result.Fits ? 1 : 0;
            player.Play(season, PlaceLimits.AsGiven, result);
            gallons[season] = Fuels.Propane.Units(result.HeatWattHours[0].Sum(), main.Heat!.Efficiency);
            benchDays[season] = Enumerable
                .Range(0, scenario.Spaces.Length)
                .Where(space => scenario.Spaces[space].Kind == SpaceKind.Bench)
                .Sum(space => result.Held[space].Sum(held => (long)held));
            fits += result.Fits ? 1 : 0;
        }

        Array.Sort(benchDays);
        var trays = plan.Batches.Sum(batch => batch.Trays);
        return new Row(fahrenheit, MeanInterval.Of(gallons, 0.95), (double)benchDays[(Seasons - 1) / 2] / trays, fits, fitsWithRoom);
    }

    private static string Line(Row row)
    {
        var chance = Wilson.Interval(row.Fits, Seasons, 0.95);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {row.Fahrenheit} F | {row.Gallons.Mean:#,0} (± {row.Gallons.HalfWidth:0}) | {row.BenchDays:0.0} | "
                + $"{100.0 * row.Fits / Seasons:0} % ({100 * chance.Low:0} to {100 * chance.High:0} %) of {Seasons} seasons |"
        );
    }

    private static void Compare(List<string> table)
    {
        var path = Path.Combine(s_folder, "README.md");
        var lines = File.ReadAllLines(path).ToList();
        var head = lines.FindIndex(line => line.StartsWith("| night set-point", StringComparison.Ordinal)) + 2;
        var end = lines.FindIndex(head, line => !line.StartsWith('|'));
        if (Environment.GetEnvironmentVariable("BENCHSIM_APPROVE") == "1")
        {
            lines.RemoveRange(head, end - head);
            lines.InsertRange(head, table);
            File.WriteAllText(path, string.Join('\n', lines) + "\n");
            return;
        }

        Assert.Equal(table, lines[head..end]);
    }

    private sealed record Row(int Fahrenheit, MeanInterval Gallons, double BenchDays, int Fits, int FitsWithRoom);
}
