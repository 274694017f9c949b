using BenchSim.Folder;
using BenchSim.Published.Library;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Published.Examples;

/// <summary>The season of scenarios/by-hand against the tables that its README worked out on paper: every tray, every day.</summary>
public class ByHandTests
{
    private static readonly string s_folder = Path.Combine(Repository.Root, "scenarios", "by-hand");
    private static readonly SeasonPlan s_plan = Make();

    [Fact]
    public void Planned_dates_are_those_worked_out_by_hand()
    {
        var rows = Table("| batch | sow |");
        Assert.Equal(s_plan.Batches.Length, rows.Count);
        foreach (var (row, batch) in rows.Zip(s_plan.Batches))
        {
            Assert.Equal(
                [batch.Order.Id, Iso(batch.SowOn), Iso(batch.OffMatOn), Iso(batch.PotUpOn), Iso(batch.TableOn), Iso(batch.SetOutOn)],
                row
            );
        }
    }

    [Fact]
    public void Every_tray_stands_where_the_pencil_put_it_on_every_day()
    {
        var watch = new Whereabouts(s_plan);
        var result = new SeasonResult();
        new SeasonPlayer(s_plan, 1).Play(0, PlaceLimits.AsGiven, result, watch);
        var rows = Table("| from | to |");
        var days = 0;
        foreach (var row in rows)
        {
            for (var date = Date(row[0]); date <= Date(row[1]); date = date.AddDays(1), days++)
            {
                var day = date.DayNumber - s_plan.FirstDay.DayNumber;
                Assert.Equal(
                    $"{date:yyyy-MM-dd} {string.Join(" / ", row.Skip(2).Take(3))}",
                    $"{date:yyyy-MM-dd} {string.Join(" / ", watch.Days[day])}"
                );
                Assert.Equal($"{date:yyyy-MM-dd} {row[5]}", $"{date:yyyy-MM-dd} {Waiting(result, day)}");
            }
        }

        Assert.Equal(s_plan.Days, days);
        Assert.True(result.Fits);
        Assert.Equal(300, result.Batches[1].LatePlantDays);
        Assert.Equal(420, result.PlantsInTime);
        Assert.Equal(6, result.Batches.Sum(batch => batch.BlockedTrayDays[0]));
        Assert.Equal(17, result.Batches.Sum(batch => batch.BlockedTrayDays[1]));
    }

    private static string Waiting(SeasonResult result, int day)
    {
        var names = new[] { "mats", "bench", "table" };
        var waits = names
            .Select((name, space) => (name, places: result.Waiting[space][day]))
            .Where(wait => wait.places > 0)
            .Select(wait => $"{wait.name} {wait.places}");
        var words = string.Join(" ", waits);
        return words.Length > 0 ? words : "-";
    }

    private static List<string[]> Table(string head)
    {
        var lines = File.ReadAllLines(Path.Combine(s_folder, "README.md"))
            .SkipWhile(line => !line.StartsWith(head, StringComparison.Ordinal))
            .Skip(2);
        return
        [
            .. lines
                .TakeWhile(line => line.StartsWith('|'))
                .Select(line => line.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray()),
        ];
    }

    private static SeasonPlan Make()
    {
        var reading = ScenarioFolder.Read(s_folder);
        Assert.Empty(reading.Faults);
        return SeasonPlanner.Make(reading.Scenario!).Plan!;
    }

    private static string Iso(DateOnly? date) => date?.ToString("yyyy-MM-dd") ?? "-";

    private static DateOnly Date(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd");

    /// <summary>Writes down each day's trays by space the way the README does: A1-A4 B2 Pf1.</summary>
    private sealed class Whereabouts(SeasonPlan plan) : ISeasonWitness
    {
        public List<string[]> Days { get; } = [];

        public void DayEnds(SeasonView season) =>
            Days.Add([.. Enumerable.Range(0, plan.Scenario.Spaces.Length).Select(space => In(season, space))]);

        private string In(SeasonView season, int space)
        {
            var words = new List<string>();
            for (var batch = 0; batch < plan.Batches.Length; batch++)
            {
                foreach (var flat in new[] { false, true })
                {
                    var indices = season
                        .Standing(batch)
                        .Where(trays => trays.Space == space && trays.IsFlat == flat)
                        .SelectMany(trays => Enumerable.Range(trays.First + 1, trays.Count))
                        .Order()
                        .ToList();
                    AddRuns(words, plan.Batches[batch].Order.Id + (flat ? "f" : ""), indices);
                }
            }

            return words.Count > 0 ? string.Join(" ", words) : "-";
        }

        private static void AddRuns(List<string> words, string name, List<int> indices)
        {
            var at = 0;
            while (at < indices.Count)
            {
                var end = at;
                while (end + 1 < indices.Count && indices[end + 1] == indices[end] + 1)
                {
                    end++;
                }

                words.Add(end > at ? $"{name}{indices[at]}-{name}{indices[end]}" : $"{name}{indices[at]}");
                at = end + 1;
            }
        }
    }
}
