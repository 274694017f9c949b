using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using BenchSim.Report.Writing;

namespace BenchSim.Cli.Tests;

/// <summary>"run --case" and "compare --case" write a case report beside the files that were played.</summary>
public sealed class CaseTests
{
    private const string Room = """
        [[space]]
        id = "mats"
        places = 8

        [[space]]
        id = "bench"
        places = 12

        [invest]
        capital = 500
        life_years = 4
        discount_rate = "5 %"
        plant_on_time = 5
        """;

    [Fact]
    public void A_run_puts_it_into_its_report()
    {
        using var folder = new TemporaryFolder();
        var run = Call.Run("run", Farm(folder), "--seasons", "3", "--case");
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        Assert.Contains("Case report: " + Path.Combine(folder.In("paper-report"), "case.pdf") + "\n", run.Output, StringComparison.Ordinal);
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(folder.In("paper-report/case.pdf"))[..5]);

        // An ordinary run takes its place, case and all.
        Assert.Equal(0, Call.Run("run", folder.In("paper"), "--seasons", "3").Code);
        Assert.False(File.Exists(folder.In("paper-report/case.pdf")));
    }

    // docs/case.md promises two to six pages behind the summary. Each page is an object of its own in the file.
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("longer-table")]
    [InlineData("second-house")]
    public void The_case_of_the_example_has_no_more_than_six_pages_behind_its_summary(string variant)
    {
        using var folder = new TemporaryFolder();
        var spring = Path.Combine(Repository.Root, "scenarios", "two-house-spring");
        Assert.Equal(0, Call.Run("compare", spring, "--with", variant, "--seasons", "40", "--case", "--out", folder.In("case")).Code);
        var pdf = Encoding.Latin1.GetString(File.ReadAllBytes(folder.In("case/case.pdf")));
        Assert.InRange(Regex.Count(pdf, @"/Type\s*/Page\b", RegexOptions.None, TimeSpan.FromSeconds(10)), 3, 7);
    }

    [Fact]
    public void A_comparison_writes_it_beside_the_files_played_and_machines_are_told_where()
    {
        using var folder = new TemporaryFolder();
        var compare = Call.Run("compare", Farm(folder), "--with", "room", "--seasons", "3", "--case", "--json");
        Assert.Equal(0, compare.Code);
        using var json = JsonDocument.Parse(compare.Output);
        var file = json.RootElement.GetProperty("case").GetString()!;
        Assert.Equal(Path.Combine(folder.In("paper-room-case"), "case.pdf"), file);
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(file)[..5]);
        Assert.Equal(Room, File.ReadAllText(folder.In("paper-room-case/inputs/variants/room.toml")));
        Assert.True(File.Exists(folder.In("paper-room-case/inputs/plan.csv")));
    }

    [Fact]
    public void It_can_be_repeated_from_its_own_inputs_to_the_last_byte()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(
            0,
            Call.Run(
                "compare",
                Farm(folder),
                "--with",
                "room",
                "--seasons",
                "4",
                "--seed",
                "9",
                "--case",
                "--out",
                folder.In("one"),
                "--threads",
                "1"
            ).Code
        );
        Assert.Equal(
            0,
            Call.Run(
                "compare",
                folder.In("one/inputs"),
                "--with",
                "room",
                "--seasons",
                "4",
                "--seed",
                "9",
                "--case",
                "--paper",
                "a4",
                "--out",
                folder.In("two"),
                "--threads",
                "3"
            ).Code
        );
        Assert.Equal(File.ReadAllBytes(folder.In("one/case.pdf")), File.ReadAllBytes(folder.In("two/case.pdf")));

        Assert.Equal(0, Call.Run("run", folder.In("paper"), "--seasons", "4", "--seed", "9", "--case").Code);
        Assert.Equal(
            0,
            Call.Run(
                "run",
                folder.In("paper-report/inputs"),
                "--seasons",
                "4",
                "--seed",
                "9",
                "--case",
                "--paper",
                "A4",
                "--out",
                folder.In("again")
            ).Code
        );
        Assert.Equal(File.ReadAllBytes(folder.In("paper-report/case.pdf")), File.ReadAllBytes(folder.In("again/case.pdf")));
    }

    [Theory]
    [InlineData("run", "--paper=letter", "--paper goes with --case; write --case too, or leave it out.")]
    [InlineData("run", "--case --paper=a5", "--paper \"a5\" cannot be used; write a4 or letter.")]
    [InlineData("run", "--case --no-report", "--case and --no-report contradict each other; leave one out.")]
    [InlineData(
        "run",
        "--case --season=1 --batch=A",
        "--case does not go with --season and --batch: a story plays one season and writes no report; leave it out."
    )]
    [InlineData("run", "--case --shard=1/2", "--case does not go with --shard: a part has no answer of its own; leave it out.")]
    [InlineData("compare", "--with=room --out=x", "--out goes with --case; write --case too, or leave it out.")]
    [InlineData(
        "compare",
        "--with room other --case",
        "--case takes one variant, since a case is made for one change; write --with with one name, and run the command once for each."
    )]
    public void Options_that_make_no_sense_are_refused_and_nothing_is_written(string command, string options, string fault)
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder);
        var before = folder.Everything();
        var call = Call.Run([command, farm, .. options.Split(' ')]);
        Assert.Equal(2, call.Code);
        Assert.Contains(
            fault,
            string.Join(' ', call.Error.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)),
            StringComparison.Ordinal
        );
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void Takes_no_ones_place()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/case.pdf"), "mine");
        var compare = Call.Run("compare", Farm(folder), "--with", "room", "--case", "--out", folder.In("mine"));
        Assert.Equal(2, compare.Code);
        Assert.Empty(compare.Output);
        Assert.Equal(FolderRefusals.NotOurs(folder.In("mine")) + "\n", compare.Error);
        Assert.Equal("mine", File.ReadAllText(folder.In("mine/case.pdf")));
    }

    [Theory]
    [InlineData("run")]
    [InlineData("compare")]
    public void Stopped_it_writes_nothing(string command)
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder);
        var before = folder.Everything();
        string[] with = string.Equals(command, "compare", StringComparison.Ordinal) ? ["--with", "room"] : [];
        Assert.Equal(130, Call.Run(new CancellationToken(canceled: true), [command, farm, "--case", .. with]).Code);
        Assert.Equal(before, folder.Everything());
    }

    private static string Farm(TemporaryFolder folder)
    {
        var farm = PaperFarm.In(folder);
        Directory.CreateDirectory(Path.Combine(farm, "variants"));
        File.WriteAllText(Path.Combine(farm, "variants", "room.toml"), Room);
        return farm;
    }
}
