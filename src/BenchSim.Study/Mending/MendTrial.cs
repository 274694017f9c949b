using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Compare;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Mending;

/// <summary>Plays what was found against the plan as it is, in other seasons than it was found in.</summary>
internal sealed class MendTrial
{
    private const double Tenth = 0.9;

    private static readonly Measure s_late = Measures.PlantsLate;

    private readonly MendCount _count;
    private readonly MendMoney _money;

    /// <summary>Plays.</summary>
    /// <param name="plays">Plays.</param>
    /// <param name="basePlan">The plan as it is.</param>
    /// <param name="plans">Plans to try.</param>
    /// <param name="comparisons">Intervals that are shown in all, in this trial and others, and that have to hold at once.</param>
    /// <param name="seasons">Seasons.</param>
    public MendTrial(MendPlays plays, SeasonPlan basePlan, IReadOnlyList<SeasonPlan> plans, int comparisons, int seasons)
    {
        _count = plays.Play([basePlan, .. plans], 0, seasons);
        _money = new MendMoney(basePlan.Scenario);
        EachConfidence = Confidence.OfEach(comparisons);
    }

    /// <summary>Confidence of each of them.</summary>
    public double EachConfidence { get; }

    /// <summary>Seasons of a plan: 0 for the plan as it is, then the others.</summary>
    public MendSeason[] SeasonsOf(int plan) => _count.Seasons[plan];

    /// <summary>Sums of a plan: 0 for the plan as it is, then the others.</summary>
    public MendTally.OfPlan SumsOf(int plan) => _count.Tally.Plans[plan];

    /// <summary>Figures of a plan: 0 for the plan as it is, then the others.</summary>
    public MendFigures Figures(int plan) => FiguresOf(_count.Seasons[plan], _money);

    /// <summary>Figures of seasons.</summary>
    public static MendFigures FiguresOf(MendSeason[] seasons, MendMoney money)
    {
        long[] late = [.. seasons.Select(season => season.Late).Order()];
        return new MendFigures
        {
            Fits = Chances.Of(seasons.Count(season => season.Fits), seasons.Length),
            FitsWeatherCounted = Chances.Of(seasons.Count(season => season.FitsWeatherCounted), seasons.Length),
            LateUsual = late[At(0.5)],
            LateBad = late[At(Tenth)],
            Late = late.Average(),
            WorkHours = seasons.Average(season => season.WorkParts / WorkSeason.PartsAnHour),
            Money = money.IsKnown ? seasons.Average(season => season.MoneyParts / SeasonEnergy.Thousandths) : null,
        };

        // The smallest value that at least so many of the seasons do not exceed.
        int At(double share) => Math.Max(0, (int)Math.Ceiling((share * late.Length) - 1e-9) - 1);
    }

    /// <summary>What a plan gains against the plan as it is.</summary>
    public MendGain Gain(int plan)
    {
        var (before, after) = (_count.Seasons[0], _count.Seasons[plan]);
        var late = new PairedSums();
        var fits = new PairedTally(0);
        for (var at = 0; at < before.Length; at++)
        {
            late.Add(before[at].Late, after[at].Late);
            fits.Add(before[at].Fits, after[at].Fits);
        }

        return new MendGain(fits.Fits(EachConfidence), late.ToChange(s_late, EachConfidence));
    }

    /// <summary>Batches that are later in a plan than as it is, beyond luck and by a plant a season at least: the worst first.</summary>
    public ImmutableArray<(BatchPlan Batch, double Plants)> GivesWay(int plan, SeasonPlan own)
    {
        var sums = SumsOf(plan);
        return
        [
            .. own
                .Batches.Select((batch, at) => (Batch: batch, Change: sums.Late[at].ToChange(s_late, EachConfidence)))
                .Where(each => each.Change.IsReal && each.Change.Difference >= 1)
                .OrderByDescending(each => each.Change.Difference)
                .Select(each => (each.Batch, each.Change.Difference)),
        ];
    }
}
