using BenchSim.Season.Inputs;

namespace BenchSim.Season.Evidence;

/// <summary>A stage that trays have reached by what was done with them.</summary>
internal enum Stage
{
    /// <summary>Enough are up to leave the mat.</summary>
    LeavesMat,

    /// <summary>Flats are ready to be potted up.</summary>
    PotsUp,

    /// <summary>Trays are of field size.</summary>
    IsGrown,
}

/// <summary>Trays or flats that had reached a stage on a day, by what was done with them.</summary>
/// <param name="Stage">Stage.</param>
/// <param name="Trays">The trays.</param>
/// <param name="Day">The day.</param>
/// <param name="WasAwaited">
/// Whether it was done because the stage was there, so that it was hardly there long before; false where it was only found, or waited for
/// its date.
/// </param>
/// <param name="Space">Position of the mat they left; not read for other stages.</param>
internal sealed record StageMark(Stage Stage, TrayPast Trays, int Day, bool WasAwaited, int Space = 0)
{
    /// <summary>The weight of what was done before its stage.</summary>
    public const double Early = 0.01;

    /// <summary>The weight of what was done so many work rounds later than the first that could have done it.</summary>
    public static double Waited(int rounds) => 1 / ((1.0 + rounds) * (1 + rounds));

    /// <summary>What was done with a batch, of each stage and sowing the first time.</summary>
    public static StageMark[] Of(PastSite site, BatchPast past)
    {
        var isPotted = past.Trays.Any(trays => trays.End == TrayEnd.UsedUp);
        var marks = past.Trays.SelectMany(trays => Of(site, trays)).ToList();
        marks.RemoveAll(mark => mark.Stage == Stage.PotsUp && !mark.WasAwaited && isPotted);
        return
        [
            .. marks
                .GroupBy(mark => (mark.Stage, mark.Trays.SowDay))
                .Select(group => group.OrderBy(mark => mark.Day).ThenByDescending(mark => mark.WasAwaited).First()),
        ];
    }

    private static IEnumerable<StageMark> Of(PastSite site, TrayPast trays)
    {
        var isPotted = trays.PottedDay is not null;
        for (var stay = Math.Max(1, trays.Borrowed); stay < trays.Path.Length && !isPotted; stay++)
        {
            var (from, (to, day)) = (trays.Path[stay - 1].Space, trays.Path[stay]);
            var stoodOnMat = trays.Path.Take(stay).LastOrDefault(each => site.KindOf(each.Space) == SpaceKind.Mat, (Space: -1, Day: 0));
            if (site.KindOf(to) != SpaceKind.Mat && stoodOnMat.Space >= 0)
            {
                yield return new(
                    Stage.LeavesMat,
                    trays,
                    day,
                    stay > trays.Borrowed && site.KindOf(from) == SpaceKind.Mat,
                    stoodOnMat.Space
                );
                break;
            }
        }

        if (trays is { AreFlats: true, End: TrayEnd.UsedUp })
        {
            yield return new(Stage.PotsUp, trays, trays.EndDay, true);
        }

        if (isPotted)
        {
            yield return new(Stage.PotsUp, trays, trays.Path[trays.Borrowed].Day, false);
        }

        if (trays.AreFlats)
        {
            yield break;
        }

        var table = trays.Path.Skip(trays.Borrowed).FirstOrDefault(each => site.KindOf(each.Space) == SpaceKind.Table, (Space: -1, Day: 0));
        if (table.Space >= 0)
        {
            yield return new(Stage.IsGrown, trays, table.Day, false);
        }
        else if (trays.End == TrayEnd.Out)
        {
            yield return new(Stage.IsGrown, trays, trays.EndDay, false);
        }
    }
}
