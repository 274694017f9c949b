namespace BenchSim.Study.Succession;

/// <summary>One schedule: a sowing every so many days, so many times.</summary>
/// <param name="Every">Days from one to the next.</param>
/// <param name="Times">Successions.</param>
public readonly record struct Schedule(int Every, int Times);
