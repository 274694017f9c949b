namespace BenchSim.Engine.Tests.Golden;

/// <summary>Models on which four code bases written apart, in other languages and styles, gave the same figures.</summary>
public class GoldenTests
{
    [Theory]
    [InlineData(new[] { 8, 60, 30, 40 }, 459.3020283758415, 518.9020283758467)]
    [InlineData(new[] { 80, 300, 220, 80 }, 63.35705846923621, 122.9570584692357)]
    public void Tandem_of_four_stages(int[] capacities, double sojourn, double finish)
    {
        const int Replications = 1000;
        var model = new TandemModel(capacities);
        double sojourns = 0,
            finishes = 0;
        for (var r = 0; r < Replications; r++)
        {
            var (one, two) = model.Play((ulong)(5000 + r));
            sojourns += one;
            finishes += two;
        }

        Assert.Equal(0, (sojourns / Replications / sojourn) - 1, 1e-9);
        Assert.Equal(0, (finishes / Replications / finish) - 1, 1e-9);
    }

    [Fact]
    public void Single_server_with_a_million_customers() =>
        Assert.Equal(0, (new SingleServerModel().MeanSojourn(1_000_000) / 5.027806836083637) - 1, 1e-9);

    [Fact]
    public void The_same_server_used_in_one_by_customers_who_send_the_next() =>
        Assert.Equal(0, (new SingleServerModel().MeanSojournInOne(1_000_000) / 5.027806836083637) - 1, 1e-9);

    [Fact]
    public void The_same_server_as_a_process_that_works_off_its_line() =>
        Assert.Equal(0, (new SweepingServerModel().MeanSojourn(1_000_000) / 5.027806836083637) - 1, 1e-9);

    [Fact]
    public void A_warm_tandem_allocates_nothing()
    {
        var model = new TandemModel(8, 60, 30, 40);
        for (ulong seed = 0; seed < 20; seed++)
        {
            model.Play(seed);
        }

        model.Draw(7);
        long events = 0;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 50; i++)
        {
            model.Play();
            events += model.Simulation.Events;
        }

        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.InRange((double)bytes / events, 0, 0.1);
        Assert.InRange(events, 50 * 750, long.MaxValue);
    }

    // The first outputs of splitmix64 seeded with 1234567, as printed at rosettacode.org/wiki/Pseudo-random_numbers/Splitmix64.
    [Fact]
    public void Splitmix_known_answers()
    {
        ulong state = 1234567;
        Assert.Equal(6457827717110365317UL, Xoshiro.SplitMix(ref state));
        Assert.Equal(3203168211198807973UL, Xoshiro.SplitMix(ref state));
        Assert.Equal(9817491932198370423UL, Xoshiro.SplitMix(ref state));
    }

    // State 1, 2, 3, 4: the known answers in the tests of the Rust crate rand_xoshiro, made with the authors' reference code.
    [Fact]
    public void Xoshiro_known_answers()
    {
        var random = new Xoshiro(1, 2, 3, 4);
        Assert.Equal(41943041UL, random.Next());
        Assert.Equal(58720359UL, random.Next());
        Assert.Equal(3588806011781223UL, random.Next());
        Assert.Equal(3591011842654386UL, random.Next());
        Assert.Equal(9228616714210784205UL, random.Next());
    }
}
