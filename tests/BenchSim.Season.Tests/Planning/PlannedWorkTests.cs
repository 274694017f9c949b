using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

/// <summary>
/// The work of three batches on their planned dates, worked out with the pencil in scenarios/by-hand/README.md: A 200 plants = 4 trays of
/// 50, B 100 = 2, both sown Monday 1 March; P 120 plants = 3 trays from one flat, sown Monday 8 March.
/// </summary>
public class PlannedWorkTests
{
    private static readonly WorkMinutes s_minutes = new()
    {
        Sow = 6,
        PotUp = 12,
        Move = 0.6,
        SetOut = 3,
    };

    [Fact]
    public void Every_step_of_the_plan_is_a_task_on_its_date()
    {
        var tasks = PlannedWork.Of(Plan());
        Assert.Equal(
            "03-01 Sow A 4; 03-01 Sow B 2; 03-04 OffMat A 4; 03-04 OffMat B 2; 03-08 Sow P 1 flats; 03-11 OffMat P 1 flats; "
                + "03-18 PotUp P 3; 03-18 ToTable A 4; 03-18 ToTable B 2; 03-22 SetOut A 4; 03-22 SetOut B 2; 03-29 ToTable P 3; "
                + "04-01 SetOut P 3",
            string.Join(
                "; ",
                tasks.Select(task => $"{task.On:MM-dd} {task.Kind} {task.Batch.Order.Id} {task.Pieces}{(task.AreFlats ? " flats" : "")}")
            )
        );

        // 7 pieces sown at 6 minutes, 3 trays potted at 12, 7 + 9 moves at 0.6, 9 set out at 3: 42 + 36 + 9.6 + 27 = 114.6 minutes.
        Assert.Equal(114.6 / 60, tasks.Sum(task => task.Hours!.Value), 1e-9);
    }

    [Fact]
    public void Cells_sown_thicker_than_kept_are_thinned_on_the_first_work_day_off_the_mat()
    {
        // Sown Thursday 4 March, up three days later on Sunday, off the mat on Monday 8 March.
        var plan = Plan(SmallSite.Batch("A", 200, new DateOnly(2027, 3, 4)) with { SeedsPerCell = 2 });
        var task = Assert.Single(PlannedWork.Of(plan), task => task.Kind == WorkKind.Thin);
        Assert.Equal((new DateOnly(2027, 3, 8), 4, (double?)null), (task.On, task.Pieces, task.Hours));
    }

    // A: 4 trays of 50 cells with two seeds each: 6 minutes and 50 x (2 x 1.2 + 0.6) s = 2.5 minutes to sow, 50 x 2.4 s to thin. P: a flat
    // of 200 seeds, 6 minutes and 200 x 1.2 s; 3 trays potted up at 12 minutes and 50 x 3 s. In the week of 8 March the 4 trays and the
    // flat stand 7 days: 35 places at 0.6 minutes. In all A stands 21 days, P 10 in its flat and 14 in its trays: 84 + 10 + 42.
    [Fact]
    public void Seeds_cells_and_plants_take_seconds_and_places_water()
    {
        var rules = new SiteRules
        {
            Minutes = s_minutes with { Water = 60 },
            Seconds = new WorkSeconds
            {
                SowSeed = 1.2,
                SowCell = 0.6,
                PotUpPlant = 3,
                ThinCell = 2.4,
            },
        };
        BatchOrder[] orders =
        [
            SmallSite.Batch("A", 200, SmallSite.Monday) with
            {
                SeedsPerCell = 2,
            },
            SmallSite.PotUpBatch("P", 120, SmallSite.Monday.AddDays(7)),
        ];
        var plan = SmallSite.Plan(SmallSite.Scenario([SmallSite.Mat(4), SmallSite.Bench(9), SmallSite.Table(9)], orders, rules));
        var minutes = PlannedWork
            .Of(plan)
            .ToLookup(task => $"{task.Kind} {task.Batch.Order.Id}", task => task.Hours * 60, StringComparer.Ordinal);
        double? Of(string job) => Math.Round(minutes[job].Single()!.Value, 9);
        Assert.Equal((34, 8, 10, 43.5), (Of("Sow A"), Of("Thin A"), Of("Sow P"), Of("PotUp P")));
        var monday = SmallSite.Monday.AddDays(7);
        Assert.Equal(21 / 60.0, PlannedWork.WateringHours(plan, monday, monday.AddDays(6)), 1e-9);
        Assert.Equal(136 * 0.6 / 60, PlannedWork.WateringHours(plan, plan.FirstDay, plan.LastDay), 1e-9);
        Assert.Equal(0, PlannedWork.WateringHours(Plan(), plan.FirstDay, plan.LastDay));
    }

    [Fact]
    public void Without_a_mat_thinning_begins_on_the_first_work_day_after_half_are_up()
    {
        // Sown Thursday 4 March in the 20 C house, half up on Sunday 7 March.
        var scenario = SmallSite.Scenario(
            [SmallSite.Bench(9), SmallSite.Table(9)],
            [SmallSite.Batch("A", 200, new DateOnly(2027, 3, 4)) with { SeedsPerCell = 3 }]
        );
        var batch = SmallSite.Plan(scenario).Batches[0];
        Assert.Null(batch.OffMatOn);
        Assert.Equal(new DateOnly(2027, 3, 7), batch.EmergeOn);
        Assert.Equal(new DateOnly(2027, 3, 8), PlannedWork.ThinOn(scenario.Rules, batch));
    }

    [Fact]
    public void A_cluster_that_is_kept_whole_is_not_thinned()
    {
        var scenario = SmallSite.Scenario(
            [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
            [SmallSite.Batch("A", 200, SmallSite.Monday) with { SeedsPerCell = 4 }],
            crops: [SmallSite.Crop() with { KeepPerCell = 4 }]
        );
        Assert.DoesNotContain(PlannedWork.Of(SmallSite.Plan(scenario)), task => task.Kind == WorkKind.Thin);
    }

    [Fact]
    public void Jobs_of_a_day_come_in_order_of_set_out_sowing_and_id()
    {
        // All on the table on 18 March and out on the 22nd: sown on the 2nd after the 1st, and of those of one day "b" after "a"; what is
        // wanted later comes last.
        var plan = Plan(
            SmallSite.Batch("0", 50, SmallSite.Monday) with
            {
                SetOut = new DateOnly(2027, 3, 24),
            },
            SmallSite.Batch("1", 50, SmallSite.Monday.AddDays(1)),
            SmallSite.Batch("b", 50, SmallSite.Monday),
            SmallSite.Batch("a", 50, SmallSite.Monday)
        );
        Assert.Equal(
            "a b 0",
            string.Join(' ', PlannedWork.Of(plan).Where(task => task.Kind == WorkKind.Sow).Take(3).Select(task => task.Batch.Order.Id))
        );
        Assert.Equal(
            "a b 1 0",
            string.Join(' ', PlannedWork.Of(plan).Where(task => task.Kind == WorkKind.SetOut).Select(task => task.Batch.Order.Id))
        );
    }

    [Fact]
    public void Trays_are_thinned_when_they_are_off_the_mat_and_not_before()
    {
        // Up on Thursday the 4th, and off the mat only when every seedling is up: the spread of emergence keeps them on it past that day.
        var scenario = SmallSite.Scenario(
            [SmallSite.Mat(9), SmallSite.Bench(9), SmallSite.Table(9)],
            [SmallSite.Batch("A", 200, SmallSite.Monday) with { SeedsPerCell = 2 }],
            crops: [SmallSite.Crop() with { EmergeSigma = 0.3, LeaveMatAt = 0.99 }]
        );
        var batch = SmallSite.Plan(scenario).Batches[0];
        Assert.True(batch.OffMatOn > batch.EmergeOn);
        var task = Assert.Single(PlannedWork.Of(SmallSite.Plan(scenario)), task => task.Kind == WorkKind.Thin);
        Assert.Equal((batch.OffMatOn!.Value, false), (task.On, task.AreFlats));
    }

    internal static SeasonPlan Plan(params BatchOrder[] orders)
    {
        if (orders.Length == 0)
        {
            orders =
            [
                SmallSite.Batch("A", 200, SmallSite.Monday),
                SmallSite.Batch("B", 100, SmallSite.Monday),
                SmallSite.PotUpBatch("P", 120, SmallSite.Monday.AddDays(7)),
            ];
        }

        return SmallSite.Plan(
            SmallSite.Scenario([SmallSite.Mat(4), SmallSite.Bench(9), SmallSite.Table(9)], orders, new SiteRules { Minutes = s_minutes })
        );
    }
}
