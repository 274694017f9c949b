using System.Globalization;
using BenchSim.Folder;
using BenchSim.Folder.Library;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Published.Library;

/// <summary>
/// Each crop of the library grown in the setting of the published row that it rests on: house at the row's day and night temperatures,
/// warm-season seed on a mat at the row's germination temperature, no sun, no slack, every day a work day. It is then ready within the
/// published weeks.
/// </summary>
public sealed class PublishedWeeksTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string, string>();
            foreach (var row in TransplantTableTests.Rows)
            {
                var (id, table, crop) = ((string)row[0], (string)row[1], (string)row[2]);
                if (TransplantTableTests.Published(table, crop)["day_f"].Length > 0)
                {
                    rows.Add(id, table, crop);
                }
            }

            return rows;
        }
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Every_crop_with_published_weeks_and_temperatures_is_tried() =>
        Assert.Equal(
            BuiltInLibrary
                .Crops.Where(crop => crop.Cells["weeks_min"].Length > 0 && crop.Id is not ("celery" or "celeriac"))
                .Select(crop => crop.Id)
                .Order(StringComparer.Ordinal),
            Rows.Select(row => (string)row[0]).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );

    [Theory]
    [MemberData(nameof(Rows))]
    public void In_the_setting_of_its_row_a_crop_is_ready_within_the_published_weeks(string id, string table, string crop)
    {
        var row = TransplantTableTests.Published(table, crop);
        var batch = InSetting(id, row);
        Assert.InRange(
            batch.SetOutOn.DayNumber - batch.SowOn.DayNumber,
            7 * TransplantTableTests.Number(row["weeks_min"]),
            7 * TransplantTableTests.Number(row["weeks_max"])
        );
    }

    // The two plans that come with the program: the spring example and the starter folder.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_crop_of_the_example_and_the_starter_farm_stands_a_week_too_long_unsaid(bool isStarter)
    {
        foreach (var file in ScenarioTemplate.Files())
        {
            _folder.Write(file.Name, [.. file.Bytes]);
        }

        var reading = ScenarioFolder.Read(isStarter ? _folder.Path : Path.Combine(Repository.Root, "scenarios", "two-house-spring"));
        Assert.Empty(reading.Faults);
        var plan = SeasonPlanner.Make(reading.Scenario!).Plan!;
        foreach (var batch in plan.Batches.Where(batch => batch.Crop.WeeksMax is not null))
        {
            var from = batch.Crop.DaysToReady!.FromSowing ? batch.SowOn : batch.EmergeOn;
            Assert.True(batch.Crop.DaysToReady.WithHardening);
            var isSaid = plan.Warnings.Any(warning =>
                warning.What.Contains($"for \"{batch.Crop.Id}\"", StringComparison.Ordinal)
                && warning.What.Contains("growers publish", StringComparison.Ordinal)
            );
            Assert.True(isSaid || batch.SetOutOn.DayNumber - from.DayNumber <= 7 * (batch.Crop.WeeksMax + 1), batch.Order.Id);
        }
    }

    private BatchPlan InSetting(string id, Dictionary<string, string> row)
    {
        var (day, night) = (TransplantTableTests.Middle(row["day_f"]), TransplantTableTests.Middle(row["night_f"]));

        // Outdoors it is colder than any of the houses, so that the air in them is the set-point by day and by night.
        File.WriteAllText(
            _folder.In("site.toml"),
            string.Create(
                CultureInfo.InvariantCulture,
                $"""
                [site]
                name = "Setting"
                units = "imperial"
                [season]
                opens = 2027-03-01
                closes = 2027-12-01
                [[house]]
                id = "house"
                night = {night}
                day = {day}
                vent = {day}
                day_lift = "0 F"
                [[space]]
                id = "mat"
                kind = "mat"
                house = "house"
                places = 200
                temperature = {TransplantTableTests.Middle(row["germ_opt_f"])}
                [[space]]
                id = "bench"
                kind = "bench"
                house = "house"
                places = 200
                [[space]]
                id = "table"
                kind = "table"
                places = 200
                [rules]
                work_days = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]
                [weather]
                kind = "constant"
                low = 34
                high = 36
                rain = 0
                """
            )
        );
        File.WriteAllText(_folder.In("plan.csv"), $"id,crop,plants,sow\na,{id},400,2027-03-01\n");
        File.WriteAllText(_folder.In("crops.csv"), $"id,min_night,max_mat\n{id},none,none\n");
        var reading = ScenarioFolder.Read(_folder.Path);
        Assert.Empty(reading.Faults);
        var made = SeasonPlanner.Make(reading.Scenario!);
        Assert.Empty(made.Faults);
        return made.Plan!.Batches[0];
    }
}
