using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Published.Season;

/// <summary>Places of a site of one mat, one bench and one table.</summary>
/// <param name="Mats">Places on the mat; null where trays are sown on the bench.</param>
/// <param name="Benches">Places on the bench.</param>
/// <param name="Tables">Places on the table.</param>
internal sealed record SitePlaces(int? Mats, int Benches, int Tables)
{
    public const int NoLimit = 1_000_000;
}

/// <summary>
/// The season as theory sees it: trays that come at given instants, stay a given time on a mat, a bench and a table, and keep their place
/// until they have the next (rounds at any time). A place is what theory calls a server or slot, a stay is its service, and a sowing
/// without a place is a customer in line. Everything in between is the season's own: the round, its activities, its books. Times in hours;
/// one site is played again and again.
/// </summary>
internal sealed class QueueSite
{
    private static readonly DateOnly s_opens = new(2027, 1, 4);

    // Trays are numbered through, from 0.
    private readonly int[] _batchOfTray;
    private readonly int[] _firstTray;
    private readonly SeasonPlayer _player;
    private readonly SeasonResult _result = new();
    private IReadOnlyList<double> _comings = [];
    private Journal _journal = null!;

    /// <summary>Makes a site.</summary>
    /// <param name="places">Places.</param>
    /// <param name="trays">Trays of each sowing.</param>
    /// <param name="giveUpDays">Days a sowing waits for a place; 0 where it is lost at once.</param>
    /// <param name="hours">Hours to play.</param>
    public QueueSite(SitePlaces places, IEnumerable<int> trays, int giveUpDays, double hours)
    {
        int[] all = [.. trays];
        _batchOfTray = [.. all.SelectMany((count, batch) => Enumerable.Repeat(batch, count))];
        _firstTray = new int[all.Length];
        for (var batch = 1; batch < all.Length; batch++)
        {
            _firstTray[batch] = _firstTray[batch - 1] + all[batch - 1];
        }

        // Sowings fall due in the order of the plan, which the player asks for when it is made.
        var stays = new GivenStays(
            batch => _comings.Count == 0 ? batch : _comings[batch],
            (batch, tray, kind) => _journal.BeginStay(_firstTray[batch] + tray, kind)
        );

        // The last day's round, at eight, ends the play.
        _player = new SeasonPlayer(Plan(places, all, giveUpDays, (int)(hours / 24) + 2), 1, stays);
    }

    /// <summary>Plays the site from empty.</summary>
    /// <param name="comings">Instant at which each sowing falls due, the earliest first; those past the end do not come.</param>
    /// <param name="stay">Hours that a tray, by its number, stays in a kind of space; asked when it gets its place there.</param>
    /// <returns>What happened.</returns>
    public Journal Play(IReadOnlyList<double> comings, Func<int, SpaceKind, double> stay)
    {
        _comings = comings;
        _journal = new Journal(_firstTray, Array.ConvertAll(_batchOfTray, batch => comings[batch]), stay);
        _player.Play(0, PlaceLimits.AsGiven, _result, _journal);
        return _journal;
    }

    private static SeasonPlan Plan(SitePlaces places, int[] trays, int giveUpDays, int days)
    {
        var crop = Crop(places.Mats is not null);
        var tray = new TrayType
        {
            Id = "tray",
            Name = "Tray",
            Cells = 1,
        };
        var scenario = new Scenario
        {
            Name = "Queue",
            Window = new SeasonWindow(s_opens, s_opens.AddDays(days)),
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
                Space(SpaceKind.Mat, places.Mats ?? 0) with
                {
                    MatC = 20,
                },
                Space(SpaceKind.Bench, places.Benches),
                Space(SpaceKind.Table, places.Tables),
            ],
            TrayTypes = [tray],
            Crops = [crop],
            Batches = [.. trays.Select(Order)],
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

    private static Space Space(SpaceKind kind, int places) =>
        new()
        {
            Id = $"{kind}",
            Name = $"{kind}",
            Kind = kind,
            HouseId = "house",
            Places = places,
        };

    private static BatchPlan Plan(BatchOrder order, Crop crop, TrayType tray) =>
        new()
        {
            Order = order,
            Crop = crop,
            Tray = tray,
            SowOn = s_opens,
            EmergeOn = s_opens,
            TableOn = s_opens,
            ReadyOn = s_opens,
            SetOutOn = s_opens,
            Trays = order.Plants,
            Flats = 0,
            Seeds = order.Plants,
            Germination = 1,
            StandChance = 1,
            Mats = crop.BottomHeat ? [0] : [],
            Benches = [1],
            Tables = [2],
        };

    // Ids in the order of arrival, since the model serves equal dates in the order of the ids.
    private static BatchOrder Order(int trays, int index) =>
        new()
        {
            Id = $"b{index:0000000}",
            CropId = "crop",
            Grower = "Ada",
            Plants = trays,
            Sow = s_opens,
            TrayId = "tray",
            SeedsPerCell = 1,
            Germination = 1,
        };

    private static Crop Crop(bool onMat) =>
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
            BottomHeat = onMat,
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
            TableAboveC = -50,
            DamageBelowC = -60,
            FieldAboveC = -50,
            HoldDays = 1_000_000,
            DiscardAfterDays = 1_000_001,
            FlatDiscardDays = 1_000_001,
            TrayId = "tray",
        };
}
