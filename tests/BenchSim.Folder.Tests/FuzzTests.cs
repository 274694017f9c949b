using System.Globalization;
using System.Text;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using CsCheck;

namespace BenchSim.Folder.Tests;

/// <summary>
/// Whatever the bytes, reading answers with a scenario or with faults, each in a file of the folder and with both halves of its message.
/// Samples come from a fixed seed; there is no chance of a false alarm. BENCHSIM_FUZZ_INPUTS says how many are tried in each file; the
/// checks on a proposed change try 10,000.
/// </summary>
public class FuzzTests
{
    private const string Crops = "id,like,hold_days,germination_curve,benches\ntomato,,12,10 C 61 % | 15 C 80 %,bench\nnew,cabbage,,,\n";
    private const string Trays = "id,name,cells,seeds_per_flat,medium_litres,places_each\nmine,My tray,40,,3.5,1\n";

    private static readonly string s_weather =
        "date,tmin,tmax,rain\n"
        + string.Concat(Enumerable.Range(0, 365).Select(day => $"{new DateOnly(2015, 1, 1).AddDays(day):yyyy-MM-dd},1,9,0\n"));

    private const string Plan =
        "id,crop,grower,plants,sow,set_out,every_days,times,method,tray,flat,germination,tested_on,note\n"
        + "a,tomato,me,100,2027-03-01,,7,3,pot up,50-cell,open-flat,90 %,2026-12-01,\"x, \"\"y\"\"\"\nb,new,,50,,2027-05-01,,,,mine,,,,\n";

    private const string Variant = """
        remove = ["spare"]
        [[space]]
        id = "mats"
        places = 12
        [crops.tomato]
        pot_up_days = 5
        [[plan]]
        batch = "b"
        plants = 90
        [[plan]]
        crop = "tomato"
        sow = 2027-03-08
        """;

    private const string Log =
        "date,batch,what,trays,flats,from,space,count,of,minutes,by,entered,note\n"
        + "2027-03-01,a-1,sown,,2,,mats,,,20,Ada,2027-03-02,\n2027-03-06,a-1,up,,,,,30,36,,,,\n2027-03-09,a-1,moved,,1,,bench,,,,,,\n"
        + "2027-03-30,a-1,potted up,4,1,bench,bench,,,,,,\n2027-03-31,a-1,counted,3,,,bench,,,,,,\n2027-03-31,,walked,,,,mats,,,,,,\n"
        + "2027-04-01,,low,,,,outdoors,28 F,,,,,\n2027-05-09,a-1,set out,2,,,,90,,,,,\n2027-05-09,,fuel,,,,main,40,,,,,gallons\n";

    private const int VariantIndex = 5;
    private const int AloneIndex = 6;

    private static readonly string[] s_files =
    [
        "site.toml",
        "plan.csv",
        "crops.csv",
        "trays.csv",
        "weather.csv",
        "variants/warm.toml",
        "alone.csv",
        "log.csv",
    ];

    private static readonly int s_inputs = int.TryParse(
        Environment.GetEnvironmentVariable("BENCHSIM_FUZZ_INPUTS"),
        NumberStyles.None,
        CultureInfo.InvariantCulture,
        out var asked
    )
        ? asked
        : 400;

    private static readonly byte[][] s_good =
    [
        Encoding.UTF8.GetBytes(
            TestFolder.GoodSite.Replace(
                "kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"",
                "kind = \"record\"\nfile = \"weather.csv\"",
                StringComparison.Ordinal
            ) + "\n[[space]]\nid = \"spare\"\nkind = \"table\"\nplaces = 5\n"
        ),
        Encoding.UTF8.GetBytes(Plan),
        Encoding.UTF8.GetBytes(Crops),
        Encoding.UTF8.GetBytes(Trays),
        Encoding.UTF8.GetBytes(s_weather),
        Encoding.UTF8.GetBytes(Variant),
        Encoding.UTF8.GetBytes(s_weather),
        Encoding.UTF8.GetBytes(Log),
    ];

    // Text that has a meaning somewhere, and bytes that have none.
    private static readonly string[] s_pieces =
    [
        "\"",
        "'",
        "[",
        "]",
        "{",
        "}",
        "=",
        ",",
        ";",
        "\t",
        "\n",
        "\r\n",
        "\r",
        ".",
        "#",
        "|",
        "-",
        "%",
        "0",
        "1",
        "9999999999",
        "-1",
        "1e400",
        "0x1F",
        "inf",
        "nan",
        "1,5",
        "\0",
        "\u0007",
        "\u00E9",
        "e\u0301",
        "\u202E",
        "\uFEFF",
        "\U0001F331",
        "2027-02-31",
        "9999-12-31",
        "0001-01-01",
        "true",
        "\"\"\"",
        "'''",
        "\\u",
        "\\U00110000",
        "site",
        "[[house]]",
        "[house]",
        "[[space]]",
        "changes = [{ from = 2027-05-01, places = 4 }]",
        "a.b.c = 1",
        "like",
        "none",
        "60 F",
        "x",
        "sep=;",
        "generated",
        "normals",
        "[1, 2]",
        "shape = \"hoop\"",
        "u_value = 4",
        "watts = 10",
        "[seed]",
        "[prices]",
        "potted up",
        "counted",
        "walked",
        "a-1",
    ];

    public static TheoryData<int> EachFile => [.. Enumerable.Range(0, s_files.Length)];

    // A quarter of the inputs.
    [Theory]
    [MemberData(nameof(EachFile))]
    public void Any_bytes(int file)
    {
        using var folder = GoodFolder();
        FixedSample.Holds(Gen.Byte.Array[0, 60], s_inputs / 4, bytes => Answers(folder, file, bytes));
    }

    // Three quarters of them.
    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(EachFile))]
    public void A_good_file_with_a_few_pieces_put_in_or_taken_out(int file)
    {
        using var folder = GoodFolder();
        var change = Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.OneOf(s_pieces));
        FixedSample.Holds(change.Array[1, 4], s_inputs * 3 / 4, changes => Answers(folder, file, Changed(s_good[file], changes)));
    }

    [Fact]
    public void The_good_files_are_good()
    {
        using var folder = GoodFolder();
        Assert.Empty(folder.Read().Faults);
        Assert.Empty(ScenarioFolder.ReadVariant(folder.Path, "warm").Faults);
    }

    private static TestFolder GoodFolder()
    {
        var folder = new TestFolder(null, null);
        for (var file = 0; file < s_files.Length; file++)
        {
            folder.Write(s_files[file], s_good[file]);
        }

        return folder;
    }

    private static byte[] Changed(byte[] good, (int Where, int Gone, string Piece)[] changes)
    {
        var bytes = good.ToList();
        foreach (var (where, gone, piece) in changes)
        {
            var start = where % (bytes.Count + 1);
            bytes.RemoveRange(start, Math.Min(gone, bytes.Count - start));
            bytes.InsertRange(start, Encoding.UTF8.GetBytes(piece));
        }

        return [.. bytes];
    }

    private static bool Answers(TestFolder folder, int file, byte[] bytes)
    {
        folder.Write(s_files[file], bytes);
        var (isRead, faults) = Read(folder, file);
        folder.Write(s_files[file], s_good[file]);
        Assert.True(
            isRead == faults.All(fault => fault.IsWarning),
            $"Read: {isRead}; said: {string.Join("; ", faults.Select(fault => fault.Fault.ToString()))}"
        );
        Assert.All(faults, fault => Assert.True(IsWellSaid(fault.Fault), fault.Fault.ToString()));
        return true;
    }

    private static (bool IsRead, (Fault Fault, bool IsWarning)[] Faults) Read(TestFolder folder, int file)
    {
        if (file == AloneIndex)
        {
            var record = WeatherFile.Read(Path.Combine(folder.Path, s_files[file]), UnitSystem.Metric, UnitSystem.Metric);
            var told = record.Faults.Select(fault => (fault with { Place = fault.Place with { File = s_files[file] } }, false));
            return (record.Faults.IsEmpty, [.. told]);
        }

        var reading = file == VariantIndex ? ScenarioFolder.ReadVariant(folder.Path, "warm") : folder.Read();
        return (
            reading.Scenario is not null,
            [.. reading.Faults.Select(fault => (fault, false)), .. reading.Warnings.Select(fault => (fault, true))]
        );
    }

    private static bool IsWellSaid(Fault fault) =>
        s_files.Contains(fault.Place.File, StringComparer.Ordinal)
        && fault.Place is { Line: >= 0, Column: >= 0 }
        && fault.What.Length > 0
        && fault.Instead.Length > 0
        && !fault.ToString().Any(character => char.IsControl(character) || character == '\u202E');
}
