using BenchSim.Folder.Files;

namespace BenchSim.Folder.Tests;

/// <summary>A weather record that is kept from one reading to the next changes no reading.</summary>
public sealed class KeptRecordsTests
{
    [Theory]
    [InlineData("record", 365, "")]
    [InlineData("record", 300, "")]
    [InlineData("generated", 2000, "")]
    [InlineData("generated", 200, "")]
    [InlineData("record", 365, "2021-03-05,x,2,0\n")]
    public void Each_reading_tells_the_same_faults_warnings_and_weather(string kind, int days, string last)
    {
        var site = FarmFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", $"kind = \"{kind}\"\nfile = \"weather.csv\"");
        var first = new DateOnly(2020, 1, 1);
        var record =
            "date,tmin,tmax,rain\n"
            + string.Concat(
                Enumerable.Range(0, days).Select(day => $"{first.AddDays(day):yyyy-MM-dd},{day % 11},{12 + (day % 7)},{day % 3}\n")
            )
            + last;
        InputFile[] files =
        [
            InputFile.Of("site.toml", site),
            InputFile.Of("plan.csv", FarmFolder.GoodPlan),
            InputFile.Of("weather.csv", record),
        ];
        var alone = ScenarioFolder.ReadKept(files);
        var records = new KeptRecords();
        for (var reading = 0; reading < 3; reading++)
        {
            var kept = ScenarioFolder.ReadKept(files, records: records);
            Assert.Equal(alone.Faults.ToArray(), kept.Faults.ToArray());
            Assert.Equal(alone.Warnings.ToArray(), kept.Warnings.ToArray());
            Assert.Equal(alone.Scenario is null, kept.Scenario is null);
        }
    }

    [Fact]
    public void Another_record_or_other_units_are_read_anew()
    {
        var records = new KeptRecords();
        var warm = Read("metric", "10,20");
        Assert.NotEqual(warm, Read("metric", "11,21"), StringComparer.Ordinal);
        Assert.NotEqual(warm, Read("imperial", "10,20"), StringComparer.Ordinal);
        Assert.Equal(warm, Read("metric", "10,20"));

        string Read(string units, string temperatures)
        {
            var site = FarmFolder
                .Site(
                    "kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"",
                    "kind = \"record\"\nfile = \"weather.csv\"\nrain_unit = \"mm\""
                )
                .Replace("name = \"Test farm\"", $"name = \"Test farm\"\nunits = \"{units}\"", StringComparison.Ordinal);
            var days = Enumerable
                .Range(0, 366)
                .Select(day => $"{new DateOnly(2020, 1, 1).AddDays(day):yyyy-MM-dd},{temperatures},{day % 3}\n");
            var reading = ScenarioFolder.ReadKept(
                [
                    InputFile.Of("site.toml", site),
                    InputFile.Of("plan.csv", FarmFolder.GoodPlan),
                    InputFile.Of("weather.csv", "date,tmin,tmax,rain\n" + string.Concat(days)),
                ],
                records: records
            );
            return reading.Scenario is { Weather: BenchSim.Season.Inputs.RecordedWeather weather }
                ? $"{weather.Days[5]}"
                : string.Join('\n', reading.Faults);
        }
    }
}
