using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Json;
using BenchSim.Season.Inputs;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Json;

/// <summary>What each rule for the bill would ask of each grower.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Seasons">Seasons played.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Unit">"money", "kWh" of heat and current where a price is missing, or "days" with trays in a heated house.</param>
/// <param name="Currency">Sign or code of the money; may be empty.</param>
/// <param name="Shared">Names of the houses and mats in the bill.</param>
/// <param name="NotCounted">Names of heated houses that are not in it, as their shell or heater is not given.</param>
/// <param name="Mean">The bill of a season, mean.</param>
/// <param name="P10">One season in ten costs no more.</param>
/// <param name="P90">Nine seasons in ten cost no more.</param>
/// <param name="Growers">The growers, in order of name.</param>
internal sealed record BillsDocument(
    int Version,
    string Name,
    int Seasons,
    string Seed,
    string Unit,
    string Currency,
    ImmutableArray<string> Shared,
    ImmutableArray<string> NotCounted,
    double Mean,
    double P10,
    double P90,
    ImmutableArray<JsonBilledGrower> Growers
)
{
    public static BillsDocument Of(SeasonPlan plan, BillForecast bills) =>
        new(
            Version: JsonDialect.Version,
            Name: plan.Scenario.Name,
            Seasons: bills.Seasons,
            Seed: bills.Seed.ToString(CultureInfo.InvariantCulture),
            Unit: bills.Things.Unit switch
            {
                BillUnit.Money => "money",
                BillUnit.Heat => "kWh",
                _ => "days",
            },
            Currency: plan.Scenario.Rules.Prices.Currency,
            Shared: [.. bills.Things.All.Select(thing => thing.Name)],
            NotCounted: [.. bills.Things.NotCounted.Select(house => house.Name)],
            Mean: bills.Mean,
            P10: bills.P10,
            P90: bills.P90,
            Growers: [.. bills.Growers.Select(JsonBilledGrower.Of)]
        );
}

/// <summary>A grower in a bill.</summary>
/// <param name="Grower">Name.</param>
/// <param name="Batches">Batches.</param>
/// <param name="TrayDays">Tray-days in all spaces, mean.</param>
/// <param name="Bills">What falls to the grower by each rule, mean.</param>
/// <param name="DaysInHand">Fewest days in hand of the batches.</param>
/// <param name="LikelyLate">
/// Batches of which too few plants are out in time in at least half of the seasons, every late day counted.
/// </param>
internal sealed record JsonBilledGrower(
    string Grower,
    int Batches,
    double TrayDays,
    ImmutableArray<JsonBill> Bills,
    int DaysInHand,
    int LikelyLate
)
{
    public static JsonBilledGrower Of(BilledGrower grower) =>
        new(
            grower.Grower,
            grower.Batches,
            grower.TrayDays,
            [.. BillRules.All.Zip(grower.Amounts, (rule, amount) => new JsonBill(rule.Word(), amount))],
            grower.DaysInHand,
            grower.LikelyLate
        );
}

/// <summary>What falls to a grower by a rule.</summary>
/// <param name="Rule">"equal", "tray-days" or "full-weeks".</param>
/// <param name="Amount">Amount.</param>
internal sealed record JsonBill(string Rule, double Amount);
