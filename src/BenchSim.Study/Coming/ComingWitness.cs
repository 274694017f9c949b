using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;

namespace BenchSim.Study.Coming;

/// <summary>Sees which jobs are done on the next days of one season after another.</summary>
/// <param name="plan">Plan.</param>
/// <param name="today">The day from which on it looks, 0 the first of the season.</param>
internal sealed class ComingWitness(SeasonPlan plan, int today) : ISeasonWitness
{
    private Dictionary<JobKey, SeenJob> _seen = [];

    /// <summary>The jobs of the season played last; the next begins anew.</summary>
    public Dictionary<JobKey, SeenJob> Take()
    {
        var seen = _seen;
        _seen = [];
        return seen;
    }

    /// <inheritdoc/>
    // What rows of the day itself say has been done.
    public void PastEnds() => _seen.Clear();

    /// <inheritdoc/>
    public void Moved(TrayMove move)
    {
        if (KindOf(move) is { } kind)
        {
            Keep(kind, move.Batch, move.IsFlat, move.Count, move.From, move.To, move.Hour);
        }
    }

    /// <inheritdoc/>
    public void Potted(FlatPotted potted) => Keep(WorkKind.PotUp, potted.Batch, areFlats: false, potted.Trays, -1, -1, potted.Hour);

    /// <inheritdoc/>
    public void WentOut(TraysOut trays) => Keep(WorkKind.SetOut, trays.Batch, areFlats: false, trays.Count, trays.From, -1, trays.Hour);

    // Moves from bench to bench as room appears are no job that can be planned.
    private WorkKind? KindOf(TrayMove move)
    {
        if (move.From < 0)
        {
            return WorkKind.Sow;
        }

        var (from, to) = (plan.Scenario.Spaces[move.From].Kind, plan.Scenario.Spaces[move.To].Kind);
        var finish = plan.Batches[move.Batch].Finish;
        return (from, to) switch
        {
            (SpaceKind.Table, _) or (_, SpaceKind.Mat) => null,
            (_, SpaceKind.Table) => WorkKind.ToTable,
            (SpaceKind.Mat, _) => WorkKind.OffMat,
            _ => finish.Contains(move.To) && !finish.Contains(move.From) ? WorkKind.Finish : null,
        };
    }

    private void Keep(WorkKind kind, int batch, bool areFlats, int pieces, int from, int to, double hour)
    {
        var day = (int)(hour / 24) - today;
        if (day is < 0 or >= ComingDays.JobDays)
        {
            return;
        }

        var key = new JobKey(batch, kind, areFlats);
        if (!_seen.TryGetValue(key, out var job))
        {
            _seen.Add(key, job = new SeenJob(day));
        }

        job.Add(day, pieces, from, to);
    }
}

/// <summary>One job on one batch.</summary>
internal readonly record struct JobKey(int Batch, WorkKind Kind, bool AreFlats);

/// <summary>A job as one season has it.</summary>
/// <param name="day">Day on which it begins, from the first that is looked at.</param>
internal sealed class SeenJob(int day)
{
    private readonly Dictionary<(int From, int To), int> _ways = [];

    /// <summary>Day on which it begins, from the first that is looked at.</summary>
    public int Day => day;

    /// <summary>Trays or flats on all days that are looked at.</summary>
    public int Pieces { get; private set; }

    /// <summary>Those of the first day that is looked at.</summary>
    public int PiecesToday { get; private set; }

    /// <summary>How many went from where to where; -1 for nowhere.</summary>
    public IEnumerable<KeyValuePair<(int From, int To), int>> Ways => _ways;

    public void Add(int on, int pieces, int from, int to)
    {
        Pieces += pieces;
        PiecesToday += on == 0 ? pieces : 0;
        _ways[(from, to)] = _ways.GetValueOrDefault((from, to)) + pieces;
    }
}
