using System.Collections.Immutable;
using BenchSim.Study.Results;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>Texts whose answer is wanted.</summary>
/// <param name="Revision">Revision of the desk they are of.</param>
/// <param name="Try">Number of the try; 0 for the files.</param>
/// <param name="IsLive">Whether they are those of a change that is not made yet, as of a hand that still drags.</param>
/// <param name="Now">The texts.</param>
/// <param name="Files">The texts of the files they are set against.</param>
/// <param name="Beside">Which of the files that no page changes it means (<see cref="DeskState.Beside"/>).</param>
internal sealed record Question(
    long Revision,
    int Try,
    bool IsLive,
    ImmutableSortedDictionary<string, string> Now,
    ImmutableSortedDictionary<string, string> Files,
    long Beside = 0
);

/// <summary>What came of a question.</summary>
/// <param name="Question">The question.</param>
/// <param name="Played">What was played of its texts.</param>
/// <param name="Base">What was played of the files; null where they have faults, or are the question.</param>
/// <param name="Change">What becomes of the chance of fit, season by season; null where it is not known yet.</param>
/// <param name="IsLast">Whether no sharper answer follows.</param>
internal sealed record Told(Question Question, Played Played, Played? Base, FitChange? Change, bool IsLast)
{
    /// <summary>The answer of the files alone, which phones are told; null while a hand drags.</summary>
    public Told? OfFiles =>
        Question.IsLive || (Played.Failure is not null && Question.Try != 0)
            ? null
            : new Told(Question with { Try = 0, Now = Question.Files }, Base ?? Played, null, null, IsLast);
}
