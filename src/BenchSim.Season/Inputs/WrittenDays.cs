namespace BenchSim.Season.Inputs;

/// <summary>Days to field size as a table gives them, before what is not growth in the tray is taken off.</summary>
/// <param name="Days">Days, above 0.</param>
/// <param name="FromSowing">Whether they begin with sowing; else with emergence.</param>
/// <param name="WithHardening">Whether they count the nights of hardening.</param>
public sealed record WrittenDays(double Days, bool FromSowing, bool WithHardening);
