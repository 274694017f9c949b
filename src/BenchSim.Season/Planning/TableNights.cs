using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// How often the nights that trays stand on the hardening table, on the plan's dates, are expected to be cold (docs/model.md section 7): counted over
/// the years of weather that may be played. A chance from the climate, no forecast.
/// </summary>
public static class TableNights
{
    /// <summary>The weeks in which a crop stands on a table, in order of week, crop and table.</summary>
    /// <param name="plan">Plan.</param>
    public static ImmutableArray<TableWeek> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var weeks = WeeksOf(plan);
        if (weeks.Count == 0)
        {
            return [];
        }

        var days = plan.Days + plan.Scenario.Rules.ForecastNights + 1;
        var source = WeatherSource.Of(plan.Scenario, days);
        var weather = new SeasonWeather(days);
        var years = WeatherYears.Of(source, plan.Scenario.Play.Seed);
        foreach (var year in years)
        {
            source.Fill(plan.Scenario.Play.Seed, year, weather);
            foreach (var week in weeks)
            {
                week.Count(weather);
            }
        }

        return [.. weeks.Select(week => week.ToWeek(years.Length))];
    }

    /// <summary>The Monday of a date's week.</summary>
    /// <param name="date">Any date.</param>
    public static DateOnly MondayOf(DateOnly date) => date.AddDays(-(((int)date.DayOfWeek + 6) % 7));

    private static List<Week> WeeksOf(SeasonPlan plan)
    {
        var found = new Dictionary<(DateOnly Monday, string Crop, int Table), Week>();
        foreach (var batch in plan.Batches.Where(batch => !batch.Tables.IsEmpty))
        {
            var table = SpacePlaces.Open(plan.Scenario, batch.Tables, batch.TableOn)[0];
            for (var night = batch.TableOn; night < batch.SetOutOn; night = night.AddDays(1))
            {
                var key = (MondayOf(night), batch.Crop.Id, table);
                if (!found.TryGetValue(key, out var week))
                {
                    found.Add(key, week = new Week(plan, batch.Crop, table, key.Item1));
                }

                week.Trays[night.DayNumber - key.Item1.DayNumber] += batch.Trays;
            }
        }

        return
        [
            .. found
                .OrderBy(each => each.Key.Monday)
                .ThenBy(each => each.Key.Crop, StringComparer.Ordinal)
                .ThenBy(each => each.Key.Table)
                .Select(each => each.Value),
        ];
    }

    /// <summary>Counts the nights of one crop on one table in one week.</summary>
    private sealed class Week(SeasonPlan plan, Crop crop, int table, DateOnly monday)
    {
        private readonly Space space = plan.Scenario.Spaces[table];
        private readonly int first = monday.DayNumber - plan.FirstDay.DayNumber;
        private readonly int[] cold = new int[7];
        private readonly int[] damaging = new int[7];
        private int yearsWithCold;
        private int yearsWithDamaging;

        public int[] Trays { get; } = new int[7];

        public void Count(SeasonWeather weather)
        {
            var (anyCold, anyDamaging) = (false, false);
            for (var night = 0; night < 7; night++)
            {
                if (Trays[night] == 0)
                {
                    continue;
                }

                var lowest = NightC(weather, first + night);
                if (lowest >= crop.HardenAboveC)
                {
                    continue;
                }

                cold[night]++;
                anyCold = true;
                if (lowest + plan.Scenario.Rules.CoverGainK < crop.DamageBelowC)
                {
                    damaging[night]++;
                    anyDamaging = true;
                }
            }

            yearsWithCold += anyCold ? 1 : 0;
            yearsWithDamaging += anyDamaging ? 1 : 0;
        }

        public TableWeek ToWeek(int years) =>
            new()
            {
                Monday = monday,
                Crop = crop,
                Table = space,
                Nights =
                [
                    .. Enumerable
                        .Range(0, 7)
                        .Where(night => Trays[night] > 0)
                        .Select(night => new TableNight(monday.AddDays(night), Trays[night], cold[night], damaging[night])),
                ],
                Years = years,
                YearsWithCold = yearsWithCold,
                YearsWithDamaging = yearsWithDamaging,
            };

        // The night after the round of a day: outdoors the next day's lowest, in a house the lowest from 18:00 to 06:00.
        private double NightC(SeasonWeather weather, int day)
        {
            if (space.HouseId is null)
            {
                return weather.TminOf(day + 1);
            }

            var house = plan.Scenario.Houses.First(house => string.Equals(house.Id, space.HouseId, StringComparison.Ordinal));
            return HourlyClimate.LowestOfNightC(
                house.Air,
                (weather.TminOf(day), weather.TmaxOf(day)),
                (weather.TminOf(day + 1), weather.TmaxOf(day + 1))
            );
        }
    }
}
