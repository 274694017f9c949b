using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Counting;

/// <summary>
/// Everything that is kept of the seasons one thread has played: the figures of each kind of owner. All of it is whole numbers, so adding
/// two tallies gives what one thread would have counted, in any order and any split (docs/decisions/004-exact-counting.md).
/// </summary>
public sealed class SeasonTally
{
    private readonly PlanShape _shape;
    private readonly RoomySeason _roomy = new();
    private readonly FigureTally<WholeSeason> _whole;
    private readonly FigureTally<SpaceSeason> _spaces;
    private readonly FigureTally<GroupSeason> _groups;
    private readonly FigureTally<BatchSeason> _batches;
    private readonly FigureTally<GrowerSeason> _growers;
    private readonly FigureTally<HouseSeason> _houses;
    private readonly FigureTally<MatSeason> _mats;
    private readonly WaitTally _waits;
    private readonly FigureTally<WorkSeason> _work;
    private readonly FigureTally[] _all;
    private int _seasons;

    /// <summary>An empty tally.</summary>
    /// <param name="plan">The plan whose seasons are counted.</param>
    public SeasonTally(SeasonPlan plan)
        : this(new PlanShape(plan)) { }

    internal SeasonTally(PlanShape shape)
    {
        _shape = shape;
        var scenario = shape.Plan.Scenario;
        _whole = new([new WholeSeason(shape)], WholeFigures.All, shape.Days);
        _spaces = new([.. scenario.Spaces.Select((_, space) => new SpaceSeason(shape, space))], SpaceFigures.All, shape.Days);
        _groups = new([.. shape.Groups.Select(group => new GroupSeason(group))], GroupFigures.All, shape.Days);
        _batches = new([.. shape.Wanted.Select((_, batch) => new BatchSeason(shape, batch))], BatchFigures.All, shape.Days);
        _growers = new([.. shape.Growers.Select((_, grower) => new GrowerSeason(shape, grower))], GrowerFigures.All, shape.Days);
        _houses = new([.. scenario.Houses.Select((_, house) => new HouseSeason(shape.Plan, house))], HouseFigures.All, shape.Days);
        _mats = new(
            [
                .. Enumerable
                    .Range(0, scenario.Spaces.Length)
                    .Where(space => scenario.Spaces[space].Power is not null)
                    .Select(space => new MatSeason(scenario, space)),
            ],
            MatFigures.All,
            shape.Days
        );
        _waits = new WaitTally(shape);
        _work = new([new WorkSeason(shape)], WorkFigures.All, shape.Days);
        _all = [_whole, _spaces, _groups, _batches, _growers, _houses, _mats, _waits, _work];
    }

    /// <summary>Seasons counted.</summary>
    public int Seasons => _seasons;

    /// <summary>Counts one season.</summary>
    /// <param name="asGiven">The season with places as given.</param>
    /// <param name="unlimited">The same season with places without limit.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public void Add(SeasonResult asGiven, SeasonResult unlimited)
    {
        ArgumentNullException.ThrowIfNull(asGiven);
        ArgumentNullException.ThrowIfNull(unlimited);
        _roomy.Read(unlimited);
        Add(asGiven, _roomy);
    }

    /// <summary>Counts one season.</summary>
    /// <param name="asGiven">The season with places as given.</param>
    /// <param name="roomy">The same season with places without limit.</param>
    internal void Add(SeasonResult asGiven, RoomySeason roomy)
    {
        _seasons++;
        foreach (var tally in _all)
        {
            tally.Add(asGiven, roomy);
        }
    }

    /// <summary>Adds another tally of the same plan.</summary>
    /// <param name="other">The other.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    public void Merge(SeasonTally other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _seasons += other._seasons;
        for (var kind = 0; kind < _all.Length; kind++)
        {
            _all[kind].Merge(other._all[kind]);
        }
    }

    /// <summary>Names every count.</summary>
    internal void Exchange(ITallyExchange exchange)
    {
        exchange.Seasons(ref _seasons);
        foreach (var tally in _all)
        {
            tally.Exchange(exchange);
        }
    }

    /// <summary>Chance that a season fits, days of weather hold excepted; at least one season counted.</summary>
    public Chance Fits() => (Chance)_whole.Tell(WholeFigures.Fits, 0, Telling());

    /// <summary>Late plant-days; at least one season counted.</summary>
    public Estimate LatePlantDays() => (Estimate)_whole.Tell(WholeFigures.LatePlantDays, 0, Telling());

    /// <summary>The answer; at least one season counted.</summary>
    /// <param name="seed">Seed the seasons were played with.</param>
    public StudyResult ToResult(ulong seed)
    {
        var telling = Telling();
        var plan = _shape.Plan;
        return new StudyResult
        {
            Plan = plan,
            Seasons = _seasons,
            Seed = seed,
            PlantsWanted = _shape.PlantsWanted,
            Figures = _whole.Tell(0, telling),
            Spaces =
            [
                .. plan.Scenario.Spaces.Select(
                    (space, at) =>
                        new SpaceResult
                        {
                            Space = space,
                            Places = [.. _shape.Places[at]],
                            Figures = _spaces.Tell(at, telling),
                        }
                ),
            ],
            Groups =
            [
                .. _shape.Groups.Select(
                    (group, at) =>
                        new GroupResult
                        {
                            Kind = group.Kind,
                            Places = [.. group.Places],
                            Figures = _groups.Tell(at, telling),
                        }
                ),
            ],
            Waits = _waits.ToResults(telling),
            Batches = [.. plan.Batches.Select((batch, at) => new BatchResult { Plan = batch, Figures = _batches.Tell(at, telling) })],
            Growers = Growers(telling),
            Houses = [.. _houses.Owners.Select((house, at) => House(house, at, telling))],
            MatPower =
            [
                .. _mats.Owners.Select(
                    (mats, at) => new MatPowerResult(mats.Space, (Estimate)_mats.Tell(MatFigures.KilowattHours, at, telling))
                ),
            ],
            Work = new WorkResult { Figures = _work.Tell(0, telling) },
        };
    }

    private Telling Telling() => new(_shape.Plan.FirstDay, _seasons);

    private HouseResult House(HouseSeason house, int at, Telling telling)
    {
        var told = new HouseResult
        {
            House = house.House,
            Figures = _houses.Tell(at, telling),
            Months = [],
        };
        return told.Has(HouseFigures.FuelByMonth)
            ? told with
            {
                Months = [.. house.Months.Zip(told[HouseFigures.FuelByMonth], (month, fuel) => new MonthFuel(month, fuel))],
            }
            : told;
    }

    private ImmutableArray<GrowerResult> Growers(Telling telling)
    {
        double[][] trayDays = [.. _growers.Owners.Select((_, grower) => _growers.Sums(GrowerFigures.TrayDaysBySpace, grower, telling))];
        var everyones = trayDays.Sum(ofGrower => ofGrower.Sum());
        var fuel = FuelShares.Of(
            _shape.Plan.Scenario,
            [.. _houses.Owners.Select((_, house) => _houses.Sums(HouseFigures.Fuel, house, telling)[0])],
            trayDays
        );
        return
        [
            .. _shape
                .Growers.Select(
                    (grower, at) =>
                        new GrowerResult
                        {
                            Grower = grower,
                            Batches = _shape.Plan.Batches.Count(batch =>
                                string.Equals(batch.Order.Grower, grower, StringComparison.Ordinal)
                            ),
                            Share = everyones == 0 ? 0 : trayDays[at].Sum() / everyones,
                            FuelShare = fuel[at],
                            Figures = _growers.Tell(at, telling),
                        }
                )
                .OrderBy(grower => grower.Grower, StringComparer.Ordinal),
        ];
    }
}
