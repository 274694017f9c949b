using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Doubt;

/// <summary>The keys and columns whose values may be wrong.</summary>
internal static class DoubtColumns
{
    private const string SeeUp = "on 4 trays write down the warmth of the mix and the day on which half the seedlings are up";
    private const string CountUp = "count the seedlings in 200 cells when no more come up";
    private const string SeeReady =
        "for 3 batches write \"not ready\" and \"ready\" into the log, and the house's lowest and highest each day";
    private const string CountPots = "on 2 batches count the plants pricked out and those alive a week later";
    private const string CountOut = "count the plants of 4 trays when they are up and again when they are set out";
    private const string SeeAir = "hang a thermometer that keeps its highest and lowest in the house for three weeks, out of the sun";
    private const string SeeFuel = "read the fuel gauge once a week for a month, and write down the nights";
    private const string SeeCover = "lay one thermometer under the cover and one beside it for ten nights";
    private const string SeeMix = "push a thermometer into the mix of a tray at dawn and at noon for a week";

    private static readonly SiteRules s_noRules = new();

    /// <summary>Of crops.</summary>
    public static DoubtColumn<Crop>[] Crops { get; } =
    [
        OfCrop("emerge_base", "coldest for coming up", DoubtGroup.ComingUp, DoubtKind.Temperature, SeeUp),
        OfCrop("emerge_optimum", "best warmth for coming up", DoubtGroup.ComingUp, DoubtKind.Temperature, SeeUp),
        OfCrop("emerge_plateau", "warmest that is as good for coming up", DoubtGroup.ComingUp, DoubtKind.Temperature, SeeUp),
        OfCrop("emerge_ceiling", "too warm for coming up", DoubtGroup.ComingUp, DoubtKind.Temperature, SeeUp),
        OfCrop("emerge_heat", "heat to come up", DoubtGroup.ComingUp, DoubtKind.Amount, SeeUp),
        OfCrop("emerge_sigma", "spread of coming up in a tray", DoubtGroup.ComingUp, DoubtKind.Spread, SeeUp),
        OfCrop("emerge_cv", "spread of coming up from batch to batch", DoubtGroup.ComingUp, DoubtKind.Spread, SeeUp),
        OfCrop("germination", "germination", DoubtGroup.Germination, DoubtKind.Share, CountUp) with
        {
            IsUsed = GivesGermination,
        },
        OfCrop("stand_loss", "loss once up", DoubtGroup.Losses, DoubtKind.Share, CountOut),
        OfCrop("growth_base", "coldest for growing", DoubtGroup.Growth, DoubtKind.Temperature, SeeReady),
        OfCrop("growth_cap", "warmest for growing", DoubtGroup.Growth, DoubtKind.Temperature, SeeReady),
        OfCrop("days_to_ready", "days of growth", DoubtGroup.Growth, DoubtKind.Days, SeeReady) with
        {
            // What is played are the days from coming up, without hardening.
            Offset = crop => crop.DaysOutsideGrowth,
            Get = crop => crop.GrowthDays,
            With = (crop, days) => crop with { GrowthDays = days },
            Say = (crop, _) => FormattableString.Invariant($"{crop.GrowthDays:#,##0.#} days"),
        },
        OfCrop("growth_cv", "spread of growth", DoubtGroup.Growth, DoubtKind.Spread, SeeReady),
        OfCrop("pot_up_days", "days to potting up", DoubtGroup.PottingUp, DoubtKind.Days, CountPots) with
        {
            IsUsed = IsPottedUp,
        },
        OfCrop("pot_up_check_days", "days lost by potting up", DoubtGroup.PottingUp, DoubtKind.Days, CountPots) with
        {
            IsUsed = IsPottedUp,
        },
        OfCrop("pot_up_loss", "loss potting up", DoubtGroup.PottingUp, DoubtKind.Share, CountPots) with
        {
            IsUsed = IsPottedUp,
        },
    ];

    /// <summary>Of houses.</summary>
    public static DoubtColumn<House>[] Houses { get; } =
    [
        OfBody(
            "u_value",
            "heat loss of the covering",
            DoubtKind.Amount,
            SeeFuel,
            body => body.UValue,
            (body, value) => body with { UValue = value }
        ),
        OfBody(
            "air_changes",
            "air leaks",
            DoubtKind.Amount,
            SeeFuel,
            body => body.AirChanges,
            (body, value) => body with { AirChanges = value }
        ),
        OfBody(
            "transmission",
            "light let through",
            DoubtKind.Share,
            SeeAir,
            body => body.Transmission,
            (body, value) => body with { Transmission = value }
        ),
        OfBody(
            "sun_share",
            "share of sun that warms",
            DoubtKind.Share,
            SeeAir,
            body => body.SunShare,
            (body, value) => body with { SunShare = value }
        ),
        OfHouse("vented_rise", "warmth with vents open", SeeAir, HasSun),
        OfHouse("day_lift", "warming by the sun", SeeAir, (_, _) => true),
    ];

    /// <summary>Of the rules: those of their keys that say how warm something is.</summary>
    public static DoubtColumn<SiteRules>[] Rules { get; } =
    [
        OfRules("medium_offset", "warmth of the mix against the air", SeeMix),
        OfRules("cover_gain", "warmth under the row cover", SeeCover),
        OfRules("field_row_cover_gain", "warmth under a row cover in the field", SeeCover, FieldCover.RowCover),
        OfRules("field_low_tunnel_gain", "warmth in a low tunnel", SeeCover, FieldCover.LowTunnel),
        OfRules("field_tunnel_gain", "warmth in a field tunnel", SeeCover, FieldCover.Tunnel),
    ];

    // Without it a house's air is its set-points and its lift, and what it loses is fuel alone.
    private static bool HasSun(SeasonPlan plan, House house) => house.HasSunAt(plan.Scenario.Latitude);

    private static bool IsPottedUp(SeasonPlan plan, Crop crop) => plan.Batches.Any(batch => IsOf(batch, crop) && batch.Flat is not null);

    private static bool GivesGermination(SeasonPlan plan, Crop crop) =>
        plan.Batches.Any(batch => IsOf(batch, crop) && batch.Order.Germination.Equals(crop.Germination));

    private static bool IsOf(BatchPlan batch, Crop crop) => string.Equals(batch.Order.CropId, crop.Id, StringComparison.Ordinal);

    private static DoubtColumn<Crop> OfCrop(string name, string title, DoubtGroup group, DoubtKind kind, string measure) =>
        DoubtColumn<Crop>.Of(CropFields.Table.Find(name)!, group, kind, measure, CropFields.Nothing, crop =>
            crop.Sources.GetValueOrDefault(name)?.Trust ?? Trust.User
        ) with
        {
            Title = title,
        };

    private static DoubtColumn<House> OfHouse(string key, string title, string measure, Func<SeasonPlan, House, bool> used)
    {
        var field = HouseFields.Table.Find(key)!;
        return DoubtColumn<House>.Of(field, DoubtGroup.Houses, DoubtKind.Temperature, measure, HouseFields.Nothing, house =>
            field.IsSame(house, HouseFields.Nothing) ? OfDefault(field) : Trust.User
        ) with
        {
            Title = title,
            IsUsed = used,
        };
    }

    private static DoubtColumn<SiteRules> OfRules(string key, string title, string measure, FieldCover? cover = null)
    {
        var field = RuleFields.Table.Find(key)!;
        return DoubtColumn<SiteRules>.Of(field, DoubtGroup.Covers, DoubtKind.Temperature, measure, s_noRules, rules =>
            field.IsSame(rules, s_noRules) ? OfDefault(field) : Trust.User
        ) with
        {
            Title = title,
            IsUsed = (plan, _) => cover is null || plan.Batches.Any(batch => batch.Order.FieldCover == cover),
        };
    }

    private static DoubtColumn<House> OfBody(
        string key,
        string title,
        DoubtKind kind,
        string measure,
        Func<HouseBody, double> get,
        Func<HouseBody, double, HouseBody> with
    )
    {
        var field = HeatFields.Table.Find(key)!;
        return new DoubtColumn<House>(
            field,
            DoubtGroup.Houses,
            kind,
            measure,
            house => house.Body is { } body ? get(body) : null,
            (house, value) => house.Body is { } body ? house with { Body = with(body, value) } : house,
            (house, units) => field.Show(HeatKeys.InUse(house), units),
            house => house.Body?.Sources.GetValueOrDefault(key)?.Trust ?? Trust.User,
            DoubtColumn<House>.Reading(field, new HeatKeys())
        )
        {
            Title = title,
            IsUsed = HasSun,
        };
    }

    // A default names its source; one that is a choice of this program is in no doubt.
    private static Trust OfDefault(Field field) =>
        field.Why switch
        {
            Why.Ours => Trust.User,
            Why.Practice => Trust.CommonPractice,
            _ when field.Why.StartsWith(Why.Assumed, StringComparison.Ordinal) => Trust.Assumption,
            _ => Trust.Seen,
        };
}
