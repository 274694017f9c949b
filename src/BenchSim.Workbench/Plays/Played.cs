using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Results;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>Texts, and what was made of them so far: their faults, or their plan with the seasons played of it.</summary>
/// <param name="Texts">The texts.</param>
/// <param name="Beside">Which of the files that no page changes stood beside them.</param>
internal sealed record Played(ImmutableSortedDictionary<string, string> Texts, long Beside)
{
    /// <summary>What is wrong; none where the texts make a plan.</summary>
    public ImmutableArray<Fault> Faults { get; init; } = [];

    /// <summary>A fault of the program itself, which stopped the play: its kind; null where there was none.</summary>
    public string? Failure { get; init; }

    /// <summary>The plan; null where there are faults.</summary>
    public SeasonPlan? Plan { get; init; }

    /// <summary>The day from which it is played on, as the log has the benches; null where it is played from its first day.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>The seasons played so far; null before the first play.</summary>
    public StudyResult? Result { get; init; }

    /// <summary>Whether it is of these texts and files.</summary>
    public bool IsOf(ImmutableSortedDictionary<string, string> texts, long beside) =>
        Beside == beside && Drafts.Texts.Differing(Texts, texts).IsEmpty;
}

/// <summary>The plays of late, so that going back to a try shows its answer at once. Safe for use by several threads.</summary>
internal sealed class PlayedShelf
{
    private const int Most = 24;

    private readonly List<Played> _kept = [];
    private readonly Lock _gate = new();

    /// <summary>What was made of texts; null where nothing was.</summary>
    public Played? Find(ImmutableSortedDictionary<string, string> texts, long beside)
    {
        lock (_gate)
        {
            return _kept.Find(each => each.IsOf(texts, beside));
        }
    }

    /// <summary>Keeps what was made of texts in the place of what was made of them before.</summary>
    public void Keep(Played played)
    {
        lock (_gate)
        {
            _kept.RemoveAll(each => each.IsOf(played.Texts, played.Beside));
            _kept.Add(played);
            if (_kept.Count > Most)
            {
                _kept.RemoveAt(0);
            }
        }
    }
}
