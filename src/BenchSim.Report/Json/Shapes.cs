using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>An interval that holds with the confidence that its place says; 95 % where it says none.</summary>
/// <param name="Low">Lower end; null where it is beyond all numbers.</param>
/// <param name="High">Upper end; null where it is beyond all numbers.</param>
public sealed record JsonInterval(double? Low, double? High)
{
    /// <summary>The interval between two ends; null where neither is a number, as one season tells nothing of luck.</summary>
    public static JsonInterval? Of(double low, double high) => double.IsNaN(low) && double.IsNaN(high) ? null : new(low, high);
}

/// <summary>A chance, counted over seasons.</summary>
/// <param name="Hits">Seasons in which it happened.</param>
/// <param name="Seasons">Seasons played.</param>
/// <param name="Share">Hits over seasons, 0 to 1.</param>
/// <param name="Interval">95 % Wilson interval of the share.</param>
public sealed record JsonChance(int Hits, int Seasons, double Share, JsonInterval Interval)
{
    /// <summary>The shape of a chance.</summary>
    public static JsonChance Of(Chance chance) => new(chance.Hits, chance.Seasons, chance.Share, new JsonInterval(chance.Low, chance.High));
}

/// <summary>A quantity over the seasons; all but the seasons are null where none was counted.</summary>
/// <param name="Mean">Mean over the seasons.</param>
/// <param name="HalfWidth">Half the width of the 95 % interval of the mean; null for one season.</param>
/// <param name="P10">Tenth percentile.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">Ninetieth percentile.</param>
/// <param name="P95">Ninety-fifth percentile.</param>
/// <param name="Least">Smallest season.</param>
/// <param name="Most">Largest season.</param>
/// <param name="Seasons">Seasons counted.</param>
public sealed record JsonEstimate(
    double? Mean,
    double? HalfWidth,
    double? P10,
    double? P50,
    double? P90,
    double? P95,
    double? Least,
    double? Most,
    int Seasons
)
{
    /// <summary>The shape of a quantity.</summary>
    public static JsonEstimate Of(Estimate estimate) =>
        new(
            estimate.Mean,
            estimate.HalfWidth,
            estimate.P10,
            estimate.P50,
            estimate.P90,
            estimate.P95,
            estimate.Least,
            estimate.Most,
            estimate.Seasons
        );
}

/// <summary>A mean over the seasons, of a quantity whose spread is not kept.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="HalfWidth">Half the width of its 95 % interval; null for one season.</param>
public sealed record JsonMean(double Mean, double? HalfWidth);

/// <summary>A date over the seasons in which the thing happened at all.</summary>
/// <param name="P10">Tenth percentile over the seasons in which it happened; null when it never did.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">Ninetieth percentile.</param>
/// <param name="Happened">Seasons in which it happened.</param>
/// <param name="Seasons">Seasons played.</param>
public sealed record JsonDates(DateOnly? P10, DateOnly? P50, DateOnly? P90, int Happened, int Seasons)
{
    /// <summary>The shape of a date.</summary>
    public static JsonDates Of(DateSpread spread) => new(spread.P10, spread.P50, spread.P90, spread.Happened, spread.Seasons);
}

/// <summary>A whole number by day or week, over the seasons: a list a figure, ready for plotting.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="P10">Tenth percentile.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">Ninetieth percentile.</param>
/// <param name="P95">Ninety-fifth percentile.</param>
/// <param name="Most">Largest season.</param>
public sealed record JsonDays(
    ImmutableArray<double> Mean,
    ImmutableArray<int> P10,
    ImmutableArray<int> P50,
    ImmutableArray<int> P90,
    ImmutableArray<int> P95,
    ImmutableArray<int> Most
)
{
    /// <summary>The shape of a number by day.</summary>
    public static JsonDays Of(ImmutableArray<DaySpread> days) =>
        new(
            [.. days.Select(day => day.Mean)],
            [.. days.Select(day => day.P10)],
            [.. days.Select(day => day.P50)],
            [.. days.Select(day => day.P90)],
            [.. days.Select(day => day.P95)],
            [.. days.Select(day => day.Most)]
        );
}

/// <summary>What is wrong with a file, or what one should know about it.</summary>
/// <param name="File">File.</param>
/// <param name="Line">Line; 0 for the whole file.</param>
/// <param name="Column">Column; 0 for the whole line.</param>
/// <param name="What">What was found.</param>
/// <param name="Instead">What would be right.</param>
public sealed record JsonFault(string File, int Line, int Column, string What, string Instead)
{
    /// <summary>The shapes of faults.</summary>
    public static ImmutableArray<JsonFault> Of(IEnumerable<Fault> faults) =>
        [.. faults.Select(fault => new JsonFault(fault.Place.File, fault.Place.Line, fault.Place.Column, fault.What, fault.Instead))];
}

/// <summary>How the chance that a season fits changes with something else, on the same seasons.</summary>
/// <param name="Difference">Change of the chance, -1 to 1.</param>
/// <param name="Interval">Interval of the difference, allowing for all comparisons made.</param>
/// <param name="Real">The interval leaves out 0.</param>
/// <param name="Both">Seasons that fit with it and without.</param>
/// <param name="OnlyWith">Seasons that fit only with it.</param>
/// <param name="OnlyWithout">Seasons that fit only without.</param>
/// <param name="VarianceRatio">
/// How many times smaller the variance of the difference is than in seasons of their own; null when there is none or no season differs.
/// </param>
public sealed record JsonFitChange(
    double Difference,
    JsonInterval Interval,
    bool Real,
    int Both,
    int OnlyWith,
    int OnlyWithout,
    double? VarianceRatio
)
{
    /// <summary>The shape of such a change.</summary>
    public static JsonFitChange Of(FitChange fits) =>
        new(
            fits.Difference,
            new JsonInterval(fits.Low, fits.High),
            fits.IsReal,
            fits.Both,
            fits.OnlyVariant,
            fits.OnlyBase,
            fits.VarianceRatio
        );
}

/// <summary>Late plant-days saved a season; below 0 for more of them.</summary>
/// <param name="LatePlantDays">Mean of what is saved.</param>
/// <param name="Interval">Its interval, allowing for all comparisons made; null for one season.</param>
/// <param name="Real">The interval leaves out 0.</param>
/// <param name="SeasonsDiffering">Seasons in which it is not 0.</param>
public sealed record JsonSaving(double LatePlantDays, JsonInterval? Interval, bool Real, int SeasonsDiffering)
{
    /// <summary>The shape of what is saved: the difference with its sign turned, so that more is better.</summary>
    public static JsonSaving Of(MeasureChange late) =>
        new(-late.Difference, JsonInterval.Of(-late.High, -late.Low), late.IsReal, late.Differing);
}
