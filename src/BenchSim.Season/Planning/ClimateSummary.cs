using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Planning;

/// <summary>What the site's weather means for a plan before a season is played: frosts, cold nights, fuel and electricity.</summary>
public sealed record ClimateSummary
{
    /// <summary>Years drawn where a generator makes the weather.</summary>
    public const int GeneratedYears = WeatherYears.Generated;

    // A season that closes longer than this past the warmest day of the year runs towards the frosts of autumn.
    private const int LongestPastWarmest = 45;

    /// <summary>
    /// Years of weather the fuel rests on: those of the record that cover the season and all that is played, or
    /// <see cref="GeneratedYears"/>.
    /// </summary>
    public required int Years { get; init; }

    /// <summary>
    /// Chance of a frost after a date, counted to the closing of the season, or to the warmest day of the year where the season closes long
    /// after it; null where the weather is the same every day or no year is whole.
    /// </summary>
    public required WeatherSummary? Frost { get; init; }

    /// <summary>
    /// Nights below each of <see cref="Thresholds"/> by fortnight, to the closing of the season; null like <see cref="Frost"/>.
    /// </summary>
    public required WeatherSummary? Nights { get; init; }

    /// <summary>Temperatures below which a night holds some crop of the plan back, in order, degrees Celsius.</summary>
    public required ImmutableArray<HoldThreshold> Thresholds { get; init; }

    /// <summary>
    /// Expected hold days from the opening of the season to its closing: to the table by temperature, the wet field, then to the field by
    /// temperature, coldest first; empty like <see cref="Frost"/>.
    /// </summary>
    public required ImmutableArray<HoldDays> Holds { get; init; }

    /// <summary>
    /// Batches that the weather is expected to hold on more than <see cref="SiteRules.HoldWarningDays"/> days of the fortnight from
    /// their planned date
    /// on; empty like <see cref="Frost"/>.
    /// </summary>
    public required ImmutableArray<BatchHold> Held { get; init; }

    /// <summary>Houses with a heater whose fuel can be worked out, in the order of the file.</summary>
    public required ImmutableArray<HouseNeed> Houses { get; init; }

    /// <summary>The air of each house by month, in the order of the file.</summary>
    public required ImmutableArray<HouseMonths> Airs { get; init; }

    /// <summary>Mats whose electricity is given, in the order of the file.</summary>
    public required ImmutableArray<MatNeed> Mats { get; init; }

    /// <summary>Works out the summary of a plan.</summary>
    /// <param name="plan">Plan.</param>
    public static ClimateSummary Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var scenario = plan.Scenario;
        var last = LastDay(scenario.Window);
        var days = Math.Max(scenario.Window.Closes.DayNumber - scenario.Window.Opens.DayNumber + 1, plan.Days);
        var climates = new PlanClimates(scenario, days, scenario.Play.Seed);
        var seasons = WeatherYears.Of(climates.Source, scenario.Play.Seed);
        var thresholds = HoldThreshold.Of(plan);
        ImmutableArray<double> celsius = [.. thresholds.Select(threshold => threshold.TemperatureC)];
        var frost = Count(scenario, LastSpringDay(scenario.Window, climates.Normal().Weather), []);
        var holds = new HoldDaysTally(plan, climates.Layout, last.DayNumber - scenario.Window.Opens.DayNumber + 1);
        var held = new BatchHoldsTally(plan, climates.Layout);
        ImmutableArray<HouseTally> heat =
        [
            .. scenario
                .Houses.Index()
                .Where(house => house.Item is { Heat: not null, IsHeated: true })
                .Select(house => new HouseTally(house.Item, house.Index, scenario.Window)),
        ];
        ImmutableArray<HouseMonthsTally> airs =
        [
            .. OpenDays
                .Of(scenario, plan.Batches, climates.Layout)
                .Select((open, index) => new HouseMonthsTally(scenario.Houses[index], index, scenario.Window, open)),
        ];

        // Which days a house is open, trays tell: so each of the years is played, and what is told here is what a run tells.
        var player = new SeasonPlayer(plan, scenario.Play.Seed);
        var played = new SeasonResult();
        foreach (var season in seasons)
        {
            using var borrowed = climates.Borrow(season);
            var climate = borrowed.Climate;
            holds.Add(climate);
            held.Add(climate);
            player.Play(season, PlaceLimits.AsGiven, played);
            foreach (var tally in heat)
            {
                tally.Add(played);
            }

            foreach (var tally in airs)
            {
                tally.Add(climate, played, plan.Days);
            }
        }

        return new ClimateSummary
        {
            Years = seasons.Length,
            Frost = frost,
            Nights = Count(scenario, last, celsius),
            Thresholds = thresholds,
            Holds = frost is null ? [] : holds.ToHoldDays(),
            Held = frost is null ? [] : held.MoreThan(scenario.Rules.HoldWarningDays),
            Houses = [.. heat.Select(tally => tally.ToNeed())],
            Airs = [.. airs.Select(tally => tally.ToMonths())],
            Mats = [.. scenario.Spaces.Select((space, at) => MatOf(plan, space, at)).OfType<MatNeed>()],
        };
    }

    private static DateOnly LastDay(SeasonWindow window) =>
        window.Closes <= window.Opens.AddDays(364) ? window.Closes : window.Opens.AddDays(364);

    private static DateOnly LastSpringDay(SeasonWindow window, SeasonWeather normal)
    {
        var last = LastDay(window).DayNumber - window.Opens.DayNumber;
        var warmest = Enumerable.Range(0, last + 1).MaxBy(day => normal.TminOf(day) + normal.TmaxOf(day));
        var isSpringFirst = warmest > LongestPastWarmest;
        return window.Opens.AddDays(isSpringFirst && last - warmest > LongestPastWarmest ? warmest : last);
    }

    private static WeatherSummary? Count(Scenario scenario, DateOnly last, ImmutableArray<double> thresholds)
    {
        var first = scenario.Window.Opens;
        return scenario.Weather switch
        {
            GeneratedWeather generated => WeatherSummary.Of(
                WeatherGenerator.Of(generated.Model),
                scenario.Play.Seed,
                GeneratedYears,
                first,
                last,
                WeatherStatistics.FrostC,
                thresholds
            ),
            RecordedWeather record => WeatherSummary.Of(DaysPlayed(record, first, last), first, last, WeatherStatistics.FrostC, thresholds),
            _ => null,
        };
    }

    private static ImmutableArray<DailyWeather> DaysPlayed(RecordedWeather record, DateOnly first, DateOnly last)
    {
        if (record.FixedYear is not { } year)
        {
            return record.Days;
        }

        var (from, to) = (first.AddYears(year - first.Year), last.AddYears(year - first.Year));
        return [.. record.Days.Where(day => day.Date >= from && day.Date <= to)];
    }

    private static MatNeed? MatOf(SeasonPlan plan, Space space, int at)
    {
        if (space.Power is not { } power)
        {
            return null;
        }

        var days = new HashSet<DateOnly>();
        foreach (
            var batch in plan.Batches.Where(batch =>
                !batch.Mats.IsEmpty && SpacePlaces.FirstOpen(plan.Scenario, batch.Mats, batch.SowOn) == at
            )
        )
        {
            for (var day = batch.SowOn; day < batch.OffMatOn; day = day.AddDays(1))
            {
                days.Add(day);
            }
        }

        CircuitCheck? circuit = power is { Volts: { } volts, BreakerAmps: { } amps } ? CircuitCheck.Of(power.Watts, volts, amps) : null;
        return new MatNeed(space, days.Count, MatElectricity.KilowattHours(power.Watts, 24.0 * days.Count, power.Duty), circuit);
    }

    /// <summary>Adds up the fuel of one house, year after year.</summary>
    private sealed class HouseTally
    {
        private readonly House _house;
        private readonly int _index;
        private readonly SeasonWindow _window;
        private readonly SortedDictionary<DateOnly, double> _months = [];
        private double _least = double.PositiveInfinity;
        private double _most;
        private double _sum;
        private int _years;

        public HouseTally(House house, int index, SeasonWindow window) => (_house, _index, _window) = (house, index, window);

        public void Add(SeasonResult played)
        {
            var heat = _house.Heat!;
            var wattHours = played.HeatWattHours[_index];
            var year = 0.0;
            for (var day = 0; day < wattHours.Length; day++)
            {
                if (wattHours[day] > 0)
                {
                    var units = heat.Fuel.Units(wattHours[day], heat.Efficiency);
                    var month = HouseMonthsTally.MonthOf(_window, day);
                    _months[month] = _months.GetValueOrDefault(month) + units;
                    year += units;
                }
            }

            _years++;
            _sum += year;
            (_least, _most) = (Math.Min(_least, year), Math.Max(_most, year));
        }

        public HouseNeed ToNeed()
        {
            return new HouseNeed
            {
                House = _house,
                Months = [.. _months.Select(month => new MonthNeed(month.Key, month.Value / _years))],
                Mean = _sum / _years,
                Least = _least,
                Most = _most,
                Load = _house.Load,
            };
        }
    }
}
