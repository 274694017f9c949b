using BenchSim.Engine;

namespace Published.Engine;

/// <summary>
/// Places without limit, steady and with a season: every mginf and mtginf row of queueing_checks.csv (Eick, Massey and Whitt 1993). Each
/// test may fail by chance once in a thousand seeds (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class InfiniteServerTests
{
    private const int Replications = 1000;

    public static TheoryData<string> StayLaws => ["always the same", "exponential", "uniform"];

    [Theory]
    [MemberData(nameof(StayLaws))]
    public void Steady_coming_and_any_law_of_staying(string law)
    {
        const int Looks = 5000;
        var comparison = new Comparison();
        foreach (var system in Rows("mginf").GroupBy(row => row["inputs"].Split(";any stay law")[0], StringComparer.Ordinal))
        {
            var inputs = ReferenceFile.Inputs(system.Key);
            var model = new InfiniteServerModel(_ => inputs["lambda"], inputs["lambda"], LawOf(law, inputs["ES"]));

            // Looks twelve mean stays apart: nobody seen once is still there the next time (chance e^-12 for an exponential stay).
            var times = Enumerable.Range(1, Looks).Select(look => 12.0 * inputs["ES"] * look).ToArray();
            var counts = model.Counts(0, times, new Draws($"steady {law} {system.Key}", 0));
            foreach (var row in system)
            {
                CompareSteady(comparison, row, counts);
            }
        }

        comparison.AssertAll(0.1, 0.03);
        Assert.Equal(21 + 12, comparison.Count);
    }

    [Fact]
    public void Season_of_coming_at_given_days()
    {
        var comparison = new Comparison();
        var days = new[] { 50, 91.25, 182.5, 273.75 };
        foreach (
            var system in Rows("mtginf")
                .Where(row => row["name"].StartsWith("Mt/G/inf sinusoid", StringComparison.Ordinal))
                .GroupBy(row => row["name"], StringComparer.Ordinal)
        )
        {
            Func<Draws, double> stay = system.Key.Contains("exponential", StringComparison.Ordinal)
                ? draws => draws.Exponential(20)
                : _ => 20;
            var model = new InfiniteServerModel(YearlyRate, 15, stay);

            // Ten mean stays before the first look: of those who would be there since earlier, e^-12.5 are left.
            var counts = Repeat(Replications / 4, replication => model.Counts(-200, days, new Draws(system.Key, replication)));
            foreach (var row in system)
            {
                var day = ReferenceFile.Inputs(row["inputs"])["t"];
                comparison.Add(row["inputs"], ReferenceFile.Number(row["value"]), Column(counts, Array.IndexOf(days, day)));
            }
        }

        comparison.AssertAll(0.05, 0);
        Assert.Equal(8, comparison.Count);
    }

    [Fact]
    public void Coming_for_two_weeks_from_empty()
    {
        var comparison = new Comparison();
        foreach (
            var system in Rows("mtginf")
                .Where(row => row["name"].Contains("window", StringComparison.Ordinal))
                .GroupBy(row => row["name"], StringComparer.Ordinal)
        )
        {
            Func<Draws, double> stay = system.Key.StartsWith("Mt/M", StringComparison.Ordinal) ? draws => draws.Exponential(7) : _ => 7;
            var model = new InfiniteServerModel(day => day <= 14 ? 8 : 0, 8, stay);
            var days = system.Select(row => ReferenceFile.Inputs(row["inputs"])["t"]).ToArray();
            var counts = Repeat(Replications, replication => model.Counts(0, days, new Draws(system.Key, replication)));
            foreach (var (row, i) in system.Select((row, i) => (row, i)))
            {
                comparison.Add(row["inputs"], ReferenceFile.Number(row["value"]), Column(counts, i));
            }
        }

        comparison.AssertAll(0.05, 0);
        Assert.Equal(8, comparison.Count);
    }

    // The mean count is a sine too. Its size and delay are found by multiplying counts at evenly spaced times with sine and cosine.
    [Fact]
    public void Size_and_delay_of_the_wave()
    {
        var comparison = new Comparison();
        foreach (
            var system in Rows("mtginf")
                .Where(row => row["quantity"] is "peak_m" or "amplitude_of_m" or "phase_lag_time")
                .GroupBy(row => row["inputs"], StringComparer.Ordinal)
        )
        {
            var inputs = ReferenceFile.Inputs(system.Key);
            var yearly = !inputs.ContainsKey("gamma");
            var gamma = yearly ? 2 * Math.PI / 365 : inputs["gamma"];
            Func<double, double> rate = yearly ? YearlyRate : time => 1 + Math.Sin(gamma * time);
            var model = new InfiniteServerModel(rate, yearly ? 15 : 2, draws => draws.Exponential(inputs["ES"]));
            var waves = Repeat(40, replication => Wave(model, gamma, inputs["ES"], new Draws(system.Key, replication)));
            foreach (var row in system)
            {
                var values = waves.Select(wave => Quantity(row["quantity"], wave, gamma));
                comparison.Add($"{system.Key} {row["quantity"]}", ReferenceFile.Number(row["value"]), values);
            }
        }

        comparison.AssertAll(0.1, 0);
        Assert.Equal(5, comparison.Count);
    }

    [Fact]
    public void Little_s_law_holds_for_the_row_given()
    {
        var row = Assert.Single(Rows("littles_law"));
        var model = new InfiniteServerModel(_ => 12, 12, draws => 42 * draws.Uniform());
        var counts = Repeat(Replications, replication => model.Counts(0, [100], new Draws("little", replication)));
        var comparison = new Comparison();
        comparison.Add(row["inputs"], ReferenceFile.Number(row["value"]), Column(counts, 0));
        comparison.AssertAll(0.05, 0);
    }

    private static void CompareSteady(Comparison comparison, Dictionary<string, string> row, int[] counts)
    {
        var what = $"{row["inputs"]} {row["quantity"]}";
        var exact = ReferenceFile.Number(row["value"]);
        if (row["quantity"] == "mean_busy")
        {
            comparison.Add(what, exact, counts.Select(count => (double)count));
        }
        else if (row["quantity"] == "var_busy")
        {
            // Mean of squared distances from the exact mean, which for this law equals the variance.
            comparison.Add(what, exact, counts.Select(count => (count - exact) * (count - exact)));
        }
        else if (row["quantity"] == "P(N>c)")
        {
            var limit = ReferenceFile.Inputs(row["inputs"])["c"];
            comparison.Add(what, exact, counts.Select(count => count > limit ? 1.0 : 0.0));
        }
        else
        {
            // A quantile q of share p of a Poisson law: P(N <= q) >= p > P(N <= q - 1). Both chances against the law summed by hand.
            var mean = Mean(row);
            comparison.Add(what, PoissonUpTo((int)exact, mean), counts.Select(count => count <= exact ? 1.0 : 0.0));
            comparison.Add(what + " less one", PoissonUpTo((int)exact - 1, mean), counts.Select(count => count < exact ? 1.0 : 0.0));
            var share = ReferenceFile.Number(row["quantity"]["quantile_".Length..]);
            Assert.True(PoissonUpTo((int)exact, mean) >= share && PoissonUpTo((int)exact - 1, mean) < share, what);
        }
    }

    private static double Mean(Dictionary<string, string> row)
    {
        var inputs = ReferenceFile.Inputs(row["inputs"]);
        return inputs["lambda"] * inputs["ES"];
    }

    private static double PoissonUpTo(int most, double mean)
    {
        double term = Math.Exp(-mean),
            sum = term;
        for (var k = 1; k <= most; k++)
        {
            sum += term *= mean / k;
        }

        return sum;
    }

    private static (double Mean, double Sine, double Cosine) Wave(InfiniteServerModel model, double gamma, double stay, Draws draws)
    {
        const int LooksAWave = 8;
        var waves = (int)Math.Max(6, 5000 * gamma / (2 * Math.PI) / stay);
        var step = 2 * Math.PI / gamma / LooksAWave;
        var first = (int)Math.Ceiling(15 * stay / step);
        var times = Enumerable.Range(first, waves * LooksAWave).Select(look => look * step).ToArray();
        var counts = model.Counts(0, times, draws);
        double mean = 0,
            sine = 0,
            cosine = 0;
        for (var i = 0; i < counts.Length; i++)
        {
            mean += counts[i];
            sine += 2 * counts[i] * Math.Sin(gamma * times[i]);
            cosine += 2 * counts[i] * Math.Cos(gamma * times[i]);
        }

        return (mean / counts.Length, sine / counts.Length, cosine / counts.Length);
    }

    // m(t) = mean + sine sin(gamma t) + cosine cos(gamma t): a delayed sine has a negative cosine part.
    private static double Quantity(string quantity, (double Mean, double Sine, double Cosine) wave, double gamma)
    {
        var size = Math.Sqrt((wave.Sine * wave.Sine) + (wave.Cosine * wave.Cosine));
        return quantity switch
        {
            "peak_m" => wave.Mean + size,
            "amplitude_of_m" => size,
            _ => Math.Atan2(-wave.Cosine, wave.Sine) / gamma,
        };
    }

    private static double YearlyRate(double day) => 10 + (5 * Math.Sin(2 * Math.PI * day / 365));

    private static Func<Draws, double> LawOf(string law, double mean) =>
        law switch
        {
            "exponential" => draws => draws.Exponential(mean),
            "uniform" => draws => 2 * mean * draws.Uniform(),
            _ => _ => mean,
        };

    private static T[] Repeat<T>(int count, Func<int, T> play) => Enumerable.Range(0, count).Select(play).ToArray();

    private static IEnumerable<double> Column(int[][] counts, int column) => counts.Select(row => (double)row[column]);

    private static IEnumerable<Dictionary<string, string>> Rows(string category) =>
        ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == category && row["flag"] != "memory");
}
