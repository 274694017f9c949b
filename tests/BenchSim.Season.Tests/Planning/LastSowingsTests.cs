using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// The last day to sow again, by hand. Sown at a round it is up 3 days later and grown 14 days after that; at the next round it goes to the
/// table for 3 nights. It is wanted on Thursday 1 April.
/// </summary>
public class LastSowingsTests
{
    // Sown on Friday 12 March it is grown on Monday the 29th and out, after the nights of the 29th, 30th and 31st, on Thursday 1 April.
    // Sown on Monday 15 or Tuesday 16 March it is grown on Thursday or Friday and out on Monday 5 April; sown on the 17th, grown on a
    // Saturday, it is on the table only that Monday.
    [Theory]
    [InlineData(0, "2027-03-12")]
    [InlineData(3, "2027-03-12")]
    [InlineData(4, "2027-03-16")]
    public void Is_the_last_that_meets_the_date_or_the_days_late_that_are_allowed(int lateDays, string last)
    {
        var plan = Plan(SmallSite.Batch("a", 100, sow: null) with { SetOut = new DateOnly(2027, 4, 1) }, lateDays);
        Assert.Equal(DateOnly.Parse(last, null), Assert.Single(LastSowings.Of(plan)));
        Assert.Equal(new DateOnly(2027, 4, 1).AddDays(lateDays), LastSowings.OutBy(plan, plan.Batches[0]));
    }

    // Sown on Monday 1 March it is planned for the field on Monday the 22nd. Sown on Tuesday the 2nd it is grown on Friday the 19th and
    // hardened by that Monday; sown on Wednesday, grown on Saturday, it is not.
    [Fact]
    public void Follows_the_planned_date_where_none_was_asked_for()
    {
        Assert.Equal(SmallSite.Monday.AddDays(1), Assert.Single(LastSowings.Of(Plan(SmallSite.Batch("a", 100, SmallSite.Monday), 0))));
    }

    [Fact]
    public void Is_not_worked_out_for_batches_that_are_not_asked_for()
    {
        var plan = Plan(SmallSite.Batch("a", 100, SmallSite.Monday), 0);
        Assert.Null(Assert.Single(LastSowings.Of(plan, _ => false)));
    }

    private static SeasonPlan Plan(BatchOrder order, int lateDays) =>
        SmallSite.Plan(
            SmallSite.Scenario(
                [SmallSite.Mat(20), SmallSite.Bench(60), SmallSite.Table(60)],
                [order],
                new SiteRules { LateDays = lateDays }
            )
        );
}
