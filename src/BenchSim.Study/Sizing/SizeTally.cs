using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Sizing;

/// <summary>Counts the seasons of one number of places. All of it is whole numbers, so threads add up in any order.</summary>
internal sealed class SizeTally
{
    private int _seasons;
    private int _fits;
    private long _inTime;
    private Int128 _late;
    private Int128 _lateSquares;

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult season)
    {
        _seasons++;
        _fits += season.Fits ? 1 : 0;
        _inTime += season.PlantsInTime;
        var late = MeasuredSeason.LatePlantDaysOf(season.Batches);
        _late += late;
        _lateSquares += (Int128)late * late;
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(SizeTally other)
    {
        _seasons += other._seasons;
        _fits += other._fits;
        _inTime += other._inTime;
        _late += other._late;
        _lateSquares += other._lateSquares;
    }

    /// <summary>What was counted.</summary>
    /// <param name="places">Number of places; null for no limit.</param>
    /// <param name="goal">What has to be met.</param>
    public SizePoint ToPoint(int? places, SizeGoal goal)
    {
        (var low, var high) = Wilson.Interval(_fits, _seasons, goal.Confidence);
        return new SizePoint(
            places,
            new Chance(_fits, _seasons, low, high),
            (double)_late / _seasons,
            HalfWidth(goal.Confidence),
            (double)_inTime / _seasons,
            low >= goal.Share
        );
    }

    private double HalfWidth(double confidence)
    {
        if (_seasons < 2)
        {
            return double.NaN;
        }

        // n x sum of squares - square of sum is a whole number, so no digits are lost to the subtraction.
        var variance = (double)checked((_seasons * _lateSquares) - (_late * _late)) / ((double)_seasons * (_seasons - 1));
        return StudentT.Quantile((1 + confidence) / 2, _seasons - 1) * Math.Sqrt(variance / _seasons);
    }
}
