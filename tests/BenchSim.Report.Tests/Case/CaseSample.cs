using System.Collections.Immutable;
using System.Text;
using BenchSim.Report.Case;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Invest;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Case;

/// <summary>Cases that are tested: the toy's season, with a comparison and a money case whose figures are written here.</summary>
internal static class CaseSample
{
    public static readonly ReportInput[] Inputs =
    [
        new("plan.csv", Encoding.UTF8.GetBytes("batch,crop\n")),
        new("site.toml", Encoding.UTF8.GetBytes("name = 'x'\n")),
    ];

    private static readonly Lazy<CaseInput> s_hostile = new(Strange);

    /// <summary>A plan by itself.</summary>
    public static CaseInput Run(StudyResult study, CasePaper paper = CasePaper.A4) =>
        new()
        {
            Base = study,
            Paper = paper,
            Command = "benchsim run inputs --seasons 200 --seed 20270401 --case --paper a4",
            Version = "1.2.3",
            Build = "0123456789abcdef",
        };

    /// <summary>110 of 200 seasons fit without, 180 with: 70 only with it, none only without.</summary>
    public static CaseInput Compared(StudyResult without, StudyResult with, string name = "more-mats", CasePaper paper = CasePaper.A4)
    {
        var before = without with { Fits = Figures.Chance(110, 200) };
        var after = with with { Fits = Figures.Chance(180, 200) };
        var inTime = Measures.PlantsInTime;
        var late = Measures.LatePlantDays;
        var cost = Measures.EnergyCost("$") with { Parts = 1 };
        var comparison = new CompareResult
        {
            Base = before.Plan,
            Seasons = 200,
            Seed = before.Seed,
            Confidence = 0.95,
            Comparisons = 4,
            EachConfidence = 0.9875,
            Measures = [inTime, late, cost],
            Variants =
            [
                new VariantResult
                {
                    Name = name,
                    Plan = after.Plan,
                    Fits = new FitChange
                    {
                        Base = before.Fits,
                        Variant = after.Fits,
                        Both = 110,
                        OnlyBase = 0,
                        OnlyVariant = 70,
                        Low = 0.28,
                        High = 0.421,
                        VarianceRatio = 2,
                    },
                    Changes = [Change(inTime, 4000, 4120, 20), Change(late, 900, 905, 30), Change(cost, 800, 840.5, 2)],
                },
            ],
        };
        return Run(before, paper) with
        {
            Changed = after,
            Comparison = comparison,
            Command = "benchsim compare inputs --with more-mats --case",
        };
    }

    /// <summary>The same with money: capital 1,000, 120 plants more in time at 2, 30 of upkeep: 210 a year.</summary>
    public static CaseInput WithMoney(CaseInput input, string basis = "made up") =>
        input with
        {
            Money = new InvestResult
            {
                Base = input.Base.Plan,
                Name = input.Variant!.Name,
                Variant = input.Changed!.Plan,
                Terms = new InvestTerms
                {
                    Capital = 1000,
                    LifeYears = 10,
                    DiscountRate = 0.05,
                    PlantOnTime = 2,
                    Upkeep = 30,
                    Basis = basis,
                },
                Seasons = 200,
                Seed = input.Base.Seed,
                Lives = 10_000,
                Confidence = 0.95,
                BaseFits = input.Base.Fits,
                VariantFits = input.Changed.Fits,
                Parts =
                [
                    new MoneyPart
                    {
                        Kind = MoneyKind.Plants,
                        Name = "plants on time",
                        Unit = "plants",
                        Quantity = 120,
                        QuantityHalfWidth = 20,
                        IsPriced = true,
                        Benefit = 240,
                        BenefitHalfWidth = 40,
                    },
                    new MoneyPart
                    {
                        Kind = MoneyKind.Labour,
                        Name = "labour",
                        Unit = "hours",
                        Quantity = 3,
                        QuantityHalfWidth = 1,
                        IsPriced = false,
                        Benefit = 0,
                        BenefitHalfWidth = 0,
                    },
                ],
                LeftOut = ["labour"],
                YearlyBenefit = new MoneySpread(210, 40, 90, 200, 320),
                NetPresentValue = new MoneySpread(621.56, 308.87, 150, 620, 1100),
                InternalRate = new RateSpread(0.163, 0.11, 0.213, double.NegativeInfinity, 0.16, 0.22, 12, 0),
                SimplePayback = new PaybackSpread(4.76, 4, 5.9, 4.1, 4.8, double.PositiveInfinity),
                DiscountedPayback = new PaybackSpread(5.6, 4.6, 7.1, 4.6, 5.6, double.PositiveInfinity),
                Pays = new Chance(9700, 10_000, 0.93, 0.99),
                Tornado =
                [
                    Swing(InvestInput.PlantOnTime, 2, 1.5, 2.5, 158, 1085),
                    Swing(InvestInput.Capital, 1000, 750, 1250, 872, 372),
                    Swing(InvestInput.Residual, 0, 0, 0, 622, 622),
                ],
                Deciding = 2,
                BreakEvens =
                [
                    new BreakEven
                    {
                        Input = InvestInput.PlantOnTime,
                        Value = 2,
                        IsFloor = true,
                        At = 1.33,
                        Low = 1.1,
                        High = 1.7,
                    },
                    new BreakEven
                    {
                        Input = InvestInput.Life,
                        Value = 10,
                        IsFloor = true,
                        At = double.PositiveInfinity,
                        Low = 9,
                        High = double.PositiveInfinity,
                    },
                    new BreakEven
                    {
                        Input = InvestInput.DiscountRate,
                        Value = 0.05,
                        IsFloor = false,
                        At = double.PositiveInfinity,
                        Low = double.PositiveInfinity,
                        High = double.PositiveInfinity,
                    },
                ],
            },
        };

    /// <summary>The spring with the mats it has and with sixteen places more.</summary>
    public static CaseInput Spring(CasePaper paper = CasePaper.A4)
    {
        var without = SyntheticStudy.Spring();
        var plan = without.Plan;
        var more = plan with
        {
            Scenario = plan.Scenario with { Spaces = plan.Scenario.Spaces.SetItem(0, plan.Scenario.Spaces[0] with { Places = 54 }) },
        };
        return Compared(without, SyntheticStudy.Of(more, 200), paper: paper);
    }

    /// <summary>A season with strange text in every field, and with seven spaces, one of them only with the change.</summary>
    public static CaseInput Hostile(CasePaper paper) => s_hostile.Value with { Paper = paper };

    private static CaseInput Strange()
    {
        string[] names = [.. HostileNames.All.Cast<object[]>().Select(row => (string)row[0])];
        SeasonPlan Named(SeasonPlan plan) =>
            plan with
            {
                Scenario = plan.Scenario with
                {
                    Name = HostileNames.Long + HostileNames.Script,
                    Question = HostileNames.LongWords + HostileNames.Emoji,
                    Spaces = [.. plan.Scenario.Spaces.Select((space, at) => space with { Name = names[(at + 5) % names.Length] })],
                    Houses = [.. plan.Scenario.Houses.Select((house, at) => house with { Name = names[(at + 6) % names.Length] })],
                    Crops = [.. plan.Scenario.Crops.Select(crop => crop with { Name = HostileNames.Long })],
                    Rules = plan.Scenario.Rules with { Prices = plan.Scenario.Rules.Prices with { Currency = "<b>&=\U0001F4B0long" } },
                },
                Batches =
                [
                    .. plan.Batches.Select(
                        (batch, at) =>
                            batch with
                            {
                                Order = batch.Order with { Id = names[at % names.Length] + at, Grower = names[at % names.Length] },
                            }
                    ),
                ],
            };
        var plan = Named(SyntheticPlan.Large());
        var more = plan with
        {
            Scenario = plan.Scenario with
            {
                Spaces = plan.Scenario.Spaces.Add(SyntheticPlan.Space("new", HostileNames.LongWords, SpaceKind.Bench, 500)),
            },
        };
        var input = WithMoney(
            Compared(SyntheticStudy.Of(plan, 200), SyntheticStudy.Of(more, 200), HostileNames.Long + HostileNames.Script),
            HostileNames.LongWords + HostileNames.Emoji
        );
        return input with
        {
            Note = HostileNames.Long + HostileNames.LongWords,
            Command = "benchsim compare inputs --with " + HostileNames.Long,
        };
    }

    private static MeasureChange Change(Measure measure, double before, double after, double halfWidth) =>
        new()
        {
            Measure = measure,
            Base = before,
            Variant = after,
            Difference = after - before,
            HalfWidth = halfWidth,
            Differing = 150,
            VarianceRatio = 3,
        };

    private static Swing Swing(InvestInput input, double value, double low, double high, double atLow, double atHigh) =>
        new()
        {
            Input = input,
            Value = value,
            Low = low,
            High = high,
            IsGiven = false,
            AtLow = atLow,
            AtLowHalfWidth = 300,
            AtHigh = atHigh,
            AtHighHalfWidth = 300,
        };
}
