using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"run --shard" plays a share of the seasons, and "merge" adds the shares into the same bytes as one run.</summary>
public sealed class MergeTests
{
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("two-house-spring", 42)]
    [InlineData("by-hand", 10)]
    public void Four_parts_merged_equal_the_run_byte_for_byte(string scenario, int seasons)
    {
        using var folder = new TemporaryFolder();
        var farm = Copy(folder, scenario);
        var run = Call.Run("run", farm, $"--seasons={seasons}", "--require=0.9", "--threads=2");
        var report = folder.In("farm-report");
        var expected = Files(report);
        Directory.Delete(report, recursive: true);

        var parts = Play(farm, seasons, 4);
        var merge = Call.Run(["merge", .. parts, "--require=0.9"]);
        Assert.Equal((run.Code, run.Output, run.Error), (merge.Code, merge.Output, merge.Error));
        var merged = Files(report);
        Assert.Equal(expected.Keys.Order(StringComparer.Ordinal).ToArray(), merged.Keys.Order(StringComparer.Ordinal).ToArray());
        Assert.True(expected.ContainsKey("result.json"));
        Assert.All(expected, file => Assert.Equal(file.Value, merged[file.Key]));

        Assert.Equal(
            Call.Run("run", farm, $"--seasons={seasons}", "--no-report", "--json").Output,
            Call.Run(["merge", .. parts.Reverse(), "--no-report", "--json"]).Output
        );
    }

    [Fact]
    public void Merging_needs_nothing_but_the_parts()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();

        // A file that is not read, of which reading warns: the warning is in the answer too.
        File.WriteAllText(Path.Combine(spring, "crop.csv"), "id\n");
        var expected = Call.Run("run", spring, "--seasons=12", "--no-report", "--json").Output;
        Assert.Contains("crop.csv", expected, StringComparison.Ordinal);
        var parts = Play(spring, 12, 3);
        Directory.Delete(spring, recursive: true);
        Assert.Equal(expected, Call.Run(["merge", .. parts, "--no-report", "--json"]).Output);
        Assert.Equal(3, folder.Everything().Length);
    }

    [Fact]
    public void Parts_have_names_that_stand_in_order_and_bytes_that_do_not_depend_on_threads_or_on_the_place()
    {
        using var folder = new TemporaryFolder();
        using var elsewhere = new TemporaryFolder();
        var spring = folder.Starter();
        var part = Call.Run("run", spring, "--seasons=30", "--shard=2/10", "--threads=1");
        Assert.Equal(0, part.Code);
        Assert.StartsWith("Part 2 of 10: 3 seasons played, 4 to 6 of 30.\n", part.Output, StringComparison.Ordinal);
        Assert.EndsWith($"Part: {folder.In("spring.02-of-10.part")}\n", part.Output, StringComparison.Ordinal);
        Call.Run("run", elsewhere.Starter(), "--seasons=30", "--shard=2/10", "--threads=3", "--out", folder.In("other"));
        Assert.Equal(File.ReadAllBytes(folder.In("spring.02-of-10.part")), File.ReadAllBytes(folder.In("other")));
        Assert.Equal(
            ["other", "spring", "spring.02-of-10.part"],
            folder.Everything().Where(name => !name.Contains('/', StringComparison.Ordinal)).ToArray()
        );
    }

    [Fact]
    public void Machines_are_told_which_seasons_a_part_has()
    {
        using var folder = new TemporaryFolder();
        var part = Call.Run("run", folder.Starter(), "--seasons=30", "--shard=2/10", "--json", "--seed=7");
        using var json = JsonDocument.Parse(part.Output);
        Assert.Equal(
            [2, 10, 4, 6, 30],
            new[] { "part", "parts", "first_season", "last_season", "seasons" }.Select(name =>
                json.RootElement.GetProperty(name).GetInt32()
            )
        );
        Assert.Equal("7", json.RootElement.GetProperty("seed").GetString());
        Assert.Equal(folder.In("spring.02-of-10.part"), json.RootElement.GetProperty("file").GetString());
    }

    [Fact]
    public void Parts_that_are_missing_or_named_twice_are_faults()
    {
        using var folder = new TemporaryFolder();
        var parts = Play(folder.Starter(), 12, 3);
        var merge = Call.Run("merge", parts[0], parts[2], parts[0]);
        Assert.Equal(2, merge.Code);
        Assert.Empty(merge.Output);
        Assert.Contains(
            $"{parts[0]}:0:0: this is part 1 of 3 again, the same as {parts[0]}; name each part once\n",
            merge.Error,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "the run has 3 parts, and part 2 is missing; name all parts; "
                + "one that is not there yet is played with \"benchsim run\" and --shard 2/3\n",
            merge.Error,
            StringComparison.Ordinal
        );
        Assert.EndsWith("2 faults found. Mend them and try again.\n", merge.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.In("spring-report")));
    }

    [Theory]
    [InlineData("--seed=8", "its seed is 8, not 2027")]
    [InlineData("--seasons=13", "it has 13 seasons in all, not 12")]
    public void Parts_of_other_runs_are_faults(string option, string told)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Call.Run("run", spring, "--seasons=12", "--seed=2027", "--shard=1/2");
        string[] others =
        [
            .. new[] { "--seasons=12", "--seed=2027" }.Where(each => !each.StartsWith(option[..7], StringComparison.Ordinal)),
        ];
        Call.Run(["run", spring, "--shard=2/2", option, .. others]);
        var merge = Call.Run("merge", folder.In("spring.1-of-2.part"), folder.In("spring.2-of-2.part"));
        Assert.Equal(2, merge.Code);
        Assert.Contains(told, merge.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_of_a_plan_that_was_changed_between_are_faults()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Call.Run("run", spring, "--seasons=12", "--shard=1/2");
        File.AppendAllText(Path.Combine(spring, "site.toml"), "\n# a remark\n");
        Call.Run("run", spring, "--seasons=12", "--shard=2/2");
        var merge = Call.Run("merge", folder.In("spring.1-of-2.part"), folder.In("spring.2-of-2.part"), "--json");
        Assert.Equal(2, merge.Code);
        using var json = JsonDocument.Parse(merge.Output);
        var fault = Assert.Single(json.RootElement.GetProperty("faults").EnumerateArray());
        Assert.Contains("the file site.toml of its scenario differs", fault.GetProperty("what").GetString(), StringComparison.Ordinal);
    }

    // Fixed seed: no chance of a false alarm.
    [Fact]
    public void Whatever_the_bytes_of_a_part_it_is_a_fault_in_words()
    {
        using var folder = new TemporaryFolder();
        var parts = Play(folder.Starter(), 6, 2);
        var good = File.ReadAllBytes(parts[1]);
        Random random = new(4);
        for (var trial = 0; trial < 60; trial++)
        {
            var bad = (trial % 3) switch
            {
                0 => good[..random.Next(good.Length)],
                1 => [.. good],
                _ => new byte[random.Next(200)],
            };
            if (trial % 3 == 1)
            {
                bad[random.Next(bad.Length)] ^= (byte)random.Next(1, 256);
            }
            else if (trial % 3 == 2)
            {
                random.NextBytes(bad);
            }

            File.WriteAllBytes(parts[1], bad);
            var merge = Call.Run("merge", parts[0], parts[1], "--no-report");
            Assert.Equal(2, merge.Code);
            Assert.Empty(merge.Output);
            Assert.Matches(
                "part:0:0: this (part is damaged or cut short; copy it again, or play it again|"
                    + "is no part of a run; name files that \"benchsim run --shard\" wrote)\n1 fault found",
                merge.Error
            );
        }
    }

    [Fact]
    public void A_part_of_another_build_is_a_fault()
    {
        using var folder = new TemporaryFolder();
        var parts = Play(folder.Starter(), 4, 2);
        var text = Encoding.Latin1.GetString(File.ReadAllBytes(parts[1])[..^66]);
        var at = text.IndexOf("\"build\":\"", StringComparison.Ordinal) + 9;
        File.WriteAllBytes(parts[1], Signed(Encoding.Latin1.GetBytes(text[..at] + "0123456789abcdef" + text[(at + 16)..])));
        var merge = Call.Run("merge", parts[0], parts[1]);
        Assert.Equal(2, merge.Code);
        Assert.Equal(
            $"{parts[1]}:0:0: this part was played by another build of BenchSim, which may play otherwise; merge it with that build, "
                + "or play all parts again with this one\n1 fault found. Mend it and try again.\n",
            merge.Error
        );
    }

    // A part that someone made up, with a last line that vouches for it, is a fault too, or an answer if its counts hang together. Fixed
    // seed.
    [Fact]
    public void A_part_made_up_by_hand_breaks_nothing()
    {
        using var folder = new TemporaryFolder();
        var parts = Play(folder.Starter(), 6, 2);
        var body = File.ReadAllBytes(parts[1])[..^66];
        Random random = new(11);
        for (var trial = 0; trial < 60; trial++)
        {
            byte[] bad = [.. body];
            var from = trial % 2 == 0 ? 34 : bad.Length / 2;
            for (var change = random.Next(1, 4); change > 0; change--)
            {
                bad[random.Next(from, bad.Length)] = (byte)random.Next(256);
            }

            File.WriteAllBytes(parts[1], Signed(bad));
            var merge = Call.Run("merge", parts[0], parts[1], "--no-report");
            Assert.True(merge.Code is 0 or 2, merge.Error);
            Assert.Equal(merge.Code == 0, merge.Error.Length == 0);
        }
    }

    [Fact]
    public void Folders_and_files_that_are_not_there_are_faults_all_in_one_pass()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var merge = Call.Run("merge", folder.In("none.part"), spring, Path.Combine(spring, "plan.csv"));
        Assert.Equal(2, merge.Code);
        Assert.Contains("there is no such file", merge.Error, StringComparison.Ordinal);
        Assert.Contains("this is a folder, not a file", merge.Error, StringComparison.Ordinal);
        Assert.Contains("this is no part of a run", merge.Error, StringComparison.Ordinal);
        Assert.EndsWith("3 faults found. Mend them and try again.\n", merge.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_part_is_left_alone_and_an_earlier_part_is_replaced()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        File.WriteAllText(folder.In("mine"), "mine");
        var refused = Call.Run("run", spring, "--seasons=4", "--shard=1/2", "--out", folder.In("mine"));
        Assert.Equal(2, refused.Code);
        Assert.Contains("a file stands there that is no part of a run", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(folder.In("mine")));

        Assert.Equal(0, Call.Run("run", spring, "--seasons=4", "--shard=1/2", "--out", folder.In("part")).Code);
        var first = File.ReadAllBytes(folder.In("part"));
        Assert.Equal(0, Call.Run("run", spring, "--seasons=4", "--shard=2/2", "--out", folder.In("part")).Code);
        Assert.NotEqual(first, File.ReadAllBytes(folder.In("part")));
        Assert.Equal(2, Call.Run("run", spring, "--seasons=4", "--shard=1/2", "--out", folder.In("none/part")).Code);
        Assert.Equal(2, Call.Run("run", spring, "--seasons=4", "--shard=1/2", "--out", spring).Code);
        Assert.Equal(
            ["mine", "part", "spring"],
            folder.Everything().Where(name => !name.Contains('/', StringComparison.Ordinal)).ToArray()
        );
    }

    [Fact]
    public void Stopped_it_leaves_no_part_behind()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var before = folder.Everything();
        Assert.Equal(130, Call.Run(new CancellationToken(canceled: true), "run", spring, "--seasons=4", "--shard=1/2").Code);
        Assert.Equal(before, folder.Everything());
        var parts = Play(spring, 4, 2);
        before = folder.Everything();
        Assert.Equal(130, Call.Run(new CancellationToken(canceled: true), ["merge", .. parts]).Code);
        Assert.Equal(before, folder.Everything());
    }

    [Theory]
    [InlineData("--shard=3/2")]
    [InlineData("--shard=2")]
    [InlineData("--shard=1/5", "--seasons=4")]
    [InlineData("--shard=1/2", "--require=0.9")]
    [InlineData("--shard=1/2", "--no-report")]
    [InlineData("--shard=1/2", "--precision=2%")]
    [InlineData("--shard=1/2", "--season=1", "--batch=a")]
    public void What_a_part_cannot_do_is_refused(params string[] options)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var run = Call.Run(["run", spring, .. options]);
        Assert.Equal(2, run.Code);
        Assert.Contains("shar", run.Error, StringComparison.Ordinal);
        Assert.Equal(1, folder.Everything().Count(name => !name.Contains('/', StringComparison.Ordinal)));
    }

    [Fact]
    public void The_report_goes_where_it_is_told()
    {
        using var folder = new TemporaryFolder();
        var parts = Play(folder.Starter(), 4, 2);
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/note.txt"), "mine");
        Assert.Equal(2, Call.Run("merge", parts[0], parts[1], "--out", folder.In("mine")).Code);
        Assert.Equal(2, Call.Run("merge", parts[0], parts[1], "--out", folder.In("a"), "--no-report").Code);
        Assert.Equal(0, Call.Run("merge", parts[0], parts[1], "--out", folder.In("answers/a")).Code);
        Assert.True(File.Exists(folder.In("answers/a/report.html")));
    }

    private static byte[] Signed(byte[] body) =>
        [.. body, .. Encoding.ASCII.GetBytes($"\n{Convert.ToHexStringLower(SHA256.HashData(body))}\n")];

    private static string Copy(TemporaryFolder folder, string scenario)
    {
        var farm = folder.In("farm");
        Directory.CreateDirectory(farm);
        foreach (var file in Directory.GetFiles(Path.Combine(Repository.Root, "scenarios", scenario)))
        {
            File.Copy(file, Path.Combine(farm, Path.GetFileName(file)));
        }

        return farm;
    }

    private static string[] Play(string farm, int seasons, int of)
    {
        for (var number = 1; number <= of; number++)
        {
            Assert.Equal(0, Call.Run("run", farm, $"--seasons={seasons}", $"--shard={number}/{of}", $"--threads={number}").Code);
        }

        return [.. Enumerable.Range(1, of).Select(number => $"{farm}.{number}-of-{of}.part")];
    }

    private static Dictionary<string, byte[]> Files(string folder) =>
        Directory
            .EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None })
            .ToDictionary(file => Path.GetRelativePath(folder, file).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);
}
