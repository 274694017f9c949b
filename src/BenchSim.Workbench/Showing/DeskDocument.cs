using System.Collections.Immutable;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>A try as a chip shows it.</summary>
internal sealed record TryDocument(int Id, string Name, string? Share, ImmutableArray<string> Changed, ImmutableArray<string> Conflicts);

/// <summary>A value of a key of site.toml.</summary>
internal sealed record ValueDocument(string Key, string Value);

/// <summary>A section of site.toml, or one entry of those in double brackets.</summary>
internal sealed record SectionDocument(string Section, int Entry, string Title, ImmutableArray<ValueDocument> Values);

/// <summary>A table.</summary>
internal sealed record TableDocument(ImmutableArray<string> Columns, ImmutableArray<ImmutableArray<string>> Rows);

/// <summary>A folder that was opened before: its own name, and its path.</summary>
internal sealed record FolderDocument(string Name, string Path)
{
    /// <summary>That of a path.</summary>
    public static FolderDocument Of(string path) => new(System.IO.Path.GetFileName(path) is { Length: > 0 } name ? name : path, path);
}

/// <summary>All there is on the desk, as the page shows it. The note says why the plan cannot be changed here; null where it can.</summary>
internal sealed record DeskDocument(
    string? Folder,
    long Revision,
    int Current,
    string? Trouble,
    string? FilesShare,
    ImmutableArray<TryDocument> Tries,
    string? Undo,
    string? Redo,
    ImmutableArray<SectionDocument> Sections,
    bool IsSiteWhole,
    TableDocument? Plan,
    string? PlanNote
)
{
    /// <summary>What was done at last, where more is to be said of it than that; null for nothing.</summary>
    public string? Said { get; init; }

    /// <summary>The folders opened before, where none is open now; the newest first.</summary>
    public ImmutableArray<FolderDocument> Before { get; init; } = [];

    /// <summary>Names of the variants in the folder.</summary>
    public ImmutableArray<string> Variants { get; init; } = [];

    /// <summary>Whether phones are let in.</summary>
    public bool HasPhones { get; init; }

    /// <summary>Whether this is what a phone sees: the name of the folder, and how often the desk has changed.</summary>
    public bool IsPhone { get; init; }

    /// <summary>No folder is open.</summary>
    public static DeskDocument Nothing { get; } = new(null, 0, 0, null, null, [], null, null, [], true, null, null);

    /// <summary>The desk as it is.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="player">Knows what has been played of the tries.</param>
    public static DeskDocument Of(Desk desk, Player player)
    {
        var state = desk.State;
        var now = state.Now;
        var site = TomlOutline.Of(now.Of(FileNames.Site) ?? "");
        return new DeskDocument(
            desk.Folder.Name,
            state.Revision,
            state.Current,
            desk.ReadOnly ?? desk.Trouble,
            ChipWords.Of(player.Find(state.Files, state.Beside)),
            [
                .. state.Tries.Select(draft => new TryDocument(
                    draft.Id,
                    draft.Name,
                    ChipWords.Of(player.Find(draft.Now, state.Beside)),
                    draft.Changed,
                    draft.Conflicts
                )),
            ],
            state.Looked is { Done.IsEmpty: false } done ? done.Done[^1].What : null,
            state.Looked is { Undone.IsEmpty: false } undone ? undone.Undone[^1].What : null,
            [
                .. site.Parts.Select(part => new SectionDocument(
                    part.Section,
                    part.Entry,
                    part.Find("name")?.Plain ?? part.Find("id")?.Plain ?? part.Section,
                    [.. part.Keys.Select(key => new ValueDocument(key.Key, key.Plain))]
                )),
            ],
            site.IsWhole,
            Table(now.Of(FileNames.Plan) is { } plan ? CsvOutline.Of(plan) : desk.Folder.WorkbookOf(FileNames.Plan)),
            now.ContainsKey(FileNames.Plan) ? null : desk.InWorkbook(FileNames.Plan)
        )
        {
            Variants = desk.Folder.Variants(),
        };
    }

    /// <summary>What a phone sees of it.</summary>
    public static DeskDocument OfPhone(Desk desk) =>
        Nothing with
        {
            Folder = desk.Folder.Name,
            Revision = desk.State.Revision,
            Trouble = desk.ReadOnly ?? desk.Trouble,
            IsPhone = true,
        };

    private static TableDocument? Table(CsvOutline? outline) => outline is null ? null : new(outline.Columns, outline.Rows);
}
