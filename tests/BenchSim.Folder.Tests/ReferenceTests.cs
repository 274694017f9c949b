using System.Text.Json;
using System.Text.RegularExpressions;
using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests;

/// <summary>docs/folder.md, the reference in the program and what the reader reads are one list.</summary>
public partial class ReferenceTests
{
    private static readonly Field[] s_all = [.. FolderReference.Site.Concat(FolderReference.Columns).SelectMany(table => table.Fields)];

    // Any text is right in these.
    private static readonly string[] s_freeText =
    [
        "id",
        "name",
        "question",
        "grower",
        "variety",
        "supplier",
        "packet",
        "note",
        "source",
        "currency",
        "by",
    ];

    private static readonly string[] s_matKeys =
    [
        "temperature",
        "watts",
        "watts_each_place",
        "duty",
        "circuit_volts",
        "circuit_amps",
        "power_price",
    ];

    public static TheoryData<string, string> SiteKeys => Names(FolderReference.Site);

    public static TheoryData<string, string> Columns => Names(FolderReference.Columns);

    [Theory]
    [MemberData(nameof(SiteKeys))]
    public void Every_key_of_the_reference_is_read(string section, string key)
    {
        if (s_freeText.Contains(key, StringComparer.Ordinal))
        {
            return;
        }

        var (site, line) = SiteWith(section, key, "\"?!\"");
        Assert.Contains(TestFolder.Faults(site), fault =>
            fault.StartsWith($"site.toml:{line}:", StringComparison.Ordinal) && !fault.Contains("there is no key", StringComparison.Ordinal)
        );
    }

    [Theory]
    [MemberData(nameof(Columns))]
    public void Every_column_of_the_reference_is_read(string file, string column)
    {
        if (s_freeText.Contains(column, StringComparer.Ordinal))
        {
            return;
        }

        var faults = file switch
        {
            PlanFields.File => TestFolder.Faults(plan: $"id,{column}\na,?!\n"),
            RecordFields.File => TestFolder.Faults(
                TestFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", "kind = \"record\"\nfile = \"w.csv\""),
                others: ("w.csv", $"{column}\n?!\n")
            ),
            RangeFields.File => TestFolder.Faults(others: (file, RangeWith(column))),
            _ => TestFolder.Faults(others: (file, $"id,{column}\nnew,?!\n")),
        };
        Assert.Contains(faults, fault =>
            fault.Split(':')[1] == "2"
            && (fault.Contains("?!", StringComparison.Ordinal) || fault.Contains($"{column} is only", StringComparison.Ordinal))
        );
    }

    private static string RangeWith(string column)
    {
        (string Name, string Cell)[] row = [("what", "days_to_ready"), ("of", ""), ("low", "30"), ("high", "40"), ("shape", "")];
        return $"{string.Join(',', row.Select(cell => cell.Name))}\n"
            + $"{string.Join(',', row.Select(cell => string.Equals(cell.Name, column, StringComparison.Ordinal) ? "?!" : cell.Cell))}\n";
    }

    [Theory]
    [MemberData(nameof(SiteKeys))]
    public void A_default_that_is_written_changes_nothing(string section, string key)
    {
        var field = s_all.Single(each => each.Section == section && each.Name == key);
        if (field.IsRequired || !IsLiteral().IsMatch(field.Default))
        {
            return;
        }

        var (site, _) = SiteWith(section, key, $"\"{field.Default}\"");
        using var plain = new TestFolder(
            key switch
            {
                "usable" => SiteWith(section, "length", "\"3 m\"").Site,
                "duty" => SiteWith(section, "watts", "100").Site,
                _ => TestFolder.GoodSite,
            }
        );
        using var written = new TestFolder(site);
        var reading = written.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(Json(plain.Read()), Json(reading));
    }

    // The key under its section with the value, and its line. A key that is there is replaced.
    private static (string Site, int Line) SiteWith(string section, string key, string value)
    {
        var lines = TestFolder.GoodSite.Split('\n').ToList();
        var kind =
            section != "weather" ? null
            : key is "rain_days" or "low_sd" or "high_sd" ? "normals"
            : key is "file" or "year" or "temperature_unit" or "rain_unit" ? "record"
            : null;
        if (kind is not null)
        {
            lines.RemoveAll(each => each.StartsWith("low", StringComparison.Ordinal) || each.StartsWith("high", StringComparison.Ordinal));
            lines[lines.IndexOf("kind = \"constant\"")] = $"kind = \"{kind}\"";
        }

        var heading =
            section is "house" or "space" ? $"[[{section}]]"
            : section == "space.changes" ? "id = \"bench\""
            : $"[{section}]";
        var start =
            section == "space" && !s_matKeys.Contains(key, StringComparer.Ordinal)
                ? lines.IndexOf("id = \"bench\"") - 1
                : lines.IndexOf(heading);
        if (start < 0)
        {
            lines.Add(heading);
            start = lines.Count - 1;
        }

        var end = lines.FindIndex(start + 1, each => each.StartsWith('['));
        var old = lines.FindIndex(start + 1, (end < 0 ? lines.Count : end) - start - 1, each =>
            each.StartsWith($"{key} =", StringComparison.Ordinal)
        );
        if (old >= 0)
        {
            lines.RemoveAt(old);
        }

        if (section == "space" && key is ("length" or "width" or "usable"))
        {
            var places = lines.IndexOf("places = 60");
            lines[places] = key == "width" ? "length = \"3 m\"" : "width = \"2 m\"";
            if (key == "usable")
            {
                lines.Insert(places, "length = \"3 m\"");
            }
        }

        if (key == "duty")
        {
            lines.Insert(start + 1, "watts = 100");
            start++;
        }

        var other = key == "from" ? "places = 1" : "from = 2027-05-01";
        lines.Insert(start + 1, section == "space.changes" ? $"changes = [{{ {key} = {value}, {other} }}]" : $"{key} = {value}");
        return (string.Join('\n', lines), start + 2);
    }

    private static string Json(FolderReading reading) => JsonSerializer.Serialize(reading.Scenario! with { Batches = [] });

    private static TheoryData<string, string> Names(IEnumerable<FieldTable> tables)
    {
        var data = new TheoryData<string, string>();
        foreach (var field in tables.SelectMany(table => table.Fields))
        {
            data.Add(field.Section, field.Name);
        }

        return data;
    }

    // A number with or without a unit, a time, or a word that is itself the value.
    [GeneratedRegex("^(?:-?[0-9.:]+(?: (?:%|C|mm))?|no|metric|work round|all season)$", RegexOptions.NonBacktracking)]
    private static partial Regex IsLiteral();
}
