using System.Collections.Immutable;

namespace BenchSim.Folder;

/// <summary>Keys of site.toml that say how the site is worked.</summary>
internal static class RuleKeyList
{
    private const string None = "";
    private const string Ours = "choice of this program";
    private const string Assumed = "assumption";
    private const string Practice = "common practice";
    private const string NoLimit = "no limit";
    private const string NoCost = "its cost is not worked out";
    private const string Temperature = "C or F; a bare number is in the units of [site]";

    public static readonly ImmutableArray<FieldDescription> Rules =
    [
        new(
            "rules",
            "work_days",
            "list of days",
            None,
            "Mon to Fri",
            Practice,
            "Days of the week that are worked, any of Mon, Tue, Wed, Thu, Fri, Sat, Sun."
        ),
        new("rules", "days_off", "list of dates", None, "none", None, "Single dates that are not worked."),
        new("rules", "round_at", "time", "hours and minutes", "08:00", Practice, "Time of the work round."),
        new(
            "rules",
            "rounds",
            "work round or any time",
            None,
            "work round",
            Ours,
            "Trays move at the work round, or \"any time\" room appears (to check the model against theory)."
        ),
        new("rules", "move_back", "yes or no", None, "no", Ours, "Whether trays move back to an earlier preference as room appears."),
        new(
            "rules",
            "sow_wait_days",
            "whole number",
            "days",
            "3",
            Assumed,
            "Days a sowing waits for a mat before it may start on a bench; 0 to 365."
        ),
        new("rules", "sow_give_up_days", "whole number", "days", "14", Assumed, "Days after which what is unsown is given up; 0 to 365."),
        new(
            "rules",
            "table_lead_days",
            "whole number",
            "days",
            "3",
            Assumed,
            "Days before the earliest table date from which trays may go to the table; 0 to 365."
        ),
        new(
            "rules",
            "slack_days",
            "whole number",
            "days",
            "0",
            Ours,
            "Days of slack between being ready and the planned set-out date, for a batch with only one of its two dates: a sow date is worked out that much sooner, a set-out date that much later; 0 to 365."
        ),
        new(
            "rules",
            "set_out_early_days",
            "whole number",
            "days",
            "0",
            Ours,
            "Days before the planned date from which trays may be set out; 0 to 365."
        ),
        new("rules", "sow_trays_a_day", "whole number", "trays", NoLimit, Ours, "Trays and flats that can be sown a day, 1 or more."),
        new("rules", "pot_up_trays_a_day", "whole number", "trays", NoLimit, Ours, "Trays that can be potted up a day, 1 or more."),
        new("rules", "set_out_trays_a_day", "whole number", "trays", NoLimit, Ours, "Trays that can be set out a day, 1 or more."),
        new(
            "rules",
            "service_goal",
            "share",
            "% or 0 to 1",
            "95 %",
            Ours,
            "Share of the wanted plants that must be out in time for a season to fit."
        ),
        new("rules", "late_days", "whole number", "days", "3", Assumed, "Days late that still count as in time; 0 to 365."),
        new(
            "rules",
            "stand_assurance",
            "share",
            "% or 0 to 1, below 1",
            "90 %",
            Ours,
            "Chance with which the number of trays must bring the wanted plants."
        ),
        new(
            "rules",
            "medium_offset",
            "difference",
            "C or F",
            "-2 C",
            Practice,
            "Medium temperature off the mat less air temperature, -20 to 20 C (-36 to 36 F)."
        ),
        new("rules", "forecast_nights", "whole number", "nights", "3", Practice, "Nights of forecast that are looked at; 0 to 14."),
        new(
            "rules",
            "wet_limit",
            "depth",
            "mm or in; a bare number is in mm or in",
            "25 mm",
            Assumed,
            "Rain of the two days before that still lets the field be worked."
        ),
        new(
            "rules",
            "cover_gain",
            "difference",
            "C or F",
            "0 C",
            Ours,
            "Warmth a row cover adds on the table, 0 to 20 C (36 F); 0 for no cover (a trade magazine of December 2020 gives 6 F for a medium cover)."
        ),
        new(
            "rules",
            "germination_sample",
            "whole number",
            "seeds",
            "400",
            "from memory: the usual number of seeds in a test",
            "Seeds in the test behind a packet's germination; 1 or more."
        ),
        new(
            "rules",
            "light",
            "list of 12 numbers",
            "share, January first",
            "1 in each month",
            Ours,
            "Light factor on growth by month, 0 to 1."
        ),
        new(
            "relief",
            "order",
            "list of reliefs",
            None,
            "none",
            Ours,
            "Ways to make room, in the order they are tried: \"aisle\", \"off mat early\", \"table early\". None is used unless it is listed."
        ),
        new(
            "relief",
            "early_off_mat_at",
            "share",
            "% or 0 to 1",
            "25 %",
            Assumed,
            "Share of the seedlings up at which \"off mat early\" may move a tray."
        ),
        new(
            "relief",
            "early_table_at",
            "share",
            "% or 0 to 1",
            "90 %",
            Assumed,
            "Share of growth at which \"table early\" may move a tray."
        ),
        new("work_minutes", "sow", "number", "minutes a tray", "4", Assumed, "Filling and sowing one tray or flat."),
        new("work_minutes", "pot_up", "number", "minutes a tray", "12", Assumed, "Potting up one tray from a flat."),
        new("work_minutes", "move", "number", "minutes a tray", "0.5", Assumed, "Moving one tray or flat between spaces."),
        new("work_minutes", "set_out", "number", "minutes a tray", "0.5", Assumed, "Loading one tray for the field."),
        new("work_minutes", "carry_in", "number", "minutes a tray", "1", Assumed, "Carrying one tray in for a cold night and out again."),
        new(
            "seed",
            "moisture",
            "share",
            "% or 0 to 1",
            "packet values do not age",
            Ours,
            "Moisture of the stored seed by fresh weight, above 0 % and below 30 %; together with storage. Seed with a tested_on date then ages until it is sown, where the constants of its crop are known (docs/sources.md)."
        ),
        new(
            "seed",
            "storage",
            "temperature",
            Temperature,
            "packet values do not age",
            Ours,
            "Temperature the seed is stored at, -20 C to 50 C (-4 F to 122 F); together with moisture."
        ),
        new("prices", "currency", "text", None, "none", None, "Sign or code shown before amounts of money; at most 10 characters."),
        new("prices", "labour_hour", "number", "money an hour", NoCost, None, "An hour of work."),
        new("prices", "mix_litre", "number", "money a litre", NoCost, None, "A litre of potting mix."),
        new("prices", "thousand_seeds", "number", "money", NoCost, None, "A thousand seeds, where the plan gives no price of its own."),
    ];
}
