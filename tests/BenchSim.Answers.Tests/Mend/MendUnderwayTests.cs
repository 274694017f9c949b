using BenchSim.Answers.Mend;
using BenchSim.Answers.Opening;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Tests.Mend;

/// <summary>In mid-season only what is still to come can be mended.</summary>
public sealed class MendUnderwayTests
{
    private const string Plan =
        "id,crop,plants,sow,set_out,earlier,later\n"
        + "a,tomato,200,2027-03-01,2027-05-10,,\n"
        + "b,tomato,200,2027-03-18,2027-05-24,,\n"
        + "c,lettuce,200,,2027-05-24,,\n";

    private static readonly DateOnly s_today = new(2027, 3, 16);

    // Of all that would be tried: what can be made moves no sowing that was made, and none to a day that is over; so what is done of the
    // past is the same with it.
    [Fact]
    public void What_can_be_made_leaves_what_was_as_it_was()
    {
        using var farm = new FarmFolder(plan: Plan);
        farm.Write("log.csv", "date,batch,what,trays,space\n2027-03-01,a,sown,5,mats\n");
        var opened = ScenarioSource.Folder(farm.Path).On(s_today).Open();
        var (plan, planner) = (opened.Plan, new MendPlanner(opened));
        var made = MendCandidates.Of(plan, opened.OpenFlats[0]).Select(change => (change, Plan: planner.Make([change]))).ToArray();

        // A week sooner is 11 March for b, which is over; for a all is. c is sown in April, by its set-out date.
        string[] Moves(bool canBe) =>
            [
                .. made.Where(each => each.change is SowChange && each.Plan is not null == canBe)
                    .Select(each => each.change.Code)
                    .Order(StringComparer.Ordinal),
            ];
        Assert.NotEmpty(Moves(canBe: true));
        Assert.All(Moves(canBe: true), code => Assert.StartsWith("sow c ", code, StringComparison.Ordinal));
        Assert.Contains("sow a 2027-02-22", Moves(canBe: false), StringComparer.Ordinal);
        Assert.Contains("sow b 2027-03-11", Moves(canBe: false), StringComparer.Ordinal);
        Assert.Contains(made, each => each.change is SetPointChange && each.Plan is not null);
        Assert.All(made.Where(each => each.Plan is not null), each =>
        {
            Assert.Equal(plan.Today, each.Plan!.Today);
            Assert.Equal(plan.Batches[0].SowOn, each.Plan.Batches[0].SowOn);
            Assert.Equal(plan.Batches[0].Trays, each.Plan.Batches[0].Trays);
            Assert.All(each.Plan.Batches[1..], batch => Assert.True(batch.SowOn >= s_today));
        });
    }
}
