using System.Runtime.CompilerServices;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts one space.</summary>
internal sealed class SpaceTally(int[] places)
{
    private readonly DayTally _held = new(places.Length);
    private readonly DayTally _wanted = new(places.Length);
    private readonly DayTally _waiting = new(places.Length);
    private readonly ExactTally _peak = new();
    private readonly ExactTally _peakOn = new();
    private readonly ExactTally _daysFull = new();
    private readonly WideTally _trayDays = new();
    private readonly WideTally _waitedDays = new();

    /// <summary>Counts one season.</summary>
    /// <param name="held">Places held by day, places as given.</param>
    /// <param name="waiting">Places refused by day.</param>
    /// <param name="wanted">Places held by day, places without limit.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(int[] held, int[] waiting, int[] wanted)
    {
        _held.Add(held);
        _wanted.Add(wanted);
        _waiting.Add(waiting);
        var peak = 0;
        var peakOn = -1;
        var full = 0;
        long trayDays = 0;
        long waitedDays = 0;
        for (var day = 0; day < places.Length; day++)
        {
            if (held[day] > peak)
            {
                peak = held[day];
                peakOn = day;
            }

            // Trays in the aisle, or places given up under standing trays, put held above places: that is full too.
            if (places[day] > 0 && held[day] >= places[day])
            {
                full++;
            }

            trayDays += held[day];
            waitedDays += waiting[day];
        }

        _peak.Add(peak);
        if (peakOn >= 0)
        {
            _peakOn.Add(peakOn);
        }

        _daysFull.Add(full);
        _trayDays.Add(trayDays);
        _waitedDays.Add(waitedDays);
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(SpaceTally other)
    {
        _held.Merge(other._held);
        _wanted.Merge(other._wanted);
        _waiting.Merge(other._waiting);
        _peak.Merge(other._peak);
        _peakOn.Merge(other._peakOn);
        _daysFull.Merge(other._daysFull);
        _trayDays.Merge(other._trayDays);
        _waitedDays.Merge(other._waitedDays);
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        exchange.Every(_held);
        exchange.Every(_wanted);
        exchange.Every(_waiting);
        exchange.Every(_peak);
        exchange.Some(_peakOn, places.Length);
        exchange.Every(_daysFull);
        exchange.Every(_trayDays);
        exchange.Every(_waitedDays);
    }

    /// <summary>What was counted.</summary>
    public SpaceResult ToResult(Space space, DateOnly firstDay, int seasons, StudentFactors student) =>
        new()
        {
            Space = space,
            Places = [.. places],
            Held = _held.ToSpreads(),
            Wanted = _wanted.ToSpreads(),
            Waiting = _waiting.ToSpreads(),
            Peak = _peak.ToEstimate(student),
            PeakOn = _peakOn.ToDates(firstDay, seasons),
            DaysFull = _daysFull.ToEstimate(student),
            TrayDays = _trayDays.ToEstimate(student),
            WaitedDays = _waitedDays.ToEstimate(student),
        };
}
