namespace BenchSim.Season.Play;

/// <summary>The dates of one batch when nothing stands in its way, by day of the clock.</summary>
/// <param name="EmergeDay">Day on which half the coming seedlings are up.</param>
/// <param name="OffMatDay">Day of leaving the mat; -1 where none is used.</param>
/// <param name="PotUpDay">Day of potting up; -1 for direct.</param>
/// <param name="FinishDay">Day of going to the benches on which it finishes; -1 where it does not.</param>
/// <param name="TableDay">Day of going to the table.</param>
/// <param name="OutDay">Day on which it may be set out.</param>
/// <param name="PathMeanC">Mean temperature of the medium from sowing to emergence, degrees Celsius.</param>
internal readonly record struct WalkDates(
    int EmergeDay,
    int OffMatDay,
    int PotUpDay,
    int FinishDay,
    int TableDay,
    int OutDay,
    double PathMeanC
);
