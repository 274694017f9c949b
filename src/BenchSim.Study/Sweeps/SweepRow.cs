using System.Collections.Immutable;
using BenchSim.Study.Results;

namespace BenchSim.Study.Sweeps;

/// <summary>What a sweep says of one plan of one folder.</summary>
public sealed record SweepRow
{
    /// <summary>Number of the folder, from 0.</summary>
    public required int Folder { get; init; }

    /// <summary>Number of the plan in the folder, from 0.</summary>
    public required int Plan { get; init; }

    /// <summary>Plants that the plan wants.</summary>
    public required long PlantsWanted { get; init; }

    /// <summary>Seasons that fit at the values as given, days of weather hold excepted.</summary>
    public required Chance Fits { get; init; }

    /// <summary>The same with every late day counted.</summary>
    public required Chance FitsWeatherCounted { get; init; }

    /// <summary>Wanted plants out in time at the values as given.</summary>
    public required SweepMean PlantsInTime { get; init; }

    /// <summary>Late plant-days at the values as given.</summary>
    public required SweepMean LatePlantDays { get; init; }

    /// <summary>By space: seasons in which trays waited for it.</summary>
    public required ImmutableArray<Chance> Short { get; init; }

    /// <summary>By space: places missing on the worst day of a season, mean.</summary>
    public required ImmutableArray<double> WorstShort { get; init; }

    /// <summary>The share of seasons that fit over the sets of values; null without sets.</summary>
    public SweepRange? FitsOverSets { get; init; }

    /// <summary>Plants in time over the sets of values; null without sets.</summary>
    public SweepRange? PlantsOverSets { get; init; }

    /// <summary>
    /// The space that trays most often wait for, of those alike the one with most places missing; -1 where they wait for none.
    /// </summary>
    public int Tightest
    {
        get
        {
            var tightest = -1;
            for (var space = 0; space < Short.Length; space++)
            {
                var most = tightest < 0 ? (0, 0) : (Short[tightest].Hits, WorstShort[tightest]);
                if ((Short[space].Hits, WorstShort[space]).CompareTo(most) > 0)
                {
                    tightest = space;
                }
            }

            return tightest;
        }
    }
}

/// <summary>A mean over seasons.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="HalfWidth">Half the width of its 95 % Student interval; NaN for one season.</param>
public readonly record struct SweepMean(double Mean, double HalfWidth);

/// <summary>A figure over sets of values.</summary>
/// <param name="Low">5 % of the sets lie below it.</param>
/// <param name="Middle">Half of them lie below it.</param>
/// <param name="High">5 % of them lie above it.</param>
public readonly record struct SweepRange(double Low, double Middle, double High)
{
    internal static SweepRange Of(IEnumerable<double> means)
    {
        double[] sorted = [.. means.Order()];
        return new SweepRange(At(0.05), At(0.5), At(0.95));

        // The nearest of the sets.
        double At(double share) => sorted[(int)Math.Round(share * (sorted.Length - 1))];
    }
}
