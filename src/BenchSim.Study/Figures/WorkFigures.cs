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
    SowSeed,
    SowCell,
    PotUpPlant,
    ThinCell,
    Water,
}

/// <summary>
/// What one season tells of its work. Times are counted in whole thousandths of a minute, so that sums do not depend on their order.
/// </summary>
public sealed class WorkSeason : OwnerSeason
{
    /// <summary>Thousandths of a minute to an hour.</summary>
    internal const double PartsAnHour = 60.0 * PartsAMinute;

    private const int PartsAMinute = 1000;
    private const double PartsASecond = PartsAMinute / 60.0;
    private static readonly Job[] s_jobs = Enum.GetValues<Job>();

    private readonly SiteRules _rules;
    private readonly long[] _times = new long[s_jobs.Length];

    internal WorkSeason(PlanShape shape)
    {
        _rules = shape.Plan.Scenario.Rules;
        PartsByWeek = new long[shape.Weeks];
    }

    internal long Parts { get; private set; }

    internal long[] PartsByWeek { get; }

    internal long Times(Job job) => _times[(int)job];

    /// <summary>Work of one season, in thousandths of a minute.</summary>
    internal static long PartsOf(SeasonResult season, SiteRules rules)
    {
        var weeks = (season.Sown.Length + SeasonResult.DaysAWeek - 1) / SeasonResult.DaysAWeek;
        long parts = 0;
        foreach (var job in s_jobs)
        {
            if (PartsEach(job, rules) is > 0 and var each)
            {
                for (var week = 0; week < weeks; week++)
                {
                    parts += PartsOf(TimesOf(season, job, week), each);
                }
            }
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
            var each = PartsEach(job, _rules);
            if (each == 0 && job > Job.CarryIn)
            {
                // No figure shows how often it is done.
                continue;
            }

            for (var week = 0; week < PartsByWeek.Length; week++)
            {
                var times = TimesOf(season, job, week);
                var parts = PartsOf(times, each);
                PartsByWeek[week] += parts;
                Parts += parts;
                _times[(int)job] += times;
            }
        }
    }

    // A week at a time: of what is not whole thousandths each, the sum of a week is rounded.
    private static long PartsOf(long times, double each) => (long)Math.Round(times * each, MidpointRounding.AwayFromZero);

    private static long TimesOf(SeasonResult season, Job job, int week)
    {
        var from = week * SeasonResult.DaysAWeek;
        var days = new Range(from, Math.Max(from, Math.Min(season.Sown.Length, from + SeasonResult.DaysAWeek)));
        return job switch
        {
            Job.Sow => Rows.Sum(season.Sown.AsSpan(days)),
            Job.PotUp => Rows.Sum(season.Potted.AsSpan(days)),
            Job.Move => Rows.Sum(season.Moved.AsSpan(days)),
            Job.SetOut => Rows.Sum(season.SetOut.AsSpan(days)),
            Job.CarryIn => Rows.Sum(season.CarriedIn.AsSpan(days)),
            Job.SowSeed => Rows.Sum(season.SeedsSown.AsSpan(days)),
            Job.SowCell => Rows.Sum(season.CellsSown.AsSpan(days)),
            Job.PotUpPlant => Rows.Sum(season.PlantsPotted.AsSpan(days)),
            Job.ThinCell => Rows.Sum(season.CellsThinned.AsSpan(days)),
            _ => PlaceDays(season.Held, days),
        };
    }

    private static long PlaceDays(int[][] held, Range days)
    {
        long sum = 0;
        foreach (var space in held)
        {
            sum += Rows.Sum(space.AsSpan(days));
        }

        return sum;
    }

    // What is given by the tray is taken to a whole thousandth of a minute.
    private static double PartsEach(Job job, SiteRules rules)
    {
        var (minutes, seconds) = (rules.Minutes, rules.Seconds);
        return job switch
        {
            Job.Sow => Whole(minutes.Sow),
            Job.PotUp => Whole(minutes.PotUp),
            Job.Move => Whole(minutes.Move),
            Job.SetOut => Whole(minutes.SetOut),
            Job.CarryIn => Whole(minutes.CarryIn),
            Job.SowSeed => seconds.SowSeed * PartsASecond,
            Job.SowCell => seconds.SowCell * PartsASecond,
            Job.PotUpPlant => seconds.PotUpPlant * PartsASecond,
            Job.ThinCell => seconds.ThinCell * PartsASecond,
            _ => minutes.WaterAPlace * PartsAMinute,
        };

        static double Whole(double minutes) => Math.Round(minutes * PartsAMinute, MidpointRounding.AwayFromZero);
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
