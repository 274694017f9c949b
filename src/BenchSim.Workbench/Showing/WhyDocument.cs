using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study;
using BenchSim.Study.Kept;
using BenchSim.Study.Results;
using BenchSim.Study.Typical;
using BenchSim.Workbench.Plays;

namespace BenchSim.Workbench.Showing;

/// <summary>What happened in one season, a line each.</summary>
internal sealed record StoryDocument(string Heading, ImmutableArray<string> Lines);

/// <summary>Why a batch is late or a space is full, over the seasons and in two of them.</summary>
/// <param name="Title">What it is of.</param>
/// <param name="Row">Row of the plan; -1 for none.</param>
/// <param name="Sentences">The seasons together.</param>
/// <param name="Stories">A middling season and a bad one.</param>
/// <param name="Holds">Batches that hold places of the space in one of the two.</param>
/// <param name="Waits">Batches that wait for a place of it in one of the two.</param>
internal sealed record WhyDocument(
    string Title,
    int Row,
    ImmutableArray<string> Sentences,
    ImmutableArray<StoryDocument> Stories,
    ImmutableArray<string> Holds,
    ImmutableArray<string> Waits
)
{
    private const int LongestName = 60;

    /// <summary>Why a batch is as it is.</summary>
    /// <param name="result">The seasons.</param>
    /// <param name="at">Position of the batch in the plan.</param>
    /// <param name="places">Finds its row.</param>
    /// <param name="kept">Keeps climates.</param>
    /// <param name="cancel">Stops the play.</param>
    public static WhyDocument OfBatch(StudyResult result, int at, FaultPlaces places, KeptSeasons kept, CancellationToken cancel)
    {
        var batch = result.Batches[at];
        var order = batch.Plan.Order;
        var seasons = TypicalSeasons.OfBatch(result.Plan, at, Options(result), kept.Climates, cancel);
        return new WhyDocument(
            PlainText.Short($"{order.Id}: {batch.Plan.CropAndVariety}, {order.Grower}", LongestName),
            places.RowOf(order.Place),
            WhySentences.Of(result, batch),
            Told(seasons, "this batch", season =>
                [.. SeasonStory.Tell(result.Plan, result.Seed, season, order.Id).Lines.Select(PlainText.OneLine)]
            ),
            [],
            []
        );
    }

    /// <summary>Why a space is as full as it is in a week.</summary>
    /// <param name="result">The seasons.</param>
    /// <param name="at">Position of the space in the scenario.</param>
    /// <param name="day">A day of the week.</param>
    /// <param name="kept">Keeps climates.</param>
    /// <param name="cancel">Stops the play.</param>
    public static WhyDocument OfWeek(StudyResult result, int at, int day, KeptSeasons kept, CancellationToken cancel)
    {
        var (plan, space) = (result.Plan, result.Spaces[at]);
        var week = day / SeasonResult.DaysAWeek;
        var first = week * SeasonResult.DaysAWeek;
        var last = Math.Min(plan.Days, first + SeasonResult.DaysAWeek) - 1;
        var seasons = TypicalSeasons.OfDays(plan, at, first, last, Options(result), kept.Climates, cancel);
        var (middling, bad) = (Find(seasons.Middling), Find(seasons.Bad));
        var dates = new Dates(plan);
        return new WhyDocument(
            $"{PlainText.Short(space.Space.Name, LongestName)}, {dates.Plain(dates.Day(first))} to {dates.Plain(dates.Day(last))}",
            -1,
            WhySentences.Of(result, space, week),
            Told(seasons, "this week here", season => WhySentences.Of(plan, space.Space, season == seasons.Middling ? middling : bad)),
            Ids(middling.Holders.Concat(bad.Holders).Select(each => each.Batch)),
            Ids(middling.Waiting.Concat(bad.Waiting).Select(each => each.Batch))
        );

        FullDay Find(int season) => FullDay.Find(plan, result.Seed, season, at, first, last);

        ImmutableArray<string> Ids(IEnumerable<string> ids) => [.. ids.Distinct(StringComparer.Ordinal)];
    }

    // So many seasons as the first answer has: they are there, and enough to tell a middling one from a bad one.
    private static StudyOptions Options(StudyResult result) =>
        new() { Seasons = Math.Min(result.Seasons, Player.UsualFirst), Seed = result.Seed };

    private static ImmutableArray<StoryDocument> Told(TypicalSeasons seasons, string what, Func<int, ImmutableArray<string>> tell)
    {
        var (middling, bad) = (tell(seasons.Middling), tell(seasons.Bad));
        var (one, other) = (Numbers.Whole(seasons.Middling + 1), Numbers.Whole(seasons.Bad + 1));
        return middling.SequenceEqual(bad, StringComparer.Ordinal)
            ? [new($"A middling season and a bad one for {what} are alike: seasons {one} and {other}", middling)]
            :
            [
                new($"A middling season for {what}: season {one}", middling),
                new($"A bad season for {what}, one of ten: season {other}", bad),
            ];
    }
}
