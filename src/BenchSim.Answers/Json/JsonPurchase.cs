using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Json;

/// <summary>What a purchase would have changed on top of what would have cost nothing.</summary>
/// <param name="Variant">Name of the variant.</param>
/// <param name="Seasons">Seasons played of each plan.</param>
/// <param name="DaysObserved">Days whose observed weather is that of every season played; 0 where the weather is drawn.</param>
/// <param name="FreeChanges">Names of the changes that cost nothing, in the order found.</param>
/// <param name="Agreed">The plan as it was agreed.</param>
/// <param name="Free">The same with what costs nothing.</param>
/// <param name="Bought">The same with the purchase on top.</param>
/// <param name="FitsChange">The chance that it fits, with the purchase against without it.</param>
/// <param name="LateChange">Plants not in time, with the purchase against without it.</param>
/// <param name="AloneFitsChange">The chance, of the agreed plan with the purchase alone against the agreed plan.</param>
/// <param name="AloneLateChange">Plants not in time, likewise.</param>
internal sealed record JsonPurchase(
    string Variant,
    int Seasons,
    int DaysObserved,
    ImmutableArray<string> FreeChanges,
    JsonMendFigures Agreed,
    JsonMendFigures Free,
    JsonMendFigures Bought,
    JsonFitChange FitsChange,
    JsonMeasure LateChange,
    JsonFitChange AloneFitsChange,
    JsonMeasure AloneLateChange
)
{
    public static JsonPurchase Of(PurchaseJudged purchase)
    {
        return new(
            purchase.Name,
            purchase.Seasons,
            purchase.Observed,
            [.. purchase.Sought.Steps.Select(step => step.Change.Code)],
            JsonMendFigures.Of(purchase.Agreed),
            JsonMendFigures.Of(purchase.Free),
            JsonMendFigures.Of(purchase.Bought),
            JsonFitChange.Of(purchase.Gain.Fits),
            JsonMeasure.Of(purchase.Gain.Late),
            JsonFitChange.Of(purchase.Alone.Fits),
            JsonMeasure.Of(purchase.Alone.Late)
        );
    }
}
