using BenchSim.Folder.Files;
using static BenchSim.Folder.Tests.FaultMessageTests;

namespace BenchSim.Folder.Tests;

/// <summary>The folder and its files before anything in them is understood.</summary>
public class FolderAndFileTests
{
    [Fact]
    public void A_good_folder_has_no_faults_and_keeps_the_files_it_was_read_from()
    {
        using var folder = new TestFolder();
        folder.Write("notes.txt", "not an input");
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        Assert.NotNull(reading.Scenario);
        Assert.Equal(["plan.csv", "site.toml"], reading.Inputs.Select(file => file.Name).ToArray());
        Assert.Equal(File.ReadAllBytes(Path.Combine(folder.Path, "plan.csv")), reading.Inputs[0].Bytes.ToArray());
    }

    [Fact]
    public void A_folder_that_is_not_there()
    {
        var reading = ScenarioFolder.Read("no-such-folder");
        Assert.Null(reading.Scenario);
        Assert.Equal(
            "no-such-folder:0:0: there is no such folder; check the name; \"benchsim new\" makes a folder to fill in",
            Assert.Single(reading.Faults).ToString()
        );
    }

    [Fact]
    public void A_file_in_place_of_the_folder()
    {
        using var folder = new TestFolder();
        var reading = ScenarioFolder.Read(Path.Combine(folder.Path, "plan.csv"));
        Assert.Equal("this is a file, not a folder", Assert.Single(reading.Faults).What);
    }

    [Fact]
    public void Both_files_missing()
    {
        using var folder = new TestFolder(null, null);
        folder.Write("plan.scv", "id");
        AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.csv:0:0: there is no file \"plan.csv\" in the folder; did you mean \"plan.scv\"",
            "site.toml:0:0: there is no file \"site.toml\" in the folder; add site.toml, or check its name"
        );
    }

    [Fact]
    public void Empty_files_and_their_faults_come_together() =>
        AssertFaults(
            TestFolder.Faults("\n \n", ""),
            "plan.csv:1:1: the file is empty; begin with a line of column names: id,crop,grower,plants,sow,set_out",
            "site.toml:1:1: the file is empty; begin with [site] and a name; \"benchsim new\" makes a folder to fill in"
        );

    [Fact]
    public void A_windows_1252_character_is_told_where_it_is()
    {
        using var folder = new TestFolder();
        // "id,crop,plants,sow", then "J\xFCrgen": the bad byte is the second character of line 2.
        folder.Write("plan.csv", [.. "id,crop,plants,sow\nJ"u8, 0xFC, .. "rgen,tomato,1,2027-03-01\n"u8]);
        AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.csv:2:2: a character here is not UTF-8 text; save the file as UTF-8 (in a spreadsheet: \"CSV UTF-8\")"
        );
    }

    [Theory]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'i', 0 }, "the text is in the UTF-16 encoding")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0, (byte)'i' }, "the text is in the UTF-16 encoding")]
    [InlineData(new byte[] { (byte)'P', (byte)'K', 3, 4, 0 }, "this is a workbook or an archive, not a text file")]
    public void Other_kinds_of_file_are_named(byte[] bytes, string what)
    {
        using var folder = new TestFolder();
        folder.Write("plan.csv", bytes);
        Assert.Equal(what, Assert.Single(folder.Read().Faults).What);
    }

    // /dev/zero never ends and needs no rights; a named pipe holds up whoever opens it.
    [Theory]
    [InlineData("crops.csv", "/dev/zero")]
    [InlineData("plan.csv", "/dev/zero")]
    [InlineData("site.toml", "/dev/zero")]
    [InlineData("plan.csv", "pipe")]
    public void What_is_no_regular_file_is_not_opened(string name, string device)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var folder = new TestFolder();
        if (device == "pipe")
        {
            device = Path.Combine(folder.Path, device);
            using var made = System.Diagnostics.Process.Start("mkfifo", device);
            made.WaitForExit();
            Assert.Equal(0, made.ExitCode);
        }

        File.Delete(Path.Combine(folder.Path, name));
        File.CreateSymbolicLink(Path.Combine(folder.Path, name), device);
        Assert.Contains(
            $"{name}:0:0: this is not a regular file; put a file named {name} in its place, not a pipe, a device or a socket",
            folder.Read().Faults.Select(fault => fault.ToString()),
            StringComparer.Ordinal
        );
    }

    [Fact]
    public void A_link_to_nothing_is_told_as_one()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new TestFolder();
        File.Delete(Path.Combine(folder.Path, "plan.csv"));
        File.CreateSymbolicLink(Path.Combine(folder.Path, "plan.csv"), "nowhere.csv");
        Assert.Equal(
            "plan.csv:0:0: this is a link to a file that is not there; put a file named plan.csv in its place",
            Assert.Single(folder.Read().Faults).ToString()
        );
    }

    // The superuser may look anywhere, so the closed folder stands beside the disk.
    [Theory]
    [InlineData("site.toml", null, "FOLDER")]
    [InlineData("variants/more.toml", "more", "variants")]
    public void A_folder_one_may_not_look_into_does_not_lack_its_files(string hidden, string? variant, string where)
    {
        using var folder = new TestFolder();
        folder.Write("variants/more.toml", "[rules]\nslack_days = 3\n");
        var reading = new FolderReader(new ClosedFiles(folder.Path, hidden), variant).Read(folder.Path);
        Assert.Null(reading.Scenario);
        Assert.Equal(
            $"{where.Replace("FOLDER", folder.Path, StringComparison.Ordinal)}:0:0: you may not look into this folder, or into one above "
                + "it; ask its owner to let you read it, or work on a copy of your own",
            Assert.Single(reading.Faults).ToString()
        );
    }

    /// <summary>A folder whose owner keeps a part of it to himself: what stands there cannot be seen.</summary>
    private sealed class ClosedFiles(string directory, string hidden) : IFolderFiles
    {
        private readonly DiskFiles _files = new(directory);

        public bool IsFolder(string name) => _files.IsFolder(name);

        public bool IsFile(string name) => name != hidden && _files.IsFile(name);

        public bool IsRegular(string name) => _files.IsRegular(name);

        public bool IsHidden(string name) => name == hidden;

        public Stream Open(string name) => _files.Open(name);

        public IEnumerable<string> NamesIn(string folder) =>
            hidden.StartsWith(folder + "/", StringComparison.Ordinal) ? throw new UnauthorizedAccessException() : _files.NamesIn(folder);
    }

    [Fact]
    public void A_file_with_nearly_the_right_name_is_a_warning()
    {
        using var folder = new TestFolder();
        folder.Write("crop.csv", "id\n");
        var reading = folder.Read();
        Assert.NotNull(reading.Scenario);
        Assert.Equal(
            "crop.csv:0:0: this file is not read; if it holds your own crops, name it crops.csv",
            Assert.Single(reading.Warnings).ToString()
        );
    }

    [Fact]
    public void Faults_come_in_order_of_file_line_and_column()
    {
        var faults = TestFolder.Faults(
            TestFolder.Site("places = 60", "places = x"),
            "id,crop,plants,sow\na,nothing,x,y\n",
            ("trays.csv", "id,cells\nq,x\n"),
            ("crops.csv", "id,hold_days\ntomato,x\n")
        );
        string[] places = [.. faults.Select(fault => string.Join(':', fault.Split(':').Take(3)))];
        Assert.Equal(
            ["crops.csv:2:8", "plan.csv:2:3", "plan.csv:2:11", "plan.csv:2:13", "site.toml:19:10", "trays.csv:2:1", "trays.csv:2:3"],
            places
        );
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{a=")]
    [InlineData("[{a=")]
    public void Brackets_without_end_do_not_end_the_program(string open)
    {
        var site = "x = " + string.Concat(Enumerable.Repeat(open, 100_000));
        var faults = TestFolder.Faults(site);
        Assert.Contains(faults, fault =>
            fault.EndsWith("brackets are nested too deep here; close the lists and tables that are open", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_file_of_another_kind_is_refused_once()
    {
        var rows = string.Concat(Enumerable.Repeat("what,ever\n", 10_001));
        Assert.Equal(
            ["plan.csv:1:1: the file has 10001 rows and was not read; it may have up to 10000: check that it is the right file"],
            TestFolder.Faults(plan: "id,crop,plants,sow\n" + rows)
        );
        Assert.Equal(
            ["plan.csv:1:1: the file has 1001 columns and was not read; it may have up to 1000: check that it is the right file"],
            TestFolder.Faults(plan: "id" + new string(',', 1000) + "\n")
        );
    }

    [Fact]
    public void After_ten_thousand_faults_the_rest_are_only_mentioned()
    {
        // Each of 9,999 rows has two: no plants and no date.
        var rows = string.Concat(Enumerable.Range(0, 9999).Select(index => $"b{index},tomato,,\n"));
        var faults = TestFolder.Faults(plan: "id,crop,plants,sow\n" + rows);
        Assert.Equal(10_001, faults.Length);
        Assert.EndsWith(
            "there are more faults than are shown here; mend these first and check again",
            faults[^1],
            StringComparison.Ordinal
        );
    }
}
