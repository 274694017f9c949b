using System.Security.Cryptography;
using System.Text;
using BenchSim.Study.Counting;
using BenchSim.Study.Sweeps;

namespace BenchSim.Study.Tests.Sweeps;

/// <summary>The result of a task as bytes comes back as it was; anything else is told apart and never throws.</summary>
public sealed class TaskFileTests
{
    [Fact]
    public void A_result_comes_back_as_it_was()
    {
        var made = Make();
        var read = TaskFile.Read(made.ToBytes());
        Assert.NotNull(read);
        Assert.Equal((17, "abc", "build", 10, 7, 6), Head(read));
        Assert.Equal(made.Counts.PlantsInTime, read.Counts.PlantsInTime);
        Assert.Equal(made.Counts.LatePlantDays, read.Counts.LatePlantDays);
        Assert.Equal([3, 0], read.Counts.ShortSeasons.ToArray());
        Assert.Equal([44L, 0L], read.Counts.WorstShort.ToArray());
        Assert.Equal(made.ToBytes(), read.ToBytes());
    }

    // The form is promised to other programs: docs/decisions/031-sweeps.md.
    [Fact]
    public void It_is_three_lines_of_plain_text()
    {
        const string Two =
            "BenchSim task of a sweep, version 1\n"
            + "{\"task\":17,\"key\":\"abc\",\"build\":\"build\",\"seasons\":10,\"fits\":7,\"fits_weather_counted\":6,"
            + "\"plants_in_time\":{\"sum\":\"1000\",\"squares\":\"100000\",\"least\":100,\"most\":100},"
            + "\"late_plant_days\":{\"sum\":\"20\",\"squares\":\"40\",\"least\":2,\"most\":2},"
            + "\"spaces\":[{\"short_seasons\":3,\"worst_short\":44},{\"short_seasons\":0,\"worst_short\":0}]}";
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(Two)));
        Assert.Equal($"{Two}\n{hash}\n", Encoding.ASCII.GetString(Make().ToBytes()));
    }

    [Fact]
    public void Any_single_change_and_any_cut_is_found()
    {
        var good = Make().ToBytes();
        for (var at = 0; at < good.Length; at++)
        {
            byte[] changed = [.. good];
            changed[at] ^= 1;
            Assert.Null(TaskFile.Read(changed));
            Assert.Null(TaskFile.Read(good.AsMemory(0, at)));
            Assert.True(TaskFile.IsOne(good.AsSpan(0, at)));
        }

        Assert.Null(TaskFile.Read((byte[])[.. good, 10]));
        // What a disk may leave of a file when the power goes.
        Assert.True(TaskFile.IsOne(new byte[30]));
        Assert.False(TaskFile.IsOne("Our notes on the spring"u8));
    }

    // What no play can have counted, though its last line vouches for it.
    [Theory]
    [InlineData("\"fits\":7", "\"fits\":11")]
    [InlineData("\"fits\":7", "\"fits\":-1")]
    [InlineData("\"seasons\":10", "\"seasons\":\"10\"")]
    [InlineData("\"task\":17", "\"task\":99999999999")]
    [InlineData("\"short_seasons\":3", "\"short_seasons\":11")]
    [InlineData("\"worst_short\":44", "\"worst_short\":-1")]
    [InlineData("\"sum\":\"1000\"", "\"sum\":\"1001\"")]
    [InlineData("\"sum\":\"1000\"", "\"sum\":\"-1\"")]
    [InlineData("\"squares\":\"100000\"", "\"squares\":\"9999999999999999999999999999999999999999999\"")]
    [InlineData("\"least\":100", "\"least\":101")]
    [InlineData("\"most\":100", "\"most\":9223372036854775807")]
    [InlineData("\"key\":\"abc\"", "\"key\":null")]
    [InlineData("\"spaces\":[", "\"spaces\":[[],")]
    [InlineData("{\"task\"", "[{\"task\"")]
    public void What_no_play_counted_is_refused(string old, string other)
    {
        var text = Encoding.ASCII.GetString(Make().ToBytes());
        var body = text[..^66];
        Assert.Contains(old, body, StringComparison.Ordinal);
        var changed = body.Replace(old, other, StringComparison.Ordinal);
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(changed)));
        Assert.Null(TaskFile.Read(Encoding.ASCII.GetBytes($"{changed}\n{hash}\n")));
    }

    private static (int, string, string, int, int, int) Head(TaskFile file) =>
        (file.Number, file.Key, file.Build, file.Counts.Seasons, file.Counts.Fits, file.Counts.FitsWeatherCounted);

    // Ten seasons of 100 plants in time and 2 late plant-days each.
    private static TaskFile Make()
    {
        var counts = new SweepCounts(2)
        {
            Seasons = 10,
            Fits = 7,
            FitsWeatherCounted = 6,
            PlantsInTime = Moments.Of(100, 10),
            LatePlantDays = Moments.Of(2, 10),
        };
        counts.ShortSeasons[0] = 3;
        counts.WorstShort[0] = 44;
        return new TaskFile(17, "abc", "build", counts);
    }
}
