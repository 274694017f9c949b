using System.Text.Json;
using BenchSim.Report.Tables;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Json;

/// <summary>Houses and mats of <c>result.json</c>.</summary>
internal static class JsonFuel
{
    /// <summary>One house.</summary>
    public static void House(Utf8JsonWriter writer, HouseResult house, Scenario scenario)
    {
        var heat = house.Fuel is null ? null : house.House.Heat;
        var measure = heat is null ? null : new FuelMeasure(heat.Fuel, scenario.Units);
        JsonParts.Text(writer, "id", house.House.Id);
        JsonParts.Text(writer, "name", house.House.Name);
        JsonParts.Estimate(writer, "days_open", house.DaysOpen);
        JsonParts.TextOrNull(writer, "fuel", heat?.Fuel.Id);
        JsonParts.TextOrNull(writer, "unit", measure?.Unit);
        JsonParts.Number(writer, "price", heat?.Price is { } price ? measure!.Price(price) : double.NaN);
        EstimateOrNull(writer, "amount", measure?.Of(house.Fuel!.Value));
        EstimateOrNull(writer, "cost", heat?.Price is { } each ? Spreads.Times(house.Fuel!.Value, each) : null);
        MonthFuel[] months = measure is null || house.Months.IsDefault ? [] : [.. house.Months];
        JsonParts.Array(writer, "months", months, (at, month) =>
        {
            at.WriteString("month", FuelTable.MonthOf(month));
            JsonParts.Estimate(at, "amount", measure!.Of(month.Fuel));
        });
        var load = house.House.Load;
        if (load is null)
        {
            writer.WriteNull("design_load");
            return;
        }

        writer.WriteStartObject("design_load");
        JsonParts.Number(writer, "watts", load.Value.Watts);
        JsonParts.Number(writer, "inside_c", load.Value.InsideC);
        JsonParts.Number(writer, "outdoor_c", load.Value.OutdoorC);
        writer.WriteEndObject();
    }

    /// <summary>The mats of one space.</summary>
    public static void Mats(Utf8JsonWriter writer, MatPowerResult mats)
    {
        var power = mats.Space.Power;
        var check = power is null ? null : HeatFigures.CheckOf(power);
        JsonParts.Text(writer, "space", mats.Space.Id);
        JsonParts.Number(writer, "watts", power?.Watts ?? double.NaN);
        JsonParts.Number(writer, "price", power?.Price ?? double.NaN);
        JsonParts.Estimate(writer, "kilowatt_hours", mats.KilowattHours);
        EstimateOrNull(writer, "cost", power?.Price is { } price ? Spreads.Times(mats.KilowattHours, price) : null);
        JsonParts.Number(writer, "circuit_limit_watts", check?.LimitWatts ?? double.NaN);
        if (check is { } known)
        {
            writer.WriteBoolean("circuit_within", known.IsWithin);
        }
        else
        {
            writer.WriteNull("circuit_within");
        }
    }

    private static void EstimateOrNull(Utf8JsonWriter writer, string name, Estimate? estimate)
    {
        if (estimate is { } known)
        {
            JsonParts.Estimate(writer, name, known);
        }
        else
        {
            writer.WriteNull(name);
        }
    }
}
