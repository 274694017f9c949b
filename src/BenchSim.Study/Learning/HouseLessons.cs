using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Review;

namespace BenchSim.Study.Learning;

/// <summary>The heat loss of a house, by the fuel that was counted.</summary>
/// <param name="House">The house.</param>
/// <param name="Stretches">Stretches of days, from one row of fuel to the next, that say something.</param>
/// <param name="Loss">Its heat loss over that which is worked out; null where there are too few stretches.</param>
public sealed record LearnedHouse(House House, int Stretches, Learned? Loss);

/// <summary>
/// What rows of fuel teach of the heat loss of houses (docs/model.md section 11): what was burnt between two of them, over what the house
/// takes in these days by its faces, the places of the log and the weather observed. Heat is in proportion to the loss, so this is the
/// closed normal form.
/// </summary>
public static class HouseLessons
{
    /// <summary>Fewest stretches that say anything.</summary>
    public const int Fewest = 3;

    // How far the fuel of one stretch is from that of the next: wind, doors, a tank not filled to its mark; an assumption.
    private const double StretchCv = 0.2;

    // Of a stretch no more than one day of four may be without observed weather.
    private const int DaysALacking = 4;

    /// <summary>The houses of a plan of which rows of fuel are in the logs.</summary>
    /// <param name="plan">The plan, whose houses are learned.</param>
    /// <param name="seasons">The seasons; houses of the same id are taken to be the same.</param>
    /// <param name="deviations">How far off values may be: a loss that was worked out counts as one from memory.</param>
    public static ImmutableArray<LearnedHouse> Of(SeasonPlan plan, IReadOnlyCollection<LearnedSeason> seasons, Deviations deviations)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(seasons);
        ArgumentNullException.ThrowIfNull(deviations);
        (LearnedSeason Season, long[][] Heat)[] burnt =
        [
            .. seasons
                .Where(season => season.Plan.Past is not null && FuelRow.CountOf(season.Plan.Scenario) > 0)
                .Select(season => (season, PastHeat.WattHours(season.Plan, season.Plan.Scenario.Play.Seed))),
        ];
        var learned = ImmutableArray.CreateBuilder<LearnedHouse>();
        foreach (var house in plan.Scenario.Houses.Where(SeasonEnergy.Burns))
        {
            double[] ratios = [.. burnt.SelectMany(each => Ratios(each.Season.Plan, each.Heat, house.Id))];
            var rows = burnt.Sum(each => RowsOf(each.Season.Plan.Scenario, house.Id)?.Rows.Length ?? 0);
            if (rows > 0)
            {
                learned.Add(new LearnedHouse(house, ratios.Length, ratios.Length < Fewest ? null : Lesson(ratios, deviations)));
            }
        }

        return learned.ToImmutable();
    }

    private static Learned Lesson(double[] ratios, Deviations deviations)
    {
        var lesson = new MeanLesson(1, deviations.Remembered, StretchCv);
        foreach (var ratio in ratios)
        {
            lesson.See(new BatchValue(ratio, ratio));
        }

        return lesson.Lesson();
    }

    private static (int At, ImmutableArray<FuelRow> Rows)? RowsOf(Scenario scenario, string id)
    {
        for (var at = 0; at < scenario.Houses.Length; at++)
        {
            if (string.Equals(scenario.Houses[at].Id, id, StringComparison.Ordinal) && SeasonEnergy.Burns(scenario.Houses[at]))
            {
                return (at, FuelRow.Of(scenario, scenario.Houses[at]));
            }
        }

        return null;
    }

    // Counted over worked out, of each stretch.
    private static IEnumerable<double> Ratios(SeasonPlan plan, long[][] heat, string id)
    {
        if (RowsOf(plan.Scenario, id) is not var (at, rows))
        {
            yield break;
        }

        var house = plan.Scenario.Houses[at].Heat!;
        foreach (var alike in rows.GroupBy(row => row.IsReading))
        {
            foreach (var (before, row) in alike.Zip(alike.Skip(1)))
            {
                // What is delivered fills up what was burnt since the delivery before.
                var counted = row.IsReading ? row.Amount - before.Amount : row.Amount;
                var days = (First: before.Day.DayNumber - plan.FirstDay.DayNumber, Until: row.Day.DayNumber - plan.FirstDay.DayNumber);
                var lacking = plan.Scenario.Known?.Lacking.Count(day => day >= before.Day && day < row.Day) ?? 0;
                var workedOut = house.Fuel.Units(heat[at][days.First..days.Until].Sum(), house.Efficiency);
                if (counted > 0 && workedOut > 0 && lacking * DaysALacking <= days.Until - days.First)
                {
                    yield return counted / workedOut;
                }
            }
        }
    }
}
