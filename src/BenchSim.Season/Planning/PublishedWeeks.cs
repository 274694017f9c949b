using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>
/// Holds the planned days of a batch against the weeks that growers publish for its crop, and says where the difference comes from: the
/// days of each stage against those that days_to_ready counts for it.
/// </summary>
internal static class PublishedWeeks
{
    // Less than this is rounding to whole days and work days.
    private const double WorthSaying = 1;

    // Weeks are published whole.
    private const double HalfAWeek = 3.5;

    /// <summary>Adds a warning for each crop with a batch outside its published weeks: of its batch that is furthest outside.</summary>
    public static void Add(Scenario scenario, ImmutableArray<BatchPlan> batches, ImmutableArray<Fault>.Builder warnings)
    {
        foreach (var batchesOfCrop in batches.GroupBy(batch => batch.Crop.Id, StringComparer.Ordinal))
        {
            var outside = batchesOfCrop.Where(batch => DaysOutside(batch) != 0).ToList();
            if (outside.Count > 0)
            {
                warnings.Add(Fault(scenario, outside.MaxBy(batch => Math.Abs(DaysOutside(batch)))!, outside.Count - 1));
            }
        }
    }

    /// <summary>Planned days to setting out, counted as the published weeks of the crop are.</summary>
    public static int Days(BatchPlan batch)
    {
        var counted = Counted(batch.Crop);
        var from = counted.FromSowing ? batch.SowOn : batch.EmergeOn;
        return batch.SetOutOn.DayNumber - from.DayNumber - (counted.WithHardening ? 0 : batch.Crop.HardeningNights);
    }

    // Above the published weeks more than 0, below them less; 0 where the planned weeks, rounded to whole ones, are among them.
    private static double DaysOutside(BatchPlan batch)
    {
        var days = Days(batch);
        return batch.Crop switch
        {
            { WeeksMax: { } most } when days > (7 * most) + HalfAWeek => days - (7 * most),
            { WeeksMin: { } least } when days < (7 * least) - HalfAWeek => days - (7 * least),
            _ => 0,
        };
    }

    private static Fault Fault(Scenario scenario, BatchPlan batch, int others)
    {
        var crop = batch.Crop;
        var isLong = DaysOutside(batch) > 0;
        var stage = Counted(crop) switch
        {
            { FromSowing: true, WithHardening: true } => "from sowing to setting out",
            { FromSowing: true } => "from sowing to field size",
            { WithHardening: true } => "from coming up to setting out",
            _ => "from coming up to field size",
        };
        var also = others switch
        {
            0 => "",
            1 => " (so does one more batch)",
            _ => FormattableString.Invariant($" (so do {others} more batches)"),
        };
        var causes = Causes(scenario, batch)
            .Where(cause => (isLong ? cause.Days : -cause.Days) >= WorthSaying)
            .OrderByDescending(cause => Math.Abs(cause.Days))
            .Select(cause => $"{cause.What} ({Words(Math.Abs(cause.Days))})")
            .ToList();
        var why = causes.Count > 0 ? $": {(isLong ? "longer" : "shorter")} by {string.Join(", ", causes)}" : "";
        return new Fault(
            batch.Order.Place,
            FormattableString.Invariant($"batch \"{batch.Order.Id}\" is planned to stand {Days(batch) / 7.0:0.0} weeks {stage}, ")
                + FormattableString.Invariant($"and growers publish {crop.WeeksMin:0.#} to {crop.WeeksMax:0.#} for \"{crop.Id}\"")
                + also
                + why,
            isLong
                ? "a warmer house or fewer slack_days make it shorter; if yours are ready sooner, write your own days_to_ready in crops.csv"
                : "if yours take longer, write your own days_to_ready in crops.csv"
        );
    }

    // What the plan has more than days_to_ready counts, by what it comes from; less than 0 where it has less.
    private static IEnumerable<(string What, double Days)> Causes(Scenario scenario, BatchPlan batch)
    {
        var crop = batch.Crop;
        if (Counted(crop).FromSowing)
        {
            var emergence = crop.EmergeHeat / EmergenceRate.Of(crop, crop.GerminateAtC);
            var here = batch.EmergeOn.DayNumber - batch.SowOn.DayNumber - emergence;
            yield return ($"{(here > 0 ? "cooler" : "warmer")} mix until it is up", here);
        }

        // Days of full light: what the others lack is owed to the season, the rest to the temperature.
        var grown = batch.ReadyOn.DayNumber - crop.HardeningNights - batch.EmergeOn.DayNumber;
        var full = Enumerable.Range(0, grown).Sum(day => scenario.Rules.Light[batch.EmergeOn.AddDays(day).Month - 1]);
        var check = batch.Flat is null ? 0 : crop.PotUpCheckDays;
        var warmth = full - check - crop.GrowthDays;
        var reference = Reference(crop, scenario.Units);
        yield return ($"a house {(warmth > 0 ? "cooler" : "warmer")} than the published {reference}", warmth);
        yield return ("short days", grown - full);
        yield return ("the check of potting up", check);
        yield return ("days in hand after it is ready", batch.DaysInHand);
        if (crop.DaysToReady is { } written && crop.Sources.TryGetValue("days_to_ready", out var source) && source.Trust == Trust.User)
        {
            yield return ("your own days_to_ready", written.Days - (3.5 * ((crop.WeeksMin ?? 0) + (crop.WeeksMax ?? 0))));
        }
    }

    // The library keeps tenths of a degree Celsius of what was published in whole degrees Fahrenheit.
    private static string Reference(Crop crop, UnitSystem units) =>
        units == UnitSystem.Imperial
            ? FormattableString.Invariant($"{(crop.ReferenceC * 1.8) + 32:0} F")
            : UnitWords.Temperature(crop.ReferenceC, units);

    private static WrittenDays Counted(Crop crop) => crop.DaysToReady ?? new WrittenDays(0, true, true);

    private static string Words(double days) => Math.Round(days) is 1 ? "1 day" : FormattableString.Invariant($"{days:0} days");
}
