using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Json;

/// <summary>What to change so that the plan fits often enough.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Goal">Share of seasons in which the plan must fit.</param>
/// <param name="CountsWeather">Whether days on which only the weather kept trays count as late too.</param>
/// <param name="MetBefore">Whether the plan meets it as it is; then no change was sought.</param>
/// <param name="Met">Whether it meets it with the changes chosen.</param>
/// <param name="Seasons">Seasons in which what is shown was played.</param>
/// <param name="SearchSeasons">Other seasons, in which it was sought.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Comparisons">Intervals in all.</param>
/// <param name="EachConfidence">Confidence of each interval.</param>
/// <param name="Tried">Changes that were tried.</param>
/// <param name="NotHere">Changes left out because they are marked as not here.</param>
/// <param name="Before">The plan as it is.</param>
/// <param name="After">The plan with all changes chosen.</param>
/// <param name="Steps">The changes chosen, each made after those before it; its figures are with those before it.</param>
/// <param name="Singles">Changes that help by themselves, the one that helps most first.</param>
/// <param name="OfTheOrder">Changes of what the field asked for that help by themselves; they are in no set.</param>
/// <param name="FullForNothing">Spaces that run out but need not be larger.</param>
/// <param name="InTheWay">Crops that are still late with all changes chosen, worst first.</param>
/// <param name="Variant">Text of the variant file that makes the changes chosen; null where none were.</param>
/// <param name="File">That file, as written; null where none was.</param>
internal sealed record MendDocument(
    int Version,
    string Name,
    double Goal,
    bool CountsWeather,
    bool MetBefore,
    bool Met,
    int Seasons,
    int SearchSeasons,
    string Seed,
    int Comparisons,
    double EachConfidence,
    int Tried,
    int NotHere,
    JsonMendFigures Before,
    JsonMendFigures After,
    ImmutableArray<JsonMendChange> Steps,
    ImmutableArray<JsonMendChange> Singles,
    ImmutableArray<JsonMendChange> OfTheOrder,
    ImmutableArray<JsonMendSpace> FullForNothing,
    ImmutableArray<JsonMendHindrance> InTheWay,
    string? Variant,
    string? File
)
{
    public static MendDocument Of(MendResult result, string? text, string? file) =>
        new(
            Version: JsonDialect.Version,
            Name: result.Plan.Scenario.Name,
            Goal: result.Options.Goal,
            CountsWeather: result.Options.CountsWeather,
            MetBefore: result.IsMetBefore,
            Met: result.IsMet,
            Seasons: result.Options.Seasons,
            SearchSeasons: result.Options.SearchSeasons,
            Seed: result.Options.Seed.ToString(CultureInfo.InvariantCulture),
            Comparisons: result.Comparisons,
            EachConfidence: result.EachConfidence,
            Tried: result.Tried,
            NotHere: result.NotHere,
            Before: JsonMendFigures.Of(result.Before),
            After: JsonMendFigures.Of(result.After),
            Steps:
            [
                .. result.Steps.Select(
                    (step, at) =>
                        JsonMendChange.Of(
                            step.Change,
                            MendSentences.Step(result, step, at == 0 ? result.Before : result.Steps[at - 1].After),
                            step.After,
                            step.Gain,
                            step.Terms,
                            step.AsGood
                        )
                ),
            ],
            Singles: [.. result.Singles.Select(option => Of(result, option))],
            OfTheOrder: [.. result.OfTheOrder.Select(option => Of(result, option))],
            FullForNothing: [.. result.FullForNothing.Select(JsonMendSpace.Of)],
            InTheWay: [.. result.InTheWay.Select(JsonMendHindrance.Of)],
            Variant: text,
            File: file
        );

    private static JsonMendChange Of(MendResult result, MendOption option) =>
        JsonMendChange.Of(option.Change, MendSentences.Option(result, option), option.After, option.Gain, option.Terms, option.AsGood);
}

/// <summary>A plan in the seasons played.</summary>
/// <param name="Fits">Chance that a season fits, by the days that count.</param>
/// <param name="FitsWeatherCounted">Chance that a season fits with every late day counted.</param>
/// <param name="LateUsual">Wanted plants not out in time in a usual season, by the days that count: the median.</param>
/// <param name="LateBad">The same in a bad season, one of ten: the 90th percentile.</param>
/// <param name="LateMean">The same on average.</param>
/// <param name="WorkHours">Hours of work a season.</param>
/// <param name="Money">What work, heat, mix and seed cost a season; null where work or heat has no price.</param>
internal sealed record JsonMendFigures(
    JsonChance Fits,
    JsonChance FitsWeatherCounted,
    long LateUsual,
    long LateBad,
    double LateMean,
    double WorkHours,
    double? Money
)
{
    public static JsonMendFigures Of(MendFigures figures) =>
        new(
            JsonChance.Of(figures.Fits),
            JsonChance.Of(figures.FitsWeatherCounted),
            figures.LateUsual,
            figures.LateBad,
            figures.Late,
            figures.WorkHours,
            figures.Money
        );
}

/// <summary>A change.</summary>
/// <param name="Code">Name of the change.</param>
/// <param name="Mark">What a line of not-here.txt says to leave it out from then on.</param>
/// <param name="Sentence">What to do, what it costs, who gives way, until when, and when it would be wrong.</param>
/// <param name="Bought">Whether something has to be bought for it.</param>
/// <param name="After">The plan with it, and with those before it where it is one of those chosen.</param>
/// <param name="FitsChange">The chance against that of the plan as it is.</param>
/// <param name="LateChange">Plants not in time against those of the plan as it is.</param>
/// <param name="GivesWay">Batches that are later for it.</param>
/// <param name="DecideBy">Last day on which it can be decided.</param>
/// <param name="AsGood">Names of changes that gain as much, as far as the play shows.</param>
internal sealed record JsonMendChange(
    string Code,
    string Mark,
    string Sentence,
    bool Bought,
    JsonMendFigures After,
    JsonFitChange FitsChange,
    JsonMeasure LateChange,
    ImmutableArray<JsonMendBatch> GivesWay,
    DateOnly DecideBy,
    ImmutableArray<string> AsGood
)
{
    public static JsonMendChange Of(
        MendChange change,
        string sentence,
        MendFigures after,
        MendGain gain,
        MendTerms terms,
        ImmutableArray<MendChange> asGood
    ) =>
        new(
            change.Code,
            change.Mark,
            sentence,
            change.IsBought,
            JsonMendFigures.Of(after),
            JsonFitChange.Of(gain.Fits),
            JsonMeasure.Of(gain.Late),
            [.. terms.GivesWay.Select(each => new JsonMendBatch(each.Batch.Order.Id, each.Plants))],
            terms.DecideBy,
            [.. asGood.Select(other => other.Code)]
        );
}

/// <summary>A batch that is later for a change.</summary>
/// <param name="Batch">Its id.</param>
/// <param name="Plants">Plants more that are late a season.</param>
internal sealed record JsonMendBatch(string Batch, double Plants);

/// <summary>A space that runs out but need not be larger.</summary>
/// <param name="Space">Its id.</param>
/// <param name="Seasons">Share of seasons in which it runs out.</param>
/// <param name="Places">Places more that were tried.</param>
/// <param name="ThenWaitsFor">Space that is waited for more when it is larger; null for none.</param>
/// <param name="Worse">Whether more plants are late when it is larger.</param>
internal sealed record JsonMendSpace(string Space, double Seasons, int Places, string? ThenWaitsFor, bool Worse)
{
    public static JsonMendSpace Of(MendSpace space) =>
        new(space.Space.Id, space.Seasons, space.Larger.Places, space.Then?.Id, space.IsWorse);
}

/// <summary>A crop that is still late.</summary>
/// <param name="Crop">Its id.</param>
/// <param name="Batch">Its worst batch.</param>
/// <param name="Plants">Plants late a season, of all its batches.</param>
/// <param name="Reason">What most of them are late for: room, weather, short or date.</param>
internal sealed record JsonMendHindrance(string Crop, string Batch, double Plants, string Reason)
{
    public static JsonMendHindrance Of(MendHindrance hindrance) =>
        new(
            hindrance.Batch.Order.CropId,
            hindrance.Batch.Order.Id,
            hindrance.Plants,
            hindrance.Reason switch
            {
                MendReason.Room => "room",
                MendReason.Weather => "weather",
                MendReason.Short => "short",
                MendReason.Date => "date",
                _ => throw new ArgumentOutOfRangeException(nameof(hindrance)),
            }
        );
}
