using System.Numerics;

namespace BenchSim.Season.Climate;

/// <summary>How fast seedlings grow at a temperature: degree-days above a base, of air capped, by the light of the month (docs/model.md section 5).</summary>
internal static class GrowthRate
{
    /// <summary>Degree-days a day for a row of air temperatures, several a step: light x max(0, min(air, cap) - base) each.</summary>
    /// <param name="airC">Air, degrees Celsius.</param>
    /// <param name="light">Factor of the month's light, 0 to 1.</param>
    /// <param name="baseC">Temperature below which nothing grows, degrees Celsius.</param>
    /// <param name="capC">Temperature above which growth is no faster, degrees Celsius.</param>
    /// <param name="rates">Filled; as long as <paramref name="airC"/>.</param>
    public static void Fill(ReadOnlySpan<double> airC, double light, double baseC, double capC, Span<double> rates)
    {
        var (lights, bases, caps) = (new Vector<double>(light), new Vector<double>(baseC), new Vector<double>(capC));
        var at = 0;
        for (; at <= airC.Length - Vector<double>.Count; at += Vector<double>.Count)
        {
            var rate = lights * Vector.Max(Vector<double>.Zero, Vector.Min(new Vector<double>(airC[at..]), caps) - bases);
            rate.CopyTo(rates[at..]);
        }

        for (; at < airC.Length; at++)
        {
            rates[at] = light * Math.Max(0, Math.Min(airC[at], capC) - baseC);
        }
    }
}
