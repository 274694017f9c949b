using BenchSim.Season.Climate;

namespace BenchSim.Season.Play;

/// <summary>The dates of one batch when nothing stands in its way, by day of the clock.</summary>
/// <param name="EmergeDay">Day on which half the coming seedlings are up.</param>
/// <param name="OffMatDay">Day of leaving the mat; -1 where none is used.</param>
/// <param name="PotUpDay">Day of potting up; -1 for direct.</param>
/// <param name="TableDay">Day of going to the table.</param>
/// <param name="OutDay">Day on which it may be set out.</param>
/// <param name="PathMeanC">Mean temperature of the medium from sowing to emergence, degrees Celsius.</param>
internal readonly record struct WalkDates(int EmergeDay, int OffMatDay, int PotUpDay, int TableDay, int OutDay, double PathMeanC);

/// <summary>Planned dates: one batch walked through by the season's own steps, alone and without limits.</summary>
internal sealed partial class SeasonCore
{
    private BatchState? walked;

    private bool IsWalkedOut => walked is { Unsown: 0, IsStanding: false };

    /// <summary>Walks the one batch of a planning core from a sow day.</summary>
    /// <param name="sowDay">Day of sowing, a work day.</param>
    /// <param name="normal">Normal climate.</param>
    /// <param name="scratch">Room to work in.</param>
    /// <returns>The dates; null when it is not out by the last day.</returns>
    public WalkDates? Walk(int sowDay, SeasonClimate normal, SeasonResult scratch)
    {
        season = 0;
        climate = normal;
        result = scratch;
        witness = null;
        capacity = tables.Open;
        Clear();
        var batch = batches[0];
        batch.SowDay = sowDay;
        DrawLuck(batch);
        walked = batch;
        RunDays(sowDay);
        walked = null;
        var outcome = result.Batches[0];
        return outcome.OutLast < 0 || batch.IsStanding
            ? null
            : new WalkDates(
                (int)(lastOut.EmergedHour / 24),
                outcome.OffMat,
                outcome.PottedUp,
                outcome.OnTable,
                outcome.OutLast,
                lastOut.PathMeanC
            );
    }
}
