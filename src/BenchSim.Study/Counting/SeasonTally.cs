using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>
/// Everything that is kept of the seasons one thread has played. All of it is whole numbers, so adding two tallies gives what one thread
/// would have counted, in any order and any split (docs/decisions/004-exact-counting.md).
/// </summary>
internal sealed class SeasonTally
{
    private readonly PlanShape _shape;
    private readonly VerdictTally _verdict;
    private readonly SpaceTally[] _spaces;
    private readonly GroupTally[] _groups;
    private readonly WaitTally[] _waits;
    private readonly BatchTally[] _batches;
    private readonly GrowerTally[] _growers;
    private readonly HouseTally[] _houses;
    private readonly MatTally[] _mats;
    private readonly WorkTally _work;

    /// <summary>An empty tally.</summary>
    public SeasonTally(PlanShape shape)
    {
        _shape = shape;
        var spaces = shape.Places.Length;
        _verdict = new VerdictTally(shape);
        _spaces = [.. shape.Places.Select(places => new SpaceTally(places))];
        _groups = [.. shape.Groups.Select(group => new GroupTally(group))];
        _waits = [.. shape.Waits.Select(wait => new WaitTally(wait, shape.Weeks))];
        _batches = [.. shape.Wanted.Select((wanted, batch) => new BatchTally(spaces, wanted, shape.SetOutDay[batch]))];
        _growers = [.. shape.Growers.Select(_ => new GrowerTally(spaces))];
        var scenario = shape.Plan.Scenario;
        _houses = [.. Enumerable.Range(0, scenario.Houses.Length).Select(house => new HouseTally(shape.Plan, house))];
        _mats =
        [
            .. Enumerable
                .Range(0, spaces)
                .Where(space => scenario.Spaces[space].Power is not null)
                .Select(space => new MatTally(scenario.Spaces[space], space)),
        ];
        _work = new WorkTally(shape.Plan.Scenario.Rules.Minutes, shape.Days);
    }

    /// <summary>Counts one season.</summary>
    /// <param name="asGiven">The season with places as given.</param>
    /// <param name="unlimited">The same season with places without limit.</param>
    public void Add(SeasonResult asGiven, SeasonResult unlimited)
    {
        _verdict.Add(asGiven, unlimited);
        for (var space = 0; space < _spaces.Length; space++)
        {
            _spaces[space].Add(asGiven.Held[space], asGiven.Waiting[space], unlimited.Held[space]);
        }

        foreach (var group in _groups)
        {
            group.Add(asGiven.Waiting, unlimited.Held);
        }

        foreach (var wait in _waits)
        {
            wait.Add(asGiven.Refused);
        }

        for (var batch = 0; batch < _batches.Length; batch++)
        {
            _batches[batch].Add(asGiven.Batches[batch]);
        }

        for (var grower = 0; grower < _growers.Length; grower++)
        {
            _growers[grower].Add(asGiven.HeldByGrower[grower], asGiven.TrayDays[grower]);
        }

        foreach (var house in _houses)
        {
            house.Add(asGiven);
        }

        foreach (var mats in _mats)
        {
            mats.Add(asGiven);
        }

        _work.Add(asGiven);
    }

    /// <summary>Adds another tally of the same plan.</summary>
    public void Merge(SeasonTally other)
    {
        _verdict.Merge(other._verdict);
        for (var space = 0; space < _spaces.Length; space++)
        {
            _spaces[space].Merge(other._spaces[space]);
        }

        for (var group = 0; group < _groups.Length; group++)
        {
            _groups[group].Merge(other._groups[group]);
        }

        for (var wait = 0; wait < _waits.Length; wait++)
        {
            _waits[wait].Merge(other._waits[wait]);
        }

        for (var batch = 0; batch < _batches.Length; batch++)
        {
            _batches[batch].Merge(other._batches[batch]);
        }

        for (var grower = 0; grower < _growers.Length; grower++)
        {
            _growers[grower].Merge(other._growers[grower]);
        }

        for (var house = 0; house < _houses.Length; house++)
        {
            _houses[house].Merge(other._houses[house]);
        }

        for (var mats = 0; mats < _mats.Length; mats++)
        {
            _mats[mats].Merge(other._mats[mats]);
        }

        _work.Merge(other._work);
    }

    /// <summary>Seasons counted.</summary>
    public int Seasons => _verdict.Seasons;

    /// <summary>Chance that a season fits, days of weather hold excepted; at least one season counted.</summary>
    public Chance Fits() => _verdict.Fits();

    /// <summary>Late plant-days; at least one season counted.</summary>
    public Estimate LatePlantDays() => _verdict.LatePlantDays(new StudentFactors());

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        _verdict.Exchange(exchange);
        foreach (var space in _spaces)
        {
            space.Exchange(exchange);
        }

        foreach (var group in _groups)
        {
            group.Exchange(exchange);
        }

        foreach (var batch in _batches)
        {
            batch.Exchange(exchange, _shape.Days);
        }

        foreach (var grower in _growers)
        {
            grower.Exchange(exchange);
        }

        foreach (var house in _houses)
        {
            house.Exchange(exchange);
        }

        foreach (var mats in _mats)
        {
            mats.Exchange(exchange);
        }

        foreach (var wait in _waits)
        {
            wait.Exchange(exchange);
        }

        _work.Exchange(exchange);
    }

    /// <summary>The answer; at least one season counted.</summary>
    /// <param name="seed">Seed the seasons were played with.</param>
    public StudyResult ToResult(ulong seed)
    {
        StudentFactors student = new();
        var plan = _shape.Plan;
        var seasons = _verdict.Seasons;
        return new StudyResult
        {
            Plan = plan,
            Seasons = seasons,
            Seed = seed,
            Fits = _verdict.Fits(),
            FitsWeatherCounted = _verdict.FitsWeatherCounted(),
            SownTooLate = _verdict.SownTooLate(),
            OverHeldForPlace = _verdict.OverHeldForPlace(),
            TooFewInTime = _verdict.TooFewInTime(),
            Causes = _verdict.Causes(),
            PlantsWanted = _shape.PlantsWanted,
            PlantsInTime = _verdict.PlantsInTime(student),
            PlantsLate = _verdict.PlantsLate(student),
            PlantsShort = _verdict.PlantsShort(student),
            LatePlantDays = _verdict.LatePlantDays(student),
            OverHeld = _verdict.OverHeld(student),
            Discarded = _verdict.Discarded(student),
            StillStanding = _verdict.StillStanding(student),
            ReliefUses = _verdict.ReliefUses(student),
            Spaces = [.. _spaces.Select((tally, space) => tally.ToResult(plan.Scenario.Spaces[space], plan.FirstDay, seasons, student))],
            Groups = [.. _groups.Select(tally => tally.ToResult(plan.FirstDay, seasons, student))],
            Waits = [.. _waits.Select(tally => tally.ToResult(plan.Scenario, seasons, student))],
            Batches = [.. _batches.Select((tally, batch) => tally.ToResult(plan.Batches[batch], plan.FirstDay, seasons, student))],
            Growers = Growers(seasons, student),
            Houses = [.. _houses.Select(house => house.ToResult(student))],
            MatPower = [.. _mats.Select(mats => mats.ToResult(student))],
            Work = _work.ToResult(student),
        };
    }

    private ImmutableArray<GrowerResult> Growers(int seasons, StudentFactors student)
    {
        var everyones = _growers.Sum(grower => grower.AllTrayDays());
        var fuel = FuelShares.Of(
            _shape.Plan.Scenario,
            [.. _houses.Select(house => house.AllWattHours)],
            [.. _growers.Select(grower => grower.TrayDaysBySpace)]
        );
        return
        [
            .. _growers
                .Select(
                    (tally, grower) =>
                        tally.ToResult(_shape.Growers[grower], Batches(_shape.Growers[grower]), everyones, seasons, student) with
                        {
                            FuelShare = fuel[grower],
                        }
                )
                .OrderBy(grower => grower.Grower, StringComparer.Ordinal),
        ];

        int Batches(string name) => _shape.Plan.Batches.Count(batch => string.Equals(batch.Order.Grower, name, StringComparison.Ordinal));
    }
}
