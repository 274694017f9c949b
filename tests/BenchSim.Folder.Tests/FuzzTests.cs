using System.Text;
using CsCheck;

namespace BenchSim.Folder.Tests;

/// <summary>
/// Whatever the bytes, reading answers with a scenario or with faults, each in a file of the folder and with both halves of its message.
/// Samples come from a fixed seed; there is no chance of a false alarm.
/// </summary>
public class FuzzTests
{
    private const string Crops = "id,like,hold_days,germination_curve,benches\ntomato,,12,10 C 61 % | 15 C 80 %,bench\nnew,cabbage,,,\n";
    private const string Trays = "id,name,cells,seeds_per_flat,medium_litres,places_each\nmine,My tray,40,,3.5,1\n";
    private const string Weather = "date,tmin,tmax,rain\n2015-01-01,1,9,0\n2015-01-02,1,9,0\n";

    private const string Plan =
        "id,crop,grower,plants,sow,set_out,every_days,times,method,tray,flat,germination,tested_on,note\n"
        + "a,tomato,me,100,2027-03-01,,7,3,pot up,50-cell,open-flat,90 %,2026-12-01,\"x, \"\"y\"\"\"\nb,new,,50,,2027-05-01,,,,mine,,,,\n";

    private static readonly string[] Files = ["site.toml", "plan.csv", "crops.csv", "trays.csv", "weather.csv"];

    private static readonly byte[][] Good =
    [
        Encoding.UTF8.GetBytes(TestFolder.GoodSite.Replace("kind = \"constant\"", "kind = \"record\"\nfile = \"weather.csv\"", StringComparison.Ordinal)),
        Encoding.UTF8.GetBytes(Plan), Encoding.UTF8.GetBytes(Crops), Encoding.UTF8.GetBytes(Trays), Encoding.UTF8.GetBytes(Weather),
    ];

    // Text that has a meaning somewhere, and bytes that have none.
    private static readonly string[] Pieces =
    [
        "\"", "'", "[", "]", "{", "}", "=", ",", ";", "\t", "\n", "\r\n", "\r", ".", "#", "|", "-", "%", "0", "1", "9999999999", "-1", "1e400", "0x1F", "inf", "nan", "1,5",
        "\0", "\u0007", "\u00E9", "e\u0301", "\u202E", "\uFEFF", "\U0001F331", "2027-02-31", "9999-12-31", "0001-01-01", "true", "\"\"\"", "'''", "\\u", "\\U00110000",
        "site", "[[house]]", "[house]", "[[space]]", "changes = [{ from = 2027-05-01, places = 4 }]", "a.b.c = 1", "like", "none", "60 F", "x", "sep=;", "generated", "normals", "[1, 2]", "shape = \"hoop\"", "u_value = 4", "watts = 10", "[seed]", "[prices]",
    ];

    [Fact]
    public void Any_bytes_in_any_file()
    {
        using var folder = GoodFolder();
        FixedSample.Holds(Gen.Select(Gen.Int[0, Files.Length - 1], Gen.Byte.Array[0, 60]), 600, sample => Answers(folder, sample.Item1, sample.Item2));
    }

    [Fact]
    public void Good_files_with_a_few_pieces_put_in_or_taken_out()
    {
        using var folder = GoodFolder();
        var change = Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 12], Gen.OneOf(Pieces));
        FixedSample.Holds(
            Gen.Select(Gen.Int[0, Files.Length - 1], change.Array[1, 4]),
            1500,
            sample => Answers(folder, sample.Item1, Changed(Good[sample.Item1], sample.Item2)));
    }

    private static TestFolder GoodFolder()
    {
        var folder = new TestFolder(null, null);
        for (var file = 0; file < Files.Length; file++)
        {
            folder.Write(Files[file], Good[file]);
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

    private static bool Answers(TestFolder folder, int index, byte[] bytes)
    {
        folder.Write(Files[index], bytes);
        var reading = folder.Read();
        folder.Write(Files[index], Good[index]);
        var isOneOrTheOther = reading.Scenario is null == (reading.Faults.Length > 0);
        return isOneOrTheOther && reading.Faults.Concat(reading.Warnings).All(fault =>
            Files.Contains(fault.Place.File, StringComparer.Ordinal) && fault.Place is { Line: >= 0, Column: >= 0 }
            && fault.What.Length > 0 && fault.Instead.Length > 0
            && !fault.ToString().Any(character => char.IsControl(character) || character == '\u202E'));
    }
}
