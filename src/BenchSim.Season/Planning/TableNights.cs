using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// How often the nights that trays stand on the hardening table, on the plan's dates, are expected to be cold (docs/model.md section 7):
/// counted over the years of weather that may be played. A chance from the climate, no forecast.
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

        var climates = new PlanClimates(plan.Scenario, plan.Days, plan.Scenario.Play.Seed);
        var years = WeatherYears.Of(climates.Source, plan.Scenario.Play.Seed);
        foreach (var year in years)
        {
            using var borrowed = climates.Borrow(year);
            foreach (var week in weeks)
            {
                week.Count(borrowed.Climate.NightC(climates.Layout.AirOf(week.Table)));
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
            var table = SpacePlaces.FirstOpen(plan.Scenario, batch.Tables, batch.TableOn);
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
        private readonly Space _space = plan.Scenario.Spaces[table];
        private readonly int _first = monday.DayNumber - plan.FirstDay.DayNumber;
        private readonly int[] _cold = new int[7];
        private readonly int[] _damaging = new int[7];
        private int _yearsWithCold;
        private int _yearsWithDamaging;

        public int Table => table;

        public int[] Trays { get; } = new int[7];

        public void Count(double[] nightsC)
        {
            var (anyCold, anyDamaging) = (false, false);
            for (var night = 0; night < 7; night++)
            {
                if (Trays[night] == 0)
                {
                    continue;
                }

                var lowest = nightsC[_first + night];
                if (lowest >= crop.TableAboveC)
                {
                    continue;
                }

                _cold[night]++;
                anyCold = true;
                if (lowest + plan.Scenario.Rules.CoverGainK < crop.DamageBelowC)
                {
                    _damaging[night]++;
                    anyDamaging = true;
                }
            }

            _yearsWithCold += anyCold ? 1 : 0;
            _yearsWithDamaging += anyDamaging ? 1 : 0;
        }

        public TableWeek ToWeek(int years) =>
            new()
            {
                Monday = monday,
                Crop = crop,
                Table = _space,
                Nights =
                [
                    .. Enumerable
                        .Range(0, 7)
                        .Where(night => Trays[night] > 0)
                        .Select(night => new TableNight(monday.AddDays(night), Trays[night], _cold[night], _damaging[night])),
                ],
                Years = years,
                YearsWithCold = _yearsWithCold,
                YearsWithDamaging = _yearsWithDamaging,
            };
    }
}
