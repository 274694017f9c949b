using System.Collections.Immutable;

namespace BenchSim.Season.Values;

/// <summary>
/// Gives one and the same array for arrays of the same content, so that records that hold them are equal when all they hold is. An array
/// that does not pass through here only makes such records differ. For one thread at a time.
/// </summary>
public sealed class SameArrays
{
    private readonly Dictionary<Type, object> _byType = [];

    /// <summary>What all arrays hold together.</summary>
    public long Length { get; private set; }

    /// <summary>Forgets all arrays.</summary>
    public void Clear()
    {
        _byType.Clear();
        Length = 0;
    }

    /// <summary>The first array of this content that was seen.</summary>
    /// <param name="array">An array.</param>
    public ImmutableArray<T> Of<T>(ImmutableArray<T> array)
    {
        if (!_byType.TryGetValue(typeof(T), out var seen))
        {
            _byType.Add(typeof(T), seen = new List<ImmutableArray<T>>());
        }

        var arrays = (List<ImmutableArray<T>>)seen;
        foreach (var each in arrays)
        {
            if (each == array || (each.Length == array.Length && each.AsSpan().SequenceEqual(array.AsSpan())))
            {
                return each;
            }
        }

        arrays.Add(array);
        Length += array.Length;
        return array;
    }
}
