using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Report.Morning;

/// <summary>What to do on a cold night, for a few forecast lows in steps.</summary>
public sealed record ColdCard
{
    /// <summary>Forecast lows on the card, and evenings with a box for the forecast.</summary>
    public const int Boxes = 7;

    /// <summary>Highest temperature from which on a dry day is called hot, degrees Celsius: an assumption.</summary>
    public const double HotC = 24;

    private const double DryMm = 1;

    // Steps above tonight's forecast: what comes is mostly colder than it says when it matters.
    private const int StepsAbove = 2;

    /// <summary>The nights, the mildest first; none where nothing stands on a table.</summary>
    public required ImmutableArray<ColdNight> Nights { get; init; }

    /// <summary>Position among <see cref="Nights"/> of tonight's forecast, rounded down; null where none is known.</summary>
    public required int? Tonight { get; init; }

    /// <summary>Forecast lows of the nights after today and the next evenings, degrees Celsius; null where none is known.</summary>
    public required ImmutableArray<double?> Lows { get; init; }

    /// <summary>The forecast of tomorrow; null where there is none.</summary>
    public required DailyWeather? Tomorrow { get; init; }

    /// <summary>Days of the forecast from today on, in order.</summary>
    public required ImmutableArray<DailyWeather> Forecast { get; init; }

    /// <summary>What one's own thermometer adds.</summary>
    public required OwnThermometer Own { get; init; }

    /// <summary>Free places on the benches of the houses.</summary>
    public required int RoomIndoors { get; init; }

    /// <summary>Whether tomorrow is hot and dry by the forecast; null where it is not known.</summary>
    public required bool? IsHotTomorrow { get; init; }

    /// <summary>Makes the card of a day.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">What stands where.</param>
    /// <param name="today">The day.</param>
    public static ColdCard Of(SeasonPlan plan, BenchLedger ledger, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var byDate = plan.Scenario.Seen.Forecast.ToDictionary(day => day.Date);
        ImmutableArray<double?> lows =
        [
            .. Enumerable
                .Range(1, Boxes)
                .Select(day => byDate.TryGetValue(today.AddDays(day), out var known) ? known.TminC : (double?)null),
        ];
        var own = OwnThermometer.Of(plan.Scenario);
        var tops = ColdNight
            .OnTables(plan, ledger)
            .Select(trays => plan.Batches[trays.Batch].Crop.TableAboveC + ColdNight.InHandK - own.CorrectionK)
            .ToArray();
        var units = plan.Scenario.Units;
        var top =
            lows[0] is { } tonight ? StepOf(tonight, units) + StepsAbove
            : tops.Length == 0 ? 0
            : StepOf(tops.Max(), units);
        var tomorrow = byDate.TryGetValue(today.AddDays(1), out var next) ? next : (DailyWeather?)null;
        return new ColdCard
        {
            Nights =
                tops.Length == 0
                    ? []
                    :
                    [
                        .. Enumerable
                            .Range(0, Boxes)
                            .Select(below => ColdNight.Of(plan, ledger, LowOf(top - below, units), own.CorrectionK)),
                    ],
            Tonight = lows[0] is null || tops.Length == 0 ? null : StepsAbove,
            Lows = lows,
            Tomorrow = tomorrow,
            IsHotTomorrow = tomorrow is { } day ? WholeOf(day.TmaxC, units) >= WholeOf(HotC, units) && day.RainMm < DryMm : null,
            Forecast = [.. plan.Scenario.Seen.Forecast.Where(day => day.Date >= today)],
            Own = own,
            RoomIndoors = ColdNight.RoomIndoors(plan, ledger, today),
        };
    }

    // Steps of 2 F, or of 1 C; from the whole degrees of the page down to the step.
    private static int StepOf(double celsius, UnitSystem units) =>
        (int)Math.Floor(WholeOf(celsius, units) / (units == UnitSystem.Imperial ? 2 : 1));

    private static double WholeOf(double celsius, UnitSystem units) =>
        Math.Round(UnitWords.Degrees(celsius, units), MidpointRounding.AwayFromZero);

    private static double LowOf(int step, UnitSystem units) => units == UnitSystem.Imperial ? ((2 * step) - 32) / 1.8 : step;
}
