using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Season.Tests.Planning;

public class SpaceGroupsTests
{
    // File order: 0 overflow bench (when needed, 15 C), 1 main bench (18 C), 2 cold-house bench (unheated), 3 outdoor bench, 4 mat 24 C, 5
    // mat 30 C, 6 table in the overflow house, 7 outdoor table.
    private static readonly Scenario s_site = new()
    {
        Name = "test",
        Window = new SeasonWindow(new DateOnly(2027, 1, 1), new DateOnly(2027, 6, 30)),
        Houses =
        [
            new House
            {
                Id = "overflow",
                Name = "overflow",
                NightC = 15,
                DayC = 15,
                Opening = HouseOpening.WhenNeeded,
            },
            new House
            {
                Id = "main",
                Name = "main",
                NightC = 18,
                DayC = 18,
            },
            new House { Id = "cold", Name = "cold" },
        ],
        Spaces =
        [
            Space("over-bench", SpaceKind.Bench, "overflow"),
            Space("main-bench", SpaceKind.Bench, "main"),
            Space("cold-bench", SpaceKind.Bench, "cold"),
            Space("yard-bench", SpaceKind.Bench, null),
            Space("mat-24", SpaceKind.Mat, "main") with
            {
                MatC = 24,
            },
            Space("mat-30", SpaceKind.Mat, "main") with
            {
                MatC = 30,
            },
            Space("over-table", SpaceKind.Table, "overflow"),
            Space("yard-table", SpaceKind.Table, null),
        ],
        TrayTypes = [],
        Crops = [],
        Batches = [],
        Rules = new SiteRules(),
        Weather = new ConstantWeather(10, 20, 0),
        Play = new PlaySettings(),
    };

    private static readonly Crop s_plain = new()
    {
        Id = "x",
        Name = "x",
        Hardiness = Hardiness.Hardy,
        EmergeBaseC = 5,
        EmergeOptimumC = 25,
        EmergeCeilingC = 35,
        EmergeHeat = 100,
        EmergeSigma = 0.2,
        EmergeCv = 0.1,
        GerminateAtC = 20,
        BottomHeat = true,
        LeaveMatAt = 0.5,
        EmergeGiveUpDays = 30,
        Germination = 0.9,
        SeedsPerCell = 1,
        KeepPerCell = 1,
        StandLoss = 0,
        GrowthBaseC = 5,
        GrowthCapC = 30,
        ReferenceC = 20,
        GrowthDays = 30,
        GrowthCv = 0.1,
        PotUpDays = 10,
        PotUpCheckDays = 2,
        PotUpLoss = 0.05,
        HardeningNights = 7,
        TableAboveC = 5,
        DamageBelowC = 0,
        FieldAboveC = 2,
        HoldDays = 7,
        DiscardAfterDays = 21,
        FlatDiscardDays = 14,
        TrayId = "72",
    };

    [Fact]
    public void A_crop_without_a_coldest_night_takes_every_bench_when_needed_houses_last() =>
        AssertSpaces([1, 2, 3, 0], SpaceGroups.Benches(s_site, s_plain));

    [Theory]
    [InlineData(15, new[] { 1, 0 })] // at the set-point is warm enough
    [InlineData(16, new[] { 1 })]
    [InlineData(19, new int[0])]
    public void A_coldest_night_leaves_heated_houses_that_are_warm_enough(double minNight, int[] expected) =>
        AssertSpaces(expected, SpaceGroups.Benches(s_site, s_plain with { MinNightC = minNight }));

    [Fact]
    public void A_list_of_benches_is_taken_as_written() =>
        AssertSpaces([0, 3], SpaceGroups.Benches(s_site, s_plain with { MinNightC = 30, Benches = ["over-bench", "yard-bench"] }));

    [Fact]
    public void Mats_hotter_than_the_crop_bears_are_left_out()
    {
        AssertSpaces([4, 5], SpaceGroups.Mats(s_site, s_plain));
        AssertSpaces([4], SpaceGroups.Mats(s_site, s_plain with { MaxMatC = 24 }));
        AssertSpaces([5], SpaceGroups.Mats(s_site, s_plain with { MaxMatC = 24, Mats = ["mat-30"] }));
        AssertSpaces([], SpaceGroups.Mats(s_site, s_plain with { BottomHeat = false }));
    }

    // Limits are compared to half of a tenth of a degree: 15.04 C is 15 C, 15.06 C is not; an unheated house or the open air keeps no
    // night.
    [Theory]
    [InlineData(15.04, new[] { 1, 0 })]
    [InlineData(15.06, new[] { 1 })]
    [InlineData(-20, new[] { 1, 0 })]
    public void A_coldest_night_is_met_to_half_a_tenth_of_a_degree(double minNight, int[] expected) =>
        AssertSpaces(expected, SpaceGroups.Benches(s_site, s_plain with { MinNightC = minNight }));

    [Fact]
    public void A_hottest_mat_is_met_to_half_a_tenth_of_a_degree()
    {
        AssertSpaces([4], SpaceGroups.Mats(s_site, s_plain with { MaxMatC = 23.96 }));
        AssertSpaces([], SpaceGroups.Mats(s_site, s_plain with { MaxMatC = 23.94 }));
    }

    [Fact]
    public void Names_of_other_spaces_in_a_list_are_left_out()
    {
        AssertSpaces([1], SpaceGroups.Benches(s_site, s_plain with { Benches = ["mat-24", "main-bench", "nowhere"] }));
        AssertSpaces([5, 4], SpaceGroups.Mats(s_site, s_plain with { Mats = ["mat-30", "main-bench", "mat-24"] }));
    }

    [Fact]
    public void Tables_are_for_every_crop_when_needed_houses_last() => AssertSpaces([7, 6], SpaceGroups.Tables(s_site));

    private static void AssertSpaces(int[] expected, ImmutableArray<int> actual) => Assert.Equal(expected, actual.ToArray());

    private static Space Space(string id, SpaceKind kind, string? house) =>
        new()
        {
            Id = id,
            Name = id,
            Kind = kind,
            HouseId = house,
            Places = 10,
        };
}
