using BenchSim.Study.Counting;

namespace BenchSim.Study.Shards;

/// <summary>
/// Writes counts as bytes: whole numbers of seven bits a byte, least first, the high bit set on all but the last. Values come in rising
/// order, each as the step from the one before, so that the same counts give the same bytes however they were gathered.
/// </summary>
/// <param name="seasons">Seasons counted.</param>
internal sealed class TallyWriter(int seasons) : ITallyExchange
{
    private readonly List<byte> _bytes = [];
    private readonly Seen _seen = new();

    /// <summary>What was written.</summary>
    public byte[] ToBytes() => [.. _bytes];

    /// <inheritdoc/>
    public void Seasons(ref int seasons) => Write((ulong)seasons);

    /// <inheritdoc/>
    public void Numbers(ExactCounts counts, int most)
    {
        for (var cell = 0; cell < counts.Cells; cell++)
        {
            counts.Read(cell, _seen);
            WriteSeen();
        }
    }

    /// <inheritdoc/>
    public void Numbers(WideCounts counts)
    {
        for (var cell = 0; cell < counts.Cells; cell++)
        {
            counts.Read(cell, _seen);
            Write(_seen.IsClassed ? 1UL : 0);
            WriteSeen();
            if (_seen.IsClassed)
            {
                var moments = _seen.Moments();
                Write(moments.Sum);
                Write(moments.Squares);
                Write((ulong)moments.Least);
                Write((ulong)moments.Most);
            }
        }
    }

    private void WriteSeen()
    {
        _seen.AddZeros(seasons);
        Write((ulong)_seen.Values.Count);
        long before = 0;
        foreach ((var value, var had) in _seen.Values)
        {
            Write((ulong)(value - before));
            Write((ulong)had);
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
