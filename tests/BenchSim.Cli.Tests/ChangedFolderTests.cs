using System.Security.Cryptography;
using System.Text;

namespace BenchSim.Cli.Tests;

/// <summary>What somebody changes in a folder that BenchSim wrote is never lost: the next run names it and writes nothing.</summary>
public sealed class ChangedFolderTests : IDisposable
{
    private const string Room = """
        [[space]]
        id = "table"
        places = 12

        [invest]
        capital = 500
        life_years = 4
        discount_rate = "5 %"
        plant_on_time = 5
        """;

    private readonly TemporaryFolder _folder = new();
    private readonly string _farm;
    private readonly string _place;

    public ChangedFolderTests()
    {
        _farm = PaperFarm.In(_folder);
        _folder.Write("paper/variants/room.toml", Room);
        _folder.Write("record.csv", Record.Years(2));
        _place = _folder.In("kept");
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("run", "inputs/plan.csv")]
    [InlineData("run", "tables/batches.csv")]
    [InlineData("run", "report.html")]
    [InlineData("run", "charts/batches.png")]
    [InlineData("run", ".benchsim-report")]
    [InlineData("compare", "inputs/variants/room.toml")]
    [InlineData("print", "work-list.csv")]
    [InlineData("size", "tables/size.csv")]
    [InlineData("dense", "tables/dense-changes.csv")]
    [InlineData("invest", "tables/invest-figures.csv")]
    [InlineData("weather", "tables/weather-months.csv")]
    public void A_changed_file_is_named_and_nothing_is_written(string command, string file)
    {
        Assert.Equal(0, Write(command).Code);
        Assert.Equal(0, Write(command).Code);
        File.AppendAllText(Path.Combine(_place, file), "mine\n");
        var before = TemporaryFolder.Files(_folder.Path);

        var refused = Write(command);

        Assert.Equal(2, refused.Code);
        Assert.Empty(refused.Output);
        Assert.Equal(
            $"Nothing was written: in '{_place}' you changed '{file}', and a new report would replace it. "
                + "Copy it out of the folder, then remove the folder or name another.\n",
            refused.Error
        );
        Assert.Equal(before, TemporaryFolder.Files(_folder.Path));
    }

    [Fact]
    public void All_changed_files_are_named_at_once()
    {
        Assert.Equal(0, Write("run").Code);
        File.AppendAllText(Path.Combine(_place, "inputs/plan.csv"), "mine\n");
        File.WriteAllText(Path.Combine(_place, "tables/daily.csv"), "");
        Assert.Contains("you changed 'inputs/plan.csv', 'tables/daily.csv', and", Write("run").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_removed_stands_in_nobodys_way()
    {
        Assert.Equal(0, Write("run").Code);
        Directory.Delete(Path.Combine(_place, "charts"), recursive: true);
        Assert.Equal(0, Write("run").Code);
        Assert.True(File.Exists(Path.Combine(_place, "charts/batches.png")));
    }

    // A file of a name that a report may have, but that this one did not have.
    [Fact]
    public void A_file_that_was_not_written_is_not_taken_for_one_that_was()
    {
        Assert.Equal(0, Write("run").Code);
        File.WriteAllText(Path.Combine(_place, "case.pdf"), "mine");
        var refused = Write("run");
        Assert.Equal(2, refused.Code);
        Assert.Contains("holds 'case.pdf', which is no part of a report", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(_place, "case.pdf")));
    }

    [Fact]
    public void A_folder_of_an_earlier_program_that_kept_no_list_is_left_alone()
    {
        Assert.Equal(0, Write("run").Code);
        File.Delete(Path.Combine(_place, ".benchsim-files"));
        var before = TemporaryFolder.Files(_place);
        var refused = Write("run");
        Assert.Equal(2, refused.Code);
        Assert.Contains("has no list of the files in it", refused.Error, StringComparison.Ordinal);
        Assert.Equal(before, TemporaryFolder.Files(_place));
    }

    // The form of sha256sum: the hash of each file in hexadecimal, two blanks, its name. No time, no path of this machine.
    [Fact]
    public void The_list_holds_a_hash_of_each_file_and_nothing_else()
    {
        Assert.Equal(0, Write("run").Code);
        var files = TemporaryFolder.Files(_place);
        var list = Encoding.UTF8.GetString(files[".benchsim-files"]);
        files.Remove(".benchsim-files");
        Assert.Equal(string.Concat(files.Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(file.Value))}  {file.Key}\n")), list);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("compare")]
    public void A_report_never_replaces_the_files_it_is_made_of(string command)
    {
        Assert.Equal(0, Write(command).Code);
        var before = TemporaryFolder.Files(_place);

        var refused = Write(command, Path.Combine(_place, "inputs"));

        Assert.Equal(2, refused.Code);
        Assert.Equal(
            $"Nothing was written: '{_place}' holds the scenario folder that was to be played, and would replace it. Name "
                + "another folder.\n",
            refused.Error
        );
        Assert.Equal(before, TemporaryFolder.Files(_place));
        Assert.Equal(0, Call.Run("run", Path.Combine(_place, "inputs"), "--seasons", "2", "--out", _folder.In("other")).Code);
    }

    private Call Write(string command, string? farm = null) =>
        command switch
        {
            "run" => Call.Run("run", farm ?? _farm, "--seasons", "2", "--out", _place),
            "compare" => Call.Run("compare", farm ?? _farm, "--with", "room", "--seasons", "2", "--case", "--out", _place),
            "print" => Call.Run("print", _farm, "--what", "list", "--out", _place),
            "size" => Call.Run("size", _farm, "--space", "mats", "--seasons", "40", "--out", _place),
            "dense" => Call.Run("dense", _farm, "--seeds-per-flat", "100", "--seasons", "2", "--out", _place),
            "invest" => Call.Run("invest", _farm, "--with", "room", "--seasons", "2", "--out", _place),
            _ => Call.Run("weather", _folder.In("record.csv"), "--out", _place),
        };
}
