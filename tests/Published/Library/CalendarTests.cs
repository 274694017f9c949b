using System.Globalization;
using System.Text.RegularExpressions;
using BenchSim.Folder;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Published.Library;

/// <summary>
/// Weeks from sowing to ready that extension services of three states print (calendars.csv, each row beside its source), in the starter
/// farm as "new" lays it down: its houses, mats and rules. The services give dates and frosts, but no climate: the monthly normals here are
/// invented so that mean lows pass 40 F about the date the service gives for hardy crops. Weeks are printed whole and the houses behind
/// them are not said, so a week on either side is allowed.
/// </summary>
public sealed partial class CalendarTests : IDisposable
{
    private const double DaysAllowed = 7;

    private readonly TemporaryFolder _folder = new();

    private enum State
    {
        Missouri,
        California,
        Utah,
    }

    /// <summary>
    /// Crop of the library, state, its row of calendars.csv and a set-out date of that row, or a usual one where it has none.
    /// </summary>
    public static TheoryData<string, string, string, string> Rows =>
        new()
        {
            { "broccoli", nameof(State.Missouri), "Broccoli", "04-10" },
            { "cabbage", nameof(State.Missouri), "Cabbage", "04-10" },
            { "cauliflower", nameof(State.Missouri), "Cauliflower", "04-10" },
            { "tomato", nameof(State.Missouri), "Tomato", "05-10" },
            { "pepper", nameof(State.Missouri), "Pepper", "05-10" },
            { "tomato", nameof(State.California), "Tomato", "05-15" },
            { "pepper", nameof(State.California), "Pepper", "05-15" },
            { "cucumber", nameof(State.California), "Cucumber", "05-15" },
            { "cauliflower", nameof(State.California), "Cauliflower", "03-15" },
            { "spinach", nameof(State.California), "Spinach", "03-15" },
            { "broccoli", nameof(State.Utah), "Broccoli", "04-20" },
            { "cabbage", nameof(State.Utah), "Cabbage", "04-20" },
            { "cauliflower", nameof(State.Utah), "Cauliflower", "04-20" },
            { "kohlrabi", nameof(State.Utah), "Kohlrabi", "04-20" },
            { "cucumber", nameof(State.Utah), "Cucumber", "06-01" },
            { "summer-squash", nameof(State.Utah), "Summer squash", "06-01" },
        };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_starter_farm_takes_the_weeks_of_the_calendar(string id, string state, string crop, string setOut)
    {
        // A state may have more than one row: the shortest and the longest weeks of them.
        var rows = PublishedTable
            .Read("calendars.csv")
            .Where(line => line["crop"] == crop && line["place_or_climate"].Contains(state, StringComparison.Ordinal))
            .ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, line => Assert.Equal("seen", line["flag"]));
        var batch = InStarterFarm(id, Enum.Parse<State>(state), setOut);

        // The Utah page on brassicas counts to field size: "hardening follows".
        var hardening = rows[0]["counted_from"].Contains("hardening follows", StringComparison.Ordinal) ? batch.Crop.HardeningNights : 0;
        Assert.InRange(
            batch.ReadyOn.DayNumber - batch.SowOn.DayNumber - hardening,
            (7 * rows.Min(line => TransplantTableTests.Number(line["weeks_min"]))) - DaysAllowed,
            (7 * rows.Max(line => TransplantTableTests.Number(line["weeks_max"]))) + DaysAllowed
        );
    }

    private BatchPlan InStarterFarm(string id, State state, string setOut)
    {
        foreach (var file in ScenarioTemplate.Files())
        {
            _folder.Write(file.Name, [.. file.Bytes]);
        }

        // Mean lows and highs of the months, degrees Fahrenheit: invented.
        var (latitude, low, high) = state switch
        {
            State.Missouri => (40, "20, 25, 34, 44, 54, 63, 67, 65, 57, 45, 34, 24", "38, 43, 54, 65, 74, 83, 87, 86, 78, 67, 53, 41"),
            State.California => (37, "40, 43, 45, 47, 51, 55, 58, 58, 56, 51, 44, 40", "60, 63, 66, 70, 75, 80, 83, 83, 81, 75, 66, 60"),
            _ => (41, "22, 26, 33, 39, 47, 55, 63, 61, 52, 41, 31, 23", "38, 44, 54, 61, 71, 82, 91, 89, 79, 65, 50, 39"),
        };
        var site = File.ReadAllText(_folder.In("site.toml"));
        site = Weather()
            .Replace(
                site,
                $"""
                [weather]
                kind = "normals"
                low = [{low}]
                high = [{high}]
                rain_days = [9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9]
                rain = [3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3]
                """
            )
            .Replace("latitude = 42", string.Create(CultureInfo.InvariantCulture, $"latitude = {latitude}"), StringComparison.Ordinal)
            .Replace("opens = 2027-02-01", "opens = 2027-01-01", StringComparison.Ordinal);
        _folder.Write("site.toml", site);
        _folder.Write("plan.csv", $"id,crop,plants,set_out\na,{id},100,2027-{setOut}\n");
        var reading = ScenarioFolder.Read(_folder.Path);
        Assert.Empty(reading.Faults);
        Assert.IsType<GeneratedWeather>(reading.Scenario!.Weather);
        var made = SeasonPlanner.Make(reading.Scenario);
        Assert.Empty(made.Faults);
        return made.Plan!.Batches[0];
    }

    [GeneratedRegex(@"^\[weather\]\n(?:[a-z_]+ = .*\n)+", RegexOptions.Multiline, 1000)]
    private static partial Regex Weather();
}
