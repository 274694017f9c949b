using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a plan for machines.</summary>
internal static class PlanJson
{
    public static void Print(Desk desk, SeasonPlan plan, CheckSettings settings) =>
        desk.SayJson(json =>
        {
            var scenario = plan.Scenario;
            json.WriteString("name", scenario.Name);
            json.WriteString("question", scenario.Question);
            json.WriteString("opens", Figures.Date(scenario.Window.Opens));
            json.WriteString("closes", Figures.Date(scenario.Window.Closes));
            json.WriteString("last_day", Figures.Date(plan.LastDay));
            json.WriteStartArray("batches");
            foreach (var batch in plan.Batches)
            {
                Write(json, batch, SeedAge.IsAged(scenario.Rules, batch));
            }

            json.WriteEndArray();
            json.WriteStartArray("spaces");
            foreach (var space in scenario.Spaces)
            {
                Write(json, space);
            }

            json.WriteEndArray();
            ClimateJson.Write(json, ClimateSummary.Of(plan));
            if (settings.Stand)
            {
                StandPrinter.Write(json, plan);
            }

            json.WriteStartArray("values");
            foreach (var value in SourcedValue.Of(scenario).Where(value => settings.Sources || value.IsWeak))
            {
                Write(json, value);
            }

            json.WriteEndArray();
            FaultList.Write(json, "warnings", plan.Warnings);
            FaultList.Write(json, "faults", []);
        });

    private static void Write(Utf8JsonWriter json, BatchPlan batch, bool isAged)
    {
        json.WriteStartObject();
        json.WriteString("id", batch.Order.Id);
        json.WriteString("crop", batch.Crop.Id);
        json.WriteString("grower", batch.Order.Grower);
        json.WriteNumber("plants", batch.Order.Plants);
        json.WriteString("sow", Figures.Date(batch.SowOn));
        json.WriteString("off_mat", batch.OffMatOn is { } offMat ? Figures.Date(offMat) : null);
        json.WriteString("pot_up", batch.PotUpOn is { } potUp ? Figures.Date(potUp) : null);
        json.WriteString("table", Figures.Date(batch.TableOn));
        json.WriteString("set_out", Figures.Date(batch.SetOutOn));
        json.WriteString("tray", batch.Tray.Id);
        json.WriteNumber("trays", batch.Trays);
        json.WriteNumber("flats", batch.Flats);
        json.WriteNumber("seeds", batch.Seeds);
        json.WriteNumber("germination_on_packet", batch.Order.Germination);
        json.WriteNumber("germination", batch.Germination);
        json.WriteBoolean("aged", isAged);
        json.WriteNumber("stand_chance", batch.StandChance);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Space space)
    {
        json.WriteStartObject();
        json.WriteString("id", space.Id);
        json.WriteString("name", space.Name);
        json.WriteString(
            "kind",
            space.Kind switch
            {
                SpaceKind.Mat => "mat",
                SpaceKind.Bench => "bench",
                _ => "table",
            }
        );
        json.WriteString("house", space.HouseId);
        json.WriteNumber("places", space.Places);
        json.WriteString("places_note", space.PlacesNote);
        json.WriteStartArray("changes");
        foreach (var change in space.Changes)
        {
            json.WriteStartObject();
            json.WriteString("from", Figures.Date(change.From));
            json.WriteNumber("places", change.Places);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SourcedValue value)
    {
        json.WriteStartObject();
        json.WriteString("of", value.Owner);
        json.WriteString("file", value.File);
        json.WriteString("column", value.Column);
        json.WriteString("value", value.Value);
        json.WriteString("trust", value.TrustWords);
        json.WriteString("source", value.Provenance.Source);
        json.WriteEndObject();
    }
}
