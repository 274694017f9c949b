using System.Collections.Concurrent;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Kept;

/// <summary>
/// Keeps, across plays, what is told of seasons played with places without limit: it does not depend on the places there are, so a play
/// that differs from an earlier one in its places alone finds it here. Results do not depend on what is kept. Safe for use by several
/// threads.
/// </summary>
/// <remarks>
/// Bounded: the plan that has not been played for longest goes first; a plan that fills it alone keeps no further seasons.
/// </remarks>
public sealed class KeptSeasons
{
    /// <summary>Bytes kept at most where nothing else is said: 64 MiB, some 20,000 seasons of a spring of two houses.</summary>
    public const long UsualBytes = 64L * 1024 * 1024;

    // Records in arrays of plans: a plan of 10,000 sowings has some 10,000.
    private const long MostInArrays = 1_000_000;

    private readonly Lock _gate = new();
    private readonly long _mostBytes;

    // The one played last stands last.
    private readonly List<KeptPlan> _plans = [];
    private readonly SameArrays _same = new();
    private long _bytes;

    /// <summary>Makes one that keeps nothing yet.</summary>
    /// <param name="mostBytes">Bytes kept at most, 0 or more.</param>
    public KeptSeasons(long mostBytes = UsualBytes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mostBytes);
        _mostBytes = mostBytes;
    }

    /// <summary>The climates of the seasons, kept and bounded by themselves.</summary>
    public ClimateStore Climates { get; } = new();

    /// <summary>Bytes kept now, about; climates not counted.</summary>
    public long Bytes => Interlocked.Read(ref _bytes);

    /// <summary>The seasons of a plan, whatever its places.</summary>
    internal KeptPlan Of(SeasonPlan plan, ulong seed)
    {
        lock (_gate)
        {
            if (_same.Length > MostInArrays)
            {
                Clear();
            }

            var key = PlanWithoutPlaces.Of(plan, _same);
            var kept = _plans.Find(each => each.Seed == seed && each.Plan.Equals(key)) ?? new KeptPlan(this, key, seed);
            _plans.Remove(kept);
            _plans.Add(kept);
            return kept;
        }
    }

    /// <summary>Makes room for more bytes of a plan; false where there is none.</summary>
    internal bool Keep(KeptPlan plan, long bytes)
    {
        lock (_gate)
        {
            while (_bytes + bytes > _mostBytes && _plans.Count > 0 && _plans[0] != plan)
            {
                _bytes -= _plans[0].Clear();
                _plans.RemoveAt(0);
            }

            if (_bytes + bytes > _mostBytes || !_plans.Contains(plan))
            {
                return false;
            }

            _bytes += bytes;
            plan.Bytes += bytes;
            return true;
        }
    }

    private void Clear()
    {
        foreach (var plan in _plans)
        {
            _bytes -= plan.Clear();
        }

        _plans.Clear();
        _same.Clear();
    }
}

/// <summary>The seasons of one plan and seed, played without limits.</summary>
internal sealed class KeptPlan(KeptSeasons kept, SeasonPlan plan, ulong seed)
{
    private readonly ConcurrentDictionary<int, RoomySeason> _seasons = new();

    /// <summary>The plan, its places left out.</summary>
    public SeasonPlan Plan => plan;

    /// <summary>Seed of all luck.</summary>
    public ulong Seed => seed;

    /// <summary>Bytes of the seasons; their keeper's to count.</summary>
    public long Bytes { get; set; }

    /// <summary>A season; null where it is not kept.</summary>
    public RoomySeason? Find(int season) => _seasons.GetValueOrDefault(season);

    /// <summary>Keeps a copy of a season, unless it is kept already or there is no room.</summary>
    public void Keep(int season, RoomySeason roomy)
    {
        if (!_seasons.ContainsKey(season) && kept.Keep(this, roomy.Bytes))
        {
            _seasons.TryAdd(season, roomy.Copy());
        }
    }

    /// <summary>Lets everything go; their keeper's to call.</summary>
    /// <returns>Bytes let go.</returns>
    public long Clear()
    {
        _seasons.Clear();
        return Bytes;
    }
}
