using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Seed;

namespace BenchSim.Season.Inputs;

/// <summary>When the benches are worked.</summary>
public enum RoundKind
{
    /// <summary>Once each work day at the round hour.</summary>
    WorkRound,

    /// <summary>Whenever anything changes; exists to check the model against queueing theory.</summary>
    AnyTime,
}

/// <summary>The rules by which the site is worked.</summary>
public sealed record SiteRules
{
    /// <summary>Days of the week that are worked.</summary>
    public ImmutableArray<DayOfWeek> WorkDays { get; init; } =
    [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    /// <summary>Dates off.</summary>
    public ImmutableArray<DateOnly> DaysOff { get; init; } = [];

    /// <summary>Time of the work round.</summary>
    public TimeOnly RoundAt { get; init; } = new(8, 0);

    /// <summary>Work rounds, or any time.</summary>
    public RoundKind Rounds { get; init; }

    /// <summary>True when trays are moved back from a later to an earlier preference as room appears.</summary>
    public bool MoveBack { get; init; }

    /// <summary>Calendar days a sowing waits before a mat crop may start on a bench.</summary>
    public int SowWaitDays { get; init; } = 3;

    /// <summary>Calendar days after which what is unsown is given up.</summary>
    public int SowGiveUpDays { get; init; } = 14;

    /// <summary>Days before the earliest table date at which trays may go early anyway.</summary>
    public int TableLeadDays { get; init; } = 3;

    /// <summary>Days before the planned date from which trays may be set out.</summary>
    public int SetOutEarlyDays { get; init; }

    /// <summary>
    /// Days of slack planned between being ready and the planned set-out date, for a batch with only one of its two dates; 0 plans to the
    /// day.
    /// </summary>
    public int SlackDays { get; init; }

    /// <summary>Trays that can be sown a day; null for no limit. Flats count as trays.</summary>
    public int? SowTraysADay { get; init; }

    /// <summary>Trays that can be potted up a day; null for no limit.</summary>
    public int? PotUpTraysADay { get; init; }

    /// <summary>Trays that can be set out a day; null for no limit.</summary>
    public int? SetOutTraysADay { get; init; }

    /// <summary>Share of the wanted plants that must be out in time for a season to fit.</summary>
    public double ServiceGoal { get; init; } = 0.95;

    /// <summary>Days late that still count as in time.</summary>
    public int LateDays { get; init; } = 3;

    /// <summary>Chance with which the number of trays must bring the wanted plants.</summary>
    public double StandAssurance { get; init; } = 0.9;

    /// <summary>Medium temperature off the mat less air temperature, kelvin.</summary>
    public double MediumOffsetK { get; init; } = -2;

    /// <summary>Nights of forecast looked at.</summary>
    public int ForecastNights { get; init; } = 3;

    /// <summary>Rain of the two days before that still lets the field be worked, millimetres.</summary>
    public double WetLimitMm { get; init; } = 25;

    /// <summary>Warmth a row cover adds on the table, kelvin; 0 for no cover.</summary>
    public double CoverGainK { get; init; }

    /// <summary>Warmth a row cover adds to a night in the field, kelvin.</summary>
    public double RowCoverGainK { get; init; } = 1;

    /// <summary>Warmth a low tunnel adds to a night in the field, kelvin.</summary>
    public double LowTunnelGainK { get; init; } = 1.3;

    /// <summary>Warmth an unheated tunnel adds to a night in the field, kelvin.</summary>
    public double TunnelGainK { get; init; } = 1.3;

    /// <summary>
    /// Days of the fortnight from a batch's date for the table or the field of which more must be expected to hold it before check warns of
    /// it.
    /// </summary>
    public int HoldWarningDays { get; init; } = 7;

    /// <summary>Seeds in the germination test behind a packet value.</summary>
    public int GerminationSample { get; init; } = 400;

    /// <summary>How seed is kept from its test to its sowing; null when not given, and then packet values are taken as they are.</summary>
    public SeedStorage? SeedStorage { get; init; }

    /// <summary>Money, for the costs of the three ways to a stand and of the season.</summary>
    public Prices Prices { get; init; } = new();

    /// <summary>How potting mix settles, and what it is bought in.</summary>
    public PottingMix Mix { get; init; } = new();

    /// <summary>Light factor on growth by month, January first, 0 to 1.</summary>
    public ImmutableArray<double> Light { get; init; } = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1];

    /// <summary>Reliefs in the order they are tried; empty for none.</summary>
    public ImmutableArray<Relief> Reliefs { get; init; } = [];

    /// <summary>Fraction up at which the relief "off the mat early" may move a tray.</summary>
    public double EarlyOffMatAt { get; init; } = 0.25;

    /// <summary>Fraction of growth at which the relief "table early" may move a tray.</summary>
    public double EarlyTableAt { get; init; } = 0.9;

    /// <summary>Work minutes of each job.</summary>
    public WorkMinutes Minutes { get; init; } = new();

    /// <summary>Work seconds of what is counted by the seed, cell or plant.</summary>
    public WorkSeconds Seconds { get; init; } = new();

    /// <summary>Warmth a cover adds to a night in the field, kelvin.</summary>
    /// <param name="cover">What stands over it.</param>
    public double FieldGainK(FieldCover cover) =>
        cover switch
        {
            FieldCover.RowCover => RowCoverGainK,
            FieldCover.LowTunnel => LowTunnelGainK,
            FieldCover.Tunnel => TunnelGainK,
            _ => 0,
        };

    /// <summary>Whether some work of a day has a limit.</summary>
    public bool LimitsHands => (SowTraysADay ?? PotUpTraysADay ?? SetOutTraysADay) is not null;

    /// <summary>Whether a date is worked.</summary>
    /// <param name="date">Any date.</param>
    public bool IsWorkDay(DateOnly date) => WorkDays.Contains(date.DayOfWeek) && !DaysOff.Contains(date);

    /// <summary>The first work day that is not before a date. There must be one: some day of the week is worked.</summary>
    /// <param name="date">The date.</param>
    public DateOnly WorkDayFrom(DateOnly date)
    {
        while (!IsWorkDay(date))
        {
            date = date.AddDays(1);
        }

        return date;
    }
}

/// <summary>The keys of [rules].</summary>
public static class RuleFields
{
    /// <summary>Why a variant cannot change what a season is judged by.</summary>
    internal const string Judged = "base and variants are judged alike";

    private static readonly ChoiceKind<DayOfWeek> s_day = new(
        [
            ("Mon", DayOfWeek.Monday),
            ("Tue", DayOfWeek.Tuesday),
            ("Wed", DayOfWeek.Wednesday),
            ("Thu", DayOfWeek.Thursday),
            ("Fri", DayOfWeek.Friday),
            ("Sat", DayOfWeek.Saturday),
            ("Sun", DayOfWeek.Sunday),
            .. Enum.GetValues<DayOfWeek>().Select(day => (day.ToString(), day)),
        ],
        named: 7
    );

    // Monday first, whatever the order in the file, so that the same days make the same scenario.
    private static readonly ListKind<DayOfWeek> s_workDays = new(
        s_day,
        "list of days",
        days => days.Distinct().OrderBy(day => ((int)day + 6) % 7),
        ("has no day", "list the days that are worked, such as [\"Mon\", \"Wed\", \"Fri\"]")
    );

    private static readonly ListKind<DateOnly> s_dates = new(Kinds.Date, "list of dates", dates => dates.Distinct().Order());

    private static readonly ChoiceKind<RoundKind> s_rounds = new([("work round", RoundKind.WorkRound), ("any time", RoundKind.AnyTime)]);

    private static readonly OptionalKind<int> s_traysADay = new WholeKind(1, WholeKind.Many, "tray").OrNone("no limit");

    private static readonly MeasuredKind s_gain = Kinds.Difference(0, 20);

    private static readonly MonthsKind s_light = new(
        new ShareKind(aboveNone: true, isFactor: true),
        "list of 12 shares",
        "% or 0 to 1, January first"
    );

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<SiteRules> Table { get; } =
        FieldTable
            .Of("rules", "[rules]", new SiteRules())
            .Key("work_days", s_workDays, rules => rules.WorkDays, (rules, days) => rules with { WorkDays = days })
            .Means("Days of the week that are worked, any of Mon, Tue, Wed, Thu, Fri, Sat, Sun.", Why.Practice)
            .Key("days_off", s_dates, rules => rules.DaysOff, (rules, dates) => rules with { DaysOff = dates })
            .Means("Single dates that are not worked.")
            .Key("round_at", Kinds.Time, rules => rules.RoundAt, (rules, time) => rules with { RoundAt = time })
            .Means("Time of the work round.", Why.Practice)
            .Key("rounds", s_rounds, rules => rules.Rounds, (rules, kind) => rules with { Rounds = kind })
            .Means("Trays move at the work round, or \"any time\" room appears (to check the model against theory).", Why.Ours)
            .Key("move_back", Kinds.YesNo, rules => rules.MoveBack, (rules, yes) => rules with { MoveBack = yes })
            .Means("Whether trays move back to an earlier preference as room appears.", Why.Ours)
            .Key("sow_wait_days", Kinds.Days, rules => rules.SowWaitDays, (rules, days) => rules with { SowWaitDays = days })
            .Means("Days a sowing waits for a mat before it may start on a bench.", Why.Assumed)
            .Key("sow_give_up_days", Kinds.Days, rules => rules.SowGiveUpDays, (rules, days) => rules with { SowGiveUpDays = days })
            .Means("Days after which what is unsown is given up.", Why.Assumed)
            .Key("table_lead_days", Kinds.Days, rules => rules.TableLeadDays, (rules, days) => rules with { TableLeadDays = days })
            .Means("Days before the earliest table date from which trays may go to the table.", Why.Assumed)
            .Key("slack_days", Kinds.Days, rules => rules.SlackDays, (rules, days) => rules with { SlackDays = days })
            .Means(
                "Days of slack between being ready and the planned set-out date, for a batch with only one of its two dates: "
                    + "a sow date is worked out that much sooner, a set-out date that much later.",
                Why.Ours
            )
            .Key("set_out_early_days", Kinds.Days, rules => rules.SetOutEarlyDays, (rules, days) => rules with { SetOutEarlyDays = days })
            .Means("Days before the planned date from which trays may be set out.", Why.Ours)
            .Key("sow_trays_a_day", s_traysADay, rules => rules.SowTraysADay, (rules, most) => rules with { SowTraysADay = most })
            .Means("Trays and flats that can be sown a day.", Why.Ours)
            .Key("pot_up_trays_a_day", s_traysADay, rules => rules.PotUpTraysADay, (rules, most) => rules with { PotUpTraysADay = most })
            .Means("Trays that can be potted up a day.", Why.Ours)
            .Key("set_out_trays_a_day", s_traysADay, rules => rules.SetOutTraysADay, (rules, most) => rules with { SetOutTraysADay = most })
            .Means("Trays that can be set out a day.", Why.Ours)
            .Key("service_goal", Kinds.Share, rules => rules.ServiceGoal, (rules, goal) => rules with { ServiceGoal = goal })
            .Means("Share of the wanted plants that must be out in time for a season to fit.", Why.Ours)
            .Fixed(Judged)
            .Key("late_days", Kinds.Days, rules => rules.LateDays, (rules, days) => rules with { LateDays = days })
            .Means("Days late that still count as in time.", Why.Assumed)
            .Fixed(Judged)
            .Key(
                "stand_assurance",
                new ShareKind(belowAll: true),
                rules => rules.StandAssurance,
                (rules, chance) => rules with { StandAssurance = chance }
            )
            .Means("Chance with which the number of trays must bring the wanted plants.", Why.Ours)
            .Key(
                "medium_offset",
                Kinds.Difference(-20, 20),
                rules => rules.MediumOffsetK,
                (rules, gap) => rules with { MediumOffsetK = gap }
            )
            .Means("Medium temperature off the mat less air temperature.", Why.Practice)
            .Key(
                "forecast_nights",
                new WholeKind(0, 14, "night"),
                rules => rules.ForecastNights,
                (rules, nights) => rules with { ForecastNights = nights }
            )
            .Means("Nights of forecast that are looked at.", Why.Practice)
            .Key("wet_limit", Kinds.Rain, rules => rules.WetLimitMm, (rules, rain) => rules with { WetLimitMm = rain })
            .Means(
                "Rain of the two days before that still lets the field be worked. It holds nothing that goes under a tunnel.",
                Why.Assumed
            )
            .Key("cover_gain", s_gain, rules => rules.CoverGainK, (rules, gain) => rules with { CoverGainK = gain })
            .Means(
                "Warmth a row cover adds on the table; 0 for no cover (a trade magazine of December 2020 gives 6 F for a medium cover).",
                Why.Ours
            )
            .Key("field_row_cover_gain", s_gain, rules => rules.RowCoverGainK, (rules, gain) => rules with { RowCoverGainK = gain })
            .Means(
                "Warmth a row cover adds to a night in the field (plan.csv, field_cover).",
                "Oregon State Univ., row cover effects, 1988: means of 0.3 to 3.3 F above mulch alone, none on some clear nights"
            )
            .Key("field_low_tunnel_gain", s_gain, rules => rules.LowTunnelGainK, (rules, gain) => rules with { LowTunnelGainK = gain })
            .Means("Warmth a low tunnel adds to a night in the field (plan.csv, field_cover).", "assumption: as a tunnel")
            .Key("field_tunnel_gain", s_gain, rules => rules.TunnelGainK, (rules, gain) => rules with { TunnelGainK = gain })
            .Means(
                "Warmth an unheated tunnel adds to a night in the field (plan.csv, field_cover).",
                "Savage 1980, Agrochemophysica 12: 1.3 C above the mean lowest outdoors, less in frost"
            )
            .Key(
                "hold_warning_days",
                new WholeKind(0, 14, "day"),
                rules => rules.HoldWarningDays,
                (rules, days) => rules with { HoldWarningDays = days }
            )
            .Means(
                "Days of the 14 from a batch's date for the table or the field on which the weather may be expected to hold it before "
                    + "check warns. At 14 it never warns.",
                "assumption: half of them"
            )
            .Key(
                "germination_sample",
                new WholeKind(1, WholeKind.Many, "seed"),
                rules => rules.GerminationSample,
                (rules, seeds) => rules with { GerminationSample = seeds }
            )
            .Means("Seeds in the test behind a packet's germination.", "from memory: the usual number of seeds in a test")
            .Key("light", s_light, rules => rules.Light, (rules, light) => rules with { Light = light })
            .Means("Light factor on growth by month.", Why.Ours)
            .Table();
}
