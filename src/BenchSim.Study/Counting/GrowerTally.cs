using System.Collections.Immutable;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts one grower.</summary>
internal sealed class GrowerTally(int spaces)
{
    private readonly WideTally _trayDays = new();
    private readonly long[] _trayDaysBySpace = new long[spaces];
    private readonly ExactTally _peak = new();

    /// <summary>Counts one season.</summary>
    /// <param name="held">Places held by day.</param>
    /// <param name="trayDays">Tray-days by space.</param>
    public void Add(int[] held, long[] trayDays)
    {
        long total = 0;
        for (var space = 0; space < _trayDaysBySpace.Length; space++)
        {
            _trayDaysBySpace[space] += trayDays[space];
            total += trayDays[space];
        }

        _trayDays.Add(total);
        var peak = 0;
        foreach (var places in held)
        {
            peak = Math.Max(peak, places);
        }

        _peak.Add(peak);
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(GrowerTally other)
    {
        _trayDays.Merge(other._trayDays);
        for (var space = 0; space < _trayDaysBySpace.Length; space++)
        {
            _trayDaysBySpace[space] += other._trayDaysBySpace[space];
        }

        _peak.Merge(other._peak);
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        exchange.Every(_trayDays);
        exchange.Sums(_trayDaysBySpace);
        exchange.Every(_peak);
    }

    /// <summary>Tray-days over all seasons, by space.</summary>
    public long[] TrayDaysBySpace => _trayDaysBySpace;

    /// <summary>Tray-days over all seasons and spaces.</summary>
    public long AllTrayDays() => _trayDaysBySpace.Sum();

    /// <summary>What was counted.</summary>
    /// <param name="grower">Name.</param>
    /// <param name="batches">Batches of the grower.</param>
    /// <param name="everyones">Tray-days of all growers over all seasons.</param>
    /// <param name="seasons">Seasons counted.</param>
    /// <param name="student">Student factors.</param>
    public GrowerResult ToResult(string grower, int batches, long everyones, int seasons, StudentFactors student) =>
        new()
        {
            Grower = grower,
            Batches = batches,
            TrayDays = _trayDays.ToEstimate(student),
            TrayDaysBySpace = [.. _trayDaysBySpace.Select(trayDays => (double)trayDays / seasons)],
            Share = everyones == 0 ? 0 : (double)AllTrayDays() / everyones,
            Peak = _peak.ToEstimate(student),
        };
}
