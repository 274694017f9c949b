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
    private readonly Seen _seen = new();
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
    public void Numbers(ExactCounts counts, int most)
    {
        for (var cell = 0; cell < counts.Cells; cell++)
        {
            ReadSeen(most);
            RefuseWide();
            counts.Fill(cell, _seen);
        }
    }

    /// <inheritdoc/>
    public void Numbers(WideCounts counts)
    {
        for (var cell = 0; cell < counts.Cells; cell++)
        {
            var isClassed = Number(1) == 1;
            ReadSeen(isClassed ? WideCount.ClassOf(LargestValue) : LargestValue);
            if (isClassed)
            {
                var (sum, squares) = (Number(UInt128.MaxValue), Number(UInt128.MaxValue));
                _seen.SetClassed(new Moments(seasons, sum, squares, (long)Number((ulong)LargestValue), (long)Number((ulong)LargestValue)));
            }

            if (!counts.TryFill(cell, _seen))
            {
                throw Wrong();
            }
        }
    }

    private static FormatException Wrong() => new("These are not the counts of so many seasons of this plan.");

    private void RefuseWide()
    {
        var lowest = _seen.Values.FirstOrDefault(each => each.Value > 0).Value;
        if (_seen.Values.Count > 0 && _seen.Values[^1].Value - lowest > WidestSpan)
        {
            throw Wrong();
        }
    }

    // Values in rising order, each seen at least once, all seasons in all.
    private void ReadSeen(long most)
    {
        _seen.Clear();
        var count = (int)Number((ulong)seasons);
        long value = 0;
        for (var at = 0; at < count; at++)
        {
            var step = (long)Number((ulong)(most - value));
            value += step;
            var had = (int)Number((ulong)(seasons - _seen.Seasons));
            if ((at > 0 && step == 0) || had == 0)
            {
                throw Wrong();
            }

            _seen.Add(value, had);
        }

        if (_seen.Seasons != seasons)
        {
            throw Wrong();
        }
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
