using System.Collections.Immutable;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Folder.Tests.Logbook;

/// <summary>log.csv: what was done and seen, as people write it.</summary>
public class LogTests
{
    [Fact]
    public void Rows_are_read_as_people_write_them()
    {
        using var folder = LogFarm.Of(
            "1 March 2027,A,Sowed,\"5\",,,Mats,,,35,Ada,2027-03-03,on paper",
            "2027-03-05,a,UP,,,,,20,24,,,,",
            "2027-03-08,a,move,5,,,north bench,,,,,,",
            "2027-03-09,,low,,,,outdoors,28 F,,,,,",
            "2027-03-09,,low,,,,Main,9,,,,,",
            "2027-03-10,,fuel,,,,main,\"1,250.5\",,,,,litres",
            "2027-03-10,,walked,,,,north bench,,,,,,"
        );
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Contains("log.csv", reading.Inputs.Select(file => file.Name), StringComparer.Ordinal);
        ImmutableArray<LogEntry> expected =
        [
            new()
            {
                Date = new(2027, 3, 1),
                BatchId = "a",
                What = LogKind.Sown,
                Trays = 5,
                Space = "mats",
                Minutes = 35,
                By = "Ada",
                Entered = new(2027, 3, 3),
                Note = "on paper",
                Place = new("log.csv", 2, 1),
            },
            new()
            {
                Date = new(2027, 3, 5),
                BatchId = "a",
                What = LogKind.Up,
                Count = 20,
                Of = 24,
                Place = new("log.csv", 3, 1),
            },
            new()
            {
                Date = new(2027, 3, 8),
                BatchId = "a",
                What = LogKind.Moved,
                Trays = 5,
                Space = "bench",
                Place = new("log.csv", 4, 1),
            },
            // 28 F is 4 F below freezing: 4 * 5 / 9 K.
            new()
            {
                Date = new(2027, 3, 9),
                What = LogKind.Low,
                Count = -20.0 / 9,
                Place = new("log.csv", 5, 1),
            },
            new()
            {
                Date = new(2027, 3, 9),
                What = LogKind.Low,
                Space = "main",
                Count = 9,
                Place = new("log.csv", 6, 1),
            },
            new()
            {
                Date = new(2027, 3, 10),
                What = LogKind.Fuel,
                Space = "main",
                Count = 1250.5,
                Note = "litres",
                Place = new("log.csv", 7, 1),
            },
            new()
            {
                Date = new(2027, 3, 10),
                What = LogKind.Walked,
                Space = "bench",
                Place = new("log.csv", 8, 1),
            },
        ];
        Assert.Equal(
            expected.Select(entry => entry with { Count = Rounded(entry.Count) }),
            reading.Scenario!.Log.Select(entry => entry with { Count = Rounded(entry.Count) })
        );
    }

    [Fact]
    public void Dates_are_written_as_the_site_says()
    {
        using var folder = LogFarm.Of("3/4/2027,a,sown,5,,,mats,,,,,,");
        folder.Write("site.toml", LogFarm.Site.Replace("[site]\n", "[site]\ndate_order = \"dmy\"\n", StringComparison.Ordinal));
        Assert.Equal(new DateOnly(2027, 4, 3), Assert.Single(folder.Read().Scenario!.Log).Date);
    }

    [Fact]
    public void A_few_columns_will_do()
    {
        using var folder = new TestFolder(LogFarm.Site, LogFarm.Plan);
        folder.Write("log.csv", "what;date;batch;trays;space\nsown;2027-03-01;a;5;mats\n\n;;;;\nmoved;2027-03-09;a;2;bench\n");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var ledger = BenchLedger.Of(reading.Scenario!, reading.Scenario!.Log);
        Assert.Equal([(0, 3), (1, 2)], ledger.Batches[0].Piles.Select(pile => (pile.Space, pile.Count)));
    }

    [Fact]
    public void An_empty_log_has_no_rows()
    {
        using var folder = LogFarm.Of();
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Scenario!.Log);
    }

    // A variant may take away what the log names; what was done is told of the base.
    [Fact]
    public void A_variant_reads_no_log()
    {
        using var folder = LogFarm.Of("2027-03-01,a,sown,5,,,mats,,,,,,", "nonsense");
        folder.Write("variants/less.toml", "[[plan]]\nbatch = \"a\"\ndrop = true\n");
        var reading = ScenarioFolder.ReadVariant(folder.Path, "less");
        Assert.Empty(reading.Faults);
        Assert.DoesNotContain("log.csv", reading.Inputs.Select(file => file.Name), StringComparer.Ordinal);
    }

    [Fact]
    public void A_log_under_a_name_near_by_is_told()
    {
        using var folder = new TestFolder();
        folder.Write("logs.csv", "date\n");
        Assert.Equal(
            "logs.csv:0:0: this file is not read; if it holds your own log, name it log.csv",
            Assert.Single(folder.Read().Warnings).ToString()
        );
    }

    [Fact]
    public void Two_logs_are_one_too_many()
    {
        using var folder = LogFarm.Of();
        folder.Write(FileNames.WorkbookOf("log.csv"), "PK");
        Assert.Equal(
            "log.csv:0:0: there is log.xlsx as well, and one of the two may be old; keep the one that is meant",
            Assert.Single(folder.Read().Faults).ToString()
        );
    }

    private static double? Rounded(double? count) => count is { } number ? Math.Round(number, 9) : null;
}
