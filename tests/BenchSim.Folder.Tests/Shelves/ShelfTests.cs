using BenchSim.Folder.Library;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Shelves;

/// <summary>The built-in library and the user's own crops and trays over it.</summary>
public class ShelfTests
{
    // A crop of round numbers, so that the sums below can be done by hand.
    private const string RoundHead =
        "id,hardiness,emerge_base,emerge_optimum,emerge_ceiling,emerge_heat,emerge_sigma,emerge_cv,germination_curve,"
        + "germinate_at,bottom_heat,leave_mat_at,emerge_give_up_days,germination,seeds_per_cell,keep_per_cell,stand_loss,"
        + "stand_loss_correlation,"
        + "growth_base,growth_cap,reference,growth_cv,pot_up_days,pot_up_check_days,pot_up_loss,hardening_nights,"
        + "table_above,damage_below,field_above,hold_days,discard_after_days,flat_discard_days,tray,"
        + "days_to_ready,counted_from,includes_hardening\n";

    private const string RoundRow =
        "round,half-hardy,5,25,35,100,0.2,0.1,10 C 61 % | 20 C 88 %,15,no,50 %,30,90 %,2,1,3 %,0.2,4,30,20,0.1,10,2,5 %,"
        + "7,5,0,2,7,21,14,72-cell,";

    [Theory]
    // 100 degree-days at 15 C with base 5 C: 10 days to emergence. Hardening: 7 nights.
    [InlineData("50,sowing,yes", 33)]
    [InlineData("50,sowing,no", 40)]
    [InlineData("50,emergence,yes", 43)]
    [InlineData("50,emergence,no", 50)]
    public void Days_to_ready_become_days_of_growth_from_emergence(string ending, double growthDays)
    {
        var crop = ReadCrop(RoundHead + RoundRow + ending + "\n", "round");
        Assert.Equal(growthDays, crop.GrowthDays, 1e-9);
    }

    private const string NoHardenAbove =
        "there is no column \"harden_above\" in this file; write table_above, the forecast nights that let trays go out, "
        + "and damage_below, the night below which they are carried in";

    // A file of before gets just the one fault, whether its crop is of the library, changed in many rows, or a whole new one.
    [Theory]
    [InlineData("id,harden_above\ntomato,11 C\npepper,12 C\n", "crops.csv:1:4: ")]
    [InlineData("id,table_above,harden_above\ntomato,11 C,11 C\n", "crops.csv:1:16: ")]
    public void A_file_with_harden_above_is_told_both_columns_that_took_its_place(string crops, string place)
    {
        Assert.Equal(place + NoHardenAbove, Assert.Single(TestFolder.Faults(others: ("crops.csv", crops))));
    }

    // It was asked for and read nowhere: nothing happened to a flat before it was thrown out.
    [Theory]
    [InlineData("id,flat_hold_days\ntomato,5\n")]
    [InlineData("id,flat_hold_days,flat_discard_days\ntomato,5,12\n")]
    public void A_file_with_flat_hold_days_is_told_to_take_it_out(string crops) =>
        Assert.Equal(
            "crops.csv:1:4: there is no column \"flat_hold_days\" in this file; take it out: a flat is thrown out flat_discard_days past "
                + "its pot-up stage, and nothing happens before",
            Assert.Single(TestFolder.Faults(others: ("crops.csv", crops)))
        );

    [Fact]
    public void A_new_crop_with_harden_above_lacks_nothing_else()
    {
        var head = RoundHead.Replace("table_above", "harden_above", StringComparison.Ordinal);
        Assert.Equal(
            $"crops.csv:1:{head.IndexOf("harden_above", StringComparison.Ordinal) + 1}: {NoHardenAbove}",
            Assert.Single(TestFolder.Faults(others: ("crops.csv", head + RoundRow + "50,sowing,yes\n")))
        );
    }

    [Fact]
    public void Above_the_optimum_emergence_is_slower_again()
    {
        // At 30 C, half way from optimum 25 C to ceiling 35 C: rate (25 - 5) / 2 = 10 a day, 10 days.
        var crop = ReadCrop(RoundHead + RoundRow.Replace(",15,no,", ",30,no,", StringComparison.Ordinal) + "50,sowing,yes\n", "round");
        Assert.Equal(33, crop.GrowthDays, 1e-9);
    }

    [Fact]
    public void A_whole_row_is_read_into_the_model()
    {
        var crop = ReadCrop(RoundHead + RoundRow + "50,sowing,yes\n", "round");
        Assert.Equal(("round", "round", Hardiness.HalfHardy, "72-cell"), (crop.Id, crop.Name, crop.Hardiness, crop.TrayId));
        Assert.Equal(
            (5, 25, 35, 100, 0.2, 0.1),
            (crop.EmergeBaseC, crop.EmergeOptimumC, crop.EmergeCeilingC, crop.EmergeHeat, crop.EmergeSigma, crop.EmergeCv)
        );
        Assert.Equal([new GerminationPoint(10, 61), new GerminationPoint(20, 88)], crop.GerminationCurve.ToArray());
        Assert.Equal((15, false, 0.5, 30), (crop.GerminateAtC, crop.BottomHeat, crop.LeaveMatAt, crop.EmergeGiveUpDays));
        Assert.Equal(
            (0.9, 2, 1, 0.03, 0.2),
            (crop.Germination, crop.SeedsPerCell, crop.KeepPerCell, crop.StandLoss, crop.StandLossCorrelation)
        );
        Assert.Equal((4, 30, 20, 0.1), (crop.GrowthBaseC, crop.GrowthCapC, crop.ReferenceC, crop.GrowthCv));
        Assert.Equal((10, 2, 0.05), (crop.PotUpDays, crop.PotUpCheckDays, crop.PotUpLoss));
        Assert.Equal((7, 5, 0, 2), (crop.HardeningNights, crop.TableAboveC, crop.DamageBelowC, crop.FieldAboveC));
        Assert.Equal((7, 21, 14), (crop.HoldDays, crop.DiscardAfterDays, crop.FlatDiscardDays));
        Assert.Null(crop.MinNightC);
        Assert.Null(crop.MaxMatC);
        Assert.All(crop.Sources.Values, source => Assert.Equal(Provenance.User, source));
    }

    [Fact]
    public void Filled_cells_override_the_library_and_the_rest_keeps_its_source()
    {
        var plain = ReadCrop(null, "tomato");
        var crop = ReadCrop("id,hold_days,min_night,benches,growth_cv\ntomato,12,none,bench,\n", "tomato");
        Assert.Equal(12, crop.HoldDays);
        Assert.NotNull(plain.MinNightC);
        Assert.Null(crop.MinNightC);
        Assert.Equal(["bench"], crop.Benches.ToArray());
        Assert.Equal(plain.GrowthCv, crop.GrowthCv);
        Assert.Equal(plain.GrowthDays, crop.GrowthDays);
        Assert.Equal(Trust.User, crop.Sources["hold_days"].Trust);
        Assert.Equal(plain.Sources["growth_cv"], crop.Sources["growth_cv"]);
    }

    [Fact]
    public void A_new_crop_may_borrow_from_a_relative_and_says_so()
    {
        var relative = ReadCrop(null, "cabbage");
        var crop = ReadCrop("id,name,like,hold_days\nspring-greens,Spring greens,greens,\ngreens,,cabbage,9\n", "spring-greens");
        Assert.Equal("Spring greens", crop.Name);
        Assert.Equal(relative.EmergeHeat, crop.EmergeHeat);
        Assert.Equal(9, crop.HoldDays);
        Assert.Equal(Trust.Borrowed, crop.Sources["emerge_heat"].Trust);
        Assert.StartsWith("from greens: from Cabbage", crop.Sources["emerge_heat"].Source, StringComparison.Ordinal);
        Assert.Equal(new Provenance(Trust.Borrowed, "from greens: as written in this folder"), crop.Sources["hold_days"]);
    }

    // docs/sources.md: a tenth, from memory, as every crop of the library has it.
    [Fact]
    public void A_new_crop_that_does_not_say_how_losses_come_in_lumps_has_a_tenth_from_memory()
    {
        var head = RoundHead.Replace("stand_loss_correlation,", "", StringComparison.Ordinal);
        var row = RoundRow.Replace("3 %,0.2,", "3 %,", StringComparison.Ordinal);
        var crop = ReadCrop(head + row + "50,sowing,yes\n", "round");
        Assert.Equal(0.1, crop.StandLossCorrelation);
        Assert.Equal(Trust.Memory, crop.Sources["stand_loss_correlation"].Trust);
        Assert.NotEmpty(crop.Sources["stand_loss_correlation"].Source);
        Assert.All(BuiltInLibrary.Crops, each => Assert.Equal("0.1", each.Cells["stand_loss_correlation"]));
    }

    [Fact]
    public void A_tray_type_of_the_user_and_one_changed()
    {
        using var folder = new TestFolder(plan: "id,crop,plants,sow,tray\na,tomato,100,2027-03-01,mine\nb,tomato,100,2027-03-01,50-cell\n");
        folder.Write("trays.csv", "id,name,cells,medium_litres,places_each\nmine,My tray,40,3.5,2\n50-cell,,,9,\n");
        var trays = folder.Read().Scenario!.TrayTypes;
        Assert.Equal(["50-cell", "mine"], trays.Select(tray => tray.Id).ToArray());
        Assert.Equal((50, 9, 1), (trays[0].Cells, trays[0].MediumLitres, trays[0].PlacesEach));
        Assert.Equal(("My tray", 40, 3.5, 2), (trays[1].Name, trays[1].Cells, trays[1].MediumLitres, trays[1].PlacesEach));
        Assert.Equal(Trust.User, trays[0].Sources["medium_litres"].Trust);
        Assert.NotEqual(Trust.User, trays[0].Sources["cells"].Trust);
    }

    [Fact]
    public void Every_crop_and_tray_of_the_library_reads_without_a_fault()
    {
        var crops = string.Concat(BuiltInLibrary.Crops.Select((crop, index) => $"c{index},{crop.Id},72,2027-03-01\n"));
        using var folder = new TestFolder(TestFolder.Site("night = \"60 F\"", "night = \"72 F\""), "id,crop,plants,sow\n" + crops);
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(BuiltInLibrary.Crops.Length, reading.Scenario!.Crops.Length);
        Assert.All(reading.Scenario.Crops, crop => Assert.InRange(crop.GrowthDays, 1, 365));

        var trays = string.Concat(
            BuiltInLibrary
                .Trays.Where(tray => tray.Cells["cells"] != "0")
                .Select((tray, index) => $"t{index},tomato,72,2027-03-01,{tray.Id}\n")
        );
        folder.Write("plan.csv", "id,crop,plants,sow,tray\n" + trays);
        Assert.Empty(folder.Read().Faults);
    }

    [Theory]
    [InlineData(
        "emerge_optimum",
        "7 C",
        "emerge_optimum is 7 C, not above emerge_base, which is 7.5 C; write emerge_optimum above emerge_base"
    )]
    [InlineData(
        "emerge_ceiling",
        "25 C",
        "emerge_ceiling is 25 C, not above emerge_plateau, which is 30 C; write emerge_ceiling above emerge_plateau"
    )]
    [InlineData(
        "emerge_plateau",
        "35 C",
        "emerge_ceiling is 35 C, not above emerge_plateau, which is 35 C; write emerge_ceiling above emerge_plateau"
    )]
    [InlineData("weeks_min", "9", "weeks_max is 8 weeks, below weeks_min, which is 9 weeks; write weeks_max at or above weeks_min")]
    [InlineData(
        "emerge_plateau",
        "24 C",
        "emerge_plateau is 24 C, below emerge_optimum, which is 25 C; write emerge_plateau at or above emerge_optimum"
    )]
    [InlineData(
        "discard_after_days",
        "10",
        "discard_after_days is 10 days, not above hold_days, which is 10 days; write discard_after_days above hold_days"
    )]
    [InlineData("field_above", "7 C", "field_above is 7 C, below damage_below, which is 7.2 C; write field_above at or above damage_below")]
    [InlineData("days_to_ready", "8", null)]
    [InlineData(
        "germinate_at",
        "36 C",
        "nothing comes up at germinate_at, which is 36 C; write a temperature between emerge_base (7.5 C) and emerge_ceiling (35 C)"
    )]
    [InlineData("hardiness", "tendre", "hardiness is \"tendre\"; did you mean \"tender\"")]
    [InlineData("tray", "72-cel", "there is no tray type \"72-cel\"; did you mean \"72-cell\"")]
    [InlineData("benches", "bench|benhc", "there is no space \"benhc\"; did you mean \"bench\"")]
    [InlineData("benches", "mats", "\"mats\" is not a bench; name only spaces of kind = \"bench\" in benches")]
    [InlineData(
        "germination_curve",
        "10 C",
        "germination_curve has a point \"10 C\"; write a temperature and a share in each, such as 10 C 61 % | 15 C 80 %"
    )]
    [InlineData(
        "germination_curve",
        "10 C 5 % | 9 C 7 %",
        "germination_curve is not in order of temperature at \"9 C 7 %\"; write the coldest point first"
    )]
    [InlineData(
        "like",
        "pepper",
        "like is not for \"tomato\", which the built-in library has; leave like empty, or give the crop an id of its own"
    )]
    [InlineData("colour", "red", null)]
    public void A_bad_crop_says_where_and_what(string column, string value, string? message)
    {
        var fault = Assert.Single(TestFolder.Faults(others: ("crops.csv", $"id,{column}\ntomato,{value}\n")));
        if (message is not null)
        {
            Assert.Equal($"crops.csv:2:8: {message}", fault);
        }
    }

    [Fact]
    public void All_faults_of_a_row_come_together() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(others: ("crops.csv", "id,emerge_optimum,hold_days,discard_after_days\ntomato,5 C,40,\npepper,x,,\n")),
            "crops.csv:2:8: emerge_optimum is 5 C, not above emerge_base, which is 7.5 C; write emerge_optimum above emerge_base",
            "crops.csv:2:12: discard_after_days is 28 days, not above hold_days, which is 40 days; write discard_after_days above "
                + "hold_days",
            "crops.csv:3:8: emerge_optimum is \"x\", which is not a number; write a temperature such as 60 F or 15.5 C"
        );

    [Fact]
    public void Crops_that_cannot_be_completed() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(others: ("crops.csv", "id,like\nnew,\nborrower,tomatto\na,b\nb,a\ntomato,\ntomato,\n,x\n")),
            "crops.csv:2:1: the new crop \"new\" lacks hardiness, emerge_base, emerge_optimum, emerge_ceiling, emerge_heat, "
                + "emerge_sigma and 27 more; "
                + "fill these in, or name a related crop in the column like to borrow them from",
            "crops.csv:3:10: there is no crop \"tomatto\" to borrow from; did you mean \"tomato\"",
            "crops.csv:5:3: like leads from \"b\" back to itself; name a crop that does not borrow from this one",
            "crops.csv:7:1: id \"tomato\" has a row already, on line 6; keep one row for a crop",
            "crops.csv:8:1: id is empty; name the crop of this row"
        );

    [Fact]
    public void Bad_trays() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(
                others: ("trays.csv", "id,cells,seeds_per_flat,medium_litres,places_each\na,40,,,\nb,0,,5,\nc,40,100,5,\nd,40,,5,0\n")
            ),
            "trays.csv:2:1: the new tray type \"a\" has no medium_litres; fill in the cells of this row",
            "trays.csv:3:1: the new tray type \"b\" has no seeds_per_flat; fill in the cells of this row",
            "trays.csv:4:6: seeds_per_flat is only for an open flat; leave it empty, or write 0 in cells",
            "trays.csv:5:9: places_each is 0; write a whole number, from 1 to 100"
        );

    private static Crop ReadCrop(string? crops, string id)
    {
        using var folder = new TestFolder(plan: $"id,crop,plants,sow\nx,{id},72,2027-03-01\n");
        if (crops is not null)
        {
            folder.Write("crops.csv", crops);
        }

        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        return Assert.Single(reading.Scenario!.Crops);
    }
}
