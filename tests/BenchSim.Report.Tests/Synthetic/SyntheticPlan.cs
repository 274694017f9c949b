using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Seed;
using BenchSim.Season.Values;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>Plans for the toy.</summary>
internal static class SyntheticPlan
{
    private static readonly string[] s_growers = ["Alder Field", "Brook Farm", "Copse Garden", "Drift Acre", "Eastbank"];

    private static readonly (string Id, string Name, int Mat, int Bench, int Table)[] s_crops =
    [
        ("tomato", "Tomato", 8, 38, 8),
        ("pepper", "Pepper", 12, 44, 8),
        ("eggplant", "Eggplant", 10, 42, 8),
        ("lettuce", "Lettuce", 0, 24, 6),
        ("cabbage", "Cabbage", 5, 28, 9),
        ("onion", "Onion", 0, 56, 9),
    ];

    /// <summary>Four spaces, twelve batches.</summary>
    public static SeasonPlan Spring() =>
        Make(
            [
                Space("mats", "Heat mats", SpaceKind.Mat, 38),
                Space("main", "Main house benches", SpaceKind.Bench, 170),
                Space("overflow", "Overflow house benches", SpaceKind.Bench, 70),
                Space("table", "Hardening table", SpaceKind.Table, 60),
            ],
            batches: 12,
            days: 150
        );

    /// <summary>Six spaces, sixty batches.</summary>
    public static SeasonPlan Large() =>
        Make(
            [
                Space("mats", "Heat mats", SpaceKind.Mat, 40),
                Space("mats-2", "Second bank of heat mats", SpaceKind.Mat, 20),
                Space("main", "Main house benches", SpaceKind.Bench, 420),
                Space("overflow", "Overflow house benches", SpaceKind.Bench, 150),
                Space("table", "Hardening table", SpaceKind.Table, 120),
                Space("table-2", "Yard table", SpaceKind.Table, 60),
            ],
            batches: 60,
            days: 220
        );

    /// <summary>One mat, one bench and one table space, two batches: small enough to read its report as text.</summary>
    public static SeasonPlan Tiny() =>
        Make(
            [
                Space("mats", "Heat mats", SpaceKind.Mat, 6),
                Space("main", "Main house", SpaceKind.Bench, 20),
                Space("table", "Table", SpaceKind.Table, 8),
            ],
            batches: 2,
            days: 90
        );

    public static Space Space(string id, string name, SpaceKind kind, int places) =>
        new()
        {
            Id = id,
            Name = name,
            Kind = kind,
            Places = places,
            HouseId = kind == SpaceKind.Table ? null : "house",
            Power = kind == SpaceKind.Mat ? SyntheticHeat.Mats(places) : null,
        };

    public static SeasonPlan Make(ImmutableArray<Space> spaces, int batches, int days)
    {
        var first = new DateOnly(2027, 2, 1);
        var tray = new TrayType
        {
            Id = "cell-72",
            Name = "72-cell tray",
            Cells = 72,
            MediumLitres = 3.4,
            Sources = Sources(
                ("cells", Trust.Seen, "maker's sheet for the tray"),
                ("medium_litres", Trust.Memory, "recalled; makers differ up to 1.7 times")
            ),
        };
        ImmutableArray<BatchPlan> plans =
        [
            .. Enumerable.Range(0, batches).Select(index => Batch(index, batches, first, days, spaces, tray)),
        ];
        var scenario = new Scenario
        {
            Name = "Two-house spring",
            Question = "Do the mats carry us through April?",
            Units = UnitSystem.Imperial,
            Window = new SeasonWindow(first, first.AddDays(days - 20)),
            Houses =
            [
                new House
                {
                    Id = "house",
                    Name = "Main house",
                    NightC = 15.5,
                    DayC = 18,
                    Body = SyntheticHeat.Body(),
                    Heat = SyntheticHeat.House(),
                },
                new House
                {
                    Id = "spare",
                    Name = "Spare house",
                    NightC = 10,
                    DayC = 10,
                    Opening = HouseOpening.WhenNeeded,
                },
            ],
            Spaces = spaces,
            TrayTypes = [tray],
            Crops =
            [
                .. plans
                    .Select(plan => plan.Crop)
                    .DistinctBy(crop => crop.Id, StringComparer.Ordinal)
                    .OrderBy(crop => crop.Id, StringComparer.Ordinal),
            ],
            Batches = [.. plans.Select(plan => plan.Order)],
            Rules = new SiteRules
            {
                SeedStorage = new SeedStorage(10, 5),
                Prices = new Prices
                {
                    LabourHour = 18,
                    MixLitre = 0.3,
                    ThousandSeeds = 25,
                    Currency = "$",
                },
            },
            Weather = new ConstantWeather(4, 15, 0),
            Play = new PlaySettings(200, 20270401),
        };
        return new SeasonPlan
        {
            Scenario = scenario,
            Batches = plans,
            Days = days,
            Warnings =
            [
                new Fault(
                    new SourcePlace("plan.csv", 4, 9),
                    "batch b03 has 30 trays but the mats have 24 places",
                    "it will be sown in two goes"
                ),
            ],
        };
    }

    private static BatchPlan Batch(int index, int batches, DateOnly first, int days, ImmutableArray<Space> spaces, TrayType tray)
    {
        var (id, name, mat, bench, table) = s_crops[index % s_crops.Length];
        var sow = first.AddDays((batches == 12 ? 21 : 7) + (index * Math.Max(0, days - 85) / Math.Max(1, batches - 1)));
        var trays = batches <= 2 ? 4 : 8 + (index * 7 % 17);
        var potUp = index % 6 == 1;
        int[] Of(SpaceKind kind) => [.. Enumerable.Range(0, spaces.Length).Where(space => spaces[space].Kind == kind)];
        return new BatchPlan
        {
            Order = new BatchOrder
            {
                Id = $"b{index + 1:00}",
                CropId = id,
                Grower = s_growers[index * 3 % s_growers.Length],
                Plants = trays * 60,
                Sow = sow,
                Method = potUp ? Method.PotUp : Method.Direct,
                TrayId = tray.Id,
                SeedsPerCell = 1,
                Germination = 0.9,
                TestedOn = index == 0 ? new DateOnly(2026, 3, 1) : null,
            },
            Germination = index == 0 ? 0.885 : 0.9,
            Crop = Crop(id, name, mat > 0),
            Tray = tray,
            Flat = potUp ? tray : null,
            SowOn = sow,
            EmergeOn = sow.AddDays(6),
            OffMatOn = mat > 0 ? sow.AddDays(mat) : null,
            PotUpOn = potUp ? sow.AddDays(mat + 12) : null,
            TableOn = sow.AddDays(mat + bench),
            ReadyOn = sow.AddDays(mat + bench + table),
            SetOutOn = sow.AddDays(mat + bench + table),
            Trays = trays,
            Flats = potUp ? 3 : 0,
            Seeds = trays * 72,
            StandChance = 0.93,
            Mats = mat > 0 ? [.. Of(SpaceKind.Mat)] : [],
            Benches = [.. Of(SpaceKind.Bench)],
            Tables = [.. Of(SpaceKind.Table)],
        };
    }

    public static Crop Crop(string id, string name, bool bottomHeat) =>
        new()
        {
            Id = id,
            Name = name,
            Hardiness = bottomHeat ? Hardiness.Tender : Hardiness.Hardy,
            EmergeBaseC = 10.4,
            EmergeOptimumC = 29,
            EmergeCeilingC = 35,
            EmergeHeat = 71,
            EmergeSigma = 0.2,
            EmergeCv = 0.1,
            GerminationCurve = [new GerminationPoint(10, 61), new GerminationPoint(20, 95)],
            GerminateAtC = 24,
            BottomHeat = bottomHeat,
            LeaveMatAt = 0.75,
            EmergeGiveUpDays = 28,
            Germination = 0.9,
            SeedsPerCell = 1,
            KeepPerCell = 1,
            StandLoss = 0.05,
            GrowthBaseC = 8,
            GrowthCapC = 27,
            ReferenceC = 18,
            GrowthDays = 35,
            GrowthCv = 0.1,
            PotUpDays = 12,
            PotUpCheckDays = 3,
            PotUpLoss = 0.05,
            HardeningNights = 7,
            TableAboveC = 7,
            DamageBelowC = 2,
            FieldAboveC = 5,
            HoldDays = 7,
            DiscardAfterDays = 21,
            FlatDiscardDays = 10,
            TrayId = "cell-72",
            Sources = Sources(
                ("emerge_base", Trust.Seen, "thermal time table, row of the crop"),
                ("emerge_heat", Trust.Derived, "worked out from days to emergence"),
                ("growth_cv", Trust.Assumption, "no published spread found"),
                ("hold_days", Trust.Memory, "recalled, not verified"),
                ("days_to_ready", Trust.CommonPractice, "growers' weeks to transplant size"),
                ("germination", Trust.User, "")
            ),
        };

    public static ImmutableSortedDictionary<string, Provenance> Sources(params (string Column, Trust Trust, string Source)[] rows) =>
        ImmutableSortedDictionary.CreateRange(
            StringComparer.Ordinal,
            rows.Select(row => KeyValuePair.Create(row.Column, new Provenance(row.Trust, row.Source)))
        );
}
