using BenchSim.Study.Counting;

namespace BenchSim.Study.Shards;

/// <summary>
/// Reads into empty tallies what <see cref="TallyWriter"/> wrote, and refuses what no play of so many seasons can have counted.
/// </summary>
/// <param name="bytes">What was written.</param>
/// <param name="seasons">Seasons counted.</param>
internal sealed class TallyReader(ReadOnlyMemory<byte> bytes, int seasons) : ITallyExchange
{
    /// <summary>
    /// Largest value of a season: 2^43, so that seasons times squares of a million seasons stay below 2^128. No farm comes near: it is
    /// 9,000 gigawatt-hours.
    /// </summary>
    internal const long LargestValue = 1L << 43;

    // Values far apart take up one array.
    private const long WidestSpan = 1L << 26;
    private int _at;

    /// <summary>Refuses bytes after the end.</summary>
    public void End()
    {
        if (_at != bytes.Length)
        {
            throw Wrong();
        }
    }

    /// <inheritdoc/>
    public void Seasons(ref int count) => count = (int)Number((ulong)seasons);

    /// <inheritdoc/>
    public void Sums(long[] sums)
    {
        for (var i = 0; i < sums.Length; i++)
        {
            sums[i] = (long)Number((ulong)LargestValue * (ulong)seasons);
        }
    }

    /// <inheritdoc/>
    public void Every(ExactTally tally) => Fill(tally, Counted(int.MaxValue), all: true);

    /// <inheritdoc/>
    public void Some(ExactTally tally, int most) => Fill(tally, Counted(most), all: false);

    /// <inheritdoc/>
    public void Every(WideTally tally)
    {
        var isClassed = Number(1) == 1;
        var counted = Counted(isClassed ? WideTally.ClassOf(LargestValue) : LargestValue);
        RefuseOtherThan(counted, all: true);
        var isDone = isClassed
            ? tally.TryFillClasses(
                counted,
                Number(UInt128.MaxValue),
                Number(UInt128.MaxValue),
                (long)Number((ulong)LargestValue),
                (long)Number((ulong)LargestValue)
            )
            : tally.TryFill(counted);
        if (!isDone)
        {
            throw Wrong();
        }
    }

    /// <inheritdoc/>
    public void Every(DayTally tally)
    {
        for (var day = 0; day < tally.Days; day++)
        {
            var counted = Counted(int.MaxValue);
            RefuseOtherThan(counted, all: true);
            RefuseWide(counted);
            tally.Fill(day, counted, seasons);
        }
    }

    private static FormatException Wrong() => new("These are not the counts of so many seasons of this plan.");

    private static void RefuseWide((long Value, int Seasons)[] counted)
    {
        var lowest = counted.FirstOrDefault(each => each.Value > 0).Value;
        if (counted.Length > 0 && counted[^1].Value - lowest > WidestSpan)
        {
            throw Wrong();
        }
    }

    private void Fill(ExactTally tally, (long Value, int Seasons)[] counted, bool all)
    {
        RefuseOtherThan(counted, all);
        RefuseWide(counted);
        foreach ((var value, var count) in counted)
        {
            tally.Add((int)value, count);
        }
    }

    private void RefuseOtherThan((long Value, int Seasons)[] counted, bool all)
    {
        var sum = counted.Sum(each => (long)each.Seasons);
        if (all ? sum != seasons : sum > seasons)
        {
            throw Wrong();
        }
    }

    // Values in rising order, each seen at least once.
    private (long Value, int Seasons)[] Counted(long most)
    {
        // Each takes two bytes or more, so a length that lies is found before room is taken for it.
        var counted = new (long Value, int Seasons)[(int)Number((ulong)Math.Min(seasons, (bytes.Length - _at) / 2))];
        long value = 0;
        for (var i = 0; i < counted.Length; i++)
        {
            var step = (long)Number((ulong)(most - value));
            if (i > 0 && step == 0)
            {
                throw Wrong();
            }

            value += step;
            var count = (int)Number((ulong)seasons);
            if (count == 0)
            {
                throw Wrong();
            }

            counted[i] = (value, count);
        }

        return counted;
    }

    private UInt128 Number(UInt128 most)
    {
        UInt128 number = 0;
        var span = bytes.Span;
        for (var shift = 0; shift < 128; shift += 7)
        {
            if (_at == span.Length)
            {
                throw Wrong();
            }

            var next = span[_at++];
            number |= (UInt128)(next & 0x7Fu) << shift;
            if (next < 0x80)
            {
                return number <= most ? number : throw Wrong();
            }
        }

        throw Wrong();
    }
}
