using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Tests;

/// <summary>Small plans made by hand. Day 0 is Monday, 1 March 2027.</summary>
internal static class Plans
{
    public static readonly DateOnly FirstDay = new(2027, 3, 1);

    /// <summary>
    /// A mat, two benches (the second in a house that opens on day 2, and down to 2 places from day 4), a table; three batches, two
    /// growers.
    /// </summary>
    public static SeasonPlan Small(int days = 8, int plantsEach = 100) =>
        Make(
            days,
            [
                new Space
                {
                    Id = "mat",
                    Name = "Mat",
                    Kind = SpaceKind.Mat,
                    HouseId = "main",
                    Places = 4,
                },
                new Space
                {
                    Id = "bench",
                    Name = "Bench",
                    Kind = SpaceKind.Bench,
                    HouseId = "main",
                    Places = 10,
                },
                new Space
                {
                    Id = "annex",
                    Name = "Annex bench",
                    Kind = SpaceKind.Bench,
                    HouseId = "annex",
                    Places = 6,
                    Changes = [new PlacesFrom(FirstDay.AddDays(4), 2)],
                },
                new Space
                {
                    Id = "table",
                    Name = "Table",
                    Kind = SpaceKind.Table,
                    Places = 8,
                },
            ],
            [Batch("B1", "Zinta", plantsEach, 5, 3), Batch("B2", "Ada", plantsEach, 6, 3), Batch("B3", "Zinta", plantsEach, 7, 3)]
        );

    /// <summary>A plan of a size met in practice.</summary>
    public static SeasonPlan Large(int spaces, int batches, int days) =>
        Make(
            days,
            [
                .. Enumerable
                    .Range(0, spaces)
                    .Select(i => new Space
                    {
                        Id = $"s{i}",
                        Name = $"Space {i}",
                        Kind = (SpaceKind)(i % 3),
                        Places = 120,
                    }),
            ],
            [.. Enumerable.Range(0, batches).Select(i => Batch($"B{i}", $"Grower {i % 5}", 1000, days / 2, 2))]
        );

    public static SeasonPlan Make(int days, ImmutableArray<Space> spaces, ImmutableArray<BatchPlan> batches) =>
        new()
        {
            Days = days,
            Batches = batches,
            Scenario = new Scenario
            {
                Name = "By hand",
                Window = new SeasonWindow(FirstDay, FirstDay.AddDays(days - 1)),
                Houses =
                [
                    new House
                    {
                        Id = "main",
                        Name = "Main house",
                        NightC = 16,
                        DayC = 18,
                    },
                    new House
                    {
                        Id = "annex",
                        Name = "Annex",
                        Opening = HouseOpening.FromDate,
                        OpensOn = FirstDay.AddDays(2),
                    },
                ],
                Spaces = spaces,
                TrayTypes = [Tray],
                Crops = [Crop],
                Batches = [.. batches.Select(batch => batch.Order)],
                Rules = new SiteRules { Reliefs = [Relief.Aisle] },
                Weather = new ConstantWeather(12, 20, 0),
                Play = new PlaySettings(),
            },
        };

    private static TrayType Tray { get; } =
        new()
        {
            Id = "72",
            Name = "72 cells",
            Cells = 72,
        };

    private static Crop Crop { get; } =
        new()
        {
            Id = "lettuce",
            Name = "Lettuce",
            Hardiness = Hardiness.Hardy,
            EmergeBaseC = 2,
            EmergeOptimumC = 24,
            EmergeCeilingC = 30,
            EmergeHeat = 60,
            EmergeSigma = 0.2,
            EmergeCv = 0.1,
            GerminateAtC = 20,
            BottomHeat = false,
            LeaveMatAt = 0.5,
            EmergeGiveUpDays = 30,
            Germination = 0.9,
            SeedsPerCell = 1,
            KeepPerCell = 1,
            StandLoss = 0.02,
            GrowthBaseC = 4,
            GrowthCapC = 24,
            ReferenceC = 18,
            GrowthDays = 25,
            GrowthCv = 0.1,
            PotUpDays = 10,
            PotUpCheckDays = 2,
            PotUpLoss = 0.03,
            HardeningNights = 3,
            TableAboveC = 2,
            DamageBelowC = -3,
            FieldAboveC = 0,
            HoldDays = 7,
            DiscardAfterDays = 21,
            FlatDiscardDays = 14,
            TrayId = "72",
        };

    private static BatchPlan Batch(string id, string grower, int plants, int setOutDay, int table) =>
        new()
        {
            Order = new BatchOrder
            {
                Id = id,
                CropId = "lettuce",
                Grower = grower,
                Plants = plants,
                Sow = FirstDay,
                TrayId = "72",
                SeedsPerCell = 1,
                Germination = 0.9,
            },
            Crop = Crop,
            Tray = Tray,
            SowOn = FirstDay,
            EmergeOn = FirstDay.AddDays(1),
            TableOn = FirstDay.AddDays(Math.Max(1, setOutDay - 3)),
            ReadyOn = FirstDay.AddDays(setOutDay),
            SetOutOn = FirstDay.AddDays(setOutDay),
            Trays = (plants / 60) + 1,
            Flats = 0,
            Seeds = ((plants / 60) + 1) * 72,
            Germination = 1,
            StandChance = 0.95,
            Mats = [],
            Benches = [1],
            Tables = [table],
        };
}
