using System.Text;
using BenchSim.Report.Writing;

namespace BenchSim.Cli.Tests;

/// <summary>The folder "weather" writes is whole or absent, and takes no one's place.</summary>
public sealed class WeatherFolderTests
{
    private static readonly string[] s_files =
    [
        ".benchsim-files",
        ".benchsim-report",
        "charts",
        "charts/weather.png",
        "columns.csv",
        "tables",
        "tables/weather-carry-over.csv",
        "tables/weather-fitted.csv",
        "tables/weather-months.csv",
        "tables/weather-quantiles.csv",
        "tables/weather-repairs.csv",
        "tables/weather-springs.csv",
    ];

    [Fact]
    public void Holds_a_chart_and_tables_and_is_replaced_by_the_same_bytes()
    {
        using var folder = new TemporaryFolder();
        var record = Write(folder);
        var weather = Call.Run("weather", record, "--out", folder.In("far/fit"), "--all");
        Assert.Equal(0, weather.Code);
        Assert.EndsWith(
            $"Chart: {folder.In("far/fit/charts/weather.png")}\nTables: {folder.In("far/fit/tables")}\n",
            weather.Output,
            StringComparison.Ordinal
        );
        Assert.Equal(
            s_files,
            folder
                .Everything()
                .Where(name => name.StartsWith("far/fit/", StringComparison.Ordinal))
                .Select(name => name["far/fit/".Length..]),
            StringComparer.Ordinal
        );
        var chart = File.ReadAllBytes(folder.In("far/fit/charts/weather.png"));
        var months = File.ReadAllBytes(folder.In("far/fit/tables/weather-months.csv"));

        // The signature of the format: Portable Network Graphics Specification, third edition, section 5.2.
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], chart[..8]);
        var march = Encoding.UTF8.GetString(months).Split("\r\n")[3];
        Assert.StartsWith("3,62,3,", march, StringComparison.Ordinal);
        Assert.Equal(0, Call.Run("weather", record, "--out", folder.In("far/fit"), "--all").Code);
        Assert.Equal(chart, File.ReadAllBytes(folder.In("far/fit/charts/weather.png")));
        Assert.Equal(months, File.ReadAllBytes(folder.In("far/fit/tables/weather-months.csv")));
    }

    [Fact]
    public void Refuses_a_folder_of_someone_else_before_it_reads()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/note.txt"), "mine");
        var weather = Call.Run("weather", folder.In("none.csv"), "--out", folder.In("mine"));
        Assert.Equal(2, weather.Code);
        Assert.Empty(weather.Output);
        Assert.Equal(FolderRefusals.NotOurs(folder.In("mine")) + "\n", weather.Error);
        Assert.Equal(["mine", "mine/note.txt"], folder.Everything());
    }

    [Fact]
    public void Refuses_a_folder_of_its_own_with_a_foreign_file_in_it()
    {
        using var folder = new TemporaryFolder();
        var record = Write(folder);
        Assert.Equal(0, Call.Run("weather", record, "--out", folder.In("fit")).Code);
        File.WriteAllText(folder.In("fit/tables/mine.csv"), "mine");
        var again = Call.Run("weather", record, "--out", folder.In("fit"));
        Assert.Equal(2, again.Code);
        Assert.Contains("holds 'tables/mine.csv'", again.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.In("fit/tables/mine.csv")));
    }

    [Fact]
    public void Does_not_take_the_place_of_the_report_of_a_run()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(0, Call.Run("run", folder.Starter(), "--seasons=5").Code);
        var before = folder.Everything();
        var weather = Call.Run("weather", folder.In("none.csv"), "--out", folder.In("spring-report"));
        Assert.Equal(2, weather.Code);
        Assert.Equal(FolderRefusals.OtherKind(folder.In("spring-report")) + "\n", weather.Error);
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void A_stopped_command_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        var record = Write(folder);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var weather = Call.Run(stop.Token, "weather", record, "--out", folder.In("far/fit"));
        Assert.Equal(130, weather.Code);
        Assert.Equal(["record.csv"], folder.Everything());
    }

    private static string Write(TemporaryFolder folder)
    {
        var file = folder.In("record.csv");
        File.WriteAllText(file, Record.Years(2));
        return file;
    }
}
