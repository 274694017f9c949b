using BenchSim.Answers.Asking;
using BenchSim.Answers.Mend;
using BenchSim.Answers.Trust;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Study.Levelling;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>What the search for what would mend a plan was asked for.</summary>
/// <param name="Of">The plan.</param>
/// <param name="Goal">Share of seasons in which the plan must fit, between 0 and 1.</param>
internal sealed record MendAsked(PlanAsked Of, double Goal) : PlanAsked(Of);

/// <summary>What would mend a plan.</summary>
/// <param name="List">The changes.</param>
/// <param name="Plan">The plan that was looked at.</param>
internal sealed record Mended(MendList List, SeasonPlan Plan);

/// <summary>The searches that run beside the player on a folder.</summary>
internal static class Searches
{
    /// <summary>Looks for what would mend a plan.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="leveller">Finds sowings to move; null to move single ones alone.</param>
    /// <param name="tell">Told when anything has changed.</param>
    public static BesideSearch<MendAsked, Mended> Mend(
        OpenFolder folder,
        ILeveller? leveller,
        Action<SearchState<MendAsked, Mended>?> tell
    ) =>
        new(
            "mender",
            (asked, threads, watch) =>
            {
                var answer = new MendQuestion
                {
                    Scenario = folder.Source(asked.Texts),
                    NotHere = NotHereMarks.File(folder) ?? new InputFile(MendQuestion.NotHereFile, []),
                    Goal = asked.Goal,
                    Play = new PlayWish(Threads: threads),
                }.Ask(leveller, watch);
                return new Mended(answer.List, answer.Result.Plan);
            },
            tell
        );

    /// <summary>Looks how sure the answer is, where the values under it may be wrong.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="tell">Told when anything has changed.</param>
    public static BesideSearch<PlanAsked, TrustList> Trust(OpenFolder folder, Action<SearchState<PlanAsked, TrustList>?> tell) =>
        new(
            "trust",
            (asked, threads, watch) =>
                new TrustQuestion { Scenario = folder.Source(asked.Texts), Play = new PlayWish(Threads: threads) }
                    .Ask(watch)
                    .List,
            tell
        );
}
