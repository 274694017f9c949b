using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Sizing;

/// <summary>What the best there is comes to: the space without limit, and every space without limit.</summary>
internal sealed class SizeCeiling(PlanShape shape, int space)
{
    /// <summary>The space without limit.</summary>
    public SizeTally Unlimited { get; } = new();

    /// <summary>Every space without limit.</summary>
    public SizeTally Everywhere { get; } = new();

    /// <summary>Who waits for whom where the space has no limit.</summary>
    public WaitTally Waits { get; } = new(shape);

    /// <summary>
    /// Places on the first day with which the space could hold on every day of every season what it holds without a limit.
    /// </summary>
    public int Peak { get; private set; }

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult unlimited, SeasonResult everywhere)
    {
        Unlimited.Add(unlimited);
        Everywhere.Add(everywhere);
        Waits.Add(unlimited, RoomySeason.NotPlayed);

        // Where places change on dates, all numbers move along with the first.
        var given = shape.Places[space];
        for (var day = 0; day < given.Length; day++)
        {
            if (unlimited.Held[space][day] is > 0 and var held)
            {
                Peak = Math.Max(Peak, held + shape.Plan.Scenario.Spaces[space].Places - given[day]);
            }
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(SizeCeiling other)
    {
        Unlimited.Merge(other.Unlimited);
        Everywhere.Merge(other.Everywhere);
        Peak = Math.Max(Peak, other.Peak);
        Waits.Merge(other.Waits);
    }
}
