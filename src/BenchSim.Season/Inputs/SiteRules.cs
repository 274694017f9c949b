using System.Collections.Immutable;
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

/// <summary>A way to make room when trays are waiting for a place.</summary>
public enum Relief
{
    /// <summary>Stand trays in the aisle, up to <see cref="Space.AislePlaces"/>.</summary>
    Aisle,

    /// <summary>Take trays off the mat before the crop's fraction is up.</summary>
    OffMatEarly,

    /// <summary>Take trays to the table before field size.</summary>
    TableEarly,
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

    /// <summary>Days of slack planned between being ready and the planned set-out date, for a batch with only one of its two dates; 0 plans to the day.</summary>
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

    /// <summary>Seeds in the germination test behind a packet value.</summary>
    public int GerminationSample { get; init; } = 400;

    /// <summary>How seed is kept from its test to its sowing; null when not given, and then packet values are taken as they are.</summary>
    public SeedStorage? SeedStorage { get; init; }

    /// <summary>Money, for the costs of the three ways to a stand and of the season.</summary>
    public Prices Prices { get; init; } = new();

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

/// <summary>Work minutes a tray of each job.</summary>
public sealed record WorkMinutes
{
    /// <summary>Filling and sowing one tray or flat, minutes.</summary>
    public double Sow { get; init; } = 4;

    /// <summary>Potting up one tray from a flat, minutes.</summary>
    public double PotUp { get; init; } = 12;

    /// <summary>Moving one tray or flat between spaces, minutes.</summary>
    public double Move { get; init; } = 0.5;

    /// <summary>Loading one tray for the field, minutes.</summary>
    public double SetOut { get; init; } = 0.5;

    /// <summary>Carrying one tray in for a cold night and out again, minutes.</summary>
    public double CarryIn { get; init; } = 1;
}
