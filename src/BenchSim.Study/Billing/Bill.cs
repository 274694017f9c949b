namespace BenchSim.Study.Billing;

/// <summary>What a shared thing, a house or a bank of mats, cost in one week, and who held places in it.</summary>
/// <param name="Cost">What it cost, 0 or more.</param>
/// <param name="PlaceDays">Places held, each counted for the days it was held, by grower.</param>
/// <param name="IsFull">Whether hardly a place was free on one of its days.</param>
public readonly record struct BillWeek(double Cost, long[] PlaceDays, bool IsFull);

/// <summary>Divides what shared things cost among the growers. Each rule divides all of it.</summary>
public static class Bill
{
    /// <summary>What falls to each grower.</summary>
    /// <param name="rule">Rule.</param>
    /// <param name="things">The things, week by week; the place-days are of as many growers everywhere.</param>
    /// <param name="growers">Growers, 1 or more.</param>
    public static double[] Divide(BillRule rule, IEnumerable<IReadOnlyList<BillWeek>> things, int growers)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentOutOfRangeException.ThrowIfLessThan(growers, 1);
        var amounts = new double[growers];
        foreach (var weeks in things)
        {
            switch (rule)
            {
                case BillRule.Equal:
                    Share(amounts, Cost(weeks), [.. Enumerable.Repeat(1L, growers)]);
                    break;
                case BillRule.TrayDays:
                    Share(amounts, Cost(weeks), Sum(weeks, growers));
                    break;
                default:
                    ByWeeks(amounts, weeks);
                    break;
            }
        }

        return amounts;
    }

    private static void ByWeeks(double[] amounts, IReadOnlyList<BillWeek> weeks)
    {
        foreach (var week in weeks)
        {
            Share(amounts, week.Cost, week.IsFull ? week.PlaceDays : [.. week.PlaceDays.Select(held => held > 0 ? 1L : 0)]);
        }
    }

    // What nobody used falls to all alike.
    private static void Share(double[] amounts, double cost, long[] weights)
    {
        var all = weights.Sum();
        for (var grower = 0; grower < amounts.Length; grower++)
        {
            amounts[grower] += all > 0 ? cost * weights[grower] / all : cost / amounts.Length;
        }
    }

    private static double Cost(IEnumerable<BillWeek> weeks) => weeks.Sum(week => week.Cost);

    private static long[] Sum(IReadOnlyList<BillWeek> weeks, int growers) =>
        [.. Enumerable.Range(0, growers).Select(grower => weeks.Sum(week => week.PlaceDays[grower]))];
}
