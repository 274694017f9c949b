using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;

namespace BenchSim.Study.Tests;

public class StudyRunnerTests
{
    private static readonly SeasonPlan s_plan = Plans.Small();

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(0)]
    [InlineData(500)]
    public void Any_number_of_threads_gives_the_same_result(int threads) =>
        Assert.Equal(ResultText.Of(PlayDrawn(203, 1)), ResultText.Of(PlayDrawn(203, threads)));

    [Fact]
    public void Each_season_is_played_once_with_places_and_once_without()
    {
        List<(int Season, PlaceLimits Limits)> played = [];
        Play(37, 3, (season, limits, result) =>
        {
            lock (played)
            {
                played.Add((season, limits));
            }

            Seasons.Draw(s_plan, season, limits, result);
        });

        foreach (var limits in new[] { PlaceLimits.AsGiven, PlaceLimits.None })
        {
            Assert.Equal(Enumerable.Range(0, 37), played.Where(each => each.Limits == limits).Select(each => each.Season).Order());
        }

        Assert.Equal(2 * 37, played.Count);
    }

    [Fact]
    public void The_result_says_what_made_it()
    {
        var result = PlayDrawn(5, 1);

        Assert.Same(s_plan, result.Plan);
        Assert.Equal((5, 42UL), (result.Seasons, result.Seed));
    }

    [Fact]
    public void Progress_rises_to_the_number_of_seasons()
    {
        Steps steps = new();

        StudyRunner.Play(s_plan, Options(100, 3), Drawing, steps, CancellationToken.None);

        Assert.Equal(steps.Seen.Order(), steps.Seen);
        Assert.Equal(100, steps.Seen[^1]);
        Assert.True(steps.Seen.Count > 3);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Cancelling_stops_the_play(int threads)
    {
        using CancellationTokenSource source = new();
        var played = 0;

        var stopped = Assert.Throws<OperationCanceledException>(() =>
            StudyRunner.Play(
                s_plan,
                Options(100_000, threads),
                () =>
                    DrawnPlayer.Of(
                        (season, limits, result) =>
                        {
                            if (Interlocked.Increment(ref played) == 50)
                            {
                                source.Cancel();
                            }

                            Seasons.Draw(s_plan, season, limits, result);
                        }
                    ),
                null,
                source.Token
            )
        );

        // Each thread ends the season it is in, two plays, and starts no other.
        Assert.Equal(source.Token, stopped.CancellationToken);
        Assert.InRange(played, 50, 50 + (2 * threads));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void A_cancelled_play_can_give_the_answer_of_the_seasons_so_far(int threads)
    {
        using CancellationTokenSource source = new();
        var played = 0;

        var stopped = StudyRunner.PlayUntilCancelled(
            s_plan,
            Options(100_000, threads),
            () =>
                DrawnPlayer.Of(
                    (season, limits, result) =>
                    {
                        if (Interlocked.Increment(ref played) == 50)
                        {
                            source.Cancel();
                        }

                        Seasons.Draw(s_plan, season, limits, result);
                    }
                ),
            null,
            source.Token
        )!;

        // The 50th play is of a season begun; each thread ends its own.
        Assert.InRange(stopped.Seasons, 25 - threads, 25 + threads);
        Assert.Equal(ResultText.Of(PlayDrawn(stopped.Seasons, 1)), ResultText.Of(stopped));
    }

    [Fact]
    public void A_play_that_is_not_cancelled_gives_the_whole_answer() =>
        Assert.Equal(
            ResultText.Of(PlayDrawn(40, 1)),
            ResultText.Of(StudyRunner.PlayUntilCancelled(s_plan, Options(40, 3), Drawing, null, CancellationToken.None)!)
        );

    [Fact]
    public void Cancelled_before_any_season_there_is_no_answer()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.Null(StudyRunner.PlayUntilCancelled(s_plan, Options(10, 2), Drawing, null, source.Token));
    }

    [Fact]
    public void A_failure_surfaces_from_a_play_that_may_be_cancelled() =>
        Assert.Throws<NotSupportedException>(() =>
            StudyRunner.PlayUntilCancelled(
                s_plan,
                Options(10, 3),
                () => (_, _, _) => throw new NotSupportedException(),
                null,
                CancellationToken.None
            )
        );

    [Fact]
    public void Where_no_limit_ever_bit_the_season_is_played_once()
    {
        List<PlaceLimits> played = [];
        Play(9, 2, (season, limits, result) =>
        {
            lock (played)
            {
                played.Add(limits);
            }

            Seasons.Draw(s_plan, season, limits, result);
            result.LimitEverBit = season % 3 == 0;
        });

        Assert.Equal((9, 3), (played.Count(limits => limits == PlaceLimits.AsGiven), played.Count(limits => limits == PlaceLimits.None)));
    }

    [Fact]
    public void Cancelled_before_it_starts_nothing_is_played()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() =>
            StudyRunner.Play(s_plan, Options(10, 2), () => DrawnPlayer.Of((_, _, _) => Assert.Fail("Played.")), null, source.Token)
        );
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void A_failure_surfaces_as_it_was_and_always_that_of_the_earliest_season(int threads)
    {
        var failure = Assert.Throws<InvalidOperationException>(() => Play(200, threads, (season, limits, result) =>
            {
                if (season >= 61)
                {
                    throw new InvalidOperationException($"season {season}");
                }

                Seasons.Draw(s_plan, season, limits, result);
            }));

        Assert.Equal("season 61", failure.Message);
    }

    [Fact]
    public void A_player_that_cannot_be_made_surfaces_too() =>
        Assert.Throws<NotSupportedException>(() =>
            StudyRunner.Play(s_plan, Options(10, 3), () => throw new NotSupportedException(), null, CancellationToken.None)
        );

    [Fact]
    public void Bad_options_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PlayDrawn(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlayDrawn(1, -1));
        Assert.Throws<ArgumentNullException>(() => StudyRunner.Play(null!, Options(1, 1), null, CancellationToken.None));
        Assert.Throws<ArgumentNullException>(() => StudyRunner.Play(s_plan, null!, null, CancellationToken.None));
    }

    private static Func<PlaySeason> Drawing =>
        () => DrawnPlayer.Of((season, limits, result) => Seasons.Draw(s_plan, season, limits, result));

    private static StudyOptions Options(int seasons, int threads) =>
        new()
        {
            Seasons = seasons,
            Seed = 42,
            Threads = threads,
        };

    private static StudyResult PlayDrawn(int seasons, int threads) =>
        StudyRunner.Play(s_plan, Options(seasons, threads), Drawing, null, CancellationToken.None);

    private static void Play(int seasons, int threads, DrawSeason draw) =>
        StudyRunner.Play(s_plan, Options(seasons, threads), () => DrawnPlayer.Of(draw), null, CancellationToken.None);

    private sealed class Steps : IProgress<int>
    {
        public List<int> Seen { get; } = [];

        public void Report(int value) => Seen.Add(value);
    }
}
