using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Levelling;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Review;

/// <summary>Asks how a season that is over went, by its log, beside the plan that was agreed.</summary>
public sealed record ReviewQuestion
{
    /// <summary>Seasons that are played of the agreed plan and on from each Monday where nothing else is asked for.</summary>
    public const int UsualSeasons = 200;

    /// <summary>The scenario, with its log.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Name of a variant that is judged on top of what would have cost nothing; null for none.</summary>
    public string? Purchase { get; init; }

    /// <summary>Reviews.</summary>
    /// <param name="watch">Watches the plays.</param>
    /// <param name="leveller">Finds sowings to move, where a purchase is judged; null to move single ones alone.</param>
    /// <exception cref="FaultsFoundException">The scenario, its log or what was agreed has faults.</exception>
    /// <exception cref="RefusedException">The log has no lines.</exception>
    public ReviewAnswer Ask(PlayWatch watch, ILeveller? leveller = null)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var now = Scenario.Open().Plan;
        if (now.Scenario.Log.IsEmpty)
        {
            throw new RefusedException(
                $"There is nothing to review: the folder has no {LogFields.File} with lines. docs/underway.md says what to write."
            );
        }

        var agreement = Agreement.Latest(Scenario.Directory);
        var agreed = agreement?.Plan() ?? now;
        if (agreed.LastDay < now.FirstDay || agreed.FirstDay > now.LastDay)
        {
            // Of another year: nothing in it was agreed for this season.
            (agreement, agreed) = (null, now);
        }

        var options = (Play with { Seasons = Play.Seasons ?? UsualSeasons }).Of(now);
        var judged = Purchase is null ? null : new PurchaseQuestion(Scenario, Purchase, leveller).Ask(agreement, now, options, watch);
        var review = watch.Over(ReviewRunner.Parts(now), progress => ReviewRunner.Play(agreed, now, options, progress, watch.Cancel));
        return new ReviewAnswer(review, agreement) { ScenarioFolder = Scenario.Directory, Purchase = judged };
    }
}

/// <summary>How a season went.</summary>
/// <param name="Result">The review.</param>
/// <param name="Agreement">What was agreed; null where nothing was, and the plan as it is stands in its place.</param>
public sealed record ReviewAnswer(SeasonReview Result, Agreement? Agreement) : Answer
{
    /// <summary>The purchase that was judged; null for none.</summary>
    public PurchaseJudged? Purchase { get; init; }

    /// <inheritdoc />
    public override FirstScreen? Screen => ReviewScreen.Of(this);

    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(ReviewDocument.Of(Result, Agreement?.On, Purchase));

    private protected override void Tell(Passages passages) => ReviewTelling.Tell(passages, this);
}
