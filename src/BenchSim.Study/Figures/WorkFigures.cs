using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What people do, as far as it is counted.</summary>
internal enum Job
{
    Sow,
    PotUp,
    Move,
    SetOut,
    CarryIn,
}

/// <summary>
/// What one season tells of its work. Times are counted in whole thousandths of a minute, so that sums do not depend on their order.
/// </summary>
public sealed class WorkSeason : OwnerSeason
{
    /// <summary>Thousandths of a minute to an hour.</summary>
    internal const double PartsAnHour = 60.0 * PartsAMinute;

    private const int PartsAMinute = 1000;
    private static readonly Job[] s_jobs = Enum.GetValues<Job>();

    private readonly long[] _parts;
    private readonly long[] _times = new long[s_jobs.Length];

    internal WorkSeason(PlanShape shape)
    {
        _parts = [.. s_jobs.Select(job => PartsOf(job, shape.Plan.Scenario.Rules.Minutes))];
        PartsByWeek = new long[shape.Weeks];
    }

    internal long Parts { get; private set; }

    internal long[] PartsByWeek { get; }

    internal long Times(Job job) => _times[(int)job];

    /// <summary>Work of one season, in thousandths of a minute.</summary>
    internal static long PartsOf(SeasonResult season, WorkMinutes minutes)
    {
        long parts = 0;
        foreach (var job in s_jobs)
        {
            parts += Rows.Sum(ByDay(season, job)) * PartsOf(job, minutes);
        }

        return parts;
    }

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        Array.Clear(PartsByWeek);
        Array.Clear(_times);
        Parts = 0;
        foreach (var job in s_jobs)
        {
            var byDay = ByDay(season, job);
            for (var week = 0; week < PartsByWeek.Length; week++)
            {
                var end = Math.Min(byDay.Length, (week + 1) * SeasonResult.DaysAWeek);
                var times = 0;
                for (var day = week * SeasonResult.DaysAWeek; day < end; day++)
                {
                    times += byDay[day];
                }

                PartsByWeek[week] += times * _parts[(int)job];
                _times[(int)job] += times;
            }

            Parts += _times[(int)job] * _parts[(int)job];
        }
    }

    private static int[] ByDay(SeasonResult season, Job job) =>
        job switch
        {
            Job.Sow => season.Sown,
            Job.PotUp => season.Potted,
            Job.Move => season.Moved,
            Job.SetOut => season.SetOut,
            _ => season.CarriedIn,
        };

    private static long PartsOf(Job job, WorkMinutes minutes)
    {
        var each = job switch
        {
            Job.Sow => minutes.Sow,
            Job.PotUp => minutes.PotUp,
            Job.Move => minutes.Move,
            Job.SetOut => minutes.SetOut,
            _ => minutes.CarryIn,
        };
        return (long)Math.Round(each * PartsAMinute, MidpointRounding.AwayFromZero);
    }
}

/// <summary>The figures of the work.</summary>
public static class WorkFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<WorkSeason> All { get; } = new();

    /// <summary>Trays and flats sown.</summary>
    public static AmountFigure<WorkSeason> Sown { get; } =
        All.Amount("sown", "trays and flats sown", "trays and flats", work => work.Times(Job.Sow));

    /// <summary>Trays potted up.</summary>
    public static AmountFigure<WorkSeason> Potted { get; } =
        All.Amount("potted", "trays potted up", "trays", work => work.Times(Job.PotUp));

    /// <summary>Moves of one tray or flat between spaces.</summary>
    public static AmountFigure<WorkSeason> Moved { get; } =
        All.Amount("moved", "moves of one tray or flat", "moves", work => work.Times(Job.Move));

    /// <summary>Trays set out.</summary>
    public static AmountFigure<WorkSeason> SetOut { get; } =
        All.Amount("set_out", "trays set out", "trays", work => work.Times(Job.SetOut));

    /// <summary>Tray-nights carried in.</summary>
    public static AmountFigure<WorkSeason> CarriedIn { get; } =
        All.Amount("carried_in", "tray-nights carried in", "tray-nights", work => work.Times(Job.CarryIn));

    /// <summary>Hours of work in all.</summary>
    public static AmountFigure<WorkSeason> Hours { get; } =
        All.Joined(
            new AmountFigure<WorkSeason>("hours", "hours in all", "hours", work => work.Parts)
            {
                IsWide = true,
                Parts = _ => WorkSeason.PartsAnHour,
            }
        );

    /// <summary>Hours by week, the week of day 0 first; weeks begin on the weekday of day 0.</summary>
    public static RowFigure<WorkSeason> HoursByWeek { get; } =
        All.Joined(
            new RowFigure<WorkSeason>("hours", "week", "hours by week", "hours", work => work.PartsByWeek.Length, work => work.PartsByWeek)
            {
                IsWide = true,
                Parts = _ => WorkSeason.PartsAnHour,
            }
        );
}
