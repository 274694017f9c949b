using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Published.Season;

/// <summary>
/// The season model run as a queue: single trays that arrive by a Poisson stream, stay exponential times on a mat, a bench and a table, and
/// keep their place until they have the next ("any time" rounds). Times in days.
/// </summary>
internal sealed class QueueSite
{
    private static readonly DateOnly Opens = new(2027, 1, 4);

    private readonly double[] sowHours;
    private readonly double[][] stayHours;
    private readonly SeasonPlan plan;

    /// <summary>Makes a queue.</summary>
    /// <param name="arrivalsADay">Poisson rate.</param>
    /// <param name="rates">Rates of leaving the mat, bench and table, a day; 0 stands for no stay at all.</param>
    /// <param name="places">Places of mat, bench and table.</param>
    /// <param name="arrivals">Trays.</param>
    /// <param name="giveUpDays">Days an arrival waits for a mat; 0 for a loss system.</param>
    /// <param name="seed">Seed of arrivals and stays.</param>
    public QueueSite(double arrivalsADay, double[] rates, int[] places, int arrivals, int giveUpDays, int seed)
    {
        var random = new Random(seed);
        double Exponential(double rate) => rate == 0 ? 0 : -Math.Log(1 - random.NextDouble()) / rate * 24;
        sowHours = new double[arrivals];
        for (var index = 0; index < arrivals; index++)
        {
            sowHours[index] = (index == 0 ? 0 : sowHours[index - 1]) + Exponential(arrivalsADay);
        }

        stayHours = [.. Enumerable.Range(0, arrivals).Select(_ => rates.Select(Exponential).ToArray())];
        var days = (int)(sowHours[^1] / 24) + (int)(60 * rates.Sum(rate => rate == 0 ? 0 : 1 / rate)) + 10;
        plan = Plan(places, arrivals, giveUpDays, days);
    }

    /// <summary>Makes a queue of trays whose comings and stays are given.</summary>
    /// <param name="sowHours">Hour at which each tray comes.</param>
    /// <param name="stayHours">Hours of each tray on the mat, the bench and the table.</param>
    /// <param name="places">Places of mat, bench and table.</param>
    /// <param name="giveUpDays">Days an arrival waits for a mat.</param>
    /// <param name="days">Days to play.</param>
    public QueueSite(double[] sowHours, double[][] stayHours, int[] places, int giveUpDays, int days)
    {
        this.sowHours = sowHours;
        this.stayHours = stayHours;
        plan = Plan(places, sowHours.Length, giveUpDays, days);
    }

    public IReadOnlyList<double> SowHours => sowHours;

    public SeasonResult Play(ISeasonWitness? witness = null)
    {
        var stays = new GivenStays(batch => sowHours[batch], (batch, _, kind) => stayHours[batch][(int)kind]);
        var result = new SeasonResult();
        new SeasonPlayer(plan, 1, stays).Play(0, PlaceLimits.AsGiven, result, witness);
        return result;
    }

    private static SeasonPlan Plan(int[] places, int arrivals, int giveUpDays, int days)
    {
        var crop = Crop();
        var tray = new TrayType
        {
            Id = "tray",
            Name = "Tray",
            Cells = 1,
        };
        var scenario = new Scenario
        {
            Name = "Queue",
            Window = new SeasonWindow(Opens, Opens.AddDays(days)),
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
                new Space
                {
                    Id = "mat",
                    Name = "Mat",
                    Kind = SpaceKind.Mat,
                    HouseId = "house",
                    Places = places[0],
                    MatC = 20,
                },
                new Space
                {
                    Id = "bench",
                    Name = "Bench",
                    Kind = SpaceKind.Bench,
                    HouseId = "house",
                    Places = places[1],
                },
                new Space
                {
                    Id = "table",
                    Name = "Table",
                    Kind = SpaceKind.Table,
                    HouseId = "house",
                    Places = places[2],
                },
            ],
            TrayTypes = [tray],
            Crops = [crop],
            Batches = [.. Enumerable.Range(0, arrivals).Select(index => Order(index))],
            Rules = new SiteRules
            {
                Rounds = RoundKind.AnyTime,
                SowWaitDays = 1_000_000,
                SowGiveUpDays = giveUpDays,
                ForecastNights = 0,
                WetLimitMm = 1000,
            },
            Weather = new ConstantWeather(20, 20, 0),
            Play = new PlaySettings(1, 1),
        };
        return new SeasonPlan
        {
            Scenario = scenario,
            Days = days,
            Batches = [.. scenario.Batches.Select(order => Plan(order, crop, tray))],
        };
    }

    private static BatchPlan Plan(BatchOrder order, Crop crop, TrayType tray) =>
        new()
        {
            Order = order,
            Crop = crop,
            Tray = tray,
            SowOn = Opens,
            EmergeOn = Opens,
            TableOn = Opens,
            ReadyOn = Opens,
            SetOutOn = Opens,
            Trays = 1,
            Flats = 0,
            Seeds = 1,
            Germination = 1,
            StandChance = 1,
            Mats = [0],
            Benches = [1],
            Tables = [2],
        };

    // Ids in the order of arrival, since the model serves equal dates in the order of the ids.
    private static BatchOrder Order(int index) =>
        new()
        {
            Id = $"b{index:000000}",
            CropId = "crop",
            Grower = "Ada",
            Plants = 1,
            Sow = Opens,
            TrayId = "tray",
            SeedsPerCell = 1,
            Germination = 1,
        };

    private static Crop Crop() =>
        new()
        {
            Id = "crop",
            Name = "Crop",
            Hardiness = Hardiness.Hardy,
            EmergeBaseC = 0,
            EmergeOptimumC = 30,
            EmergeCeilingC = 40,
            EmergeHeat = 1,
            EmergeSigma = 0,
            EmergeCv = 0,
            GerminateAtC = 20,
            BottomHeat = true,
            LeaveMatAt = 0.5,
            EmergeGiveUpDays = 1_000_000,
            Germination = 1,
            SeedsPerCell = 1,
            KeepPerCell = 1,
            StandLoss = 0,
            GrowthBaseC = 0,
            GrowthCapC = 30,
            ReferenceC = 20,
            GrowthDays = 1,
            GrowthCv = 0,
            PotUpDays = 1,
            PotUpCheckDays = 0,
            PotUpLoss = 0,
            HardeningNights = 0,
            HardenAboveC = -50,
            DamageBelowC = -60,
            FieldAboveC = -50,
            HoldDays = 1_000_000,
            DiscardAfterDays = 1_000_001,
            FlatHoldDays = 1_000_000,
            FlatDiscardDays = 1_000_001,
            TrayId = "tray",
        };
}
