using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Succession;

/// <summary>Counts one schedule, season by season.</summary>
/// <param name="supply">How long one set-out supplies.</param>
/// <param name="successions">Positions of the successions among the plan's batches.</param>
internal sealed class SuccessionTally(SupplyRule supply, int[] successions)
{
    private readonly WideTally _late = new();
    private readonly WideTally _ownLate = new();
    private readonly ExactTally _gapDays = new();
    private readonly ExactTally _neverOut = new();
    private int _fits;
    private int _withoutGap;

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult season)
    {
        long late = 0;
        foreach (var batch in season.Batches)
        {
            late += batch.LatePlantDays;
        }

        long ownLate = 0;
        var neverOut = 0;
        var setOut = new List<int>(successions.Length);
        foreach (var at in successions)
        {
            var batch = season.Batches[at];
            ownLate += batch.LatePlantDays;
            if (batch.OutMedian >= 0)
            {
                setOut.Add(batch.OutMedian);
            }
            else
            {
                neverOut++;
            }
        }

        var gapDays = supply.GapDays(setOut);
        _late.Add(late);
        _ownLate.Add(ownLate);
        _gapDays.Add(gapDays);
        _neverOut.Add(neverOut);
        _fits += season.Fits ? 1 : 0;
        _withoutGap += gapDays == 0 && neverOut == 0 ? 1 : 0;
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(SuccessionTally other)
    {
        _late.Merge(other._late);
        _ownLate.Merge(other._ownLate);
        _gapDays.Merge(other._gapDays);
        _neverOut.Merge(other._neverOut);
        _fits += other._fits;
        _withoutGap += other._withoutGap;
    }

    /// <summary>What was counted.</summary>
    public ScheduleFigures ToFigures(SeasonPlan plan, int seasons, StudentFactors student) =>
        new(
            successions.Max(at => plan.Batches[at].SetOutOn),
            Chances.Of(_fits, seasons),
            _late.ToEstimate(student),
            _ownLate.ToEstimate(student),
            _gapDays.ToEstimate(student),
            Chances.Of(_withoutGap, seasons),
            _neverOut.ToEstimate(student)
        );
}
