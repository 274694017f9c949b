using System.Text.RegularExpressions;
using BenchSim.Folder.Reference;

namespace BenchSim.Cli.Tests.Hostile;

/// <summary>
/// Texts of ill will, in every field that takes a text and through every command: refused with their place, or harmless in all that is
/// shown and written, and
/// still to be read.
/// </summary>
public sealed partial class HostileFieldTests
{
    private const char Escape = '\u001b';

    /// <summary>The texts, by a name for the list of tests.</summary>
    private static readonly Dictionary<string, string> s_texts = new(StringComparer.Ordinal)
    {
        ["script"] = "<script>alert(1)</script>",
        ["attribute"] = "\"><img src=x onerror=alert(1)>",
        ["command"] = "=cmd|' /C calc'!A0",
        ["formula"] = "@SUM(A1)",
        ["emoji"] = "Tomato \U0001F345\U0001F3FD",
        ["joined emoji"] = "\U0001F468\u200D\U0001F33E",
        ["turned"] = "\u202Ecod.exe",
        ["right to left"] = "\u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627",
        ["long"] = string.Concat(Enumerable.Repeat("Wide", 75)),
        ["quotes"] = "\"He said, 'no';\"",
        ["lines"] = "one\r\nBEGIN:VEVENT\ntwo",
        ["odd lines"] = "one\u2028two\u0085three",
        ["controls"] = "bell\u0007 " + Escape + "[31mred\0",
        ["marks"] = "[bold]a\\,b;c[/] &lt;b&gt; {0}",
    };

    /// <summary>Those that go through the commands that take longest as well: each writes by the same escapes as the others.</summary>
    private static readonly HashSet<string> s_thorough = new(
        ["script", "command", "right to left", "long", "marks"],
        StringComparer.Ordinal
    );

    public static TheoryData<string> Names => [.. s_texts.Keys];

    // A new field that takes a text must be put to the test too.
    [Fact]
    public void Every_field_of_a_text_or_a_name_is_among_those_tested()
    {
        string[] fields =
        [
            .. FolderReference
                .All.SelectMany(table => table.Fields)
                .Where(field => field.Kind.What is "text" or "name")
                .Select(field => $"{field.Section}.{field.Name}")
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(string.Join(' ', fields), string.Join(' ', HostileFarm.Plain.Keys.Order(StringComparer.Ordinal)));
    }

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Names))]
    public void A_text_is_refused_with_its_place_or_harmless_in_all_that_is_written(string name)
    {
        var text = s_texts[name];
        using var folder = new TemporaryFolder();
        var accepted = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var field in HostileFarm.Plain.Keys)
        {
            if (IsAccepted(folder, field, text))
            {
                accepted.Add(field, text);
            }
        }

        Assert.Equal(Refused(text), string.Join(' ', HostileFarm.Plain.Keys.Where(field => !accepted.ContainsKey(field))));
        var farm = HostileFarm.In(folder, "farm", accepted);
        var space = accepted.GetValueOrDefault("space.id", HostileFarm.Plain["space.id"]) + "3";
        var crop = accepted.GetValueOrDefault("crops.csv.id", HostileFarm.Plain["crops.csv.id"]);
        var batch = accepted.GetValueOrDefault("plan.csv.id", HostileFarm.Plain["plan.csv.id"]) + "1";
        string[][] calls =
        [
            ["check", farm],
            ["check", farm, "--json"],
            ["check", farm, "--sources"],
            ["check", farm, "--stand"],
            ["check", farm, "--today=2027-04-03", "--all"],
            ["run", farm, "--season=1", "--batch=" + batch],
            ["run", farm, "--bottlenecks", "--out", folder.In("out/report")],
            ["compare", farm, "--with", "v"],
            ["learn", farm, "--all"],
            ["print", farm, "--out", folder.In("out/papers")],
            ["print", farm, "--today=2027-04-03", "--out", folder.In("out/today")],
        ];
        string[][] costly =
        [
            ["bottlenecks", farm, "--json"],
            ["size", farm, "--space=" + space, "--out", folder.In("out/size")],
            ["mend", farm, "--all", "--seasons", "5"],
            ["dense", farm, "--crop=" + crop, "--out", folder.In("out/dense")],
            ["invest", farm, "--with", "v", "--out", folder.In("out/invest")],
        ];
        foreach (var arguments in calls.Concat(s_thorough.Contains(name) ? costly : []))
        {
            AssertHarmless(Call.Run(arguments), arguments);
        }

        var seen = Written.Visible(text);
        var written = new Written(folder.In("out"));
        written.AssertInert();
        Assert.Contains(seen, written.PageText("report/report.html"), StringComparison.Ordinal);
        if (accepted.ContainsKey("plan.csv.grower"))
        {
            Assert.Contains(seen, written.PageText("papers/work-list.html"), StringComparison.Ordinal);
            Assert.Contains(seen[..Math.Min(seen.Length, 50)], written.PageText("today/today.html"), StringComparison.Ordinal);
            Assert.Contains(written.Cells("report/tables/growers.csv"), cell => cell == text || cell == "'" + text);
            Assert.Contains(written.Cells("papers/work-list.csv"), cell => cell == text || cell == "'" + text);
            Assert.Contains(seen[..Math.Min(seen.Length, 150)], written.CalendarText("papers/calendar.ics"), StringComparison.Ordinal);
            Assert.Contains(seen, written.WorkbookText("papers/workbook.xlsx"), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_text_as_the_name_of_a_variant_or_a_record_is_harmless(string name)
    {
        var text = s_texts[name];
        using var folder = new TemporaryFolder();
        var farm = HostileFarm.In(folder, "farm", HostileFarm.Plain);
        var file = string.Concat(text.Where(letter => letter is not ('/' or '\0')));
        var variant = Path.Combine(farm, "variants", file[..Math.Min(file.Length, 60)] + ".toml");
        File.Move(Path.Combine(farm, "variants", "v.toml"), variant);
        foreach (
            var arguments in new[]
            {
                new[] { "compare", farm, "--with", Path.GetFileNameWithoutExtension(variant) },
                ["compare", farm, "--with", text],
                ["invest", farm, "--json", "--with", Path.GetFileNameWithoutExtension(variant)],
            }
        )
        {
            AssertHarmless(Call.Run(arguments), arguments, mayFail: true);
        }

        var site = Path.Combine(farm, "site.toml");
        File.WriteAllText(
            site,
            File.ReadAllText(site)
                .Replace("kind = \"normals\"", $"kind = \"record\"\nfile = {HostileFarm.Toml(text)}", StringComparison.Ordinal)
        );
        var check = Call.Run("check", farm);
        AssertHarmless(check, ["check"], mayFail: true);
        Assert.Equal(2, check.Code);
    }

    /// <summary>
    /// The fields that refuse a text: names stand on one line of visible characters, a currency is short, and | parts ids in a list.
    /// </summary>
    private static string Refused(string text)
    {
        var unseen = text.Any(letter => char.IsControl(letter) || letter is '\u2028' or '\u202E' or '\u200D');
        bool Refuses(string field) =>
            field switch
            {
                "site.question" or "plan.csv.note" or "log.csv.note" or "invest.basis" => false,
                "prices.currency" => unseen || text.Length > 10,
                "space.id" or "house.id" => unseen || text.Contains('|', StringComparison.Ordinal),
                _ => unseen,
            };
        return string.Join(' ', HostileFarm.Plain.Keys.Where(Refuses));
    }

    private static bool IsAccepted(TemporaryFolder folder, string field, string text)
    {
        var farm = HostileFarm.In(folder, "one", new Dictionary<string, string>(StringComparer.Ordinal) { [field] = text });
        string[] arguments = field.StartsWith("invest", StringComparison.Ordinal)
            ? ["invest", farm, "--with", "v", "--seasons", "2"]
            : ["check", farm];
        var call = Call.Run(arguments);
        AssertHarmless(call, [.. arguments, field], mayFail: true);
        if (call.Code == 0)
        {
            return true;
        }

        Assert.Equal(2, call.Code);
        Assert.Contains(call.Error.Split('\n'), line =>
            Fault().Match(line) is { Success: true } fault && fault.Groups["file"].Value == HostileFarm.FileOf(field)
        );
        return false;
    }

    private static void AssertHarmless(Call call, string[] arguments, bool mayFail = false)
    {
        var all = call.Output + call.Error;
        Assert.True(mayFail || call.Code == 0, $"{string.Join(' ', arguments)}: {all}");
        Assert.NotEqual(70, call.Code);
        Assert.DoesNotContain(all, letter => (char.IsControl(letter) && letter != '\n') || letter is '\u202E' or '\u200F' or '\u2028');
        Assert.DoesNotContain("   at ", call.Error, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^(?<file>[a-z./]+):\d+:\d+: .+; .+", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Fault();
}
