namespace BenchSim.Season.Inputs;

/// <summary>
/// Something that goes wrong in some seasons, on one day: a night without heat, a missed watering, mice. It costs a share of the plants in
/// the trays and flats that stand where it strikes.
/// </summary>
public sealed record Mishap
{
    /// <summary>Short name, unique among mishaps; its luck is drawn by it.</summary>
    public required string Id { get; init; }

    /// <summary>Name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>Chance that it happens in a season, 0 to 1.</summary>
    public double Chance { get; init; }

    /// <summary>First day on which it may strike.</summary>
    public DateOnly From { get; init; }

    /// <summary>Last day on which it may strike; every day from the first on is as likely.</summary>
    public DateOnly To { get; init; }

    /// <summary>House that it strikes; null where it is not kept to one.</summary>
    public string? HouseId { get; init; }

    /// <summary>Space that it strikes; null where it is not kept to one.</summary>
    public string? SpaceId { get; init; }

    /// <summary>Crop that it strikes; null where it is not kept to one.</summary>
    public string? CropId { get; init; }

    /// <summary>Share of the plants in each tray or flat that is lost, 0 to 1.</summary>
    public double Loss { get; init; }

    /// <summary>Whether it strikes a crop that stands in a space.</summary>
    /// <param name="space">The space.</param>
    /// <param name="crop">Id of the crop.</param>
    /// <exception cref="ArgumentNullException"><paramref name="space"/> is null.</exception>
    public bool Strikes(Space space, string crop)
    {
        ArgumentNullException.ThrowIfNull(space);
        return Is(HouseId, space.HouseId) && Is(SpaceId, space.Id) && Is(CropId, crop);
    }

    private static bool Is(string? only, string? id) => only is null || string.Equals(only, id, StringComparison.Ordinal);
}
