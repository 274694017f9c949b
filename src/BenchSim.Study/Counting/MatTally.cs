using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts the days on which the mats of one space are on.</summary>
/// <param name="space">The space; its power is given.</param>
/// <param name="index">Its position.</param>
internal sealed class MatTally(Space space, int index)
{
    private const int HoursADay = 24;
    private readonly ExactTally _days = new();

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult season) => _days.Add(season.MatDays[index]);

    /// <summary>Adds another thread's count.</summary>
    public void Merge(MatTally other) => _days.Merge(other._days);

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange) => exchange.Every(_days);

    /// <summary>What was counted.</summary>
    public MatPowerResult ToResult(StudentFactors student) =>
        new(space, _days.ToEstimate(student, 1 / MatElectricity.KilowattHours(space.Power!.Watts, HoursADay, space.Power.Duty)));
}
