using System.Collections.Immutable;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts what is said of the season as a whole.</summary>
internal sealed class VerdictTally(PlanShape shape)
{
    private static readonly Cause[] AllCauses = Enum.GetValues<Cause>();

    private readonly int[] _causes = new int[AllCauses.Length];
    private readonly ExactTally _plantsInTime = new();
    private readonly ExactTally _plantsLate = new();
    private readonly ExactTally _plantsShort = new();
    private readonly WideTally _latePlantDays = new();
    private readonly ExactTally _overHeld = new();
    private readonly ExactTally _discarded = new();
    private readonly ExactTally _stillStanding = new();
    private readonly WideTally[] _reliefUses = TallyArrays.Make<WideTally>(shape.Plan.Scenario.Rules.Reliefs.Length);
    private int _fits;
    private int _fitsWeatherCounted;
    private int _sownTooLate;
    private int _overHeldForPlace;
    private int _tooFewInTime;

    // A share like 0.95 is not a binary fraction: in decimal, 0.95 x 60 is 57 and nothing more.
    private readonly decimal _goal = (decimal)shape.Plan.Scenario.Rules.ServiceGoal * shape.PlantsWanted;

    /// <summary>Seasons counted.</summary>
    public int Seasons { get; private set; }

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult asGiven, SeasonResult unlimited)
    {
        Seasons++;
        if (asGiven.Fits)
        {
            _fits++;
        }

        if (asGiven.FitsWeatherCounted)
        {
            _fitsWeatherCounted++;
        }
        else
        {
            _causes[(int)CauseOf(asGiven, unlimited)]++;
        }

        if (!asGiven.SownInTime)
        {
            _sownTooLate++;
        }

        if (!asGiven.NoneOverHeldForPlace)
        {
            _overHeldForPlace++;
        }

        if (asGiven.PlantsInTime < _goal)
        {
            _tooFewInTime++;
        }

        _plantsInTime.Add(checked((int)asGiven.PlantsInTime));
        _plantsLate.Add(checked((int)(asGiven.PlantsOut - asGiven.PlantsInTime)));
        _plantsShort.Add(checked((int)(shape.PlantsWanted - asGiven.PlantsOut)));
        AddBatches(asGiven.Batches);
        for (var relief = 0; relief < _reliefUses.Length; relief++)
        {
            _reliefUses[relief].Add(asGiven.ReliefUses[relief]);
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(VerdictTally other)
    {
        Seasons += other.Seasons;
        _fits += other._fits;
        _fitsWeatherCounted += other._fitsWeatherCounted;
        _sownTooLate += other._sownTooLate;
        _overHeldForPlace += other._overHeldForPlace;
        _tooFewInTime += other._tooFewInTime;
        for (var cause = 0; cause < _causes.Length; cause++)
        {
            _causes[cause] += other._causes[cause];
        }

        _plantsInTime.Merge(other._plantsInTime);
        _plantsLate.Merge(other._plantsLate);
        _plantsShort.Merge(other._plantsShort);
        _latePlantDays.Merge(other._latePlantDays);
        _overHeld.Merge(other._overHeld);
        _discarded.Merge(other._discarded);
        _stillStanding.Merge(other._stillStanding);
        _reliefUses.Merge(other._reliefUses);
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        var seasons = Seasons;
        exchange.Seasons(ref seasons);
        Seasons = seasons;
        exchange.Seasons(ref _fits);
        exchange.Seasons(ref _fitsWeatherCounted);
        exchange.Seasons(ref _sownTooLate);
        exchange.Seasons(ref _overHeldForPlace);
        exchange.Seasons(ref _tooFewInTime);
        for (var cause = 0; cause < _causes.Length; cause++)
        {
            exchange.Seasons(ref _causes[cause]);
        }

        exchange.Every(_plantsInTime);
        exchange.Every(_plantsLate);
        exchange.Every(_plantsShort);
        exchange.Every(_latePlantDays);
        exchange.Every(_overHeld);
        exchange.Every(_discarded);
        exchange.Every(_stillStanding);
        exchange.Every(_reliefUses);
    }

    /// <summary>Chance that a season fits, weather holds excepted.</summary>
    public Chance Fits() => Chances.Of(_fits, Seasons);

    /// <summary>Chance that a season fits, every late day counted.</summary>
    public Chance FitsWeatherCounted() => Chances.Of(_fitsWeatherCounted, Seasons);

    /// <summary>Chance that some batch is sown too late or not in full.</summary>
    public Chance SownTooLate() => Chances.Of(_sownTooLate, Seasons);

    /// <summary>Chance that some tray is over-held for lack of a place.</summary>
    public Chance OverHeldForPlace() => Chances.Of(_overHeldForPlace, Seasons);

    /// <summary>Chance that fewer plants than the goal are in time.</summary>
    public Chance TooFewInTime() => Chances.Of(_tooFewInTime, Seasons);

    /// <summary>Seasons that do not fit with every late day counted, by cause.</summary>
    public ImmutableSortedDictionary<Cause, int> Causes() =>
        AllCauses.ToImmutableSortedDictionary(cause => cause, cause => _causes[(int)cause]);

    /// <summary>Wanted plants out in time.</summary>
    public Estimate PlantsInTime(StudentFactors student) => _plantsInTime.ToEstimate(student);

    /// <summary>Wanted plants out, but late.</summary>
    public Estimate PlantsLate(StudentFactors student) => _plantsLate.ToEstimate(student);

    /// <summary>Wanted plants never out.</summary>
    public Estimate PlantsShort(StudentFactors student) => _plantsShort.ToEstimate(student);

    /// <summary>Late plant-days.</summary>
    public Estimate LatePlantDays(StudentFactors student) => _latePlantDays.ToEstimate(student);

    /// <summary>Trays over-held.</summary>
    public Estimate OverHeld(StudentFactors student) => _overHeld.ToEstimate(student);

    /// <summary>Trays and flats thrown out.</summary>
    public Estimate Discarded(StudentFactors student) => _discarded.ToEstimate(student);

    /// <summary>Trays and flats standing on the last day.</summary>
    public Estimate StillStanding(StudentFactors student) => _stillStanding.ToEstimate(student);

    /// <summary>Uses of each relief.</summary>
    public ImmutableArray<Estimate> ReliefUses(StudentFactors student) => _reliefUses.ToEstimates(student);

    // The first that holds, in the order of docs/model.md section 9.
    private Cause CauseOf(SeasonResult asGiven, SeasonResult unlimited)
    {
        if (asGiven.Fits)
        {
            return Cause.Hold;
        }

        if (unlimited.Fits)
        {
            return Cause.Place;
        }

        if (unlimited.PlantsOut >= _goal)
        {
            return Cause.SlowGrowth;
        }

        return IsThrownOut(unlimited.Batches) ? Cause.ThrownOut : Cause.Germination;
    }

    // Batches, not trays: a tray thrown out does not tell how many of its plants would have been wanted.
    private bool IsThrownOut(BatchOutcome[] batches)
    {
        long missing = 0;
        long missingOfThrownOut = 0;
        for (var batch = 0; batch < batches.Length; batch++)
        {
            var ofBatch = Math.Max(0, shape.Wanted[batch] - batches[batch].PlantsOut);
            var discarded = batches[batch].Discarded;
            missing += ofBatch;
            if (discarded[(int)DiscardReason.OverHeld] + discarded[(int)DiscardReason.FlatOverHeld] > 0)
            {
                missingOfThrownOut += ofBatch;
            }
        }

        return 2 * missingOfThrownOut >= missing;
    }

    private void AddBatches(BatchOutcome[] batches)
    {
        long latePlantDays = 0;
        var overHeld = 0;
        var discarded = 0;
        var standing = 0;
        foreach (var batch in batches)
        {
            latePlantDays += batch.LatePlantDays;
            overHeld += batch.OverHeld;
            foreach (var trays in batch.Discarded)
            {
                discarded += trays;
            }

            standing += batch.TraysStanding + batch.FlatsStanding;
        }

        _latePlantDays.Add(latePlantDays);
        _overHeld.Add(overHeld);
        _discarded.Add(discarded);
        _stillStanding.Add(standing);
    }
}
