using BenchSim.Study.Billing;

namespace BenchSim.Study.Tests.Billing;

/// <summary>
/// Two growers, Ada and Ben, and one house. Week one costs 70, Ada holds 4 places for 7 days, Ben none. Week two costs 60, Ada holds 4
/// places for 7 days and Ben 8: 28 and 56 place-days. Week three costs 20 and is empty. All of it: 150.
/// </summary>
public class BillTests
{
    // 150 / 2 = 75 each.
    [Fact]
    public void Equally_each_pays_the_same() => Assert.Equal([75, 75], Divide(BillRule.Equal, isFull: false));

    // Place-days 56 and 56 of the whole season: 150 x 56 / 112 = 75 each; with Ben's second week of 12 places, 56 and 84: 60 and 90.
    [Fact]
    public void By_tray_days_each_pays_for_the_places_held_over_the_season()
    {
        Assert.Equal([75, 75], Divide(BillRule.TrayDays, isFull: false));
        Assert.Equal([60, 90], Divide(BillRule.TrayDays, isFull: true, ben: 84));
    }

    // Week one Ada's alone, 70; week two, open for both, 30 each; week three, empty, 10 each: 110 and 40.
    [Fact]
    public void An_open_house_is_paid_alike_by_those_who_have_trays_in_it() =>
        Assert.Equal([110, 40], Divide(BillRule.FullWeeks, isFull: false));

    // Week two is full: 60 x 28/84 = 20 and 60 x 56/84 = 40. So 70 + 20 + 10 = 100 and 40 + 10 = 50.
    [Fact]
    public void A_full_week_is_paid_by_tray_days() => Assert.Equal([100, 50], Divide(BillRule.FullWeeks, isFull: true));

    // Mats cost 12 and are Ben's alone: by tray-days and by full weeks he pays all of it, equally half.
    [Theory]
    [InlineData(BillRule.Equal, 81, 81)]
    [InlineData(BillRule.TrayDays, 75, 87)]
    [InlineData(BillRule.FullWeeks, 110, 52)]
    public void Each_thing_is_divided_among_those_who_use_it(BillRule rule, double ada, double ben) =>
        Assert.Equal([ada, ben], Bill.Divide(rule, [House(isFull: false, 56), [new BillWeek(12, [0, 21], IsFull: false)]], 2));

    // Whatever is held by whom, nothing of the cost is lost and nobody pays less than nothing.
    [Fact]
    public void Every_rule_divides_all_of_it()
    {
        var luck = new Random(20270115);
        for (var trial = 0; trial < 200; trial++)
        {
            var growers = luck.Next(1, 6);
            BillWeek[][] things =
            [
                .. Enumerable
                    .Range(0, luck.Next(0, 4))
                    .Select(_ =>
                        Enumerable
                            .Range(0, luck.Next(0, 9))
                            .Select(_ => new BillWeek(
                                luck.Next(0, 100),
                                [.. Enumerable.Range(0, growers).Select(_ => (long)luck.Next(0, 3) * luck.Next(0, 50))],
                                luck.Next(2) == 0
                            ))
                            .ToArray()
                    ),
            ];
            foreach (var rule in BillRules.All)
            {
                var divided = Bill.Divide(rule, things, growers);
                Assert.Equal(things.Sum(weeks => weeks.Sum(week => week.Cost)), divided.Sum(), 1e-9);
                Assert.All(divided, amount => Assert.True(amount >= 0));
            }
        }
    }

    private static double[] Divide(BillRule rule, bool isFull, long ben = 56) => Bill.Divide(rule, [House(isFull, ben)], 2);

    private static BillWeek[] House(bool isFull, long ben) =>
        [new BillWeek(70, [28, 0], IsFull: false), new BillWeek(60, [28, ben], isFull), new BillWeek(20, [0, 0], IsFull: false)];
}
