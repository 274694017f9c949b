using BenchSim.Engine.Randomness;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Plan;

public class PlanTests
{
    private const string Head = "id,crop,plants,sow,set_out,every_days,times\n";

    [Fact]
    public void A_row_with_everything()
    {
        using var folder = new TestFolder(
            plan: "id,crop,grower,plants,sow,set_out,method,tray,flat,trays,flats,seeds_per_flat,germination,tested_on,packet,note\n"
                + "t,tomato,Field crew,200,2027-03-01,2027-05-10,Pot Up,50-cell,open-flat,5,1,300,90 %,2026-12-01,p1,\"a, b\"\n"
        );
        var batch = Assert.Single(folder.Read().Scenario!.Batches);
        Assert.Equal(
            new BatchOrder
            {
                Id = "t",
                CropId = "tomato",
                Grower = "Field crew",
                Plants = 200,
                Sow = new DateOnly(2027, 3, 1),
                SetOut = new DateOnly(2027, 5, 10),
                Method = Method.PotUp,
                TrayId = "50-cell",
                FlatId = "open-flat",
                Trays = 5,
                Flats = 1,
                SeedsPerCell = 1,
                SeedsPerFlat = 300,
                Germination = 0.9,
                TestedOn = new DateOnly(2026, 12, 1),
                PacketId = "p1",
                Note = "a, b",
                Place = new SourcePlace("plan.csv", 2, 1),
            },
            batch
        );
    }

    [Fact]
    public void Tolerances_are_whole_days_of_every_succession_and_none_when_left_out()
    {
        using var folder = new TestFolder(
            plan: "id,crop,plants,sow,every_days,times,earlier,later\na,tomato,100,2027-03-01,7,2,3,60\nb,tomato,100,2027-03-01,,,,0\n"
        );
        var batches = folder.Read().Scenario!.Batches;
        Assert.Equal([(3, 60), (3, 60), (0, 0)], batches.Select(batch => (batch.EarlierDays, batch.LaterDays)).ToArray());
    }

    [Theory]
    [InlineData("-1,", "2:25: earlier is -1, and cannot be negative; write a whole number, from 0 to 60")]
    [InlineData("2.5,", "2:25: earlier is 2.5, which is not a whole number; write a whole number, from 0 to 60")]
    [InlineData("61,", "2:25: earlier is 61; write a whole number, from 0 to 60")]
    [InlineData(",a week", "2:26: later is \"a week\", which is not a number; write a whole number, from 0 to 60")]
    public void Tolerances_that_are_no_days_are_faults(string cells, string fault) =>
        Assert.Equal(
            ["plan.csv:" + fault],
            TestFolder.Faults(plan: $"id,crop,plants,sow,earlier,later\na,tomato,100,2027-03-01,{cells}\n")
        );

    [Fact]
    public void What_a_row_leaves_out_comes_from_the_crop()
    {
        using var folder = new TestFolder();
        var scenario = folder.Read().Scenario!;
        var (batch, crop) = (scenario.Batches[0], scenario.Crops[0]);
        Assert.Equal((crop.TrayId, crop.SeedsPerCell, crop.Germination), (batch.TrayId, batch.SeedsPerCell, batch.Germination));
        Assert.Equal(("site", Method.Direct, null, null), (batch.Grower, batch.Method, batch.SetOut, batch.FlatId));
    }

    [Fact]
    public void Successions_become_batches_with_ids_and_dates_of_their_own()
    {
        using var folder = new TestFolder(plan: Head + "x,tomato,100,2027-02-26,2027-05-01,7,3\ny,tomato,100,2027-03-01,,,1\n");
        var batches = folder.Read().Scenario!.Batches;
        Assert.Equal(["x-1", "x-2", "x-3", "y"], batches.Select(batch => batch.Id).ToArray());
        // 26 February + 7 days = 5 March, + 14 = 12 March; 1 May + 7 = 8 May, + 14 = 15 May.
        Assert.Equal(
            [new DateOnly(2027, 2, 26), new DateOnly(2027, 3, 5), new DateOnly(2027, 3, 12)],
            batches.Take(3).Select(batch => batch.Sow!.Value).ToArray()
        );
        Assert.Equal(
            [new DateOnly(2027, 5, 1), new DateOnly(2027, 5, 8), new DateOnly(2027, 5, 15)],
            batches.Take(3).Select(batch => batch.SetOut!.Value).ToArray()
        );
        Assert.All(batches.Take(3), batch => Assert.Equal(100, batch.Plants));
    }

    [Theory]
    [InlineData("x,tomato,100,,,,", "2:14: this batch has neither a sow nor a set_out date; write one of them, or both")]
    [InlineData(
        "x,tomato,100,2027-03-01,2027-03-01,,",
        "2:25: set_out is 2027-03-01, not after the sow date 2027-03-01; write a later date"
    )]
    [InlineData(
        "x,tomato,100,2027-06-20,,7,3",
        "2:14: sow of the last of 3 successions is 2027-07-04, outside the season; the season runs from 2027-01-18 to 2027-06-30"
    )]
    [InlineData("x,tomato,100,2027-03-01,,7,", "2:26: every_days is 7, but times is empty; write the number of successions in times")]
    [InlineData(
        "x,tomato,100,2027-03-01,,,3",
        "2:27: times is 3, but every_days is empty; write the days from one succession to the next in every_days"
    )]
    [InlineData("x,tomato,100,2027-03-01,,0,3", "2:26: every_days is 0; write a whole number, from 1 to 365")]
    [InlineData("x,tomato,0,2027-03-01,,,", "2:10: plants is 0; write a whole number, 1 or more")]
    [InlineData("x,tomato,2.5,2027-03-01,,,", "2:10: plants is 2.5, which is not a whole number; write a whole number, 1 or more")]
    [InlineData("x,,100,2027-03-01,,,", "2:3: crop is empty; name the crop")]
    [InlineData("x,tomato,,2027-03-01,,,", "2:10: plants is empty; write how many plants the field wants")]
    [InlineData(",tomato,100,2027-03-01,,,", "2:1: id is empty; give the batch a name of its own")]
    [InlineData("x,Brussel sprouts,100,2027-03-01,,,", "2:3: there is no crop \"Brussel sprouts\"; did you mean \"brussels-sprouts\"")]
    [InlineData(
        "x,zzzzzzz,100,2027-03-01,,,",
        "2:3: there is no crop \"zzzzzzz\"; name one of the built-in library (docs/library.md lists them), or add it to crops.csv "
            + "with a related crop in the column like"
    )]
    [InlineData("x,tomato,100,2027-13-01,,,", "2:14: sow is 2027-13-01, and there is no month 13; write year-month-day such as 2027-03-15")]
    [InlineData(
        "x,tomato,100,1st week of March,,,",
        "2:14: sow is \"1st week of March\", which is not a date; write year-month-day such as 2027-03-15"
    )]
    [InlineData("x,tomato,100,1827-03-01,,,", "2:14: sow is 1827-03-01; write a date from the year 1900 to 2199")]
    [InlineData(
        "x\u0007,tomato,100,2027-03-01,,,",
        "2:1: id is \"x[U+0007]\", which holds a line break or an invisible character; write the name on one line with visible characters"
    )]
    public void A_bad_row_says_where_and_what(string row, string message) =>
        Assert.Equal($"plan.csv:{message}", Assert.Single(TestFolder.Faults(plan: Head + row + "\n")));

    [Theory]
    [InlineData("direct,,open-flat,,,", "2:32: flat is only for the method pot up; write pot up in the column method, or leave this empty")]
    [InlineData(
        "direct,open-flat,,,,",
        "2:31: tray is \"open-flat\", an open flat; name a cell tray; a flat to sow dense in goes in the column flat, with method pot up"
    )]
    [InlineData(
        "pot up,,,,,",
        "2:32: this batch is to be potted up but names no flat; write the open flat it is sown in in the column flat"
    )]
    [InlineData("pot up,,72-cell,,,", "2:32: flat is \"72-cell\", a tray with 72 cells; name an open flat (a tray type with 0 cells)")]
    [InlineData("pot up,,open-flatt,,,", "2:32: there is no tray type \"open-flatt\"; did you mean \"open-flat\"")]
    [InlineData(
        "pot up,,open-flat,3,,",
        "2:42: seeds_per_cell is only for the method direct: potting up puts one seedling in a cell; leave it empty, or use seeds_per_flat"
    )]
    [InlineData("potting,,,,,", "2:24: method is \"potting\"; write \"direct\" or \"pot up\"")]
    [InlineData("direct,73-cell,,,,", "2:31: there is no tray type \"73-cell\"; did you mean \"72-cell\"")]
    public void Bad_trays_and_methods(string ending, string message) =>
        Assert.Equal(
            $"plan.csv:{message}",
            Assert.Single(
                TestFolder.Faults(
                    plan: $"id,crop,plants,sow,method,tray,flat,seeds_per_cell,seeds_per_flat,flats\nx,tomato,10,2027-03-01,{ending}\n"
                )
            )
        );

    [Fact]
    public void A_succession_may_not_take_the_id_of_a_batch() =>
        Assert.Equal(
            "plan.csv:3:1: the batch id \"x-2\" (a succession) is taken already, on line 2; give every batch an id of its own",
            Assert.Single(TestFolder.Faults(plan: Head + "x-2,tomato,10,2027-03-01,,,\nx,tomato,10,2027-03-01,,7,2\n"))
        );

    [Fact]
    public void An_id_that_could_be_spelt_two_ways_is_refused() =>
        Assert.Equal(
            "plan.csv:3:1: id is \"cafe\u0301\", which holds a letter and its accent as two characters; "
                + "type the accented letter as one character, or leave the accent out",
            Assert.Single(TestFolder.Faults(plan: Head + "caf\u00E9,tomato,10,2027-03-01,,,\ncafe\u0301,tomato,10,2027-03-01,,,\n"))
        );

    [Fact]
    public void Two_names_with_one_hash_are_refused()
    {
        // A known collision of the 64-bit FNV-1a hash; the first line shows that it is one.
        const string first = "8yn0iYCKYHlIj4-BwPqk",
            second = "GReLUrM4wMqfg9yzV3KQ";
        Assert.Equal(PhiloxKey.Hash(first), PhiloxKey.Hash(second));
        Assert.Equal(
            $"plan.csv:3:1: the names \"{second}\" and \"{first}\" would get the same draws by an accident of arithmetic; change one "
                + "of them a little",
            Assert.Single(TestFolder.Faults(plan: Head + $"{first},tomato,10,2027-03-01,,,\n{second},tomato,10,2027-03-01,,,\n"))
        );
    }

    // The batch "tomato" draws its seed by its own name; a packet of that name would draw the same.
    [Theory]
    [InlineData(
        "tomato,tomato,10,2027-03-01,\nlate,tomato,10,2027-03-01,tomato\n",
        "plan.csv:3:27: the packet \"tomato\" has the name of a batch that names no packet, and would come up like it; give "
            + "the packet another name, or write it for that batch too"
    )]
    [InlineData("tomato,tomato,10,2027-03-01,tomato\nlate,tomato,10,2027-03-01,tomato\n", null)]
    public void A_packet_named_like_a_batch_without_one(string rows, string? fault) =>
        Assert.Equal(fault, TestFolder.Faults(plan: "id,crop,plants,sow,packet\n" + rows).SingleOrDefault());

    [Fact]
    public void A_plan_of_more_than_ten_thousand_batches_is_refused()
    {
        // 100 rows of 100 successions, a day apart, and one batch more.
        var rows = string.Concat(Enumerable.Range(0, 100).Select(index => $"r{index},tomato,10,2027-02-01,,1,100\n"));
        Assert.Equal(
            "plan.csv:2:28: the plan has 10001 batches with its successions; a plan may have up to 10,000: check the column times, "
                + "or split the plan",
            Assert.Single(TestFolder.Faults(plan: Head + rows + "a,tomato,10,2027-03-01,,,\n"))
        );
        Assert.Empty(TestFolder.Faults(plan: Head + rows));
    }

    [Fact]
    public void A_plan_of_more_than_a_thousand_million_plants_is_refused()
    {
        // 100 rows of 10,000,000 plants, and one plant more.
        var rows = string.Concat(Enumerable.Range(0, 100).Select(index => $"r{index},tomato,10000000,2027-02-01,,,\n"));
        Assert.Equal(
            "plan.csv:2:1: the plan wants 1,000,000,001 plants in all, the most of them here; a plan may want up to 1,000,000,000: "
                + "check the columns plants and times",
            Assert.Single(TestFolder.Faults(plan: Head + rows + "a,tomato,1,2027-03-01,,,\n"))
        );
    }

    // 365 x 999 = 364,635 days after 1 March 2027.
    [Fact]
    public void The_widest_succession_is_a_fault_and_no_overflow() =>
        Assert.Equal(
            "plan.csv:2:14: sow of the last of 1000 successions is 3025-07-02, outside the season; the season runs from 2027-01-18 "
                + "to 2027-06-30",
            Assert.Single(TestFolder.Faults(plan: Head + "x,tomato,100,2027-03-01,,365,1000\n"))
        );

    [Fact]
    public void A_plan_without_either_date_column() =>
        Assert.Equal(
            "plan.csv:1:1: there is no column \"sow\" and no column \"set_out\"; add one of them, or both, to the first line",
            Assert.Single(TestFolder.Faults(plan: "id,crop,plants\na,tomato,10\n"))
        );

    [Fact]
    public void Of_an_old_germination_test_the_reader_says_nothing()
    {
        // The planner does, which knows whether the seed is aged.
        using var folder = new TestFolder(plan: "id,crop,plants,sow,tested_on\na,tomato,10,2027-03-01,2026-02-28\n");
        Assert.Empty(folder.Read().Warnings);
    }

    [Fact]
    public void A_crop_without_a_warm_enough_bench_is_told_once() =>
        Assert.Equal(
            "plan.csv:2:3: no bench is warm enough for \"tomato\", which wants nights of 12.8 C or warmer; heat a house with a "
                + "bench to that, or change min_night in crops.csv",
            Assert.Single(
                TestFolder.Faults(
                    TestFolder.Site("night = \"60 F\"", "night = \"54 F\""),
                    Head + "a,tomato,10,2027-03-01,,,\nb,tomato,10,2027-03-01,,,\n"
                )
            )
        );

    [Fact]
    public void A_house_at_55_degrees_does_for_a_crop_that_wants_12_8_celsius() =>
        Assert.Empty(TestFolder.Faults(TestFolder.Site("night = \"60 F\"", "night = \"55 F\"")));

    [Fact]
    public void Only_crops_and_trays_that_the_plan_uses_are_kept_in_order_of_id()
    {
        using var folder = new TestFolder(plan: Head + "a,tomato,10,2027-03-01,,,\nb,cabbage,10,2027-03-01,,,\n");
        var scenario = folder.Read().Scenario!;
        Assert.Equal(["cabbage", "tomato"], scenario.Crops.Select(crop => crop.Id).ToArray());
        Assert.Equal(["50-cell", "72-cell"], scenario.TrayTypes.Select(tray => tray.Id).ToArray());
        Assert.Equal(["a", "b"], scenario.Batches.Select(batch => batch.Id).ToArray());
    }

    [Fact]
    public void A_tray_wider_than_any_bench_or_table_is_refused() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(
                TestFolder.Site("places = 60", "places = 2").Replace("places = 40", "places = 1", StringComparison.Ordinal),
                "id,crop,plants,sow,tray\na,tomato,10,2027-03-01,wide\n",
                ("trays.csv", "id,cells,medium_litres,places_each\nwide,40,5,3\n")
            ),
            "plan.csv:2:24: a \"wide\" takes 3 places, and no bench for \"tomato\" has more than 2; use a smaller tray or a larger bench",
            "plan.csv:2:24: a \"wide\" takes 3 places, and no hardening table has more than 1; use a smaller tray or a larger table"
        );

    [Fact]
    public void A_file_that_cannot_be_read_is_told_once_and_not_again_for_every_name_in_it()
    {
        using var folder = new TestFolder(plan: "id,crop,plants,sow,tray\na,mycrop,10,2027-03-01,mytray\n");
        folder.Write("trays.csv/x", "").Write("crops.csv", "name,like\nx,tomato\n");
        FaultMessageTests.AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "crops.csv:1:1: there is no column \"id\"; add a column named id to the first line",
            "trays.csv:0:0: this is a folder, not a file; put a file named trays.csv in its place"
        );
    }
}
