using System.Collections.Frozen;
using System.Collections.Immutable;
using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;

namespace BenchSim.Workbench.Showing;

/// <summary>A key or column, as a form shows it.</summary>
internal sealed record FieldDocument(
    string Name,
    string Label,
    string Help,
    string What,
    string Unit,
    string Range,
    string Default,
    bool IsRequired,
    ImmutableArray<string> Choices
);

/// <summary>A section of site.toml or a table, with its keys or columns.</summary>
/// <param name="Section">Section of site.toml, or name of the file.</param>
/// <param name="Title">What a form calls it.</param>
/// <param name="IsOfSite">Whether it is a section of site.toml.</param>
/// <param name="IsList">Whether it is there once for each house, space or the like.</param>
/// <param name="Fields">Its keys or columns.</param>
internal sealed record FieldsDocument(string Section, string Title, bool IsOfSite, bool IsList, ImmutableArray<FieldDocument> Fields)
{
    // Where the name of a section says too little.
    private static readonly FrozenDictionary<string, string> s_titles = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["relief"] = "Making room when trays wait",
        ["work_minutes"] = "Minutes of work",
        ["work_seconds"] = "Seconds of work",
        ["mix"] = "Potting mix",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>All keys of site.toml and all columns of the tables.</summary>
    public static ImmutableArray<FieldsDocument> All { get; } =
    [
        .. FolderReference
            .Site.Concat(FolderReference.Columns)
            .GroupBy(table => table.Section, StringComparer.Ordinal)
            .Select(group => new FieldsDocument(
                group.Key,
                TitleOf(group.Key),
                FolderReference.Sections.Contains(group.Key, StringComparer.Ordinal),
                group.First().Heading.StartsWith("[[", StringComparison.Ordinal),
                [.. group.SelectMany(table => table.Fields).Select(Of)]
            )),
    ];

    private static string TitleOf(string section) =>
        s_titles.GetValueOrDefault(section) ?? char.ToUpperInvariant(section[0]) + section[1..].Replace('_', ' ');

    private static FieldDocument Of(Field field) =>
        new(
            field.Name,
            field.Label,
            field.Help,
            field.Kind.What,
            field.Kind.Unit,
            field.Kind.Range,
            field.Default,
            field.IsRequired,
            [.. field.Kind.Choices]
        );
}
