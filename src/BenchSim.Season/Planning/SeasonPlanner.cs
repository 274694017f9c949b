using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Values;

namespace BenchSim.Season.Planning;

/// <summary>
/// Works out the dates and numbers of every batch, once, in the base scenario: normal climate, no luck, no limits, no holds (docs/model.md
/// section 5). The same steps that play a season walk each batch through, so that a plan with room and no luck is met to the day.
/// </summary>
public static class SeasonPlanner
{
    // A batch sown on the last day has this long to be ready, or it is not a plan.
    private const int SlackDays = 250;

    // Trays still standing this long after the last that could be thrown out are reported as such.
    private const int TailDays = 14;

    /// <summary>Makes the plan of a scenario.</summary>
    /// <param name="scenario">A scenario that was read without faults.</param>
    /// <param name="kept">Keeps batches from one plan to the next; null to keep none.</param>
    public static PlanResult Make(Scenario scenario, KeptDates? kept = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var horizon = HorizonOf(scenario);
        var tables = new SiteTables(scenario, horizon);
        var store = new PlanClimates(scenario, horizon, scenario.Play.Seed);
        if (NoYear(scenario, WindowDays(scenario)) is { } uncovered)
        {
            return uncovered;
        }

        var drafts = scenario.Batches.Select(order => Draft(scenario, order)).ToArray();
        var dater = new BatchDater(scenario, tables, store);
        var faults = ImmutableArray.CreateBuilder<Fault>();
        var warnings = ImmutableArray.CreateBuilder<Fault>();
        var plans = ImmutableArray.CreateBuilder<BatchPlan>(drafts.Length);
        var site = kept?.Of(scenario);
        foreach (var draft in drafts)
        {
            if (site?.TryFind(draft, out var found) == true)
            {
                plans.Add(found);
                continue;
            }

            var said = faults.Count + warnings.Count;
            if (dater.Date(draft, faults, warnings) is { } dated)
            {
                var planned = BatchNumbers.Work(scenario, dated.Plan, dated.PathMeanC, faults);
                plans.Add(planned);
                if (faults.Count + warnings.Count == said)
                {
                    site?.Keep(draft, planned);
                }
            }
        }

        if (faults.Count > 0)
        {
            return new PlanResult(null, faults.ToImmutable());
        }

        var batches = plans.MoveToImmutable();
        var days = DaysOf(scenario, batches);
        if (NoYear(scenario, days) is { } tooShort)
        {
            return tooShort;
        }

        PlanWarnings.Add(scenario, batches, warnings);
        return new PlanResult(
            new SeasonPlan
            {
                Scenario = scenario,
                Batches = batches,
                Days = days,
                Warnings = warnings.ToImmutable(),
            },
            []
        );
    }

    /// <summary>Days of the clock in which a plan of the scenario is worked out.</summary>
    internal static int HorizonOf(Scenario scenario) => scenario.Window.Closes.DayNumber - scenario.Window.Opens.DayNumber + SlackDays;

    /// <summary>Days that are played: to the last set-out, the longest that trays may stand after it, and a fortnight.</summary>
    internal static int DaysOf(Scenario scenario, ImmutableArray<BatchPlan> batches)
    {
        var last = batches.Max(batch => batch.SetOutOn.DayNumber) - scenario.Window.Opens.DayNumber;
        return last + batches.Max(batch => batch.Crop.DiscardAfterDays) + TailDays + 1;
    }

    private static BatchPlan Draft(Scenario scenario, BatchOrder order)
    {
        var crop = scenario.Crops.First(crop => string.Equals(crop.Id, order.CropId, StringComparison.Ordinal));
        var draft = new BatchPlan
        {
            Order = order,
            Crop = crop,
            Tray = scenario.TrayTypes.First(tray => string.Equals(tray.Id, order.TrayId, StringComparison.Ordinal)),
            Flat =
                order.Method == Method.PotUp
                    ? scenario.TrayTypes.First(tray => string.Equals(tray.Id, order.FlatId, StringComparison.Ordinal))
                    : null,
            SowOn = scenario.Window.Opens,
            EmergeOn = scenario.Window.Opens,
            TableOn = scenario.Window.Opens,
            ReadyOn = scenario.Window.Opens,
            SetOutOn = scenario.Window.Opens,
            Trays = 1,
            Flats = order.Method == Method.PotUp ? 1 : 0,
            Seeds = 0,
            Germination = order.Germination,
            StandChance = 0,
            Mats = SpaceGroups.Mats(scenario, crop),
            Benches = SpaceGroups.Benches(scenario, crop),
            Tables = SpaceGroups.Tables(scenario),
        };
        return SpaceGroups.WithFinish(scenario, draft);
    }

    /// <summary>
    /// The fault of a weather record of which no year has every day to be played, the forecast past the last among them; null where there
    /// is a year.
    /// </summary>
    internal static PlanResult? NoYear(Scenario scenario, int days)
    {
        var needed = days + scenario.Rules.ForecastNights + 1;
        return scenario.Weather is RecordedWeather record && WeatherSource.Of(scenario, needed).Distinct == 0
            ? new PlanResult(
                null,
                [
                    new Fault(
                        new SourcePlace(record.File, 0, 0),
                        (
                            record.FixedYear is { } year
                                ? $"the season that begins in {year} is not covered by this record"
                                : "no year of this record covers the whole season"
                        ) + $": {needed} days from {scenario.Window.Opens:MM-dd} on",
                        "give a record with every day of at least one such year"
                    ),
                ]
            )
            : null;
    }

    private static int WindowDays(Scenario scenario) => scenario.Window.Closes.DayNumber - scenario.Window.Opens.DayNumber + 1;
}
