using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests;

/// <summary>docs/folder.md shows every key and column as the program describes it, in the same order, and no other.</summary>
public class ReferencePageTests
{
    private const string First = "| name | what | unit | when left out | why | meaning |";

    [Fact]
    public void The_page_shows_every_key_and_column_and_no_other()
    {
        var path = Path.Combine(Repository.Root, "docs", "folder.md");
        var page = File.ReadAllText(path);
        var made = WithTables(page);
        if (Environment.GetEnvironmentVariable("BENCHSIM_APPROVE") is { Length: > 0 })
        {
            File.WriteAllText(path, made);
            return;
        }

        Assert.Equal(made.Split('\n'), page.Split('\n'));
    }

    [Fact]
    public void Every_section_has_its_table()
    {
        string[] sections = [.. All.Select(field => field.Section).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        var shown = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "folder.md")).Select(SectionOf).OfType<string>();
        var known = shown.Where(section => sections.Contains(section, StringComparer.Ordinal)).Order(StringComparer.Ordinal);
        Assert.Equal(sections, known.ToArray());
    }

    private static IEnumerable<Field> All => FolderReference.All.SelectMany(table => table.Fields);

    // The page with the tables of its sections made anew; all else stays.
    private static string WithTables(string page)
    {
        var made = new List<string>();
        var section = "";
        foreach (var line in page.Split('\n'))
        {
            section = SectionOf(line) ?? section;
            if (string.Equals(line, First, StringComparison.Ordinal))
            {
                made.AddRange([line, "|---|---|---|---|---|---|"]);
                made.AddRange(All.Where(field => string.Equals(field.Section, section, StringComparison.Ordinal)).Select(Row));
            }
            else if (
                !(line.StartsWith("| `", StringComparison.Ordinal) && made[^1].StartsWith("| `", StringComparison.Ordinal) && IsIn(section))
            )
            {
                if (!(line.StartsWith("|---|---|---|---|---|---|", StringComparison.Ordinal) && IsIn(section)))
                {
                    made.Add(line);
                }
            }
        }

        return string.Join('\n', made);
    }

    private static bool IsIn(string section) => All.Any(field => string.Equals(field.Section, section, StringComparison.Ordinal));

    private static string? SectionOf(string line) =>
        !line.StartsWith('#') ? null
        : line.TrimStart('#').Trim() is var title && title.StartsWith("Columns of ", StringComparison.Ordinal)
            ? title["Columns of ".Length..]
        : title switch
        {
            "A weather record" => RecordFields.File,
            "changes of [[space]]" => "space.changes",
            "Keys of a variant file" => "variant",
            "Keys of [[plan]] in a variant" => "variant plan",
            "Keys of [invest] in a variant" => "invest",
            _ => title.StartsWith('[') ? title.Trim('[', ']') : "",
        };

    internal static string Row(Field field)
    {
        string[] cells = [$"`{field.Name}`", field.Kind.What, field.Kind.Unit, field.Default, field.Why, field.Help];
        return "| " + string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal))) + " |";
    }
}
