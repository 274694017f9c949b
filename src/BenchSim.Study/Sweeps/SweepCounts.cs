using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Sweeps;

/// <summary>
/// What is kept of the seasons of a task: whole numbers alone, so that it does not matter in which order tasks are added.
/// </summary>
/// <param name="spaces">Spaces of the site.</param>
public sealed class SweepCounts(int spaces)
{
    private readonly int[] _shortSeasons = new int[spaces];
    private readonly long[] _worstShort = new long[spaces];

    /// <summary>Seasons counted.</summary>
    public int Seasons { get; internal set; }

    /// <summary>Seasons that fit, days of weather hold excepted.</summary>
    public int Fits { get; internal set; }

    /// <summary>Seasons that fit, every late day counted.</summary>
    public int FitsWeatherCounted { get; internal set; }

    /// <summary>Wanted plants out in time.</summary>
    public Moments PlantsInTime { get; internal set; }

    /// <summary>Late plant-days.</summary>
    public Moments LatePlantDays { get; internal set; }

    /// <summary>By space: seasons in which trays waited for it on some day.</summary>
    public Span<int> ShortSeasons => _shortSeasons;

    /// <summary>By space: places that were missing on the worst day, summed over the seasons.</summary>
    public Span<long> WorstShort => _worstShort;

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult season)
    {
        ArgumentNullException.ThrowIfNull(season);
        Seasons++;
        Fits += season.Fits ? 1 : 0;
        FitsWeatherCounted += season.FitsWeatherCounted ? 1 : 0;
        PlantsInTime = PlantsInTime.Plus(Moments.Of(season.PlantsInTime, 1));
        LatePlantDays = LatePlantDays.Plus(Moments.Of(MeasuredSeason.LatePlantDaysOf(season.Batches), 1));
        for (var space = 0; space < _worstShort.Length; space++)
        {
            var worst = season.Waiting[space].AsSpan().IsEmpty ? 0 : season.Waiting[space].Max();
            _shortSeasons[space] += worst > 0 ? 1 : 0;
            _worstShort[space] += worst;
        }
    }

    /// <summary>Adds the counts of other seasons of the same plan.</summary>
    public void Add(SweepCounts other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Seasons += other.Seasons;
        Fits += other.Fits;
        FitsWeatherCounted += other.FitsWeatherCounted;
        PlantsInTime = PlantsInTime.Plus(other.PlantsInTime);
        LatePlantDays = LatePlantDays.Plus(other.LatePlantDays);
        for (var space = 0; space < _worstShort.Length; space++)
        {
            _shortSeasons[space] += other._shortSeasons[space];
            _worstShort[space] += other._worstShort[space];
        }
    }
}
