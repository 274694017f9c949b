using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Learning;

/// <summary>What the logs of seasons teach.</summary>
public sealed record LearnResult
{
    /// <summary>The plan of the last folder, whose crops are learned.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The seasons, in the order named.</summary>
    public required ImmutableArray<LearnedSeason> Seasons { get; init; }

    /// <summary>The crops of which anything was seen, in order of id.</summary>
    public required ImmutableArray<TaughtCrop> Crops { get; init; }

    /// <summary>Minutes a tray that were timed.</summary>
    public required ImmutableArray<LearnedWork> Work { get; init; }

    /// <summary>Houses whose fuel was counted.</summary>
    public required ImmutableArray<LearnedHouse> Houses { get; init; }

    /// <summary>How far off values were taken to be before.</summary>
    public required Deviations Deviations { get; init; }

    /// <summary>The values learned, with their crops.</summary>
    public IEnumerable<(TaughtCrop Crop, TaughtValue Value)> Values =>
        Crops.SelectMany(crop => crop.Values, (crop, value) => (crop, value));

    /// <summary>Rows that count trays which someone chose.</summary>
    public int Volunteered => Crops.Sum(crop => crop.Lessons.Volunteered);

    /// <summary>Days of the seasons, from the first to the last row of each log, whose weather was not observed.</summary>
    public int LackingDays => Seasons.Sum(LackingIn);

    /// <summary>The same of one season.</summary>
    /// <param name="season">The season.</param>
    public static int LackingIn(LearnedSeason season)
    {
        ArgumentNullException.ThrowIfNull(season);
        var first = season.Plan.Scenario.Log.Min(row => row.Date);
        return season.Plan.Scenario.Known?.Lacking.Count(day => day >= first) ?? 0;
    }
}

/// <summary>A crop, and what the seasons teach of it.</summary>
/// <param name="Lessons">What they teach.</param>
/// <param name="Values">The values, in order.</param>
public sealed record TaughtCrop(CropLessons Lessons, ImmutableArray<TaughtValue> Values);

/// <summary>A value that the seasons teach.</summary>
/// <param name="Learned">What they teach.</param>
/// <param name="Anew">The batches of the last folder planned anew with it.</param>
public sealed record TaughtValue(LearnedValue Learned, PlannedAnew Anew);
