using BenchSim.Season.Inputs;
using BenchSim.Study.Agreed;

namespace BenchSim.Study.Tests.Agreed;

/// <summary>What has changed since a plan was agreed, in sowings.</summary>
public class PlanChangesTests
{
    [Fact]
    public void Counts_sowings_that_are_otherwise_new_or_gone()
    {
        var agreed = Plan(Batch("a"), Batch("b"), Batch("c"), Batch("d"));
        Assert.Equal(new PlanChanges(0, 0, 0), PlanChanges.Of(agreed, agreed));

        // a has another grower, b is gone, c is as it was (a note is no change), d is a week later, e is new.
        var now = Plan(
            Batch("a") with
            {
                Grower = "Ben",
            },
            Batch("c") with
            {
                Note = "by the door",
            },
            Batch("d") with
            {
                Sow = SmallSite.Monday.AddDays(7),
            },
            Batch("e")
        );
        var changes = PlanChanges.Of(agreed, now);
        Assert.Equal((new PlanChanges(2, 1, 1), 4), (changes, changes.All));
    }

    private static BatchOrder Batch(string id) => SmallSite.Batch(id, 100, SmallSite.Monday);

    private static SeasonPlan Plan(params BatchOrder[] batches) =>
        SmallSite.Plan(SmallSite.Scenario([SmallSite.Mat(10), SmallSite.Bench(20), SmallSite.Table(20)], batches));
}
