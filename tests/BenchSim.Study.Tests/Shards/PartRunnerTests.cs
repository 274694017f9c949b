using BenchSim.Season.Inputs;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;

namespace BenchSim.Study.Tests.Shards;

/// <summary>Parts add up to the run they were taken from, to the last bit, and what no play wrote is refused.</summary>
public class PartRunnerTests
{
    private static readonly SeasonPlan s_plan = Plans.Small();

    // 3,000 seasons give late plant-days and work more than the 1,024 values that are counted one by one; 4 seasons in 4 parts give single
    // ones.
    [Theory]
    [InlineData(203, 4)]
    [InlineData(203, 1)]
    [InlineData(4, 4)]
    [InlineData(3000, 2)]
    [InlineData(3000, 7)]
    public void Parts_add_up_to_the_run_in_one_piece(int seasons, int of)
    {
        var whole = StudyRunner.Play(s_plan, Options(seasons, 2), Drawing(), null, CancellationToken.None);
        var sum = PartRunner.Add(
            s_plan,
            seasons,
            42,
            [.. Enumerable.Range(1, of).Select(number => (ReadOnlyMemory<byte>)Part(number, of, seasons, 1 + (number % 3)))]
        );
        Assert.Equal(ResultText.Of(whole), ResultText.Of(sum));
    }

    [Fact]
    public void The_real_player_plays_the_same_season_in_a_part_as_in_the_whole()
    {
        var plan = Plans.Small(days: 90, plantsEach: 700);
        StudyOptions options = new()
        {
            Seasons = 40,
            Seed = 3,
            Threads = 2,
        };
        ReadOnlyMemory<byte>[] parts =
        [
            .. Enumerable
                .Range(1, 3)
                .Select(number => (ReadOnlyMemory<byte>)PartRunner.Play(plan, options, new Share(number, 3), null, CancellationToken.None)),
        ];
        Assert.Equal(
            ResultText.Of(StudyRunner.Play(plan, options, null, CancellationToken.None)),
            ResultText.Of(PartRunner.Add(plan, 40, 3, parts))
        );
    }

    [Theory]
    [InlineData(60)]
    [InlineData(2500)]
    public void The_bytes_do_not_depend_on_the_threads(int seasons) => Assert.Equal(Part(2, 2, seasons, 1), Part(2, 2, seasons, 5));

    [Fact]
    public void A_count_left_out_of_the_exchange_would_show()
    {
        // Everything a season can fill is filled by Draw, so a tally read back and written again has all of it or other bytes.
        PlanShape shape = new(s_plan);
        SeasonTally tally = new(shape);
        var bytes = Part(1, 1, 50, 1);
        TallyReader reader = new(bytes, 50);
        tally.Exchange(reader);
        reader.End();
        TallyWriter again = new(tally.Seasons);
        tally.Exchange(again);
        Assert.Equal(bytes, again.ToBytes());
        Assert.Equal(50, tally.Seasons);
    }

    [Fact]
    public void Counts_cut_short_anywhere_are_refused()
    {
        var part = Part(1, 1, 20, 1);
        for (var length = 0; length < part.Length; length += 1 + (length % 41))
        {
            Assert.Throws<PartRefusedException>(() => PartRunner.Add(s_plan, 20, 42, [part.AsMemory(0, length)]));
        }

        Assert.Throws<PartRefusedException>(() => PartRunner.Add(s_plan, 20, 42, [(byte[])[.. part, 0]]));
    }

    [Fact]
    public void Counts_of_other_seasons_are_refused()
    {
        var refused = Assert.Throws<PartRefusedException>(() => PartRunner.Add(s_plan, 41, 42, [Part(1, 2, 40, 1), Part(2, 2, 40, 1)]));
        Assert.Equal(2, refused.Number);
    }

    // Fixed seed: no chance of a false alarm. A change may give other counts that hang together; then it is a result like any other.
    [Fact]
    public void Changed_counts_are_refused_or_give_a_result()
    {
        var good = Part(1, 1, 1500, 1);
        Random random = new(5);
        var refused = 0;
        for (var trial = 0; trial < 300; trial++)
        {
            byte[] changed = [.. good];
            for (var change = random.Next(1, 4); change > 0; change--)
            {
                changed[random.Next(changed.Length)] = (byte)random.Next(256);
            }

            try
            {
                PartRunner.Add(s_plan, 1500, 42, [changed]);
            }
            catch (PartRefusedException)
            {
                refused++;
            }
        }

        Assert.InRange(refused, 150, 300);
    }

    [Fact]
    public void Any_bytes_are_refused()
    {
        Random random = new(6);
        for (var trial = 0; trial < 3000; trial++)
        {
            var bytes = new byte[random.Next(300)];
            random.NextBytes(bytes);
            Assert.Throws<PartRefusedException>(() => PartRunner.Add(s_plan, 1 + (trial % 5), 42, [bytes]));
        }
    }

    [Fact]
    public void A_share_without_seasons_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PartRunner.Play(s_plan, Options(3, 1), new Share(1, 4), null, CancellationToken.None)
        );

    private static byte[] Part(int number, int of, int seasons, int threads) =>
        PartRunner.Play(s_plan, Options(seasons, threads), new Share(number, of), Drawing(), null, CancellationToken.None);

    private static StudyOptions Options(int seasons, int threads) =>
        new()
        {
            Seasons = seasons,
            Seed = 42,
            Threads = threads,
        };

    private static Func<PlaySeason> Drawing() =>
        () => DrawnPlayer.Of((season, limits, result) => Seasons.Draw(s_plan, season, limits, result));
}
