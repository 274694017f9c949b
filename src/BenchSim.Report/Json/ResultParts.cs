using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>What was played.</summary>
/// <param name="Name">Name of the case.</param>
/// <param name="Variant">Variant that was played, whose file is among the inputs; null for the folder as it is.</param>
/// <param name="Question">The user's question; may be empty.</param>
/// <param name="FirstDay">First day of the play.</param>
/// <param name="Today">
/// The day for which it was made: the first that is played, those before it are as the log has them; null for a play of the whole season.
/// </param>
/// <param name="Closes">Last day for which a batch may be wanted.</param>
/// <param name="LastDay">Last day of the play.</param>
/// <param name="Days">Days of the play.</param>
/// <param name="ServiceGoal">Share of the wanted plants that must be out in time for a season to fit.</param>
/// <param name="LateDays">Days late that still count as in time.</param>
/// <param name="SowWaitDays">Days a sowing may wait and still count as sown in time.</param>
internal sealed record JsonScenario(
    string Name,
    string? Variant,
    string Question,
    DateOnly FirstDay,
    DateOnly? Today,
    DateOnly Closes,
    DateOnly LastDay,
    int Days,
    double ServiceGoal,
    int LateDays,
    int SowWaitDays
)
{
    public static JsonScenario Of(SeasonPlan plan, string? variant)
    {
        var scenario = plan.Scenario;
        var rules = scenario.Rules;
        return new(
            scenario.Name,
            variant,
            scenario.Question,
            plan.FirstDay,
            plan.Today,
            scenario.Window.Closes,
            plan.LastDay,
            plan.Days,
            rules.ServiceGoal,
            rules.LateDays,
            plan.SownInTimeDays
        );
    }
}

/// <summary>The answer in words.</summary>
/// <param name="FitsReliably">Fits in nine seasons of ten; null when the seasons played cannot tell.</param>
/// <param name="Headline">One sentence.</param>
/// <param name="Sentences">The findings.</param>
/// <param name="LeavesOut">What the numbers leave out.</param>
public sealed record JsonVerdict(bool? FitsReliably, string Headline, ImmutableArray<string> Sentences, ImmutableArray<string> LeavesOut)
{
    /// <summary>The shape of a verdict.</summary>
    public static JsonVerdict Of(Verdict verdict) =>
        new(verdict.Fits, verdict.Headline, [verdict.Chance, .. verdict.Decides, .. verdict.Sentences], verdict.LeavesOut);
}

/// <summary>A cause for which seasons do not fit.</summary>
/// <param name="Cause">"place", "thrown out", "germination", "slow growth" or "hold".</param>
/// <param name="Seasons">Seasons that do not fit for this cause.</param>
internal sealed record JsonCause(string Cause, int Seasons);

/// <summary>A way of making room.</summary>
/// <param name="Relief">"aisle", "off mat early" or "table early".</param>
/// <param name="Uses">Trays moved, or tray-days in the aisle.</param>
internal sealed record JsonRelief(string Relief, JsonEstimate Uses);

/// <summary>A mishap.</summary>
/// <param name="Id">Id of the mishap.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Chance">Chance a season, as written.</param>
/// <param name="Loss">Share of the plants lost where it strikes, as written.</param>
/// <param name="SeasonsStruck">Seasons in which it struck a tray or flat.</param>
/// <param name="TraysStruck">Trays and flats that it struck, over all seasons.</param>
internal sealed record JsonMishap(string Id, string Name, double Chance, double Loss, int SeasonsStruck, JsonEstimate TraysStruck)
{
    /// <summary>The mishaps of a result.</summary>
    /// <param name="result">The result.</param>
    public static ImmutableArray<JsonMishap> Of(StudyResult result) =>
        [
            .. result.Plan.Scenario.Mishaps.Select(
                (mishap, at) =>
                    new JsonMishap(
                        mishap.Id,
                        mishap.Name,
                        mishap.Chance,
                        mishap.Loss,
                        (int)Math.Round(result.MishapStrikes[at].Mean * result.Seasons),
                        JsonEstimate.Of(result.MishapTrays[at])
                    )
            ),
        ];
}

/// <summary>A space.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="Kind">"mat", "chamber", "bench" or "table".</param>
/// <param name="House">House id; null outdoors.</param>
/// <param name="Places">Places by day.</param>
/// <param name="Held">Places held by day.</param>
/// <param name="Wanted">Places wanted by day.</param>
/// <param name="Waiting">Places refused by day.</param>
/// <param name="Peak">Most places held on any day.</param>
/// <param name="PeakOn">Earliest day with the most held.</param>
/// <param name="DaysFull">Days full.</param>
/// <param name="TrayDays">Tray-days held.</param>
/// <param name="WaitedTrayDays">Tray-days waited.</param>
internal sealed record JsonSpace(
    string Id,
    string Name,
    string Kind,
    string? House,
    ImmutableArray<int> Places,
    JsonDays Held,
    JsonDays Wanted,
    JsonDays Waiting,
    JsonEstimate Peak,
    JsonDates PeakOn,
    JsonEstimate DaysFull,
    JsonEstimate TrayDays,
    JsonEstimate WaitedTrayDays
)
{
    public static JsonSpace Of(SpaceResult space) =>
        new(
            Id: space.Space.Id,
            Name: space.Space.Name,
            Kind: Trade.Code(space.Space),
            House: space.Space.HouseId,
            Places: space.Places,
            Held: JsonDays.Of(space.Held),
            Wanted: JsonDays.Of(space.Wanted),
            Waiting: JsonDays.Of(space.Waiting),
            Peak: JsonEstimate.Of(space.Peak),
            PeakOn: JsonDates.Of(space.PeakOn),
            DaysFull: JsonEstimate.Of(space.DaysFull),
            TrayDays: JsonEstimate.Of(space.TrayDays),
            WaitedTrayDays: JsonEstimate.Of(space.WaitedDays)
        );
}

/// <summary>All spaces of a kind together.</summary>
/// <param name="Kind">"mat", "bench" or "table".</param>
/// <param name="Places">Places by day.</param>
/// <param name="Wanted">Places wanted by day.</param>
/// <param name="Waiting">Places refused by day.</param>
/// <param name="RunsOut">Chance that some tray is refused a place here.</param>
/// <param name="RunsOutOn">First day on which one is.</param>
/// <param name="Shortage">Most that wanted exceeds places by on any day.</param>
/// <param name="ShortageOn">Day of the largest shortage.</param>
/// <param name="WorstWaiting">Most places refused on one day.</param>
/// <param name="WorstWaitingOn">First day on which so many are.</param>
internal sealed record JsonGroup(
    string Kind,
    ImmutableArray<int> Places,
    JsonDays Wanted,
    JsonDays Waiting,
    JsonChance RunsOut,
    JsonDates RunsOutOn,
    JsonEstimate Shortage,
    JsonDates ShortageOn,
    JsonEstimate WorstWaiting,
    JsonDates WorstWaitingOn
)
{
    public static JsonGroup Of(GroupResult group) =>
        new(
            Kind: Trade.Code(group.Kind),
            Places: group.Places,
            Wanted: JsonDays.Of(group.Wanted),
            Waiting: JsonDays.Of(group.Waiting),
            RunsOut: JsonChance.Of(group.RunsOut),
            RunsOutOn: JsonDates.Of(group.RunsOutOn),
            Shortage: JsonEstimate.Of(group.Shortage),
            ShortageOn: JsonDates.Of(group.ShortageOn),
            WorstWaiting: JsonEstimate.Of(group.WorstWaiting),
            WorstWaitingOn: JsonDates.Of(group.WorstWaitingOn)
        );
}

/// <summary>A grower.</summary>
/// <param name="Grower">Name.</param>
/// <param name="Batches">Batches.</param>
/// <param name="Share">Share of all tray-days, 0 to 1.</param>
/// <param name="FuelShare">Share of the fuel, 0 to 1; null where no house has fuel.</param>
/// <param name="CostMean">
/// Mean cost of fuel and of the mats' electricity that falls to the grower; null where a price is missing.
/// </param>
/// <param name="CostShare">Share of that cost, 0 to 1; null where a price is missing or there is no cost.</param>
/// <param name="TrayDays">Tray-days held.</param>
/// <param name="TrayDaysMeanBySpace">Mean tray-days held, a space an entry.</param>
/// <param name="Peak">Most places held on any day.</param>
internal sealed record JsonGrower(
    string Grower,
    int Batches,
    double Share,
    double? FuelShare,
    double? CostMean,
    double? CostShare,
    JsonEstimate TrayDays,
    ImmutableArray<double> TrayDaysMeanBySpace,
    JsonEstimate Peak
)
{
    public static JsonGrower Of(GrowerResult grower, GrowerCost cost) =>
        new(
            Grower: grower.Grower,
            Batches: grower.Batches,
            Share: grower.Share,
            FuelShare: grower.FuelShare,
            CostMean: cost.Amount,
            CostShare: cost.Share,
            TrayDays: JsonEstimate.Of(grower.TrayDays),
            TrayDaysMeanBySpace: [.. grower.TrayDaysBySpace.Select(days => days.Mean)],
            Peak: JsonEstimate.Of(grower.Peak)
        );
}

/// <summary>The season's work.</summary>
/// <param name="Sown">Trays and flats sown.</param>
/// <param name="Potted">Trays potted up.</param>
/// <param name="Moved">Moves of one tray or flat.</param>
/// <param name="SetOut">Trays set out.</param>
/// <param name="CarriedIn">Tray-nights carried in.</param>
/// <param name="Hours">Hours in all.</param>
/// <param name="HoursByWeek">Mean hours by week, that of the first day first.</param>
/// <param name="HoursByWeekP90">Hours that nine seasons in ten do not exceed, by week.</param>
internal sealed record JsonWork(
    JsonEstimate Sown,
    JsonEstimate Potted,
    JsonEstimate Moved,
    JsonEstimate SetOut,
    JsonEstimate CarriedIn,
    JsonEstimate Hours,
    ImmutableArray<double> HoursByWeek,
    ImmutableArray<double> HoursByWeekP90
)
{
    public static JsonWork Of(WorkResult work) =>
        new(
            Sown: JsonEstimate.Of(work.Sown),
            Potted: JsonEstimate.Of(work.Potted),
            Moved: JsonEstimate.Of(work.Moved),
            SetOut: JsonEstimate.Of(work.SetOut),
            CarriedIn: JsonEstimate.Of(work.CarriedIn),
            Hours: JsonEstimate.Of(work.Hours),
            HoursByWeek: [.. work.HoursByWeek.Select(week => week.Mean)],
            HoursByWeekP90: [.. work.HoursByWeek.Select(week => week.P90)]
        );
}

/// <summary>A file that was played.</summary>
/// <param name="Name">Name.</param>
/// <param name="Bytes">Size.</param>
/// <param name="Sha256">SHA-256 of the bytes, hexadecimal.</param>
public sealed record JsonInput(string Name, int Bytes, string Sha256)
{
    /// <summary>That of a file.</summary>
    /// <param name="input">The file.</param>
    public static JsonInput Of(ReportInput input) =>
        new(input.Name, input.Bytes.Length, Convert.ToHexStringLower(BenchSim.Study.Marks.Sha256.HashData(input.Bytes.Span)));
}
