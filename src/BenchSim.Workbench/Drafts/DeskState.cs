using System.Collections.Immutable;

namespace BenchSim.Workbench.Drafts;

/// <summary>All there is on the desk at a moment.</summary>
/// <param name="Files">Texts of the files as they were last read.</param>
/// <param name="Tries">The tries, in the order in which they were begun.</param>
/// <param name="Current">Number of the try that is looked at; 0 for the files.</param>
internal sealed record DeskState(ImmutableSortedDictionary<string, string> Files, ImmutableArray<Draft> Tries, int Current)
{
    /// <summary>Counts the changes of the desk, so that two who look at it can tell whether they see the same.</summary>
    public long Revision { get; init; }

    /// <summary>How often a file that no page changes, such as a workbook, was found to be another than before.</summary>
    public long Beside { get; init; }

    /// <summary>The highest number that a try has had.</summary>
    public int LastId { get; init; }

    /// <summary>The try that is looked at; null for the files.</summary>
    public Draft? Looked => Find(Current);

    /// <summary>The texts that are looked at.</summary>
    public ImmutableSortedDictionary<string, string> Now => Looked?.Now ?? Files;

    /// <summary>A try; null where there is none of that number.</summary>
    public Draft? Find(int id) => Tries.FirstOrDefault(each => each.Id == id);

    /// <summary>The desk after an entry; null where the entry does not fit it.</summary>
    public DeskState? After(Entry entry)
    {
        if (entry.Do == Deed.Begin)
        {
            return Find(entry.Try) is null && entry is { Say: { } name, Files: { } files }
                ? With([.. Tries, new Draft(entry.Try, name, files, entry.Now ?? files)], entry.Try)
                : null;
        }

        if (entry is { Do: Deed.Look, Try: 0 })
        {
            return With(Tries, 0);
        }

        if (Find(entry.Try) is not { } draft)
        {
            return null;
        }

        return entry.Do switch
        {
            Deed.Step => Put(draft, entry.Splices is { } splices ? draft.With(new Step(entry.Say ?? "", splices)) : null),
            Deed.Undo => Put(draft, draft.Back()),
            Deed.Redo => Put(draft, draft.Again()),
            Deed.Name => Put(draft, entry.Say is { } name ? draft with { Name = name } : null),
            Deed.From => Put(draft, entry.Files is { } files ? draft with { From = files, Conflicts = [] } : null),
            Deed.Look => With(Tries, draft.Id),
            Deed.Drop => With(Tries.Remove(draft), Current == draft.Id ? 0 : Current),
            _ => null,
        };
    }

    /// <summary>The shortest entries that bring the tries about, with all that can be undone and made again.</summary>
    public IEnumerable<Entry> Entries() => Tries.SelectMany(draft => draft.Entries()).Append(new Entry(Deed.Look, Current));

    private DeskState? Put(Draft before, Draft? after) => after is null ? null : With(Tries.Replace(before, after), Current);

    private DeskState With(ImmutableArray<Draft> tries, int current) =>
        this with
        {
            Tries = tries,
            Current = current,
            Revision = Revision + 1,
            LastId = tries.IsEmpty ? LastId : Math.Max(LastId, tries.Max(each => each.Id)),
        };
}
