namespace BenchSim.Season.Values;

/// <summary>
/// The last few things made, by what they were made from: whoever asks again for the same gets the same. Safe for use by several threads.
/// </summary>
/// <typeparam name="TKey">What a thing is made from; equal by content.</typeparam>
/// <typeparam name="TValue">The thing; it must not change once made.</typeparam>
/// <param name="most">Things kept at most, 1 or more.</param>
/// <param name="make">Makes a thing.</param>
internal sealed class Kept<TKey, TValue>(int most, Func<TKey, TValue> make)
    where TKey : notnull
{
    private readonly Lock _gate = new();

    // The one asked for last stands last.
    private readonly List<(TKey Key, TValue Value)> _kept = [];

    /// <summary>The thing made from a key. Two threads that ask at the same time may make it twice.</summary>
    /// <param name="key">What it is made from.</param>
    public TValue Of(TKey key)
    {
        lock (_gate)
        {
            var at = _kept.FindIndex(each => each.Key.Equals(key));
            if (at >= 0)
            {
                var found = _kept[at];
                _kept.RemoveAt(at);
                _kept.Add(found);
                return found.Value;
            }
        }

        var made = make(key);
        lock (_gate)
        {
            if (_kept.Count >= most)
            {
                _kept.RemoveAt(0);
            }

            _kept.Add((key, made));
            return made;
        }
    }
}
