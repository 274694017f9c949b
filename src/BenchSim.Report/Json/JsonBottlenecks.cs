using System.Collections.Immutable;
using System.Text.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>Who waits for whom.</summary>
/// <param name="From">Id of the space the trays stand in; null for sowings that wait.</param>
/// <param name="By">Id of the space they would take first.</param>
/// <param name="TrayDays">Tray-days refused in a season.</param>
/// <param name="Happens">Chance that some tray waits so.</param>
/// <param name="ByWeek">Tray-days refused; one entry a week, the first from the first day of the play.</param>
public sealed record JsonWait(string? From, string By, JsonEstimate TrayDays, JsonChance Happens, JsonDays ByWeek)
{
    /// <summary>The shape of a wait.</summary>
    public static JsonWait Of(WaitResult wait) =>
        new(wait.From?.Id, wait.By.Id, JsonEstimate.Of(wait.TrayDays), JsonChance.Of(wait.Happens), JsonDays.Of(wait.ByWeek));
}

/// <summary>What more room in each space would save.</summary>
/// <param name="Confidence">Confidence that all intervals hold at once.</param>
/// <param name="Comparisons">Intervals in all.</param>
/// <param name="EachConfidence">Confidence of each interval.</param>
/// <param name="LatePlantDays">Late plant-days of a season as it is, mean.</param>
/// <param name="Fits">Chance that a season fits as it is.</param>
/// <param name="Sentences">The findings in words.</param>
/// <param name="Unlimited">Each space without limit, what brings most plants out in time first.</param>
/// <param name="Larger">Each space one unit larger, what brings most plants out in time first.</param>
/// <param name="Pairs">Every two spaces without limit, what saves most first.</param>
/// <param name="Warmer">Each colder house as warm as the warmest, what brings most plants out in time first.</param>
public sealed record JsonBottlenecks(
    double Confidence,
    int Comparisons,
    double EachConfidence,
    double LatePlantDays,
    JsonChance Fits,
    ImmutableArray<string> Sentences,
    ImmutableArray<JsonTrial> Unlimited,
    ImmutableArray<JsonTrial> Larger,
    ImmutableArray<JsonPair> Pairs,
    ImmutableArray<JsonWarmer> Warmer
)
{
    /// <summary>The shape of bottlenecks.</summary>
    public static JsonBottlenecks Of(BottleneckResult result) =>
        new(
            result.Confidence,
            result.Comparisons,
            result.EachConfidence,
            result.LatePlantDays,
            JsonChance.Of(result.Fits),
            BottleneckSentences.Of(result),
            [.. result.Unlimited.Select(JsonTrial.Of)],
            [.. result.Larger.Select(JsonTrial.Of)],
            [.. result.Pairs.Select(JsonPair.Of)],
            [.. result.Warmer.Select(JsonWarmer.Of)]
        );
}

/// <summary>One space with more room.</summary>
/// <param name="Space">Space id.</param>
/// <param name="PlacesAdded">Places more; null for no limit.</param>
/// <param name="Brought">Plants out in time more than in the plan as it is.</param>
/// <param name="Saved">Saved against the plan as it is.</param>
/// <param name="Fits">Chance that a season fits.</param>
/// <param name="FitsChange">The chance against that of the plan as it is.</param>
public sealed record JsonTrial(
    string Space,
    int? PlacesAdded,
    JsonBringing Brought,
    JsonSaving Saved,
    JsonChance Fits,
    JsonFitChange FitsChange
)
{
    /// <summary>The shape of a trial.</summary>
    public static JsonTrial Of(BottleneckTrial trial) =>
        new(
            trial.Space.Id,
            trial.PlacesAdded,
            JsonBringing.Of(trial.PlantsInTime),
            JsonSaving.Of(trial.LatePlantDays),
            JsonChance.Of(trial.Fits.Variant),
            JsonFitChange.Of(trial.Fits)
        );
}

/// <summary>Plants that a trial brings out in time.</summary>
/// <param name="PlantsInTime">Mean of how many more are out in time.</param>
/// <param name="Interval">Its interval, allowing for all comparisons made; null for one season.</param>
/// <param name="Real">The interval leaves out 0.</param>
/// <param name="SeasonsDiffering">Seasons in which the two are not the same.</param>
public sealed record JsonBringing(double PlantsInTime, JsonInterval? Interval, bool Real, int SeasonsDiffering)
{
    /// <summary>The shape of what is brought.</summary>
    public static JsonBringing Of(MeasureChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return new(change.Difference, JsonInterval.Of(change.Low, change.High), change.IsReal, change.Differing);
    }
}

/// <summary>Two spaces without limit at once.</summary>
/// <param name="First">Space id.</param>
/// <param name="Second">Space id.</param>
/// <param name="HelpsTogether">Really saves more than its two alone added up, and than either alone.</param>
/// <param name="Saved">Saved against the plan as it is.</param>
/// <param name="SavedBeyondFirst">Saved against the first alone.</param>
/// <param name="SavedBeyondSecond">Saved against the second alone.</param>
/// <param name="SavedBeyondSum">Saved beyond what each alone saves, added up.</param>
/// <param name="Fits">Chance that a season fits with both.</param>
/// <param name="FitsChange">The chance against that of the plan as it is.</param>
public sealed record JsonPair(
    string First,
    string Second,
    bool HelpsTogether,
    JsonSaving Saved,
    JsonSaving SavedBeyondFirst,
    JsonSaving SavedBeyondSecond,
    JsonSaving SavedBeyondSum,
    JsonChance Fits,
    JsonFitChange FitsChange
)
{
    /// <summary>The shape of a pair.</summary>
    public static JsonPair Of(BottleneckPair pair) =>
        new(
            pair.First.Id,
            pair.Second.Id,
            pair.HelpsTogether,
            JsonSaving.Of(pair.LatePlantDays),
            JsonSaving.Of(pair.AgainstFirst),
            JsonSaving.Of(pair.AgainstSecond),
            JsonSaving.Of(pair.BeyondSum),
            JsonChance.Of(pair.Fits.Variant),
            JsonFitChange.Of(pair.Fits)
        );
}

/// <summary>One house as warm as the warmest.</summary>
/// <param name="House">House id.</param>
/// <param name="NightC">Its set-point at night in that play, degrees Celsius.</param>
/// <param name="Brought">Plants out in time more than in the plan as it is.</param>
/// <param name="Saved">Saved against the plan as it is.</param>
/// <param name="Fits">Chance that a season fits.</param>
/// <param name="FitsChange">The chance against that of the plan as it is.</param>
public sealed record JsonWarmer(
    string House,
    double NightC,
    JsonBringing Brought,
    JsonSaving Saved,
    JsonChance Fits,
    JsonFitChange FitsChange
)
{
    /// <summary>The shape of a trial of a warmer house.</summary>
    public static JsonWarmer Of(WarmerTrial trial) =>
        new(
            trial.House.Id,
            trial.Warmer.NightC ?? 0,
            JsonBringing.Of(trial.PlantsInTime),
            JsonSaving.Of(trial.LatePlantDays),
            JsonChance.Of(trial.Fits.Variant),
            JsonFitChange.Of(trial.Fits)
        );
}
