using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Counting;
using BenchSim.Study.Money;
using BenchSim.Study.Results;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Invest;

/// <summary>Works out a money case from the seasons played.</summary>
internal sealed class InvestCase
{
    /// <summary>Lives drawn.</summary>
    public const int LivesDrawn = 10_000;

    private readonly SeasonPlan _base;
    private readonly SeasonPlan _variant;
    private readonly string _name;
    private readonly MoneySeasons _seasons;
    private readonly ulong _seed;
    private readonly InvestTerms _terms;
    private readonly CaseInputs _inputs;
    private readonly double[][] _saved;
    private readonly double[] _benefits;

    public InvestCase(SeasonPlan basePlan, string name, SeasonPlan variant, MoneySeasons seasons, ulong seed)
    {
        (_base, _name, _variant, _seasons, _seed) = (basePlan, name, variant, seasons, seed);
        _terms = variant.Scenario.Invest!;
        _inputs = CaseInputs.Of(_terms, variant.Scenario.Rules.Prices);
        _saved = seasons.ByKind();
        _benefits = Benefits(_inputs);
    }

    /// <summary>The case.</summary>
    /// <param name="cancel">Stops the work.</param>
    public InvestResult ToResult(CancellationToken cancel)
    {
        var mean = MeanInterval.Of(_benefits);
        var lives = new LifeFigures(_inputs, _benefits, new Lives(_seed, _seasons.Count), LivesDrawn, cancel);
        var resamples = new Resamples(_inputs, _saved, _benefits, new Lives(_seed, _seasons.Count), cancel);
        var parts = Parts();
        var tornado = Tornado();
        var deciding = Deciding(tornado);
        return new InvestResult
        {
            Base = _base,
            Name = _name,
            Variant = _variant,
            Terms = _terms,
            Seasons = _seasons.Count,
            Seed = _seed,
            Lives = LivesDrawn,
            Confidence = Confidence.Usual,
            BaseFits = Chances.Of(_seasons.BaseFits, _seasons.Count),
            VariantFits = Chances.Of(_seasons.VariantFits, _seasons.Count),
            Parts = parts,
            LeftOut = [.. parts.Where(part => !part.IsPriced && part.Quantity != 0).Select(part => part.Name)],
            YearlyBenefit = LifeFigures.Spread(mean.Mean, mean.HalfWidth, _benefits),
            NetPresentValue = LifeFigures.Spread(_inputs.Net(mean.Mean), _inputs.Annuity * mean.HalfWidth, lives.NetValues),
            InternalRate = Rates(mean, lives),
            SimplePayback = Paybacks(mean, 0, lives.SimplePaybacks),
            DiscountedPayback = Paybacks(mean, _inputs.Rate, lives.DiscountedPaybacks),
            Pays = Pays(lives, resamples),
            Tornado = tornado,
            Deciding = deciding,
            BreakEvens = [.. BreakEvenInputs(tornado, deciding).Select(input => BreakEvenOf(input, resamples))],
        };
    }

    private double[] Benefits(CaseInputs inputs)
    {
        var benefits = new double[_seasons.Count];
        Span<double> saved = stackalloc double[CaseInputs.Kinds];
        for (var season = 0; season < benefits.Length; season++)
        {
            for (var kind = 0; kind < saved.Length; kind++)
            {
                saved[kind] = _saved[kind][season];
            }

            benefits[season] = inputs.Benefit(saved);
        }

        return benefits;
    }

    private ImmutableArray<MoneyPart> Parts() =>
        [
            .. _seasons.Parts.Select(
                (part, at) =>
                {
                    var quantities = _seasons.Quantities(at);
                    var quantity = MeanInterval.Of(quantities);
                    var money = MeanInterval.Of(
                        part.Kind == MoneyKind.Plants ? [.. quantities.Select(each => each * _inputs.PlantWorth)] : _seasons.Savings(at)
                    );
                    return new MoneyPart
                    {
                        Kind = part.Kind,
                        Name = part.Name,
                        Unit = part.Unit,
                        Quantity = quantity.Mean,
                        QuantityHalfWidth = quantity.HalfWidth,
                        IsPriced = part.IsPriced,
                        Benefit = money.Mean,
                        BenefitHalfWidth = money.HalfWidth,
                    };
                }
            ),
        ];

    private RateSpread Rates(MeanInterval mean, LifeFigures lives) =>
        new(
            BreakEvens.GreatestRate(_inputs.Flows(mean.Mean)),
            double.IsNaN(mean.HalfWidth) ? double.NaN : BreakEvens.GreatestRate(_inputs.Flows(mean.Mean - mean.HalfWidth)),
            double.IsNaN(mean.HalfWidth) ? double.NaN : BreakEvens.GreatestRate(_inputs.Flows(mean.Mean + mean.HalfWidth)),
            LifeFigures.Quantile(lives.Rates, 10),
            LifeFigures.Quantile(lives.Rates, 50),
            LifeFigures.Quantile(lives.Rates, 90),
            lives.WithoutRate,
            lives.WithSeveralRates
        );

    private PaybackSpread Paybacks(MeanInterval mean, double rate, double[] ofLives) =>
        new(
            LifeFigures.PaybackOf(_inputs, rate, mean.Mean),
            double.IsNaN(mean.HalfWidth) ? double.NaN : LifeFigures.PaybackOf(_inputs, rate, mean.Mean + mean.HalfWidth),
            double.IsNaN(mean.HalfWidth) ? double.NaN : LifeFigures.PaybackOf(_inputs, rate, mean.Mean - mean.HalfWidth),
            LifeFigures.Quantile(ofLives, 10),
            LifeFigures.Quantile(ofLives, 50),
            LifeFigures.Quantile(ofLives, 90)
        );

    // Two doubts, the wider of both at each end: which seasons were played (resampled), and that the lives drawn are finite in number
    // (Wilson).
    private static Chance Pays(LifeFigures lives, Resamples resamples)
    {
        var hits = lives.NetValues.Count(value => value > 0);
        (var low, var high) = Wilson.Interval(hits, LivesDrawn, Confidence.Usual);
        (var fewest, var most) = resamples.Pays;
        return new Chance(hits, LivesDrawn, Math.Min(low, fewest), Math.Max(high, most));
    }

    private ImmutableArray<Swing> Tornado() =>
        [
            .. InvestRanges
                .Of(_terms, _inputs, _saved)
                .Select(range =>
                {
                    (var atLow, var lowHalf) = NetAt(range.Input, range.Low);
                    (var atHigh, var highHalf) = NetAt(range.Input, range.High);
                    return new Swing
                    {
                        Input = range.Input,
                        Value = _inputs[range.Input],
                        Low = range.Low,
                        High = range.High,
                        IsGiven = range.IsGiven,
                        AtLow = atLow,
                        AtLowHalfWidth = lowHalf,
                        AtHigh = atHigh,
                        AtHighHalfWidth = highHalf,
                    };
                })
                .OrderByDescending(swing => swing.Size)
                .ThenBy(swing => swing.Input),
        ];

    private (double Net, double HalfWidth) NetAt(InvestInput input, double value)
    {
        var changed = _inputs.With(input, value);
        var mean = MeanInterval.Of(Benefits(changed));
        return (changed.Net(mean.Mean), changed.Annuity * mean.HalfWidth);
    }

    private static int Deciding(ImmutableArray<Swing> tornado)
    {
        var swinging = tornado.Count(swing => swing.Size > 0);
        return swinging < 3 ? swinging
            : tornado[2].Size >= tornado[1].Size / 2 ? 3
            : 2;
    }

    private static IEnumerable<InvestInput> BreakEvenInputs(ImmutableArray<Swing> tornado, int deciding) =>
        new[] { InvestInput.PlantOnTime, InvestInput.Capital, InvestInput.DiscountRate, InvestInput.Life }
            .Concat(tornado.Take(deciding).Select(swing => swing.Input))
            .Distinct();

    private BreakEven BreakEvenOf(InvestInput input, Resamples resamples)
    {
        double[] mean = [.. _saved.Select(kind => MeanInterval.Of(kind).Mean)];
        var isFloor = BreakEvens.IsFloor(input, _inputs, mean);
        var resampled = resamples.BreakEvens(input, isFloor);
        return new BreakEven
        {
            Input = input,
            Value = _inputs[input],
            IsFloor = isFloor,
            At = BreakEvens.At(input, _inputs, mean, isFloor),
            Low = resampled[Resamples.LowAt],
            High = resampled[Resamples.HighAt],
        };
    }
}
