using System.Collections.Immutable;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Site;

/// <summary>Reads how the site is worked: [rules], [relief], [work_minutes], [seed] and [prices]. What is left out has the default of <see cref="SiteRules"/>.</summary>
internal sealed class RulesReader(CellReader cells)
{
    private const int LongestWait = 365;

    private static readonly (string Word, DayOfWeek Value)[] Days =
    [
        ("Mon", DayOfWeek.Monday),
        ("Tue", DayOfWeek.Tuesday),
        ("Wed", DayOfWeek.Wednesday),
        ("Thu", DayOfWeek.Thursday),
        ("Fri", DayOfWeek.Friday),
        ("Sat", DayOfWeek.Saturday),
        ("Sun", DayOfWeek.Sunday),
        ("Monday", DayOfWeek.Monday),
        ("Tuesday", DayOfWeek.Tuesday),
        ("Wednesday", DayOfWeek.Wednesday),
        ("Thursday", DayOfWeek.Thursday),
        ("Friday", DayOfWeek.Friday),
        ("Saturday", DayOfWeek.Saturday),
        ("Sunday", DayOfWeek.Sunday),
    ];

    private static readonly (string Word, RoundKind Value)[] RoundWords =
    [
        ("work round", RoundKind.WorkRound),
        ("any time", RoundKind.AnyTime),
    ];

    private static readonly (string Word, Relief Value)[] ReliefWords =
    [
        ("aisle", Relief.Aisle),
        ("off mat early", Relief.OffMatEarly),
        ("table early", Relief.TableEarly),
    ];

    /// <summary>Reads the sections; a section that is null is not written.</summary>
    public SiteRules Read(Section? rules, Section? relief, Section? minutes, Section? seed, Section? prices)
    {
        var worked = ReadWork(rules, relief, minutes);
        var goods = new GoodsReader(cells);
        return worked with
        {
            SeedStorage = seed is null ? null : goods.ReadSeed(seed),
            Prices = prices is null ? worked.Prices : goods.ReadPrices(prices),
        };
    }

    private SiteRules ReadWork(Section? rules, Section? relief, Section? minutes)
    {
        var read = rules is null ? new SiteRules() : ReadRules(rules, new SiteRules());
        read = relief is null ? read : ReadRelief(relief, read);
        return minutes is null ? read : read with { Minutes = ReadMinutes(minutes, read.Minutes) };
    }

    private SiteRules ReadRules(Section section, SiteRules normal)
    {
        var rules = ReadDaysAndLimits(section, normal);
        var giveUpCell = section.Scalar("sow_give_up_days");
        rules = rules with
        {
            SowWaitDays = Days365(section, "sow_wait_days") ?? normal.SowWaitDays,
            SowGiveUpDays = cells.Whole(giveUpCell, 0, LongestWait) ?? normal.SowGiveUpDays,
            TableLeadDays = Days365(section, "table_lead_days") ?? normal.TableLeadDays,
            SlackDays = Days365(section, "slack_days") ?? normal.SlackDays,
            SetOutEarlyDays = Days365(section, "set_out_early_days") ?? normal.SetOutEarlyDays,
            ServiceGoal = cells.Fraction(section.Scalar("service_goal")) ?? normal.ServiceGoal,
            LateDays = Days365(section, "late_days") ?? normal.LateDays,
            StandAssurance = cells.Fraction(section.Scalar("stand_assurance"), belowAll: true) ?? normal.StandAssurance,
            MediumOffsetK = cells.Difference(section.Scalar("medium_offset"), -20, 20) ?? normal.MediumOffsetK,
            ForecastNights = cells.Whole(section.Scalar("forecast_nights"), 0, 14) ?? normal.ForecastNights,
            WetLimitMm = cells.Rain(section.Scalar("wet_limit")) ?? normal.WetLimitMm,
            CoverGainK = cells.Difference(section.Scalar("cover_gain"), 0, 20) ?? normal.CoverGainK,
            GerminationSample = cells.Whole(section.Scalar("germination_sample"), 1) ?? normal.GerminationSample,
            Light = ReadLight(section, normal),
        };
        if (rules.SowGiveUpDays < rules.SowWaitDays)
        {
            var cell = giveUpCell.IsBlank ? section.Scalar("sow_wait_days") : giveUpCell;
            cells.Refuse(
                cell,
                $"makes a sowing be given up after {rules.SowGiveUpDays} days, before it has waited {rules.SowWaitDays} days",
                "let sow_give_up_days be at least sow_wait_days"
            );
        }

        return rules;
    }

    private SiteRules ReadDaysAndLimits(Section section, SiteRules normal) =>
        normal with
        {
            WorkDays = ReadWorkDays(section, normal),
            DaysOff = [.. section.List("days_off").Select(cells.Date).OfType<DateOnly>().Distinct().Order()],
            RoundAt = cells.Time(section.Scalar("round_at")) ?? normal.RoundAt,
            Rounds = cells.Choice(section.Scalar("rounds"), RoundWords) ?? normal.Rounds,
            MoveBack = cells.YesNo(section.Scalar("move_back")) ?? normal.MoveBack,
            SowTraysADay = cells.Whole(section.Scalar("sow_trays_a_day"), 1),
            PotUpTraysADay = cells.Whole(section.Scalar("pot_up_trays_a_day"), 1),
            SetOutTraysADay = cells.Whole(section.Scalar("set_out_trays_a_day"), 1),
        };

    private ImmutableArray<DayOfWeek> ReadWorkDays(Section section, SiteRules normal)
    {
        if (!section.Has("work_days"))
        {
            return normal.WorkDays;
        }

        var before = cells.Faults.Count;
        var listed = section.List("work_days");
        if (listed.Count == 0 && cells.Faults.Count == before)
        {
            cells.Faults.Add(
                section.PlaceOf("work_days"),
                "work_days has no day",
                "list the days that are worked, such as [\"Mon\", \"Wed\", \"Fri\"]"
            );
        }

        // Monday first, whatever the order in the file, so that the same days make the same scenario.
        return
        [
            .. listed.Select(cell => cells.Choice(cell, Days, shown: 7)).OfType<DayOfWeek>().Distinct().OrderBy(day => ((int)day + 6) % 7),
        ];
    }

    private ImmutableArray<double> ReadLight(Section section, SiteRules normal)
    {
        if (!section.Has("light"))
        {
            return normal.Light;
        }

        var before = cells.Faults.Count;
        var listed = section.List("light", instead: "write 12, one for each month, January first");
        var isWhole = cells.Faults.Count == before;
        var light = listed.Select(cell => cells.Fraction(cell, aboveNone: true)).OfType<double>().ToImmutableArray();
        if (listed.Count != 12 && isWhole)
        {
            cells.Faults.Add(section.PlaceOf("light"), $"light has {listed.Count} numbers", "write 12, one for each month, January first");
        }

        return light.Length == 12 ? light : normal.Light;
    }

    private SiteRules ReadRelief(Section section, SiteRules rules)
    {
        var order = new List<Relief>();
        foreach (var cell in section.List("order"))
        {
            if (cells.Choice(cell, ReliefWords) is { } relief)
            {
                if (order.Contains(relief))
                {
                    cells.Refuse(cell, $"names {Faults.Words.Quote(cell.Text)} a second time", "list each relief once");
                }

                order.Add(relief);
            }
        }

        return rules with
        {
            Reliefs = [.. order],
            EarlyOffMatAt = cells.Fraction(section.Scalar("early_off_mat_at"), aboveNone: true, belowAll: true) ?? rules.EarlyOffMatAt,
            EarlyTableAt = cells.Fraction(section.Scalar("early_table_at"), aboveNone: true) ?? rules.EarlyTableAt,
        };
    }

    private WorkMinutes ReadMinutes(Section section, WorkMinutes normal) =>
        new()
        {
            Sow = Minutes(section, "sow") ?? normal.Sow,
            PotUp = Minutes(section, "pot_up") ?? normal.PotUp,
            Move = Minutes(section, "move") ?? normal.Move,
            SetOut = Minutes(section, "set_out") ?? normal.SetOut,
            CarryIn = Minutes(section, "carry_in") ?? normal.CarryIn,
        };

    private double? Minutes(Section section, string key) => cells.Number(section.Scalar(key), 0, 1000);

    private int? Days365(Section section, string key) => cells.Whole(section.Scalar(key), 0, LongestWait);
}
