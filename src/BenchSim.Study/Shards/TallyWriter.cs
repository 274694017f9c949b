using BenchSim.Study.Counting;

namespace BenchSim.Study.Shards;

/// <summary>
/// Writes counts as bytes: whole numbers of seven bits a byte, least first, the high bit set on all but the last. Values come in rising order,
/// each as the step from the one before, so that the same counts give the same bytes however they were gathered.
/// </summary>
internal sealed class TallyWriter : ITallyExchange
{
    private readonly List<byte> _bytes = [];

    /// <summary>What was written.</summary>
    public byte[] ToBytes() => [.. _bytes];

    /// <inheritdoc/>
    public void Seasons(ref int seasons) => Write((ulong)seasons);

    /// <inheritdoc/>
    public void Sums(long[] sums)
    {
        foreach (var sum in sums)
        {
            Write((ulong)sum);
        }
    }

    /// <inheritdoc/>
    public void Every(ExactTally tally) => Write(tally.Counted());

    /// <inheritdoc/>
    public void Some(ExactTally tally, int most) => Write(tally.Counted());

    /// <inheritdoc/>
    public void Every(WideTally tally)
    {
        (long, int)[] counted = tally.Counted(out var isClassed);
        Write(isClassed ? 1UL : 0);
        Write(counted);
        if (!isClassed)
        {
            return;
        }

        var moments = tally.Moments();
        Write(moments.Sum);
        Write(moments.Squares);
        Write((ulong)moments.Least);
        Write((ulong)moments.Most);
    }

    /// <inheritdoc/>
    public void Every(DayTally tally)
    {
        for (var day = 0; day < tally.Days; day++)
        {
            Write(tally.Counted(day));
        }
    }

    private void Write((long Value, int Seasons)[] counted)
    {
        Write((ulong)counted.Length);
        long before = 0;
        foreach ((var value, var seasons) in counted)
        {
            Write((ulong)(value - before));
            Write((ulong)seasons);
            before = value;
        }
    }

    private void Write(UInt128 number)
    {
        for (; number >= 0x80; number >>= 7)
        {
            _bytes.Add((byte)((byte)number | 0x80));
        }

        _bytes.Add((byte)number);
    }
}
