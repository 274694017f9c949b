using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace Support;

/// <summary>
/// A site whose arithmetic can be done in the head: the house is at 20 C night and day, the medium as warm as the air, and each
/// crop takes whole days. Day 0 is Monday 1 March 2027; Monday to Friday are worked at 08:00.
/// </summary>
public static class SmallSite
{
    public static readonly DateOnly Monday = new(2027, 3, 1);

    /// <summary>3 days to emergence on a 20 C mat or in the house, 14 days to field size, 3 nights of hardening, no luck.</summary>
    public static Crop Crop(string id = "plain") =>
        new()
        {
            Id = id,
            Name = id,
            Hardiness = Hardiness.HalfHardy,
            EmergeBaseC = 10,
            EmergeOptimumC = 30,
            EmergeCeilingC = 40,
            EmergeHeat = 30,
            EmergeSigma = 0,
            EmergeCv = 0,
            GerminateAtC = 20,
            BottomHeat = true,
            LeaveMatAt = 0.75,
            EmergeGiveUpDays = 30,
            Germination = 1,
            SeedsPerCell = 1,
            KeepPerCell = 1,
            StandLoss = 0,
            GrowthBaseC = 10,
            GrowthCapC = 30,
            ReferenceC = 20,
            GrowthDays = 14,
            GrowthCv = 0,
            PotUpDays = 7,
            PotUpCheckDays = 2,
            PotUpLoss = 0,
            HardeningNights = 3,
            TableAboveC = 5,
            DamageBelowC = 0,
            FieldAboveC = 3,
            HoldDays = 7,
            DiscardAfterDays = 21,
            FlatDiscardDays = 14,
            TrayId = "50",
        };

    public static BatchOrder Batch(string id, int plants, DateOnly? sow, string crop = "plain", string grower = "Ada") =>
        new()
        {
            Id = id,
            CropId = crop,
            Grower = grower,
            Plants = plants,
            Sow = sow,
            TrayId = "50",
            SeedsPerCell = 1,
            Germination = 1,
        };

    public static BatchOrder PotUpBatch(
        string id,
        int plants,
        DateOnly? sow,
        int seedsPerFlat = 200,
        string crop = "plain",
        string grower = "Ada"
    ) => Batch(id, plants, sow, crop, grower) with { Method = Method.PotUp, FlatId = "flat", SeedsPerFlat = seedsPerFlat };

    public static Space Mat(int places) =>
        new()
        {
            Id = "mat",
            Name = "Mat",
            Kind = SpaceKind.Mat,
            HouseId = "main",
            Places = places,
            MatC = 20,
        };

    public static Space Bench(int places, string id = "bench", string house = "main") =>
        new()
        {
            Id = id,
            Name = id,
            Kind = SpaceKind.Bench,
            HouseId = house,
            Places = places,
        };

    public static Space Table(int places) =>
        new()
        {
            Id = "table",
            Name = "Table",
            Kind = SpaceKind.Table,
            Places = places,
        };

    public static Scenario Scenario(
        IEnumerable<Space> spaces,
        IEnumerable<BatchOrder> batches,
        SiteRules? rules = null,
        IEnumerable<Crop>? crops = null,
        WeatherInput? weather = null
    ) =>
        new()
        {
            Name = "Small site",
            Window = new SeasonWindow(Monday, Monday.AddDays(120)),
            Houses =
            [
                new House
                {
                    Id = "main",
                    Name = "Main",
                    NightC = 20,
                    DayC = 20,
                    VentC = 20,
                    DayLiftK = 0,
                },
            ],
            Spaces = [.. spaces],
            TrayTypes =
            [
                new TrayType
                {
                    Id = "50",
                    Name = "50 cells",
                    Cells = 50,
                },
                new TrayType
                {
                    Id = "big",
                    Name = "Two-place tray of 20",
                    Cells = 20,
                    PlacesEach = 2,
                },
                new TrayType
                {
                    Id = "flat",
                    Name = "Open flat",
                    Cells = 0,
                    SeedsPerFlat = 200,
                },
            ],
            Crops = [.. crops ?? [Crop()]],
            Batches = [.. batches],
            Rules = (rules ?? new SiteRules()) with { MediumOffsetK = rules?.MediumOffsetK is { } offset and not -2 ? offset : 0 },
            Weather = weather ?? new ConstantWeather(10, 10, 0),
            Play = new PlaySettings(1, 7),
        };

    /// <summary>The plan of a scenario that has no fault.</summary>
    public static SeasonPlan Plan(Scenario scenario)
    {
        var made = SeasonPlanner.Make(scenario);
        return made.Plan ?? throw new InvalidOperationException(string.Join('\n', made.Faults));
    }
}
