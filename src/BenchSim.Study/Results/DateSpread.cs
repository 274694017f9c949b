namespace BenchSim.Study.Results;

/// <summary>A date over the seasons in which the thing happened at all.</summary>
/// <param name="P10">One of those seasons in ten is at or before this; null when it never happened.</param>
/// <param name="P50">Median; null when it never happened.</param>
/// <param name="P90">Nine of those seasons in ten are at or before this; null when it never happened.</param>
/// <param name="Happened">Seasons in which it happened.</param>
/// <param name="Seasons">Seasons played.</param>
public readonly record struct DateSpread(DateOnly? P10, DateOnly? P50, DateOnly? P90, int Happened, int Seasons);
