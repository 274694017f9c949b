using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Twin.Tests;

/// <summary>What the twin counted of a season, and what docs/model.md section 9 makes of it.</summary>
internal sealed class TwinResult
{
    public TwinResult(SeasonPlan plan)
    {
        (Held, Waiting) = (Table(plan.Scenario.Spaces.Length), Table(plan.Scenario.Spaces.Length));
        Refused = [.. Enumerable.Range(0, (Waiting.Length + 1) * Waiting.Length).Select(_ => new int[(plan.Days + 6) / 7])];
        Heat = [.. plan.Scenario.Houses.Select(_ => new long[plan.Days])];
        (Sown, Potted, Moved, SetOut, CarriedIn) = (
            new int[plan.Days],
            new int[plan.Days],
            new int[plan.Days],
            new int[plan.Days],
            new int[plan.Days]
        );
        (SeedsSown, CellsSown, CellsThinned, PlantsPotted) = (
            new long[plan.Days],
            new long[plan.Days],
            new long[plan.Days],
            new long[plan.Days]
        );
        DaysOpen = new int[plan.Scenario.Houses.Length];
        MishapTrays = new long[plan.Scenario.Mishaps.Length];
        MatDays = new int[plan.Scenario.Spaces.Length];
        int[][] Table(int rows) => [.. Enumerable.Range(0, rows).Select(_ => new int[plan.Days])];
    }

    public int[][] Held { get; }

    public int[][] Waiting { get; }

    public int[][] Refused { get; }

    public long[][] Heat { get; }

    public int[] Sown { get; }

    public int[] Potted { get; }

    public int[] Moved { get; }

    public int[] SetOut { get; }

    public int[] CarriedIn { get; }

    public long[] SeedsSown { get; }

    public long[] CellsSown { get; }

    public long[] CellsThinned { get; }

    public long[] PlantsPotted { get; }

    public int[] DaysOpen { get; }

    public int[] MatDays { get; }

    public long[] MishapTrays { get; }

    public Dictionary<Relief, long> ReliefUses { get; } =
        new()
        {
            [Relief.Aisle] = 0,
            [Relief.OffMatEarly] = 0,
            [Relief.TableEarly] = 0,
        };

    public BatchOutcome[] Batches { get; private set; } = [];

    public bool SownInTime { get; private set; }

    public bool NoneOverHeldForPlace { get; private set; }

    public bool Fits { get; private set; }

    public bool FitsWeatherCounted { get; private set; }

    /// <summary>Counts places refused on a day to trays that stand in a space, or, past the last space, are not sown.</summary>
    public void Refuse(int from, int by, int day, int places) => Refused[(from * Waiting.Length) + by][day / 7] += places;

    public void Finish(SeasonPlan plan, TwinClimate climate, TwinBatch[] batches, List<TwinTray> trays)
    {
        foreach (var batch in batches)
        {
            Finish(plan, batch, trays);
        }

        CountHouses(plan, climate);
        Batches = [.. batches.Select(batch => batch.Outcome)];
        SownInTime = batches.All(batch => batch.Outcome.SownLast >= 0 && batch.Outcome.SownLast <= LatestSowing(plan, batch));
        NoneOverHeldForPlace = Batches.All(batch => batch.OverHeldForPlace == 0);
        var goal = (decimal)plan.Scenario.Rules.ServiceGoal * batches.Sum(batch => batch.Plan.Order.Plants);
        Fits = SownInTime && NoneOverHeldForPlace && Batches.Sum(batch => batch.PlantsInTime) >= goal;
        FitsWeatherCounted = SownInTime && NoneOverHeldForPlace && Batches.Sum(batch => batch.PlantsInTimeWeatherCounted) >= goal;
    }

    // The work day after the planned sow date and the days it may wait.
    private static int LatestSowing(SeasonPlan plan, TwinBatch batch)
    {
        var latest = batch.SowDay + plan.SownInTimeDays;
        do
        {
            latest++;
        } while (!plan.Scenario.Rules.IsWorkDay(plan.FirstDay.AddDays(latest)));
        return latest;
    }

    private static void Finish(SeasonPlan plan, TwinBatch batch, List<TwinTray> trays)
    {
        var outcome = batch.Outcome;
        var wanted = batch.Plan.Order.Plants;
        var gone = batch.GoneOut;
        var lateDays = plan.Scenario.Rules.LateDays;
        outcome.SownLast = batch.Unsown.Any(tray => tray.Fate is TrayFate.Unsown or TrayFate.GivenUp) ? -1 : batch.LastSownDay;
        var standing = trays.Where(tray => tray.Batch == batch && tray.Fate == TrayFate.Standing).ToList();
        outcome.FlatsStanding = standing.Count(tray => tray.IsFlat);
        outcome.TraysStanding = standing.Count(tray => !tray.IsFlat);
        outcome.TraysOut = gone.Count;
        outcome.PlantsOut = gone.Sum(tray => tray.Plants);
        outcome.GrowingHours = gone.Sum(tray => tray.GrowingHours);
        outcome.PlantsShort = Math.Max(0, wanted - outcome.PlantsOut);
        outcome.PlantsInTime = Math.Min(wanted, gone.Where(tray => DaysLate(tray, excepted: true) <= lateDays).Sum(tray => tray.Plants));
        outcome.PlantsInTimeWeatherCounted = Math.Min(
            wanted,
            gone.Where(tray => DaysLate(tray, excepted: false) <= lateDays).Sum(tray => tray.Plants)
        );
        if (gone.Count > 0)
        {
            var days = gone.Select(tray => tray.OutDay).Order().ToList();
            (outcome.OutFirst, outcome.OutLast) = (days[0], days[^1]);
            outcome.OutMedian = days.First(day => 2 * days.Count(other => other <= day) >= days.Count);
        }

        var left = wanted;
        foreach (var tray in gone)
        {
            var counted = Math.Min(left, tray.Plants);
            outcome.LatePlantDays += (long)counted * DaysLate(tray, excepted: true);
            left -= counted;
        }

        outcome.LatePlantDays += (long)left * Math.Max(0, plan.Days - 1 - batch.SetOutDay);
    }

    private static int DaysLate(TwinTray tray, bool excepted) =>
        Math.Max(0, tray.OutDay - tray.Batch.SetOutDay - (excepted ? tray.HoldDays : 0));

    private void CountHouses(SeasonPlan plan, TwinClimate climate)
    {
        for (var day = 0; day < plan.Days; day++)
        {
            for (var index = 0; index < Heat.Length; index++)
            {
                var house = plan.Scenario.Houses[index];
                var heated = IsOpen(plan, house, day);
                DaysOpen[index] += heated ? 1 : 0;
                Heat[index][day] = heated ? climate.WattHours(house, day) : 0;
            }

            for (var space = 0; space < MatDays.Length; space++)
            {
                MatDays[space] += plan.Scenario.Spaces[space].Kind == SpaceKind.Mat && Held[space][day] > 0 ? 1 : 0;
            }
        }
    }

    // With trays in it, and the day before; until the season closes also empty: from its date on, or, open all season, from the second day
    // before the first on which a tray is planned to stand in it. Never before its date.
    private bool IsOpen(SeasonPlan plan, House house, int day)
    {
        var date = plan.FirstDay.AddDays(day);
        var inUse = HoldsTrays(plan, house, day) || HoldsTrays(plan, house, day + 1);
        var closed = date > plan.Scenario.Window.Closes;
        return house.Opening switch
        {
            HouseOpening.WhenNeeded => inUse,
            HouseOpening.FromDate => date >= house.OpensOn && (inUse || !closed),
            _ => inUse || (!closed && plan.Batches.Any(batch => IsPlannedBy(plan, batch, house, date.AddDays(2)))),
        };
    }

    // Whether a tray of the batch is planned to have come into the house by a date: to the mats or benches it is sown on, the benches it
    // comes to off the mat or by potting up or finishes on, and the table; of each group to the first that has places that day, to the
    // first where none has.
    private static bool IsPlannedBy(SeasonPlan plan, BatchPlan batch, House house, DateOnly by)
    {
        List<(DateOnly? On, IReadOnlyList<int> Group)> moves =
        [
            (batch.SowOn, batch.Mats.Length > 0 ? batch.Mats : batch.Benches),
            (batch.OffMatOn, batch.Benches),
            (batch.PotUpOn, batch.Benches),
            (batch.FinishOn, batch.Finish),
            (batch.TableOn, batch.Tables),
        ];
        return moves.Exists(move =>
            move.On is { } on
            && on <= by
            && move.Group.Count > 0
            && plan.Scenario.Spaces[First(plan.Scenario, move.Group, on)].HouseId == house.Id
        );
    }

    private static int First(Scenario scenario, IReadOnlyList<int> group, DateOnly on)
    {
        foreach (var space in group)
        {
            var of = scenario.Spaces[space];
            var home = scenario.Houses.FirstOrDefault(each => each.Id == of.HouseId);
            var places = of.Changes.Any(change => change.From <= on) ? of.Changes.Last(change => change.From <= on).Places : of.Places;
            if (places > 0 && !(home?.Opening == HouseOpening.FromDate && home.OpensOn > on))
            {
                return space;
            }
        }

        return group[0];
    }

    private bool HoldsTrays(SeasonPlan plan, House house, int day) =>
        day < plan.Days
        && Enumerable.Range(0, Held.Length).Any(space => plan.Scenario.Spaces[space].HouseId == house.Id && Held[space][day] > 0);
}
