using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Published.Season;

/// <summary>
/// When each tray came, got a place in each kind of space, was ready to leave it, and left it, as the season's witness saw it; and the
/// figures of theory that follow. Instants in hours; infinite for what did not happen.
/// </summary>
internal sealed class Journal(int[] firstTray, double[] comings, Func<int, SpaceKind, double> stay) : ISeasonWitness
{
    private readonly double[][] _stays = Instants(comings.Length);
    private readonly double[][] _entered = Instants(comings.Length);
    private readonly double[][] _ready = Instants(comings.Length);
    private readonly double[][] _left = Instants(comings.Length);
    private readonly bool[] _isLost = new bool[comings.Length];
    private readonly List<int[]> _heldByDay = [];

    /// <summary>Places held in each kind of space at the end of each day's round, by the season's own books.</summary>
    public IReadOnlyList<int[]> HeldByDay => _heldByDay;

    public double Entered(int tray, SpaceKind kind) => _entered[(int)kind][tray];

    public double Left(int tray, SpaceKind kind) => _left[(int)kind][tray];

    public bool IsLost(int tray) => _isLost[tray];

    public double BeginStay(int tray, SpaceKind kind) => _stays[(int)kind][tray] = stay(tray, kind);

    public void Moved(TrayMove move)
    {
        var first = firstTray[move.Batch] + move.First;
        for (var tray = first; tray < first + move.Count; tray++)
        {
            if (move.From >= 0)
            {
                _left[move.From][tray] = move.Hour;
            }

            _entered[move.To][tray] = move.Hour;
            _ready[move.To][tray] = move.Hour + _stays[move.To][tray];
        }
    }

    public void WentOut(TraysOut trays) => Array.Fill(_left[trays.From], trays.Hour, firstTray[trays.Batch] + trays.First, trays.Count);

    // What is given up are the last trays of a sowing.
    public void GaveUp(SowingsGivenUp sowings)
    {
        var end = sowings.Batch + 1 < firstTray.Length ? firstTray[sowings.Batch + 1] : _isLost.Length;
        Array.Fill(_isLost, value: true, end - sowings.Count, sowings.Count);
    }

    public void DayEnds(SeasonView season) => _heldByDay.Add([season.HeldIn(0), season.HeldIn(1), season.HeldIn(2)]);

    /// <summary>Trays there at an instant; what comes then counts, what leaves then does not.</summary>
    public int[] Counts(SpaceKind kind, IEnumerable<double> instants)
    {
        var (entered, left) = InOrder(kind);
        return [.. instants.Select(instant => UpTo(entered, instant) - UpTo(left, instant))];
    }

    /// <summary>Mean trays there over a time.</summary>
    public double MeanHeld(SpaceKind kind, double from, double to) => Mean(_entered[(int)kind], _left[(int)kind], from, to);

    /// <summary>Mean trays over a time that were ready to leave and had to stay: those that are blocked.</summary>
    public double MeanBlocked(SpaceKind kind, double from, double to) => Mean(_ready[(int)kind], _left[(int)kind], from, to);

    /// <summary>Mean trays over a time that had come and had no place in a kind of space yet.</summary>
    public double MeanInLine(SpaceKind kind, double from, double to) => Mean(comings, _entered[(int)kind], from, to);

    /// <summary>Mean trays over a time that had come and not left a kind of space yet.</summary>
    public double MeanInSystem(SpaceKind kind, double from, double to) => Mean(comings, _left[(int)kind], from, to);

    /// <summary>Mean hours from coming to getting a place, of those that got it in a time.</summary>
    public double MeanWait(SpaceKind kind, double from, double to) => MeanSince(_entered[(int)kind], from, to);

    /// <summary>Mean hours from coming to leaving, of those that left in a time.</summary>
    public double MeanSojourn(SpaceKind kind, double from, double to) => MeanSince(_left[(int)kind], from, to);

    /// <summary>Trays that left a kind of space in a time.</summary>
    public int Leavings(SpaceKind kind, double from, double to) => _left[(int)kind].Count(hour => hour > from && hour <= to);

    /// <summary>Share of the trays that came in a time and found no place.</summary>
    public double ShareLost(double from, double to)
    {
        var (came, lost) = (0, 0);
        for (var tray = 0; tray < comings.Length; tray++)
        {
            if (comings[tray] > from && comings[tray] <= to)
            {
                came++;
                lost += _isLost[tray] ? 1 : 0;
            }
        }

        return (double)lost / came;
    }

    /// <summary>Share of a time in which just so many trays were there.</summary>
    public double ShareOfTime(SpaceKind kind, int held, double from, double to)
    {
        var (entered, left) = InOrder(kind);
        var (count, gone, time, now) = (0, 0, 0.0, from);
        while (now < to)
        {
            while (gone < left.Length && left[gone] <= now)
            {
                gone++;
            }

            while (count < entered.Length && entered[count] <= now)
            {
                count++;
            }

            var next = Math.Min(to, Math.Min(At(left, gone), At(entered, count)));
            time += count - gone == held ? next - now : 0;
            now = next;
        }

        return time / (to - from);
    }

    private static double At(double[] instants, int index) => index < instants.Length ? instants[index] : double.PositiveInfinity;

    private (double[] Entered, double[] Left) InOrder(SpaceKind kind) =>
        ([.. _entered[(int)kind].Where(double.IsFinite).Order()], [.. _left[(int)kind].Where(double.IsFinite).Order()]);

    private static int UpTo(double[] instants, double instant)
    {
        var (low, high) = (0, instants.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = instants[middle] <= instant ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private double Mean(double[] begin, double[] end, double from, double to)
    {
        var sum = 0.0;
        for (var tray = 0; tray < begin.Length; tray++)
        {
            sum += _isLost[tray] ? 0 : Math.Max(0, Math.Min(end[tray], to) - Math.Max(begin[tray], from));
        }

        return sum / (to - from);
    }

    private double MeanSince(double[] instants, double from, double to)
    {
        var (sum, count) = (0.0, 0);
        for (var tray = 0; tray < instants.Length; tray++)
        {
            if (instants[tray] > from && instants[tray] <= to)
            {
                sum += instants[tray] - comings[tray];
                count++;
            }
        }

        return sum / count;
    }

    private static double[][] Instants(int trays) => [.. Enumerable.Range(0, 3).Select(_ => Never(trays))];

    private static double[] Never(int trays)
    {
        var instants = new double[trays];
        Array.Fill(instants, double.PositiveInfinity);
        return instants;
    }
}
