using System.Collections.Immutable;

namespace BenchSim.Workbench.Drafts;

/// <summary>Changes made together, which are undone together.</summary>
/// <param name="What">What was changed, in a few words.</param>
/// <param name="Splices">The parts of texts that gave way, in order.</param>
internal sealed record Step(string What, ImmutableArray<Splice> Splices);

/// <summary>A try: changes of the texts of a folder that are not in its files.</summary>
/// <param name="Id">Its number, from 1.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="From">The texts of the files that it is a change of.</param>
/// <param name="Now">The texts as it has them.</param>
internal sealed record Draft(
    int Id,
    string Name,
    ImmutableSortedDictionary<string, string> From,
    ImmutableSortedDictionary<string, string> Now
)
{
    /// <summary>Steps that can be undone at most: further ones stay made.</summary>
    public const int MostSteps = 500;

    /// <summary>Steps that can be undone, the last one last.</summary>
    public ImmutableList<Step> Done { get; init; } = [];

    /// <summary>Steps that were undone, the one to be done again last.</summary>
    public ImmutableList<Step> Undone { get; init; } = [];

    /// <summary>Files that were changed in the folder as well as here, in the same lines.</summary>
    public ImmutableArray<string> Conflicts { get; init; } = [];

    /// <summary>The files that differ from those of the folder.</summary>
    public ImmutableArray<string> Changed => Texts.Differing(From, Now);

    /// <summary>The shortest entries that bring it about, with all that can be undone and made again.</summary>
    public IEnumerable<Entry> Entries()
    {
        var first = this;
        while (first.Back() is { } before)
        {
            first = before;
        }

        return
        [
            new Entry(Deed.Begin, Id)
            {
                Say = Name,
                Files = From,
                Now = first.Now,
            },
            .. Done.Concat(Undone.Reverse()).Select(step => new Entry(Deed.Step, Id) { Say = step.What, Splices = step.Splices }),
            .. Undone.Select(_ => new Entry(Deed.Undo, Id)),
        ];
    }

    /// <summary>The draft with a step made; null where it does not fit the texts.</summary>
    public Draft? With(Step step)
    {
        var now = Now;
        foreach (var splice in step.Splices)
        {
            if (splice.Made(now) is not { } made)
            {
                return null;
            }

            now = made;
        }

        return this with
        {
            Now = now,
            Done = Done.Count < MostSteps ? Done.Add(step) : Done.RemoveAt(0).Add(step),
            Undone = [],
        };
    }

    /// <summary>The draft with the last step taken back; null where there is none.</summary>
    public Draft? Back()
    {
        if (Done.IsEmpty)
        {
            return null;
        }

        var now = Now;
        foreach (var splice in Done[^1].Splices.Reverse())
        {
            if (splice.TakenBack(now) is not { } before)
            {
                return null;
            }

            now = before;
        }

        return this with
        {
            Now = now,
            Done = Done.RemoveAt(Done.Count - 1),
            Undone = Undone.Add(Done[^1]),
        };
    }

    /// <summary>The draft with the step that was undone last made again; null where there is none.</summary>
    public Draft? Again() =>
        Undone.IsEmpty || With(Undone[^1]) is not { } made ? null : made with { Undone = Undone.RemoveAt(Undone.Count - 1) };
}
