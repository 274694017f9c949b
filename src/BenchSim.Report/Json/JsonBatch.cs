using System.Collections.Immutable;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>A batch.</summary>
/// <param name="Id">Id.</param>
/// <param name="Crop">Crop id.</param>
/// <param name="Variety">Variety; empty where the plan names none.</param>
/// <param name="Grower">Grower.</param>
/// <param name="Method">"direct" or "pot-up".</param>
/// <param name="Tray">Tray type id.</param>
/// <param name="Trays">Trays planned.</param>
/// <param name="Flats">Flats sown.</param>
/// <param name="Seeds">Seeds sown.</param>
/// <param name="PlantsWanted">Plants wanted.</param>
/// <param name="Germination">Germination of the packet at sowing, 0 to 1.</param>
/// <param name="RelativeGermination">Germination at the planned temperature relative to the crop's best, 0 to 1.</param>
/// <param name="StandChance">Chance that the trays bring the wanted plants, worked out from the plan.</param>
/// <param name="Plan">Planned dates.</param>
/// <param name="SownFirst">First tray or flat sown.</param>
/// <param name="SownLast">Last tray or flat sown.</param>
/// <param name="OffMat">Last tray or flat off the mats.</param>
/// <param name="PottedUp">Last flat potted up.</param>
/// <param name="OnTable">First tray on a table.</param>
/// <param name="OutFirst">First tray out.</param>
/// <param name="OutMedian">Median tray out.</param>
/// <param name="OutLast">Last tray out.</param>
/// <param name="Complete">Chance that the wanted plants are out in time.</param>
/// <param name="PlantsOut">Plants that reach the field.</param>
/// <param name="PlantsInTime">Wanted plants out in time.</param>
/// <param name="PlantsShort">Wanted plants never out.</param>
/// <param name="LatePlantDays">For each wanted plant its days late, summed.</param>
/// <param name="DaysLate">Days the last tray is late, weather included.</param>
/// <param name="OverHeld">Trays that stood too long past due.</param>
/// <param name="GivenUp">Trays or flats given up unsown.</param>
/// <param name="HoldTrayDays">Tray-days held back by the weather alone.</param>
/// <param name="Discarded">Thrown out, by reason.</param>
/// <param name="BlockedTrayDaysBySpace">Tray-days waited for a place, a space an entry.</param>
internal sealed record JsonBatch(
    string Id,
    string Crop,
    string Variety,
    string Grower,
    string Method,
    string Tray,
    int Trays,
    int Flats,
    long Seeds,
    int PlantsWanted,
    double Germination,
    double RelativeGermination,
    double StandChance,
    JsonPlannedDates Plan,
    JsonDates SownFirst,
    JsonDates SownLast,
    JsonDates OffMat,
    JsonDates PottedUp,
    JsonDates OnTable,
    JsonDates OutFirst,
    JsonDates OutMedian,
    JsonDates OutLast,
    JsonChance Complete,
    JsonEstimate PlantsOut,
    JsonEstimate PlantsInTime,
    JsonEstimate PlantsShort,
    JsonEstimate LatePlantDays,
    JsonEstimate DaysLate,
    JsonEstimate OverHeld,
    JsonEstimate GivenUp,
    JsonEstimate HoldTrayDays,
    ImmutableArray<JsonDiscarded> Discarded,
    ImmutableArray<JsonEstimate> BlockedTrayDaysBySpace
)
{
    public static JsonBatch Of(BatchResult batch)
    {
        var plan = batch.Plan;
        return new(
            Id: plan.Order.Id,
            Crop: plan.Crop.Id,
            Variety: plan.Order.Variety,
            Grower: plan.Order.Grower,
            Method: Trade.Code(plan.Order.Method),
            Tray: plan.Tray.Id,
            Trays: plan.Trays,
            Flats: plan.Flats,
            Seeds: plan.Seeds,
            PlantsWanted: plan.Order.Plants,
            Germination: plan.Germination,
            RelativeGermination: plan.RelativeGermination,
            StandChance: plan.StandChance,
            Plan: JsonPlannedDates.Of(plan),
            SownFirst: JsonDates.Of(batch.SownFirst),
            SownLast: JsonDates.Of(batch.SownLast),
            OffMat: JsonDates.Of(batch.OffMat),
            PottedUp: JsonDates.Of(batch.PottedUp),
            OnTable: JsonDates.Of(batch.OnTable),
            OutFirst: JsonDates.Of(batch.OutFirst),
            OutMedian: JsonDates.Of(batch.OutMedian),
            OutLast: JsonDates.Of(batch.OutLast),
            Complete: JsonChance.Of(batch.Complete),
            PlantsOut: JsonEstimate.Of(batch.PlantsOut),
            PlantsInTime: JsonEstimate.Of(batch.PlantsInTime),
            PlantsShort: JsonEstimate.Of(batch.PlantsShort),
            LatePlantDays: JsonEstimate.Of(batch.LatePlantDays),
            DaysLate: JsonEstimate.Of(batch.DaysLate),
            OverHeld: JsonEstimate.Of(batch.OverHeld),
            GivenUp: JsonEstimate.Of(batch.GivenUp),
            HoldTrayDays: JsonEstimate.Of(batch.HoldTrayDays),
            Discarded: [.. batch.Discarded.Select(pair => new JsonDiscarded(Reason(pair.Key), JsonEstimate.Of(pair.Value)))],
            BlockedTrayDaysBySpace: [.. batch.BlockedTrayDays.Select(JsonEstimate.Of)]
        );
    }

    private static string Reason(string name) =>
        BatchTable.Reasons.FirstOrDefault(reason => reason.Reason == name).Column?.Replace('_', ' ') ?? name;
}

/// <summary>Dates as planned.</summary>
/// <param name="Sow">Sowing.</param>
/// <param name="Emerge">Half the coming seedlings up.</param>
/// <param name="OffMat">Off the mat; null where it stands on none.</param>
/// <param name="PotUp">Potting up; null for a batch sown directly.</param>
/// <param name="Table">To the hardening table.</param>
/// <param name="Ready">Ready for the field.</param>
/// <param name="SetOut">Set out.</param>
internal sealed record JsonPlannedDates(
    DateOnly Sow,
    DateOnly Emerge,
    DateOnly? OffMat,
    DateOnly? PotUp,
    DateOnly Table,
    DateOnly Ready,
    DateOnly SetOut
)
{
    public static JsonPlannedDates Of(BatchPlan plan) =>
        new(plan.SowOn, plan.EmergeOn, plan.OffMatOn, plan.PotUpOn, plan.TableOn, plan.ReadyOn, plan.SetOutOn);
}

/// <summary>Trays thrown out for a reason.</summary>
/// <param name="Reason">"flat over held", "never came up", "over held" or "surplus".</param>
/// <param name="Trays">Trays or flats.</param>
internal sealed record JsonDiscarded(string Reason, JsonEstimate Trays);
