using BenchSim.Season.Inputs;
using Published.Engine;

namespace BenchSim.Published.Season;

/// <summary>
/// A bench without limit, steady and with a season of coming: every mginf, mtginf and littles_law row of queueing_checks.csv (Eick, Massey
/// and Whitt 1993). A day of a row is an hour here, where nothing depends on it. Each test may fail by chance once in a thousand seeds
/// (<see cref="Comparison"/>); the seed is fixed.
/// </summary>
public class UnlimitedPlacesTests
{
    private static readonly SitePlaces s_bench = new(null, SitePlaces.NoLimit, SitePlaces.NoLimit);

    public static TheoryData<string> StayLaws => ["always the same", "exponential", "uniform"];

    // Sowings of one tray at 0, 2 and 4; the stays are 5, 1 and 3 hours. Nobody waits, so they leave at 5, 3 and 7. At 4 the first and the
    // third are there, for what comes at an instant counts; at 5 the third alone, for what leaves does not.
    [Fact]
    public void Unlimited_places_by_hand()
    {
        var journal = new QueueSite(s_bench, [1, 1, 1], 0, 24).Play([0, 2, 4], (tray, kind) =>
            kind == SpaceKind.Bench ? 5 - (4 * tray % 6) : 0
        );
        Assert.Equal([1, 2, 1, 2, 1, 0], journal.Counts(SpaceKind.Bench, [0, 2, 3, 4, 5, 7]));
    }

    [Theory]
    [MemberData(nameof(StayLaws))]
    public void Steady_coming_and_any_law_of_staying(string law)
    {
        const int Plays = 20;
        const int LooksAPlay = 150;
        var comparison = new Comparison();
        foreach (var system in Rows("mginf").GroupBy(row => row["inputs"].Split(";any stay law")[0], StringComparer.Ordinal))
        {
            // Looks so far apart that nobody seen once is still there the next time (chance e^-9 for an exponential stay).
            var inputs = ReferenceFile.Inputs(system.Key);
            var apart = inputs["ES"] * LongestOf(law);
            double[] looks = [.. Enumerable.Range(1, LooksAPlay).Select(look => apart * look)];
            var site = Site(inputs["lambda"] * looks[^1], looks[^1]);
            int[] counts =
            [
                .. Enumerable
                    .Range(0, Plays)
                    .SelectMany(play =>
                    {
                        var draws = new Draws($"steady {law} {system.Key}", play);
                        var comings = Comings.Steady(draws, inputs["lambda"], looks[^1]);
                        return Counts(site, comings, looks, () => LawOf(law, inputs["ES"], draws));
                    }),
            ];
            foreach (var row in system)
            {
                CompareSteady(comparison, row, counts);
            }
        }

        comparison.AssertAll(0.15, 0.04);
        Assert.Equal(21 + 12, comparison.Count);
    }

    [Fact]
    public void Season_of_coming_at_given_days()
    {
        // Ten mean stays before the first look: of those who would be there since earlier, e^-12.5 are left.
        const double Before = 200;
        const int Plays = 100;
        double[] days = [50, 91.25, 182.5, 273.75];
        var comparison = new Comparison();
        var site = Site(15 * (Before + days[^1]), Before + days[^1]);
        foreach (
            var system in Rows("mtginf")
                .Where(row => row["name"].StartsWith("Mt/G/inf sinusoid", StringComparison.Ordinal))
                .GroupBy(row => row["name"], StringComparer.Ordinal)
        )
        {
            var isExponential = system.Key.Contains("exponential", StringComparison.Ordinal);
            double[] looks = [.. days.Select(day => Before + day)];
            var counts = Repeat(Plays, play =>
            {
                var draws = new Draws(system.Key, play);
                var comings = Comings.Changing(draws, hour => YearlyRate(hour - Before), 15, looks[^1]);
                return Counts(site, comings, looks, () => isExponential ? draws.Exponential(20) : 20);
            });
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
        var site = Site(8 * 30, 30);
        foreach (
            var system in Rows("mtginf")
                .Where(row => row["name"].Contains("window", StringComparison.Ordinal))
                .GroupBy(row => row["name"], StringComparer.Ordinal)
        )
        {
            var isExponential = system.Key.StartsWith("Mt/M", StringComparison.Ordinal);
            double[] days = [.. system.Select(row => ReferenceFile.Inputs(row["inputs"])["t"])];
            var counts = Repeat(1000, play =>
            {
                var draws = new Draws(system.Key, play);
                var comings = Comings.Changing(draws, day => day <= 14 ? 8 : 0, 8, 30);
                return Counts(site, comings, days, () => isExponential ? draws.Exponential(7) : 7);
            });
            foreach (var (index, row) in system.Index())
            {
                comparison.Add(row["inputs"], ReferenceFile.Number(row["value"]), Column(counts, index));
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
            Func<double, double> rate = yearly ? YearlyRate : hour => 1 + Math.Sin(gamma * hour);
            var looks = LooksOf(gamma, inputs["ES"]);
            var site = Site((yearly ? 15 : 2) * looks[^1], looks[^1]);
            var waves = Repeat(32, play =>
            {
                var draws = new Draws(system.Key, play);
                var comings = Comings.Changing(draws, rate, yearly ? 15 : 2, looks[^1]);
                return Wave(Counts(site, comings, looks, () => draws.Exponential(inputs["ES"])), gamma, looks);
            });
            foreach (var row in system)
            {
                var values = waves.Select(wave => Quantity(row["quantity"], wave, gamma));
                comparison.Add($"{system.Key} {row["quantity"]}", ReferenceFile.Number(row["value"]), values);
            }
        }

        comparison.AssertAll(0.12, 0);
        Assert.Equal(5, comparison.Count);
    }

    [Fact]
    public void Little_s_law_holds_for_the_row_given()
    {
        var row = Assert.Single(Rows("littles_law"));
        var site = Site(12 * 100, 100);
        var counts = Repeat(200, play =>
        {
            var draws = new Draws("little", play);
            return Counts(site, Comings.Steady(draws, 12, 100), [100], () => 42 * draws.Uniform());
        });
        var comparison = new Comparison();
        comparison.Add(row["inputs"], ReferenceFile.Number(row["value"]), Column(counts, 0));
        comparison.AssertAll(0.05, 0);
    }

    private static QueueSite Site(double comings, double end) => new(s_bench, Enumerable.Repeat(1, Comings.Most(comings)), 0, end);

    private static int[] Counts(QueueSite site, double[] comings, double[] looks, Func<double> stay) =>
        site.Play(comings, (_, kind) => kind == SpaceKind.Bench ? stay() : 0).Counts(SpaceKind.Bench, looks);

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
            var inputs = ReferenceFile.Inputs(row["inputs"]);
            var mean = inputs["lambda"] * inputs["ES"];
            comparison.Add(what, PoissonUpTo((int)exact, mean), counts.Select(count => count <= exact ? 1.0 : 0.0));
            comparison.Add(what + " less one", PoissonUpTo((int)exact - 1, mean), counts.Select(count => count < exact ? 1.0 : 0.0));
            var share = ReferenceFile.Number(row["quantity"]["quantile_".Length..]);
            Assert.True(PoissonUpTo((int)exact, mean) >= share && PoissonUpTo((int)exact - 1, mean) < share, what);
        }
    }

    private static double PoissonUpTo(int most, double mean)
    {
        var term = Math.Exp(-mean);
        var sum = term;
        for (var k = 1; k <= most; k++)
        {
            sum += term *= mean / k;
        }

        return sum;
    }

    // Fifteen mean stays after the empty start.
    private static double[] LooksOf(double gamma, double stay)
    {
        const int LooksAWave = 8;
        var waves = (int)Math.Max(4, 2000 * gamma / (2 * Math.PI) / stay);
        var step = 2 * Math.PI / gamma / LooksAWave;
        var first = (int)Math.Ceiling(15 * stay / step);
        return [.. Enumerable.Range(first, waves * LooksAWave).Select(look => look * step)];
    }

    private static (double Mean, double Sine, double Cosine) Wave(int[] counts, double gamma, double[] looks) =>
        (
            counts.Average(),
            2 * counts.Index().Average(look => look.Item * Math.Sin(gamma * looks[look.Index])),
            2 * counts.Index().Average(look => look.Item * Math.Cos(gamma * looks[look.Index]))
        );

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

    private static double LawOf(string law, double mean, Draws draws) =>
        law switch
        {
            "exponential" => draws.Exponential(mean),
            "uniform" => 2 * mean * draws.Uniform(),
            _ => mean,
        };

    // In mean stays.
    private static double LongestOf(string law) =>
        law switch
        {
            "exponential" => 9,
            "uniform" => 2,
            _ => 1,
        };

    private static T[] Repeat<T>(int count, Func<int, T> play) => [.. Enumerable.Range(0, count).Select(play)];

    private static IEnumerable<double> Column(int[][] counts, int column) => counts.Select(row => (double)row[column]);

    private static IEnumerable<Dictionary<string, string>> Rows(string category) =>
        ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == category && row["flag"] != "memory");
}
