using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Succession;

/// <summary>What one season tells of one schedule.</summary>
/// <param name="supply">How long one set-out supplies.</param>
/// <param name="successions">Positions of the successions among the plan's batches.</param>
internal sealed class ScheduleSeason(SupplyRule supply, int[] successions) : OwnerSeason
{
    private readonly List<int> _setOut = new(successions.Length);

    public bool Fits { get; private set; }

    public long Late { get; private set; }

    public long OwnLate { get; private set; }

    public int GapDays { get; private set; }

    public int NeverOut => successions.Length - _setOut.Count;

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        (Fits, Late, OwnLate) = (season.Fits, 0, 0);
        foreach (var batch in season.Batches)
        {
            Late += batch.LatePlantDays;
        }

        _setOut.Clear();
        foreach (var at in successions)
        {
            OwnLate += season.Batches[at].LatePlantDays;
            if (season.Batches[at].OutMedian is >= 0 and var day)
            {
                _setOut.Add(day);
            }
        }

        GapDays = supply.GapDays(_setOut);
    }
}

/// <summary>Counts one schedule, season by season.</summary>
internal sealed class SuccessionTally(SupplyRule supply, int[] successions, int days)
    : FigureTally<ScheduleSeason>([new ScheduleSeason(supply, successions)], s_figures, days)
{
    private static readonly FigureList<ScheduleSeason> s_figures = new();

    private static readonly ChanceFigure<ScheduleSeason> s_fits = s_figures.Chance("fits", "fits", season => season.Fits);

    private static readonly AmountFigure<ScheduleSeason> s_late = s_figures.Wide(
        "late_plant_days",
        "late plant-days",
        "plant-days",
        season => season.Late
    );

    private static readonly AmountFigure<ScheduleSeason> s_ownLate = s_figures.Wide(
        "own_late_plant_days",
        "late plant-days of the successions",
        "plant-days",
        season => season.OwnLate
    );

    private static readonly AmountFigure<ScheduleSeason> s_gapDays = s_figures.Amount("gap_days", "days without supply", "days", season =>
        season.GapDays
    );

    private static readonly ChanceFigure<ScheduleSeason> s_withoutGap = s_figures.Chance("without_gap", "without a gap", season =>
        season is { GapDays: 0, NeverOut: 0 }
    );

    private static readonly AmountFigure<ScheduleSeason> s_neverOut = s_figures.Amount(
        "never_out",
        "successions never out",
        "successions",
        season => season.NeverOut
    );

    /// <summary>What was counted.</summary>
    public ScheduleFigures ToFigures(SeasonPlan plan, int seasons)
    {
        var telling = new Telling(plan.FirstDay, seasons);
        return new(
            successions.Max(at => plan.Batches[at].SetOutOn),
            (Chance)Tell(s_fits, 0, telling),
            (Estimate)Tell(s_late, 0, telling),
            (Estimate)Tell(s_ownLate, 0, telling),
            (Estimate)Tell(s_gapDays, 0, telling),
            (Chance)Tell(s_withoutGap, 0, telling),
            (Estimate)Tell(s_neverOut, 0, telling)
        );
    }
}
