using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Json;

/// <summary>A plan as it was understood.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Question">The user's question; may be empty.</param>
/// <param name="Opens">First day of the season.</param>
/// <param name="Closes">Last day for which a batch may be wanted.</param>
/// <param name="LastDay">Last day of the play.</param>
/// <param name="Batches">The batches.</param>
/// <param name="Spaces">The spaces.</param>
/// <param name="Mishaps">What may go wrong in a season, in the order of the site.</param>
/// <param name="Climate">What the site's weather means for the plan.</param>
/// <param name="Air">Heater, fans and vents that each house takes whose size is given.</param>
/// <param name="StandWays">Ways to enough plants of each directly sown batch; null where they were not asked for.</param>
/// <param name="Values">Values in use and where they come from: those from memory or assumption, or all where they were asked for.</param>
/// <param name="Agreed">How far it is still the plan that was agreed; null where none was.</param>
/// <param name="Warnings">Things to know about the plan that are no faults.</param>
/// <param name="Faults">What is wrong with it: nothing.</param>
internal sealed record CheckDocument(
    int Version,
    string Name,
    string Question,
    DateOnly Opens,
    DateOnly Closes,
    DateOnly LastDay,
    ImmutableArray<JsonPlannedBatch> Batches,
    ImmutableArray<JsonGivenSpace> Spaces,
    ImmutableArray<JsonGivenMishap> Mishaps,
    JsonClimate Climate,
    ImmutableArray<JsonAir> Air,
    ImmutableArray<JsonStandWay>? StandWays,
    ImmutableArray<JsonValue> Values,
    JsonAgreed? Agreed,
    ImmutableArray<JsonFault> Warnings,
    ImmutableArray<JsonFault> Faults
);

/// <summary>A batch as planned.</summary>
/// <param name="Id">Id.</param>
/// <param name="Crop">Crop id.</param>
/// <param name="Variety">Variety; empty where the plan names none.</param>
/// <param name="Grower">Grower.</param>
/// <param name="Plants">Plants wanted.</param>
/// <param name="Sow">Sowing.</param>
/// <param name="OffMat">Off the mat; null where it stands on none.</param>
/// <param name="PotUp">Potting up; null for a batch sown directly.</param>
/// <param name="Finish">Date of going to the benches on which it finishes; null where there are none.</param>
/// <param name="Table">To the hardening table.</param>
/// <param name="Ready">First day on which it would be ready for the field, in normal weather and with room.</param>
/// <param name="SetOut">Set out.</param>
/// <param name="DaysInHand">Days from ready to set out; below 0 where it is wanted before it can be ready.</param>
/// <param name="Tray">Tray type id.</param>
/// <param name="Trays">Trays.</param>
/// <param name="Flats">Flats.</param>
/// <param name="Seeds">Seeds.</param>
/// <param name="GerminationOnPacket">Germination of the packet, 0 to 1.</param>
/// <param name="Germination">Germination at sowing, 0 to 1.</param>
/// <param name="Aged">Whether the seed has aged since its test.</param>
/// <param name="StandChance">Chance that the trays bring the wanted plants, worked out from the plan.</param>
internal sealed record JsonPlannedBatch(
    string Id,
    string Crop,
    string Variety,
    string Grower,
    int Plants,
    DateOnly Sow,
    DateOnly? OffMat,
    DateOnly? PotUp,
    DateOnly? Finish,
    DateOnly Table,
    DateOnly Ready,
    DateOnly SetOut,
    int DaysInHand,
    string Tray,
    int Trays,
    int Flats,
    long Seeds,
    double GerminationOnPacket,
    double Germination,
    bool Aged,
    double StandChance
)
{
    public static JsonPlannedBatch Of(BatchPlan batch, SiteRules rules) =>
        new(
            Id: batch.Order.Id,
            Crop: batch.Crop.Id,
            Variety: batch.Order.Variety,
            Grower: batch.Order.Grower,
            Plants: batch.Order.Plants,
            Sow: batch.SowOn,
            OffMat: batch.OffMatOn,
            PotUp: batch.PotUpOn,
            Finish: batch.FinishOn,
            Table: batch.TableOn,
            Ready: batch.ReadyOn,
            SetOut: batch.SetOutOn,
            DaysInHand: batch.DaysInHand,
            Tray: batch.Tray.Id,
            Trays: batch.Trays,
            Flats: batch.Flats,
            Seeds: batch.Seeds,
            GerminationOnPacket: batch.Order.Germination,
            Germination: batch.Germination,
            Aged: SeedAge.IsAged(rules, batch),
            StandChance: batch.StandChance
        );
}

/// <summary>A space as given.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="Kind">"mat", "chamber", "bench" or "table".</param>
/// <param name="House">House id; null outdoors.</param>
/// <param name="Places">Places on the first day.</param>
/// <param name="PlacesNote">How they were worked out.</param>
/// <param name="Changes">Later changes.</param>
internal sealed record JsonGivenSpace(
    string Id,
    string Name,
    string Kind,
    string? House,
    int Places,
    string PlacesNote,
    ImmutableArray<JsonPlacesFrom> Changes
)
{
    public static JsonGivenSpace Of(Space space) =>
        new(
            space.Id,
            space.Name,
            Trade.Code(space),
            space.HouseId,
            space.Places,
            space.PlacesNote,
            [.. space.Changes.Select(change => new JsonPlacesFrom(change.From, change.Places))]
        );
}

/// <summary>Places from a day on.</summary>
/// <param name="From">The day.</param>
/// <param name="Places">The places.</param>
internal sealed record JsonPlacesFrom(DateOnly From, int Places);

/// <summary>Something that may go wrong, at most once a season.</summary>
/// <param name="Id">Id of the mishap.</param>
/// <param name="Name">Name shown to people.</param>
/// <param name="Chance">Chance that it happens in a season, 0 to 1.</param>
/// <param name="From">First day on which it may strike.</param>
/// <param name="To">Last day on which it may strike.</param>
/// <param name="House">Id of the house that it strikes; null where it is not kept to one.</param>
/// <param name="Space">Id of the space that it strikes; null where it is not kept to one.</param>
/// <param name="Crop">Id of the crop that it strikes; null where it is not kept to one.</param>
/// <param name="Loss">Share of the plants lost in each tray or flat that it strikes, 0 to 1.</param>
internal sealed record JsonGivenMishap(
    string Id,
    string Name,
    double Chance,
    DateOnly From,
    DateOnly To,
    string? House,
    string? Space,
    string? Crop,
    double Loss
)
{
    public static JsonGivenMishap Of(Mishap mishap) =>
        new(mishap.Id, mishap.Name, mishap.Chance, mishap.From, mishap.To, mishap.HouseId, mishap.SpaceId, mishap.CropId, mishap.Loss);
}

/// <summary>A way to the stand of a batch.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Way">The way.</param>
/// <param name="Trays">Trays; null where no number will do.</param>
/// <param name="SeedsPerCell">Seeds a cell.</param>
/// <param name="Seeds">Seeds; null where no number of trays will do.</param>
/// <param name="Chance">Chance of enough plants, worked out; null where no number of trays will do.</param>
/// <param name="Cost">Cost of seed, mix and sowing; null where a price is missing.</param>
internal sealed record JsonStandWay(string Batch, string Way, int? Trays, int SeedsPerCell, long? Seeds, double? Chance, double? Cost)
{
    public static IEnumerable<JsonStandWay> Of(SeasonPlan plan) =>
        plan.Batches.SelectMany(batch => StandWays.Of(plan.Scenario, batch), (batch, way) => Of(batch.Order.Id, way));

    private static JsonStandWay Of(string batch, StandWay way)
    {
        var can = way.Trays >= 0;
        return new(batch, way.What, can ? way.Trays : null, way.SeedsPerCell, can ? way.Seeds : null, can ? way.Chance : null, way.Cost);
    }
}

/// <summary>A value in use.</summary>
/// <param name="Of">Name of the crop, tray type or house.</param>
/// <param name="File">File in which one may write another value.</param>
/// <param name="Column">Column or key of that file.</param>
/// <param name="Value">The value in words; empty where the column holds no single value.</param>
/// <param name="Trust">How far it may be trusted.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record JsonValue(string Of, string File, string Column, string Value, string Trust, string Source);
