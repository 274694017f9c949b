using System.Collections.Immutable;

namespace BenchSim.Season.Play;

/// <summary>
/// Which spaces have their places, which have more or fewer, and which have no limit. A limit is lifted, and places are added, on the days
/// the
/// space's house is open. Make one and keep it: players work out its places once.
/// </summary>
public sealed class PlaceLimits
{
    private readonly bool _noneAtAll;
    private readonly ImmutableArray<int> _unlimited;
    private readonly int _changed;
    private readonly int _added;

    private PlaceLimits(bool noneAtAll, ImmutableArray<int> unlimited, int changed, int added) =>
        (_noneAtAll, _unlimited, _changed, _added) = (noneAtAll, unlimited, changed, added);

    /// <summary>Every space has its places.</summary>
    public static PlaceLimits AsGiven { get; } = new(noneAtAll: false, [], -1, 0);

    /// <summary>No space has a limit: every crop gets its first open preference ("wanted places").</summary>
    public static PlaceLimits None { get; } = new(noneAtAll: true, [], -1, 0);

    /// <summary>Every space has its places, but for those named, which have no limit.</summary>
    /// <param name="spaces">Positions in the scenario.</param>
    public static PlaceLimits Without(params ImmutableArray<int> spaces) => new(noneAtAll: false, spaces, -1, 0);

    /// <summary>Every space has its places, and one has more or fewer than are given, on every day alike; never fewer than 0.</summary>
    /// <param name="space">Position in the scenario.</param>
    /// <param name="places">Places more; below 0, fewer.</param>
    public static PlaceLimits Adding(int space, int places) => new(noneAtAll: false, [], space, places);

    /// <summary>Whether a space has a limit.</summary>
    /// <param name="space">Position in the scenario.</param>
    public bool IsLimited(int space) => !_noneAtAll && !_unlimited.Contains(space);

    /// <summary>Places that a space has more than are given; below 0, fewer.</summary>
    /// <param name="space">Position in the scenario.</param>
    public int Added(int space) => space == _changed ? _added : 0;

    /// <inheritdoc/>
    public override string ToString() =>
        _noneAtAll ? "no limits"
        : _changed >= 0 ? $"space {_changed} {_added:+0;-0;+0}"
        : _unlimited.IsEmpty ? "as given"
        : $"without {string.Join(',', _unlimited)}";
}
