using BenchSim.Workbench.Phones;

namespace BenchSim.Workbench.Tests.Phones;

/// <summary>The code by which a phone is paired, on a clock that is set by hand.</summary>
public sealed class PairingCodeTests
{
    private readonly Clock _clock = new();

    [Fact]
    public void It_is_six_digits_and_good_once()
    {
        var code = new PairingCode(_clock);
        Assert.Null(code.Now);
        Assert.Equal(TypedCode.None, code.Judge("000000"));
        code.Renew();
        var digits = code.Now!;
        Assert.Matches("^[0-9]{6}$", digits);
        Assert.Equal(TypedCode.Right, code.Judge($" {digits[..3]}-{digits[3..]} "));
        Assert.Equal(TypedCode.None, code.Judge(digits));
        Assert.Null(code.Now);
    }

    [Fact]
    public void It_is_good_for_ten_minutes()
    {
        var code = new PairingCode(_clock);
        code.Renew();
        var digits = code.Now!;
        _clock.Time += TimeSpan.FromMinutes(10) - TimeSpan.FromTicks(1);
        Assert.Equal(digits, code.Now);
        _clock.Time += TimeSpan.FromTicks(1);
        Assert.Null(code.Now);
        Assert.Equal(TimeSpan.Zero, code.Left);
        Assert.Equal(TypedCode.None, code.Judge(digits));
    }

    [Fact]
    public void The_fifth_wrong_one_is_the_last()
    {
        var code = new PairingCode(_clock);
        code.Renew();
        var digits = code.Now!;
        for (var tried = 1; tried < 5; tried++)
        {
            Assert.Equal(TypedCode.Wrong, code.Judge(tried % 2 == 0 ? "" : digits + "0"));
        }

        Assert.Equal(TypedCode.None, code.Judge("x"));
        Assert.Equal(TypedCode.None, code.Judge(digits));
    }

    [Fact]
    public void A_new_one_takes_the_place_of_the_one_before()
    {
        var code = new PairingCode(_clock);
        code.Renew();
        var first = code.Now!;

        // One in a million is the same again.
        do
        {
            code.Renew();
        } while (string.Equals(code.Now, first, StringComparison.Ordinal));

        Assert.Equal(TypedCode.Wrong, code.Judge(first));
        Assert.Equal(TypedCode.Right, code.Judge(code.Now!));
    }

    private sealed class Clock : TimeProvider
    {
        public DateTimeOffset Time { get; set; } = new(2027, 3, 1, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Time;
    }
}
