using System.Text.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Invest;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>Prints a money case for machines. A figure that does not exist, or is beyond all numbers, is null.</summary>
internal static class InvestJson
{
    public static void Print(Desk desk, InvestResult result, string? folder) =>
        desk.SayJson(json =>
        {
            json.WriteString("name", result.Base.Scenario.Name);
            json.WriteString("variant", result.Name);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seed", result.Seed);
            json.WriteNumber("lives", result.Lives);
            json.WriteNumber("confidence", result.Confidence);
            json.WriteString("currency", result.Currency);
            WriteTerms(json, result);
            StudyJson.Write(json, "base_fits", result.BaseFits);
            StudyJson.Write(json, "variant_fits", result.VariantFits);
            StudyJson.Write(json, "pays", result.Pays);
            json.WriteStartArray("parts");
            foreach (var part in result.Parts)
            {
                Write(json, part);
            }

            json.WriteEndArray();
            json.WriteStartArray("left_out");
            foreach (var name in result.LeftOut)
            {
                json.WriteStringValue(name);
            }

            json.WriteEndArray();
            Write(json, "yearly_net_benefit", result.YearlyBenefit);
            Write(json, "net_present_value", result.NetPresentValue);
            WriteRate(json, result.InternalRate);
            Write(json, "simple_payback", result.SimplePayback);
            Write(json, "discounted_payback", result.DiscountedPayback);
            json.WriteStartArray("tornado");
            for (var at = 0; at < result.Tornado.Length; at++)
            {
                Write(json, result.Tornado[at], at < result.Deciding);
            }

            json.WriteEndArray();
            json.WriteStartArray("break_even");
            foreach (var each in result.BreakEvens)
            {
                Write(json, each);
            }

            json.WriteEndArray();
            json.WriteStartArray("cautions");
            json.WriteStringValue(InvestCautions.LeavesOut);
            json.WriteStringValue(InvestCautions.Advice);
            json.WriteStringValue(InvestCautions.Building);
            json.WriteEndArray();
            json.WriteString("folder", folder);
        });

    private static void WriteTerms(Utf8JsonWriter json, InvestResult result)
    {
        json.WriteStartObject("terms");
        json.WriteNumber("capital", result.Terms.Capital);
        json.WriteNumber("life_years", result.Terms.LifeYears);
        json.WriteNumber("discount_rate", result.Terms.DiscountRate);
        json.WriteNumber("plant_on_time", result.Terms.PlantOnTime);
        json.WriteNumber("bought_in_share", result.Terms.BoughtInShare);
        json.WriteNumber("bought_in_price", result.Terms.BoughtInPrice);
        json.WriteNumber("plant_worth", result.Terms.PlantWorth);
        json.WriteNumber("upkeep", result.Terms.Upkeep);
        json.WriteNumber("residual", result.Terms.Residual);
        json.WriteString("basis", result.Terms.Basis);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, MoneyPart part)
    {
        json.WriteStartObject();
        json.WriteString("part", part.Name);
        json.WriteString("unit", part.Unit);
        json.WriteNumber("quantity", part.Quantity);
        StudyJson.WriteNumber(json, "quantity_half_width", part.QuantityHalfWidth);
        json.WriteBoolean("priced", part.IsPriced);
        json.WriteNumber("benefit", part.Benefit);
        StudyJson.WriteNumber(json, "benefit_half_width", part.BenefitHalfWidth);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, MoneySpread spread)
    {
        json.WriteStartObject(name);
        json.WriteNumber("mean", spread.Mean);
        WriteEnds(json, spread.Low, spread.High, spread.P10, spread.P50, spread.P90);
        json.WriteEndObject();
    }

    private static void WriteRate(Utf8JsonWriter json, RateSpread spread)
    {
        json.WriteStartObject("internal_rate");
        StudyJson.WriteNumber(json, "of_average_year", spread.OfAverageYear);
        WriteEnds(json, spread.Low, spread.High, spread.P10, spread.P50, spread.P90);
        json.WriteNumber("lives_without", spread.LivesWithout);
        json.WriteNumber("lives_with_several", spread.LivesWithSeveral);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, PaybackSpread spread)
    {
        json.WriteStartObject(name);
        StudyJson.WriteNumber(json, "of_average_year", spread.OfAverageYear);
        WriteEnds(json, spread.Low, spread.High, spread.P10, spread.P50, spread.P90);
        json.WriteEndObject();
    }

    private static void WriteEnds(Utf8JsonWriter json, double low, double high, double p10, double p50, double p90)
    {
        StudyJson.WriteNumber(json, "low", low);
        StudyJson.WriteNumber(json, "high", high);
        StudyJson.WriteNumber(json, "p10", p10);
        StudyJson.WriteNumber(json, "p50", p50);
        StudyJson.WriteNumber(json, "p90", p90);
    }

    private static void Write(Utf8JsonWriter json, Swing swing, bool decides)
    {
        json.WriteStartObject();
        json.WriteString("input", InvestNames.Of(swing.Input));
        json.WriteNumber("value", swing.Value);
        json.WriteNumber("low", swing.Low);
        json.WriteNumber("high", swing.High);
        json.WriteBoolean("range_given", swing.IsGiven);
        json.WriteNumber("net_at_low", swing.AtLow);
        StudyJson.WriteNumber(json, "net_at_low_half_width", swing.AtLowHalfWidth);
        json.WriteNumber("net_at_high", swing.AtHigh);
        StudyJson.WriteNumber(json, "net_at_high_half_width", swing.AtHighHalfWidth);
        json.WriteNumber("swing", swing.Size);
        json.WriteBoolean("decides", decides);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, BreakEven each)
    {
        json.WriteStartObject();
        json.WriteString("input", InvestNames.Of(each.Input));
        json.WriteNumber("value", each.Value);
        json.WriteString("must_be", each.IsFloor ? "at least" : "at most");
        StudyJson.WriteNumber(json, "break_even", each.At);
        StudyJson.WriteNumber(json, "low", each.Low);
        StudyJson.WriteNumber(json, "high", each.High);
        json.WriteBoolean("possible", !each.IsHopeless);
        json.WriteEndObject();
    }
}
