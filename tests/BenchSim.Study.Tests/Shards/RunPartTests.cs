using System.Security.Cryptography;
using System.Text;
using BenchSim.Study.Shards;

namespace BenchSim.Study.Tests.Shards;

/// <summary>A part as bytes comes back as it was; anything else is told apart and never throws.</summary>
public class RunPartTests
{
    [Fact]
    public void A_part_comes_back_as_it_was()
    {
        var made = Make(2, 4, 1000, ulong.MaxValue);
        var read = RunPart.Read(made.ToBytes(), out var problem);
        Assert.Equal(PartProblem.None, problem);
        Assert.NotNull(read);
        Assert.Equal(
            (made.Header.Share, made.Header.Seasons, made.Header.Seed, made.Header.Folder, made.Header.Build),
            (read.Header.Share, read.Header.Seasons, read.Header.Seed, read.Header.Folder, read.Header.Build)
        );
        Assert.Equal(made.Header.Unread.ToArray(), read.Header.Unread.ToArray());
        Assert.Equal(
            made.Inputs.Select(input => (input.Name, Encoding.UTF8.GetString(input.Bytes.Span))),
            read.Inputs.Select(input => (input.Name, Encoding.UTF8.GetString(input.Bytes.Span)))
        );
        Assert.Equal(made.Counts.ToArray(), read.Counts.ToArray());
        Assert.Equal(made.ToBytes(), read.ToBytes());
    }

    [Fact]
    public void The_first_lines_say_what_it_is()
    {
        var lines = Encoding.UTF8.GetString(Make(2, 4, 1000, 7).ToBytes()).Split('\n');
        Assert.Equal("BenchSim part of a run, version 2", lines[0]);

        // 1,000 seasons in four: the second quarter is 251 to 500.
        Assert.StartsWith(
            "{\"part\":2,\"parts\":4,\"first_season\":251,\"last_season\":500,\"seasons\":1000,\"seed\":\"7\",",
            lines[1],
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Any_single_change_and_any_cut_is_found()
    {
        var good = Make(1, 2, 10, 7).ToBytes();
        for (var at = 0; at < good.Length; at++)
        {
            byte[] changed = [.. good];
            changed[at] ^= 1;
            Assert.Null(RunPart.Read(changed, out var problem));
            Assert.Equal(at < RunPart.Mark.Length ? PartProblem.NotAPart : PartProblem.Damaged, problem);
            Assert.Null(RunPart.Read(good.AsMemory(0, at), out _));
        }

        Assert.Null(RunPart.Read((byte[])[.. good, 10], out _));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void Another_version_is_told_apart_from_damage(int version)
    {
        var other = Signed(Encoding.UTF8.GetBytes($"{RunPart.Mark}{version}\n{{\"other\":true}}\n"));
        Assert.Null(RunPart.Read(other, out var problem));
        Assert.Equal(PartProblem.OtherVersion, problem);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("{\"part\":\"1\"}")]
    [InlineData("{")]
    public void A_header_that_is_none_is_damage(string header)
    {
        Assert.Null(RunPart.Read(Signed(Encoding.UTF8.GetBytes($"{RunPart.Mark}2\n{header}\n")), out var problem));
        Assert.Equal(PartProblem.Damaged, problem);
    }

    [Theory]
    [InlineData("\"part\":2", "\"part\":5")]
    [InlineData("\"part\":2", "\"part\":-2147483649")]
    [InlineData("\"parts\":4", "\"parts\":1001")]
    [InlineData("\"seasons\":1000", "\"seasons\":1000001")]
    [InlineData("\"seed\":\"7\"", "\"seed\":\"-7\"")]
    [InlineData("\"seed\":\"7\"", "\"seed\":\"99999999999999999999\"")]
    [InlineData("\"folder\":\"spring\"", "\"folder\":\"..\"")]
    [InlineData("\"folder\":\"spring\"", "\"folder\":\"a/b\"")]
    [InlineData("\"folder\":\"spring\"", "\"folder\":\"\\\\ud800\"")]
    [InlineData("plan.csv", "../plan.csv")]
    [InlineData("plan.csv", "site.toml")]
    [InlineData("\"bytes\":4", "\"bytes\":-4")]
    [InlineData("\"bytes\":4", "\"bytes\":2147483647")]
    [InlineData("\"counts_bytes\":3", "\"counts_bytes\":4")]
    [InlineData("\"first_season\":251", "\"first_season\":250")] // Part 2 of 4 of 1,000 seasons: 251 to 500.
    [InlineData("\"last_season\":500", "\"last_season\":501")]
    [InlineData("\"first_season\":251,", "")]
    public void A_header_of_what_cannot_be_is_damage(string written, string instead)
    {
        // Latin-1 takes every byte through text and back.
        var good = Encoding.Latin1.GetString(Make(2, 4, 1000, 7).ToBytes());
        Assert.Contains(written, good, StringComparison.Ordinal);
        var changed = good[..^66].Replace(written, instead.Replace(@"\\", @"\", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Null(RunPart.Read(Signed(Encoding.Latin1.GetBytes(changed)), out var problem));
        Assert.Equal(PartProblem.Damaged, problem);
    }

    // Fixed seed: no chance of a false alarm.
    [Fact]
    public void Any_bytes_signed_or_not_never_throw()
    {
        var good = Make(2, 4, 1000, 7).ToBytes()[..^66];
        Random random = new(9);
        for (var trial = 0; trial < 4000; trial++)
        {
            byte[] bytes = [.. good];
            for (var change = random.Next(1, 5); change > 0; change--)
            {
                bytes[random.Next(RunPart.Mark.Length, bytes.Length)] = (byte)random.Next(256);
            }

            var cut = bytes[..random.Next(bytes.Length)];
            RunPart.Read(Signed(bytes), out _);
            RunPart.Read(Signed(cut), out _);
            Assert.Null(RunPart.Read(cut, out _));
        }
    }

    [Fact]
    public void Parts_of_one_run_are_good_in_any_order_and_under_any_name_of_the_folder()
    {
        var second = Make(2, 2, 10, 7);
        Assert.Empty(Faults(second, Make(1, 2, 10, 7)));
        Assert.Empty(Faults(second with { Header = second.Header with { Folder = "node-7" } }, Make(1, 2, 10, 7)));
    }

    [Fact]
    public void Parts_share_what_is_the_same_in_them()
    {
        var first = Make(1, 2, 10, 7);
        var second = Make(2, 2, 10, 7);
        Assert.Equal(first.Inputs, second.SharingInputsWith(first).Inputs);
        Assert.Equal(second.ToBytes(), second.SharingInputsWith(first).ToBytes());
        var other = second with { Inputs = [second.Inputs[0], new PartInput("site.toml", "b"u8.ToArray())] };
        Assert.Equal(other.Inputs, other.SharingInputsWith(first).Inputs);
    }

    [Fact]
    public void What_keeps_parts_apart_is_said()
    {
        var first = Make(1, 2, 10, 7);
        var second = Make(2, 2, 10, 7);
        Assert.Contains("its seed is 8, not 7", Fault(first, Make(2, 2, 10, 8)), StringComparison.Ordinal);
        Assert.Contains("it has 11 seasons in all, not 10", Fault(first, Make(2, 2, 11, 7)), StringComparison.Ordinal);
        Assert.Contains("it is one of 3 parts, not of 2", Fault(first, Make(2, 3, 10, 7)), StringComparison.Ordinal);
        Assert.Contains(
            "another build",
            Fault(first, second with { Header = second.Header with { Build = "other" } }),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "the file plan.csv of its scenario differs",
            Fault(first, second with { Inputs = [new PartInput("plan.csv", "else"u8.ToArray()), second.Inputs[1]] }),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "the file site.toml of its scenario differs",
            Fault(first, second with { Inputs = [second.Inputs[0]] }),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "other files besides",
            Fault(first, second with { Header = second.Header with { Unread = [] } }),
            StringComparison.Ordinal
        );
        Assert.Contains("part 2 is missing", Fault(first), StringComparison.Ordinal);
        Assert.Contains("parts 1, 2 and 4 are missing", Fault(Make(3, 4, 10, 7)), StringComparison.Ordinal);
        Assert.Contains("and 89 more are missing", Fault(Make(3, 100, 1000, 7)), StringComparison.Ordinal);
        Assert.Contains("part 2 of 2 again, the same as file 2", Fault(first, second, Make(2, 2, 10, 7)), StringComparison.Ordinal);
    }

    private static string Fault(params RunPart[] parts)
    {
        (var file, var what, var instead) = Assert.Single(Faults(parts));
        Assert.NotEmpty(file);
        Assert.NotEmpty(instead);
        return what;
    }

    private static IReadOnlyList<(string File, string What, string Instead)> Faults(params RunPart[] parts) =>
        PartSet.Faults([.. parts.Select((part, at) => ($"file {at + 1}", part))], "build");

    private static RunPart Make(int number, int of, int seasons, ulong seed) =>
        new(
            new PartHeader
            {
                Share = new Share(number, of),
                Seasons = seasons,
                Seed = seed,
                Folder = "spring",
                Build = "build",
                Unread = ["crop.csv"],
            },
            [new PartInput("plan.csv", "plan"u8.ToArray()), new PartInput("site.toml", "a\nb"u8.ToArray())],
            new byte[] { 1, 0, 255 }
        );

    private static byte[] Signed(byte[] body) =>
        [.. body, .. Encoding.ASCII.GetBytes($"\n{Convert.ToHexStringLower(SHA256.HashData(body))}\n")];
}
