using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Folder.Files;
using BenchSim.Report.Json;
using BenchSim.Report.Writing;
using BenchSim.Season.Doubt;
using BenchSim.Study.Trust;

namespace BenchSim.Answers.Json;

/// <summary>What hangs on the values of a plan that may be wrong.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Sets">Sets of values played.</param>
/// <param name="Seasons">Seasons of each set.</param>
/// <param name="Seed">Seed of all luck, as text.</param>
/// <param name="Fits">Chance that a season fits at the values given, as a run has it.</param>
/// <param name="Figures">What was read off the seasons, over the ranges.</param>
/// <param name="Groups">What groups of values do.</param>
/// <param name="Values">The values, those that move most first.</param>
/// <param name="Choice">What values do to the choice of a variant; null where none was asked about.</param>
/// <param name="Today">The day from which it was played; null for whole seasons.</param>
/// <param name="Inputs">The files of the plan; a variant's is not among them.</param>
internal sealed record TrustDocument(
    int Version,
    string Name,
    int Sets,
    int Seasons,
    string Seed,
    JsonChance Fits,
    ImmutableArray<JsonTrustFigure> Figures,
    ImmutableArray<JsonTrustGroup> Groups,
    ImmutableArray<JsonTrustValue> Values,
    JsonTrustChoice? Choice,
    DateOnly? Today,
    ImmutableArray<JsonInput> Inputs
)
{
    public static TrustDocument Of(TrustResult result, ImmutableArray<InputFile> inputs) =>
        new(
            JsonDialect.Version,
            result.Plan.Scenario.Name,
            result.Options.Sets,
            result.Options.Seasons,
            result.Options.Seed.ToString(CultureInfo.InvariantCulture),
            JsonChance.Of(result.GivenFits),
            [.. result.Ranges.Select(JsonTrustFigure.Of)],
            [.. result.Groups.Select(JsonTrustGroup.Of)],
            [.. result.InOrder.Select(JsonTrustValue.For)],
            result.Choice is { } choice ? JsonTrustChoice.Of(choice, result.Plan.Scenario.Rules.Prices.Currency) : null,
            result.Plan.Today,
            [.. inputs.Select(input => JsonInput.Of(new ReportInput(input.Name, input.Bytes.AsMemory())))]
        );
}

/// <summary>A figure over the ranges of the values.</summary>
/// <param name="Measure">What is read: "fits", "late_plant_days", "plants_in_time", "waiting:SPACE".</param>
/// <param name="Given">Its mean at the values given.</param>
/// <param name="Low">5 % of the sets lie below.</param>
/// <param name="Middle">Half of them lie below.</param>
/// <param name="High">5 % lie above.</param>
/// <param name="VarianceOfValues">Variance of a season that the values make.</param>
/// <param name="VarianceOfLuck">Variance of a season that luck makes.</param>
internal sealed record JsonTrustFigure(
    string Measure,
    double Given,
    double Low,
    double Middle,
    double High,
    double VarianceOfValues,
    double VarianceOfLuck
)
{
    public static JsonTrustFigure Of(TrustRange range) =>
        new(range.Measure.Id, range.AsGiven, range.Low, range.Middle, range.High, range.Widths.Values, range.Widths.Luck);
}

/// <summary>A share of a variance.</summary>
/// <param name="Share">The share.</param>
/// <param name="Low">Low end of its 90 % interval.</param>
/// <param name="High">High end.</param>
internal sealed record JsonShare(double Share, double Low, double High)
{
    public static JsonShare Of(ShareEstimate share) => new(share.Share, share.Low, share.High);
}

/// <summary>What a group of values does together with all others.</summary>
/// <param name="Group">Its name.</param>
/// <param name="Values">Number of its values.</param>
/// <param name="Sets">Sets in which it was changed.</param>
/// <param name="Fits">Its total share of the variance of the seasons that fit.</param>
/// <param name="LatePlantDays">Its total share of the variance of late plant-days.</param>
internal sealed record JsonTrustGroup(string Group, int Values, int Sets, JsonShare Fits, JsonShare LatePlantDays)
{
    public static JsonTrustGroup Of(TrustGroup group) =>
        new(Word(group.Group), group.Values, group.Sets, JsonShare.Of(group.Fits), JsonShare.Of(group.LatePlantDays));

    public static string Word(DoubtGroup group) =>
        group switch
        {
            DoubtGroup.ComingUp => "coming_up",
            DoubtGroup.PottingUp => "potting_up",
            _ => group.ToString().ToLowerInvariant(),
        };
}

/// <summary>What one value does.</summary>
/// <param name="What">Key or column.</param>
/// <param name="Of">Ids of the crops or houses; empty for the site.</param>
/// <param name="Trust">Where the first of them comes from.</param>
/// <param name="Given">The value in words.</param>
/// <param name="From">The 5 % of its range in words.</param>
/// <param name="To">The 95 %.</param>
/// <param name="FitsGiven">Share of the seasons that fit as given, in the seasons in which it was moved alone.</param>
/// <param name="FitsFrom">The same at the 5 % of its range.</param>
/// <param name="FitsTo">The same at the 95 %.</param>
/// <param name="LateFrom">Late plant-days at the 5 %.</param>
/// <param name="LateTo">Late plant-days at the 95 %.</param>
/// <param name="ShareOfFits">Its own share of the variance of the seasons that fit; null where it was not worked out.</param>
/// <param name="ShareOfLate">Its own share of the variance of late plant-days; null where it was not worked out.</param>
internal sealed record JsonTrustValue(
    string What,
    ImmutableArray<string> Of,
    string Trust,
    string Given,
    string From,
    string To,
    double FitsGiven,
    double FitsFrom,
    double FitsTo,
    double LateFrom,
    double LateTo,
    JsonShare? ShareOfFits,
    JsonShare? ShareOfLate
)
{
    public static JsonTrustValue For(TrustValue value) =>
        new(
            value.Value.Column.Field.Name,
            [.. value.Value.Parts.Select(part => part.OwnerId).Where(id => id.Length > 0)],
            value.Value.Parts[0].Trust.ToString().ToLowerInvariant(),
            value.Value.Now,
            value.Value.At(0.05),
            value.Value.At(0.95),
            value.Given[0],
            value.AtLow[0],
            value.AtHigh[0],
            value.AtLow[1],
            value.AtHigh[1],
            value.Shares[0] is { } fits ? JsonShare.Of(fits) : null,
            value.Shares[1] is { } late ? JsonShare.Of(late) : null
        );
}

/// <summary>What values do to the choice of a variant.</summary>
/// <param name="Variant">Its name.</param>
/// <param name="GainGiven">Plants more in time at the values given.</param>
/// <param name="Gain">Plants more in time, mean over the sets.</param>
/// <param name="Changes">Share of the sets in which the other choice is the better one, by plants.</param>
/// <param name="WorthOfAll">Plants more in time for who knows all values.</param>
/// <param name="Worth">Values whose knowing is worth something in plants.</param>
/// <param name="Money">
/// The same in money a year, after what the variant costs to build and to run: what decides where it is there; null where its terms are not
/// given.
/// </param>
internal sealed record JsonTrustChoice(
    string Variant,
    double GainGiven,
    double Gain,
    double Changes,
    double WorthOfAll,
    ImmutableArray<JsonWorth> Worth,
    JsonTrustMoney? Money
)
{
    public static JsonTrustChoice Of(TrustChoice choice, string currency) =>
        new(
            choice.Variant,
            choice.Plants.GainAsGiven,
            choice.Plants.Gain,
            choice.Plants.Changes,
            choice.Plants.WorthOfAll,
            [.. choice.Plants.Worth.Select(each => new JsonWorth(What(each.Value), Owners(each.Value), JsonShare.Of(each.Gain)))],
            choice.Money is { } money
                ? new JsonTrustMoney(
                    currency,
                    money.GainAsGiven,
                    money.Gain,
                    money.Changes,
                    money.WorthOfAll,
                    [.. money.Worth.Select(each => new JsonMoneyWorth(What(each.Value), Owners(each.Value), JsonShare.Of(each.Gain)))]
                )
                : null
        );

    private static string What(DoubtfulValue value) => value.Column.Field.Name;

    private static ImmutableArray<string> Owners(DoubtfulValue value) =>
        [.. value.Parts.Select(part => part.OwnerId).Where(id => id.Length > 0)];
}

/// <summary>What values do to a choice, in money a year.</summary>
/// <param name="Currency">Sign or code of the money; may be empty.</param>
/// <param name="GainGiven">Gain of the variant at the values given.</param>
/// <param name="Gain">The same, mean over the sets.</param>
/// <param name="Changes">Share of the sets in which the other choice is the better one.</param>
/// <param name="WorthOfAll">Gain for who knows all values.</param>
/// <param name="Worth">Values whose knowing is worth something.</param>
internal sealed record JsonTrustMoney(
    string Currency,
    double GainGiven,
    double Gain,
    double Changes,
    double WorthOfAll,
    ImmutableArray<JsonMoneyWorth> Worth
);

/// <summary>What knowing a value is worth in plants.</summary>
/// <param name="What">Key or column.</param>
/// <param name="Of">Ids of the crops or houses; empty for the site.</param>
/// <param name="Plants">Plants more in time.</param>
internal sealed record JsonWorth(string What, ImmutableArray<string> Of, JsonShare Plants);

/// <summary>What knowing a value is worth in money.</summary>
/// <param name="What">Key or column.</param>
/// <param name="Of">Ids of the crops or houses; empty for the site.</param>
/// <param name="Money">Money a year.</param>
internal sealed record JsonMoneyWorth(string What, ImmutableArray<string> Of, JsonShare Money);
