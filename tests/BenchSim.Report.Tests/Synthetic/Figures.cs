using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>Figures of the contract from plain samples.</summary>
internal static class Figures
{
    public static Chance Chance(int hits, int seasons)
    {
        const double z = 1.959963984540054;
        var p = (double)hits / seasons;
        var centre = (p + (z * z / (2 * seasons))) / (1 + (z * z / seasons));
        var half = z / (1 + (z * z / seasons)) * Math.Sqrt((p * (1 - p) / seasons) + (z * z / (4.0 * seasons * seasons)));
        return new Chance(hits, seasons, Math.Max(0, centre - half), Math.Min(1, centre + half));
    }

    public static Estimate Estimate(params double[] samples)
    {
        double[] sorted = [.. samples.Order()];
        var mean = samples.Average();
        var deviation = samples.Length < 2 ? double.NaN : Math.Sqrt(samples.Sum(x => (x - mean) * (x - mean)) / (samples.Length - 1));
        var half = samples.Length < 2 ? double.NaN : 1.97 * deviation / Math.Sqrt(samples.Length);
        return new Estimate(
            mean,
            half,
            At(sorted, 0.1),
            At(sorted, 0.5),
            At(sorted, 0.9),
            At(sorted, 0.95),
            sorted[0],
            sorted[^1],
            samples.Length
        );
    }

    public static DaySpread Day(IEnumerable<int> samples)
    {
        double[] sorted = [.. samples.Select(x => (double)x).Order()];
        return new DaySpread(
            sorted.Average(),
            (int)At(sorted, 0.1),
            (int)At(sorted, 0.5),
            (int)At(sorted, 0.9),
            (int)At(sorted, 0.95),
            (int)sorted[^1]
        );
    }

    public static DateSpread Date(DateOnly first, IEnumerable<int> days, int seasons)
    {
        double[] sorted = [.. days.Where(day => day >= 0).Select(day => (double)day).Order()];
        return sorted.Length == 0
            ? new DateSpread(null, null, null, 0, seasons)
            : new DateSpread(
                first.AddDays((int)At(sorted, 0.1)),
                first.AddDays((int)At(sorted, 0.5)),
                first.AddDays((int)At(sorted, 0.9)),
                sorted.Length,
                seasons
            );
    }

    private static double At(double[] sorted, double share) => sorted[Math.Max(0, (int)Math.Ceiling(share * sorted.Length) - 1)];
}
