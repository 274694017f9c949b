using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Season.Planning;

/// <summary>
/// The air of a house by month, over the years of weather that may be played, on the days on which the house is open.
/// </summary>
/// <param name="House">The house.</param>
/// <param name="Months">Months of the season, in order.</param>
public sealed record HouseMonths(House House, ImmutableArray<MonthInHouse> Months);

/// <summary>A month in a house, means over its days and the years.</summary>
/// <param name="First">First day of the month, or of the season.</param>
/// <param name="NoonShutC">Air at noon were the vents kept shut, degrees Celsius.</param>
/// <param name="NoonC">Air at noon, vents used, degrees Celsius.</param>
/// <param name="VentShare">Share of the days on which the vents open, 0 to 1.</param>
/// <param name="HeatedHours">Hours of a mean year in the month in which the heater runs.</param>
public readonly record struct MonthInHouse(DateOnly First, double NoonShutC, double NoonC, double VentShare, double HeatedHours);

/// <summary>Adds up the months of a house, year after year.</summary>
internal sealed class HouseMonthsTally(House house, int index, SeasonWindow window, OpenDays open)
{
    private readonly SortedDictionary<DateOnly, Sums> _months = [];
    private int _years;

    /// <summary>First of a day's month, or of the season.</summary>
    public static DateOnly MonthOf(SeasonWindow window, int day)
    {
        var date = window.Opens.AddDays(day);
        var first = new DateOnly(date.Year, date.Month, 1);
        return first < window.Opens ? window.Opens : first;
    }

    public void Add(SeasonClimate climate, SeasonResult played, int days)
    {
        _years++;
        for (var day = 0; day < days; day++)
        {
            if (!open.Has(played.Held, day, days))
            {
                continue;
            }

            var month = MonthOf(window, day);
            if (!_months.TryGetValue(month, out var sums))
            {
                _months.Add(month, sums = new Sums());
            }

            var (noonShut, noon, isVented, heated) = climate.Look(index, day);
            sums.Days++;
            sums.NoonShut += noonShut;
            sums.Noon += noon;
            sums.Vented += isVented ? 1 : 0;
            sums.Heated += heated;
        }
    }

    public HouseMonths ToMonths() =>
        new(
            house,
            [
                .. _months.Select(month => new MonthInHouse(
                    month.Key,
                    month.Value.NoonShut / month.Value.Days,
                    month.Value.Noon / month.Value.Days,
                    month.Value.Vented / (double)month.Value.Days,
                    month.Value.Heated / (double)_years
                )),
            ]
        );

    private sealed class Sums
    {
        public int Days { get; set; }

        public double NoonShut { get; set; }

        public double Noon { get; set; }

        public long Vented { get; set; }

        public long Heated { get; set; }
    }
}
