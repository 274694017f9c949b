using System.Collections.Immutable;
using BenchSim.Folder.Files;

namespace BenchSim.Workbench.Drafts;

/// <summary>The texts of a scenario folder that may be changed, by name of the file.</summary>
internal static class Texts
{
    /// <summary>No texts.</summary>
    public static ImmutableSortedDictionary<string, string> None { get; } =
        ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>
    /// The files whose texts may be changed, where they are there. Not the log: it is of what happened, whatever is tried (LogBook.cs).
    /// </summary>
    public static ImmutableArray<string> Names { get; } = [FileNames.Site, .. FileNames.Tables.Where(table => !FileNames.IsLog(table))];

    /// <summary>The text of a file; null where there is none.</summary>
    public static string? Of(this ImmutableSortedDictionary<string, string> texts, string file) => texts.GetValueOrDefault(file);

    /// <summary>The texts with another text of a file; null takes it out.</summary>
    public static ImmutableSortedDictionary<string, string> With(
        this ImmutableSortedDictionary<string, string> texts,
        string file,
        string? text
    ) => text is null ? texts.Remove(file) : texts.SetItem(file, text);

    /// <summary>Names of the files in which two differ.</summary>
    public static ImmutableArray<string> Differing(
        ImmutableSortedDictionary<string, string> one,
        ImmutableSortedDictionary<string, string> other
    ) =>
        [
            .. one
                .Keys.Union(other.Keys, StringComparer.Ordinal)
                .Where(file => !string.Equals(one.Of(file), other.Of(file), StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];
}
