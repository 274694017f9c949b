using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Study.Invest;

/// <summary>The money case of a variant against its base. Money is in the user's currency; benefits are positive, costs negative.</summary>
public sealed record InvestResult
{
    /// <summary>Plan of the base, as played.</summary>
    public required SeasonPlan Base { get; init; }

    /// <summary>Name of the variant.</summary>
    public required string Name { get; init; }

    /// <summary>Plan of the variant, as played.</summary>
    public required SeasonPlan Variant { get; init; }

    /// <summary>The terms, from the variant.</summary>
    public required InvestTerms Terms { get; init; }

    /// <summary>Sign or code before amounts of money, as the base has it; may be empty.</summary>
    public string Currency => Base.Scenario.Rules.Prices.Currency;

    /// <summary>Seasons played of each, on the same luck.</summary>
    public required int Seasons { get; init; }

    /// <summary>Seed of all luck.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Lives drawn, each year of each a season drawn from those played.</summary>
    public required int Lives { get; init; }

    /// <summary>Confidence of each interval: 0.95.</summary>
    public required double Confidence { get; init; }

    /// <summary>Chance of fit of the base, weather holds excepted.</summary>
    public required Chance BaseFits { get; init; }

    /// <summary>Chance of fit of the variant, on the same seasons.</summary>
    public required Chance VariantFits { get; init; }

    /// <summary>What the yearly net benefit is made of, upkeep excepted.</summary>
    public required ImmutableArray<MoneyPart> Parts { get; init; }

    /// <summary>Names of the parts that differ but have no price, and so are not counted.</summary>
    public required ImmutableArray<string> LeftOut { get; init; }

    /// <summary>Net benefit of a year, upkeep paid; spread over the seasons.</summary>
    public required MoneySpread YearlyBenefit { get; init; }

    /// <summary>Net present value; spread over the lives.</summary>
    public required MoneySpread NetPresentValue { get; init; }

    /// <summary>Internal rate of return, fraction a year.</summary>
    public required RateSpread InternalRate { get; init; }

    /// <summary>Payback in years, not discounted.</summary>
    public required PaybackSpread SimplePayback { get; init; }

    /// <summary>Payback in years, discounted.</summary>
    public required PaybackSpread DiscountedPayback { get; init; }

    /// <summary>
    /// Chance that a life has a net present value above 0, counted over the lives; its interval allows for the seasons played and the lives
    /// drawn.
    /// </summary>
    public required Chance Pays { get; init; }

    /// <summary>The inputs one at a time, largest swing first.</summary>
    public required ImmutableArray<Swing> Tornado { get; init; }

    /// <summary>
    /// How many of <see cref="Tornado"/>, from the first, decide the case: two, or three where the third swings at least half as far as the
    /// second.
    /// </summary>
    public required int Deciding { get; init; }

    /// <summary>
    /// What one must believe for it to pay: of a plant on time, capital, discount rate and life, and of the inputs that decide.
    /// </summary>
    public required ImmutableArray<BreakEven> BreakEvens { get; init; }
}
