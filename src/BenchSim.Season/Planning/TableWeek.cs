using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>The nights of one week that a crop stands on a hardening table, and how many of them are expected to need a cover.</summary>
public sealed record TableWeek
{
    // One year in so many: a night that is cold less often is not worth a note in the calendar.
    private const int WatchedFrom = 10;

    /// <summary>Monday of the week.</summary>
    public required DateOnly Monday { get; init; }

    /// <summary>Crop.</summary>
    public required Crop Crop { get; init; }

    /// <summary>The first table that its trays may use.</summary>
    public required Space Table { get; init; }

    /// <summary>Nights on which trays stand there, in order.</summary>
    public required ImmutableArray<TableNight> Nights { get; init; }

    /// <summary>Years of weather behind the counts.</summary>
    public required int Years { get; init; }

    /// <summary>Years in which at least one of the nights is cold.</summary>
    public required int YearsWithCold { get; init; }

    /// <summary>Years in which trays are carried in on at least one of the nights.</summary>
    public required int YearsWithDamaging { get; init; }

    /// <summary>Mean number of cold nights.</summary>
    public double ColdNights => Nights.Sum(night => (double)night.ColdYears) / Years;

    /// <summary>
    /// Nights worth watching, in order: in one year of ten or more they are colder than the crop's trays are left uncovered, so that the
    /// 1-in-10 low goes under that limit.
    /// </summary>
    public ImmutableArray<TableNight> Watched => [.. Nights.Where(night => (long)night.ColdYears * WatchedFrom >= Years)];

    /// <summary>Most trays on any of the nights.</summary>
    public int MostTrays => Nights.Max(night => night.Trays);
}
