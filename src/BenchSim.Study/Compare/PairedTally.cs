using System.Collections.Immutable;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Compare;

/// <summary>Counts one variant against the base, season by season. All of it is whole numbers, so threads add up in any order.</summary>
internal sealed class PairedTally(int measures)
{
    private readonly PairedSums[] _sums = [.. Enumerable.Range(0, measures).Select(_ => new PairedSums())];
    private readonly PairedSums _fits = new();
    private int _both;
    private int _onlyBase;
    private int _onlyVariant;

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult baseSeason, long[] baseValues, SeasonResult variantSeason, long[] variantValues)
    {
        Add(baseSeason.Fits, variantSeason.Fits);
        for (var at = 0; at < _sums.Length; at++)
        {
            _sums[at].Add(baseValues[at], variantValues[at]);
        }
    }

    /// <summary>Counts whether one season fits.</summary>
    public void Add(bool inBase, bool inVariant)
    {
        _both += inBase && inVariant ? 1 : 0;
        _onlyBase += inBase && !inVariant ? 1 : 0;
        _onlyVariant += !inBase && inVariant ? 1 : 0;
        _fits.Add(inBase ? 1 : 0, inVariant ? 1 : 0);
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(PairedTally other)
    {
        _both += other._both;
        _onlyBase += other._onlyBase;
        _onlyVariant += other._onlyVariant;
        _fits.Merge(other._fits);
        for (var at = 0; at < _sums.Length; at++)
        {
            _sums[at].Merge(other._sums[at]);
        }
    }

    /// <summary>The change of the chance of fit.</summary>
    /// <param name="confidence">Confidence of the interval.</param>
    public FitChange Fits(double confidence)
    {
        var seasons = _fits.Pairs;
        (var low, var high) = PairedShares.Interval(_both, _onlyBase, _onlyVariant, seasons - _both - _onlyBase - _onlyVariant, confidence);
        return new FitChange
        {
            Base = Chances.Of(_both + _onlyBase, seasons),
            Variant = Chances.Of(_both + _onlyVariant, seasons),
            Both = _both,
            OnlyBase = _onlyBase,
            OnlyVariant = _onlyVariant,
            Low = low,
            High = high,
            VarianceRatio = _fits.VarianceRatio,
        };
    }

    /// <summary>The changes of the measures.</summary>
    /// <param name="shown">The measures, in the order counted.</param>
    /// <param name="confidence">Confidence of each interval.</param>
    public ImmutableArray<MeasureChange> Changes(ImmutableArray<Measure> shown, double confidence)
    {
        return [.. shown.Select((measure, at) => _sums[at].ToChange(measure, confidence))];
    }
}
