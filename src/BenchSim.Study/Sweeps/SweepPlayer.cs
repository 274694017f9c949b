using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Sweeps;

/// <summary>Plays blocks of seasons of one plan. Not safe for use by several threads.</summary>
/// <param name="plan">The plan, with the values that are to be played.</param>
/// <param name="seed">Seed of all luck.</param>
public sealed class SweepPlayer(SeasonPlan plan, ulong seed)
{
    private readonly SeasonPlayer _player = new(plan, seed);
    private readonly SeasonResult _season = new();

    /// <summary>Plays a block: its seasons are those of a run of the whole, whatever else is played.</summary>
    /// <param name="first">First season, from 0.</param>
    /// <param name="count">How many.</param>
    /// <param name="cancel">Stops it after the season it is in.</param>
    /// <exception cref="OperationCanceledException">Cancelled before the last season was done.</exception>
    public SweepCounts Play(int first, int count, CancellationToken cancel)
    {
        SweepCounts counts = new(_player.Plan.Scenario.Spaces.Length);
        for (var season = first; season < first + count; season++)
        {
            cancel.ThrowIfCancellationRequested();
            _player.Play(season, PlaceLimits.AsGiven, _season);
            counts.Add(_season);
        }

        return counts;
    }
}
