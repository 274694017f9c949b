using System.Text.Json;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>One batch of <c>result.json</c>.</summary>
internal static class JsonBatch
{
    public static void Write(Utf8JsonWriter writer, BatchResult batch)
    {
        Plan(writer, batch.Plan);
        JsonParts.Spread(writer, "sown_first", batch.SownFirst);
        JsonParts.Spread(writer, "sown_last", batch.SownLast);
        JsonParts.Spread(writer, "off_mat", batch.OffMat);
        JsonParts.Spread(writer, "potted_up", batch.PottedUp);
        JsonParts.Spread(writer, "on_table", batch.OnTable);
        JsonParts.Spread(writer, "out_first", batch.OutFirst);
        JsonParts.Spread(writer, "out_median", batch.OutMedian);
        JsonParts.Spread(writer, "out_last", batch.OutLast);
        JsonParts.Chance(writer, "complete", batch.Complete);
        JsonParts.Estimate(writer, "plants_out", batch.PlantsOut);
        JsonParts.Estimate(writer, "plants_in_time", batch.PlantsInTime);
        JsonParts.Estimate(writer, "plants_short", batch.PlantsShort);
        JsonParts.Estimate(writer, "late_plant_days", batch.LatePlantDays);
        JsonParts.Estimate(writer, "days_late", batch.DaysLate);
        JsonParts.Estimate(writer, "over_held", batch.OverHeld);
        JsonParts.Estimate(writer, "given_up", batch.GivenUp);
        JsonParts.Estimate(writer, "hold_tray_days", batch.HoldTrayDays);
        JsonParts.Array(writer, "discarded", batch.Discarded, static (at, pair) =>
        {
            at.WriteString("reason", Reason(pair.Key));
            JsonParts.Estimate(at, "trays", pair.Value);
        });
        JsonParts.Array(writer, "blocked_tray_days_by_space", batch.BlockedTrayDays, static (at, blocked) =>
            JsonParts.EstimateFields(at, blocked)
        );
    }

    private static void Plan(Utf8JsonWriter writer, BatchPlan plan)
    {
        JsonParts.Text(writer, "id", plan.Order.Id);
        JsonParts.Text(writer, "crop", plan.Crop.Id);
        JsonParts.Text(writer, "grower", plan.Order.Grower);
        writer.WriteString("method", Trade.Code(plan.Order.Method));
        JsonParts.Text(writer, "tray", plan.Tray.Id);
        writer.WriteNumber("trays", plan.Trays);
        writer.WriteNumber("flats", plan.Flats);
        writer.WriteNumber("seeds", plan.Seeds);
        writer.WriteNumber("plants_wanted", plan.Order.Plants);
        JsonParts.Number(writer, "germination", plan.Germination);
        JsonParts.Number(writer, "relative_germination", plan.RelativeGermination);
        JsonParts.Number(writer, "stand_chance", plan.StandChance);
        writer.WriteStartObject("plan");
        JsonParts.Date(writer, "sow", plan.SowOn);
        JsonParts.Date(writer, "emerge", plan.EmergeOn);
        JsonParts.Date(writer, "off_mat", plan.OffMatOn);
        JsonParts.Date(writer, "pot_up", plan.PotUpOn);
        JsonParts.Date(writer, "table", plan.TableOn);
        JsonParts.Date(writer, "ready", plan.ReadyOn);
        JsonParts.Date(writer, "set_out", plan.SetOutOn);
        writer.WriteEndObject();
    }

    private static string Reason(string name)
    {
        var column = BatchTable.Reasons.FirstOrDefault(reason => reason.Reason == name).Column;
        return column?.Replace('_', ' ') ?? PlainText.Valid(name);
    }
}
