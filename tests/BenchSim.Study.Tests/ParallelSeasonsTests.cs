using CsCheck;

namespace BenchSim.Study.Tests;

/// <summary>Every season is played once, by whichever thread; progress rises to the last.</summary>
public class ParallelSeasonsTests
{
    [Fact]
    public void Every_season_is_played_once() =>
        Gen.Select(Gen.Int[1, 700], Gen.Int[1, 9])
            .Sample(
                (seasons, threads) =>
                {
                    List<int> told = [];
                    var played = new ParallelSeasons<List<int>>(
                        new StudyOptions
                        {
                            Seasons = seasons,
                            Seed = 1,
                            Threads = threads,
                        },
                        new Teller(told),
                        CancellationToken.None
                    ).Run(() => [], () => (season, seen) => seen.Add(season), (sum, other) => sum.AddRange(other));
                    played.Sort();
                    Assert.Equal(Enumerable.Range(0, seasons), played);
                    Assert.Equal(seasons, told[^1]);
                    Assert.Equal(told.Order().Distinct(), told);
                },
                iter: 100,
                seed: "0000000000007"
            );

    [Fact]
    public void The_earliest_failing_season_is_told_whatever_the_threads()
    {
        // Seasons 37, 74 and so on fail.
        for (var threads = 1; threads < 6; threads++)
        {
            ParallelSeasons<object> blocks = new(
                new StudyOptions
                {
                    Seasons = 300,
                    Seed = 1,
                    Threads = threads,
                },
                null,
                CancellationToken.None
            );
            var failure = Assert.Throws<InvalidOperationException>(() =>
                blocks.Run(() => new object(), () => (season, _) => Play(season), (_, _) => { })
            );
            Assert.Equal("37", failure.Message);
        }

        static void Play(int season)
        {
            if (season > 0 && season % 37 == 0)
            {
                throw new InvalidOperationException(season.ToString(System.Globalization.CultureInfo.InvariantCulture));
            }
        }
    }

    private sealed class Teller(List<int> told) : IProgress<int>
    {
        public void Report(int value) => told.Add(value);
    }
}
