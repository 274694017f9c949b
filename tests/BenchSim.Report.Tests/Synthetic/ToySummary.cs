using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>Toy seasons, added up into the records of the contract.</summary>
internal sealed class ToySummary(SeasonPlan plan, ToySeason[] capped, ToySeason[] free)
{
    private readonly int _seasons = capped.Length;

    public Estimate Estimate(Func<ToySeason, double> figure) => Figures.Estimate([.. capped.Select(figure)]);

    public ImmutableArray<SpaceResult> Spaces() =>
        [
            .. plan.Scenario.Spaces.Select(
                (space, index) =>
                    new SpaceResult
                    {
                        Space = space,
                        Places = [.. Enumerable.Repeat(space.Places, plan.Days)],
                        Held = Days(day => capped.Select(season => season.Held[index][day])),
                        Wanted = Days(day => free.Select(season => season.Held[index][day])),
                        Waiting = Days(day => capped.Select(season => season.Waiting[index][day])),
                        Peak = Estimate(season => season.Held[index].Max()),
                        PeakOn = Date(capped, season => Array.IndexOf(season.Held[index], season.Held[index].Max())),
                        DaysFull = Estimate(season => season.Held[index].Count(held => held == space.Places)),
                        TrayDays = Estimate(season => season.Held[index].Sum()),
                        WaitedDays = Estimate(season => season.Waiting[index].Sum()),
                    }
            ),
        ];

    public ImmutableArray<GroupResult> Groups() => [.. plan.Scenario.Spaces.Select(space => space.Kind).Distinct().Order().Select(Group)];

    public ImmutableArray<BatchResult> Batches() => [.. plan.Batches.Select((batch, index) => Batch(batch, index))];

    public ImmutableArray<GrowerResult> Growers()
    {
        var all = plan.Batches.Select((_, index) => Stay(capped[0], index)).Sum();
        return
        [
            .. plan
                .Batches.Select(batch => batch.Order.Grower)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Select(grower =>
                {
                    int[] own = [.. Enumerable.Range(0, plan.Batches.Length).Where(index => plan.Batches[index].Order.Grower == grower)];
                    var days = Estimate(season => own.Sum(index => Stay(season, index)));
                    var spaces = plan.Scenario.Spaces.Length;
                    return new GrowerResult
                    {
                        Grower = grower,
                        Batches = own.Length,
                        TrayDays = days,
                        TrayDaysBySpace =
                        [
                            .. Enumerable
                                .Range(0, spaces)
                                .Select(space => days with { Mean = days.Mean * (space + 1) / (spaces * (spaces + 1) / 2) }),
                        ],
                        Share = own.Sum(index => Stay(capped[0], index)) / all,
                        FuelShare = own.Sum(index => plan.Batches[index].Trays) / (double)plan.Batches.Sum(batch => batch.Trays),
                        Peak = Estimate(_ => own.Sum(index => plan.Batches[index].Trays)),
                    };
                }),
        ];
    }

    public WorkResult Work()
    {
        var trays = plan.Batches.Sum(batch => batch.Trays);
        var weeks = (plan.Days + 6) / 7;
        var hours = new double[weeks];
        for (var index = 0; index < plan.Batches.Length; index++)
        {
            foreach (var day in capped[0].Steps[index].Where(day => day >= 0))
            {
                hours[day / 7] += plan.Batches[index].Trays * 3.5 / 60;
            }
        }

        return new WorkResult
        {
            Sown = Estimate(_ => trays),
            Potted = Estimate(_ => 0),
            Moved = Estimate(_ => trays * 2),
            SetOut = Estimate(season => trays - season.WaitingMost(SpaceKind.Table)),
            CarriedIn = Estimate(season => season.WaitingMost(SpaceKind.Mat) / 3),
            Hours = Estimate(season => hours.Sum() + season.WaitingMost(SpaceKind.Mat)),
            HoursByWeek = [.. hours.Select(hour => Estimate(_ => hour) with { P90 = hour * 1.25 })],
        };
    }

    private GroupResult Group(SpaceKind kind)
    {
        int[] own = [.. Enumerable.Range(0, plan.Scenario.Spaces.Length).Where(index => plan.Scenario.Spaces[index].Kind == kind)];
        var places = own.Sum(index => plan.Scenario.Spaces[index].Places);
        int[] shortage =
        [
            .. free.Select(season =>
                Math.Max(0, Enumerable.Range(0, plan.Days).Max(day => own.Sum(index => season.Held[index][day]) - places))
            ),
        ];
        int[] firstWait = [.. capped.Select(season => FirstDay(day => own.Any(index => season.Waiting[index][day] > 0)))];
        return new GroupResult
        {
            Kind = kind,
            Places = [.. Enumerable.Repeat(places, plan.Days)],
            Wanted = Days(day => free.Select(season => own.Sum(index => season.Held[index][day]))),
            Waiting = Days(day => capped.Select(season => own.Sum(index => season.Waiting[index][day]))),
            RunsOut = Figures.Chance(firstWait.Count(day => day >= 0), _seasons),
            RunsOutOn = Figures.Date(plan.FirstDay, firstWait, _seasons),
            Shortage = Figures.Estimate([.. shortage.Select(x => (double)x)]),
            ShortageOn = Figures.Date(plan.FirstDay, firstWait.Select((day, season) => shortage[season] > 0 ? day + 4 : -1), _seasons),
            WorstWaiting = Estimate(season => Enumerable.Range(0, plan.Days).Max(day => own.Sum(index => season.Waiting[index][day]))),
            WorstWaitingOn = Figures.Date(
                plan.FirstDay,
                capped.Select(season =>
                    Enumerable.Range(0, plan.Days).MaxBy(day => own.Sum(index => season.Waiting[index][day])) is var worst
                    && own.Any(index => season.Waiting[index][worst] > 0)
                        ? worst
                        : -1
                ),
                _seasons
            ),
        };
    }

    private BatchResult Batch(BatchPlan batch, int index)
    {
        int Late(ToySeason season) =>
            season.Steps[index][3] < 0 ? 20 : Math.Max(0, season.Steps[index][3] + plan.FirstDay.DayNumber - batch.SetOutOn.DayNumber);
        var plants = batch.Order.Plants;
        var none = Estimate(_ => 0);
        return new BatchResult
        {
            Plan = batch,
            SownFirst = Date(capped, season => season.Steps[index][0]),
            SownLast = Date(capped, season => season.Steps[index][0]),
            OffMat = batch.OffMatOn is null ? Date(capped, _ => -1) : Date(capped, season => season.Steps[index][1]),
            PottedUp = batch.PotUpOn is { } pot
                ? Date(capped, season => season.Steps[index][0] + pot.DayNumber - batch.SowOn.DayNumber)
                : Date(capped, _ => -1),
            OnTable = Date(capped, season => season.Steps[index][2]),
            OutFirst = Date(capped, season => season.Steps[index][3]),
            OutMedian = Date(capped, season => season.Steps[index][3]),
            OutLast = Date(capped, season => season.Steps[index][3]),
            PlantsOut = Estimate(season => season.Steps[index][3] < 0 ? 0 : plants),
            PlantsInTime = Estimate(season => Late(season) > 3 ? 0 : plants),
            PlantsShort = Estimate(season => season.Steps[index][3] < 0 ? plants : 0),
            LatePlantDays = Estimate(season => Late(season) > 3 ? Late(season) * plants : 0),
            DaysLate = Estimate(season => Late(season)),
            OverHeld = Estimate(season => Late(season) > 6 ? batch.Trays : 0),
            Discarded = ImmutableSortedDictionary.CreateRange(
                StringComparer.Ordinal,
                new Dictionary<string, Estimate>(StringComparer.Ordinal)
                {
                    ["FlatOverHeld"] = none,
                    ["NeverCameUp"] = none,
                    ["OverHeld"] = Estimate(season => Late(season) > 12 ? 1 : 0),
                    ["Surplus"] = none,
                }
            ),
            GivenUp = none,
            HoldTrayDays = Estimate(season => batch.Trays * (Late(season) % 3)),
            BlockedTrayDays =
            [
                .. plan.Scenario.Spaces.Select((_, space) => space == 0 ? Estimate(season => Late(season) * batch.Trays) : none),
            ],
            Complete = Figures.Chance(capped.Count(season => Late(season) <= 3), _seasons),
        };
    }

    private double Stay(ToySeason season, int index) =>
        season.Steps[index][0] < 0
            ? 0
            : ((season.Steps[index][3] < 0 ? plan.Days : season.Steps[index][3]) - season.Steps[index][0]) * plan.Batches[index].Trays;

    private int FirstDay(Predicate<int> test)
    {
        var day = 0;
        while (day < plan.Days && !test(day))
        {
            day++;
        }

        return day == plan.Days ? -1 : day;
    }

    private ImmutableArray<DaySpread> Days(Func<int, IEnumerable<int>> samples) =>
        [.. Enumerable.Range(0, plan.Days).Select(day => Figures.Day(samples(day)))];

    private DateSpread Date(ToySeason[] seasons, Func<ToySeason, int> day) => Figures.Date(plan.FirstDay, seasons.Select(day), _seasons);
}
