using System.Collections.Immutable;
using BenchSim.Engine.Randomness;
using MathNet.Numerics;

namespace BenchSim.Season.Weather;

/// <summary>
/// Places the springs of a record among generated ones. The chance of a mean or spread as far out is counted over 2,000 records made of as
/// many generated springs, drawn with replacement: no law of the figures is assumed. That of as many springs without a frost is exact: all
/// springs without one, of record and generator together, fall among the springs at random (Fisher's test).
/// </summary>
internal static class SpringComparison
{
    private const int Resamples = 2000;
    private const int Kinds = 5;

    // A fixed key: same record, same chances.
    private static readonly PhiloxKey s_key = PhiloxKey.Of(1, "springs of a record");

    /// <summary>Compares; empty where the record has no spring that is whole from January to June.</summary>
    /// <param name="record">Record in order of date.</param>
    /// <param name="generated">Generated years.</param>
    public static ImmutableArray<SpringFigure> Of(ReadOnlySpan<DailyWeather> record, ReadOnlySpan<DailyWeather> generated)
    {
        var (seen, drawn) = (Springs(record), Springs(generated));
        var springs = seen[0].Length;
        if (springs == 0)
        {
            return [];
        }

        var counts = new Tally[Kinds];
        for (var kind = 0; kind < Kinds; kind++)
        {
            counts[kind] = new Tally(SpringSide.Of(seen[kind]), SpringSide.Of(drawn[kind]));
        }

        var (picks, spare, values) = (new double[springs], new double[springs], new double[springs]);
        for (var sample = 0; sample < Resamples; sample++)
        {
            Philox.Uniforms(new PhiloxBlock(0, (uint)sample, 0, 0), s_key, picks, spare);
            for (var kind = 0; kind < Kinds; kind++)
            {
                for (var spring = 0; spring < springs; spring++)
                {
                    values[spring] = drawn[kind][(int)(picks[spring] * drawn[kind].Length)];
                }

                counts[kind].Add(SpringSide.Of(values));
            }
        }

        return [.. counts.Select((count, kind) => count.ToFigure((SpringKind)kind))];
    }

    // The five figures of each spring that is whole from January to June; not a number where it has no such night.
    private static double[][] Springs(ReadOnlySpan<DailyWeather> days)
    {
        var springs = new double[Kinds][];
        springs[(int)SpringKind.LastFrost] = LastNights(days, WeatherStatistics.FrostC);
        springs[(int)SpringKind.LastHardFrost] = LastNights(days, WeatherStatistics.HardFrostC);
        var count = springs[0].Length;
        var (april, may, means) = (new double[count], new double[count], new double[count]);
        var spring = 0;
        var from = 0;
        while (from < days.Length)
        {
            var to = from + 1;
            while (to < days.Length && days[to].Date.Year == days[from].Date.Year && days[to].Date.Month <= 6)
            {
                to++;
            }

            if (to - from == new DateOnly(days[from].Date.Year, 6, 30).DayOfYear)
            {
                (april[spring], may[spring], means[spring]) = Figures(days[from..to]);
                spring++;
            }

            // On to the next year.
            from = to;
            while (from < days.Length && days[from].Date.Month > 6)
            {
                from++;
            }
        }

        springs[(int)SpringKind.ColdNightsOfApril] = april;
        springs[(int)SpringKind.ColdNightsOfMay] = may;
        springs[(int)SpringKind.MeanTemperature] = means;
        return springs;
    }

    private static double[] LastNights(ReadOnlySpan<DailyWeather> days, double threshold)
    {
        var nights = WeatherStatistics.LastSpringNight(days, threshold);
        var last = new double[nights.Length];
        for (var spring = 0; spring < last.Length; spring++)
        {
            last[spring] = nights[spring] == 0 ? double.NaN : nights[spring];
        }

        return last;
    }

    private static (int April, int May, double Mean) Figures(ReadOnlySpan<DailyWeather> spring)
    {
        var (april, may, sum, days) = (0, 0, 0.0, 0);
        foreach (ref readonly var day in spring)
        {
            var isCold = day.TminC < WeatherStatistics.HardeningNightC;
            april += isCold && day.Date.Month == 4 ? 1 : 0;
            may += isCold && day.Date.Month == 5 ? 1 : 0;
            if (day.Date.Month is >= 3 and <= 5)
            {
                (sum, days) = (sum + ((day.TminC + day.TmaxC) / 2), days + 1);
            }
        }

        return (april, may, sum / days);
    }

    // Counts resampled figures at or below and at or above the record's. The generated springs are a sample too: the record is brought
    // nearer to their figure by as much as that widens its error.
    private sealed class Tally
    {
        private readonly SpringSide _record;
        private readonly SpringSide _generated;
        private readonly double _near;
        private Tails _mean;
        private Tails _spread;

        public Tally(SpringSide record, SpringSide generated)
        {
            (_record, _generated) = (record, generated);
            _near = 1 / Math.Sqrt(1 + ((double)record.Springs / generated.Springs));
        }

        public void Add(SpringSide sample)
        {
            Count(ref _mean, sample.Mean, _record.Mean, _generated.Mean);
            Count(ref _spread, sample.StandardDeviation, _record.StandardDeviation, _generated.StandardDeviation);
        }

        public SpringFigure ToFigure(SpringKind kind) =>
            new(kind, _record, _generated, _mean.Chance, _spread.Chance, Fisher(_record, _generated));

        private void Count(ref Tails tails, double? sample, double? record, double? generated)
        {
            if (sample is not { } value || record is not { } seen || generated is not { } centre)
            {
                return;
            }

            var placed = centre + (_near * (seen - centre));
            tails.Of++;

            // Means of the same whole days differ in their last digits.
            tails.Low += value <= placed + 1e-9 ? 1 : 0;
            tails.High += value >= placed - 1e-9 ? 1 : 0;
        }
    }

    // Twice the smaller tail of the hypergeometric law.
    private static double Fisher(in SpringSide record, in SpringSide generated)
    {
        var (springs, all) = (record.Springs, record.Springs + generated.Springs);
        var without = record.Without + generated.Without;
        var (low, high) = (0.0, 0.0);
        for (var count = Math.Max(0, without - generated.Springs); count <= Math.Min(without, springs); count++)
        {
            var chance = Math.Exp(
                SpecialFunctions.BinomialLn(springs, count)
                    + SpecialFunctions.BinomialLn(generated.Springs, without - count)
                    - SpecialFunctions.BinomialLn(all, without)
            );
            low += count <= record.Without ? chance : 0;
            high += count >= record.Without ? chance : 0;
        }

        return Math.Min(1, 2 * Math.Min(low, high));
    }

    private struct Tails
    {
        public int Of;
        public int Low;
        public int High;

        // Twice the smaller tail, the record itself counted in.
        public readonly double Chance => Of == 0 ? 1 : Math.Min(1, 2.0 * (Math.Min(Low, High) + 1) / (Of + 1));
    }
}
