using System.Globalization;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Published.OtherEngines;

/// <summary>
/// The site of tests/Published/other-engines/rounds.py for BenchSim: mats that give 15 degree-days a day (25 C, base 10), a house that
/// gives 10 (20 C day and night), mild dry nights, no luck. Day 0 is Monday 1 March 2027.
/// </summary>
internal static class RoundsSite
{
    private static readonly DateOnly s_monday = new(2027, 3, 1);
    private static readonly string[] s_spaces = ["mat", "main", "overflow", "table"];

    /// <summary>The plan of the batches in rounds-batches.csv.</summary>
    /// <param name="rows">Rows of the file, without its heading.</param>
    public static SeasonPlan Plan(string[][] rows)
    {
        var made = SeasonPlanner.Make(
            new Scenario
            {
                Name = "Rounds",
                Window = new SeasonWindow(s_monday, s_monday.AddDays(200)),
                Houses =
                [
                    new House
                    {
                        Id = "house",
                        Name = "House",
                        NightC = 20,
                        DayC = 20,
                        VentC = 20,
                        DayLiftK = 0,
                    },
                ],
                Spaces =
                [
                    Space("mat", SpaceKind.Mat, 34),
                    Space("main", SpaceKind.Bench, 75),
                    Space("overflow", SpaceKind.Bench, 50),
                    Space("table", SpaceKind.Table, 34),
                ],
                TrayTypes =
                [
                    new TrayType
                    {
                        Id = "tray",
                        Name = "Tray",
                        Cells = 50,
                    },
                ],
                Crops = [.. rows.Select(Crop)],
                Batches = [.. rows.Select(Batch)],
                Rules = new SiteRules
                {
                    MediumOffsetK = 0,
                    SowWaitDays = 3,
                    SowGiveUpDays = 10,
                    TableLeadDays = 2,
                    DaysOff = [s_monday.AddDays(21), s_monday.AddDays(25), s_monday.AddDays(56)],
                },
                Weather = new ConstantWeather(15, 15, 0),
                Play = new PlaySettings(1, 1),
            }
        );
        return made.Plan ?? throw new InvalidOperationException(string.Join('\n', made.Faults));
    }

    public static string NameOf(int space) => s_spaces[space];

    private static Space Space(string id, SpaceKind kind, int places) =>
        new()
        {
            Id = id,
            Name = id,
            Kind = kind,
            HouseId = kind == SpaceKind.Table ? null : "house",
            Places = places,
            MatC = kind == SpaceKind.Mat ? 25 : null,
        };

    private static BatchOrder Batch(string[] row) =>
        new()
        {
            Id = row[0],
            CropId = row[0],
            Grower = "Ada",
            TrayId = "tray",
            SeedsPerCell = 1,
            Germination = 1,
            Plants = 50 * Whole(row[1]),
            Sow = s_monday.AddDays(Whole(row[2])),
            SetOut = s_monday.AddDays(Whole(row[3])),
        };

    private static Crop Crop(string[] row) =>
        new()
        {
            Id = row[0],
            Name = row[0],
            Hardiness = Hardiness.Hardy,
            TrayId = "tray",
            EmergeBaseC = 10,
            EmergeOptimumC = 30,
            EmergeCeilingC = 40,
            EmergeHeat = Whole(row[5]),
            EmergeSigma = 0,
            EmergeCv = 0,
            GerminateAtC = 20,
            BottomHeat = string.Equals(row[4], "yes", StringComparison.Ordinal),
            LeaveMatAt = 0.5,
            EmergeGiveUpDays = 90,
            Germination = 1,
            SeedsPerCell = 1,
            KeepPerCell = 1,
            StandLoss = 0,
            GrowthBaseC = 10,
            GrowthCapC = 30,
            ReferenceC = 20,
            GrowthDays = Whole(row[6]),
            GrowthCv = 0,
            PotUpDays = 1,
            PotUpCheckDays = 0,
            PotUpLoss = 0,
            HardeningNights = Whole(row[7]),
            TableAboveC = 5,
            DamageBelowC = 0,
            FieldAboveC = 5,
            HoldDays = 60,
            DiscardAfterDays = 61,
            FlatDiscardDays = 500,
            Benches = [.. row[8].Split(' ')],
        };

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
