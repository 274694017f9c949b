using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// Keeps the weather of seasons, and the room in which their heat is worked out, across plays: a play that differs from an earlier one in
/// its places alone finds all its weather there. Results do not depend on it. Safe for use by several threads.
/// </summary>
/// <remarks>
/// Bounded: what has not been used for longest goes first, all seasons of one weather at once, and never while one of them is played. Where
/// a play alone fills the store, its further seasons are not kept but worked out anew.
/// </remarks>
public sealed class ClimateStore
{
    /// <summary>Bytes that a store keeps at most where nothing else is said: 256 MiB.</summary>
    public const long UsualBytes = 256L * 1024 * 1024;

    private readonly Lock _gate = new();
    private readonly List<KeptClimates> _kept = [];

    /// <summary>Makes an empty store.</summary>
    /// <param name="mostBytes">Bytes that it keeps at most, 0 or more.</param>
    public ClimateStore(long mostBytes = UsualBytes)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mostBytes);
        MostBytes = mostBytes;
    }

    /// <summary>Bytes that it keeps at most.</summary>
    public long MostBytes { get; }

    /// <summary>Bytes it keeps now.</summary>
    public long Bytes { get; private set; }

    /// <summary>Whether the weather of a season that is drawn by itself is kept: not where each is played once.</summary>
    internal bool KeepsDrawn { get; private init; } = true;

    /// <summary>
    /// A store for plans that are played side by side, season by season, once: they share the heat of the season, and no weather is kept
    /// that would not be asked for again.
    /// </summary>
    public static ClimateStore OfOnePlay() => new() { KeepsDrawn = false };

    /// <summary>The seasons of a scenario's weather.</summary>
    internal KeptClimates Of(Scenario scenario, int days, ulong seed)
    {
        var key = ClimateKey.Of(scenario, days, seed);
        lock (_gate)
        {
            var kept = _kept.Find(each => each.Key.Equals(key)) ?? new KeptClimates(this, key, scenario);
            _kept.Remove(kept);
            _kept.Add(kept);
            return kept;
        }
    }

    /// <summary>Makes room for more bytes of some seasons; false where there is none.</summary>
    internal bool Keep(KeptClimates climates, long bytes)
    {
        lock (_gate)
        {
            if (climates.IsDropped)
            {
                return false;
            }

            var at = 0;
            while (Bytes + bytes > MostBytes && at < _kept.Count)
            {
                if (_kept[at] == climates || !_kept[at].TryDrop())
                {
                    at++;
                    continue;
                }

                Bytes -= _kept[at].Bytes;
                _kept.RemoveAt(at);
            }

            if (Bytes + bytes > MostBytes)
            {
                return false;
            }

            climates.Bytes += bytes;
            Bytes += bytes;
            return true;
        }
    }

    /// <summary>Tells that bytes of some seasons are let go.</summary>
    internal void Free(KeptClimates climates, long bytes)
    {
        lock (_gate)
        {
            if (!climates.IsDropped)
            {
                climates.Bytes -= bytes;
                Bytes -= bytes;
            }
        }
    }
}
