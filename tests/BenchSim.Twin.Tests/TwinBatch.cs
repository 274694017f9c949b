using BenchSim.Engine.Randomness;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Season.Stands;

namespace BenchSim.Twin.Tests;

/// <summary>A batch of the twin: its luck of the season, its trays and flats, and what has been counted of it.</summary>
internal sealed class TwinBatch
{
    private readonly BatchLuck _luck;
    private readonly int _season;
    private readonly double _emergence;
    private readonly double _packet;
    private readonly double _loss;
    private readonly Dictionary<double, double> _heats = [];

    public TwinBatch(SeasonPlan season, BatchPlan plan, int number, TwinClimate climate, TwinLuck luck, ulong seed, int played)
    {
        (Plan, Number, Climate, _season) = (plan, number, climate, played);
        _luck = new BatchLuck(plan.Order, plan.Crop, new BetaLaw(plan.Germination, season.Scenario.Rules.GerminationSample), seed);
        (_emergence, _packet, _loss) = (luck.Emergence, luck.Packet, luck.Loss);
        SowDay = plan.SowOn.DayNumber - season.FirstDay.DayNumber;
        SetOutDay = plan.SetOutOn.DayNumber - season.FirstDay.DayNumber;
        var reference = plan.Crop.ReferenceC - plan.Crop.GrowthBaseC;
        var growth = luck.Growth;
        FlatGrowth = RunningSum.Millionths(growth * plan.Crop.PotUpDays * reference);
        TrayGrowth = RunningSum.Millionths(
            (growth * plan.Crop.GrowthDays * reference) + (plan.Flat is null ? 0 : plan.Crop.PotUpCheckDays * reference)
        );
        Unsown =
        [
            .. Enumerable
                .Range(0, plan.Flat is null ? plan.Trays : plan.Flats)
                .Select(index => new TwinTray(this, plan.Flat is not null, index)),
        ];
        Outcome.BlockedTrayDays = new long[season.Scenario.Spaces.Length];
        (Outcome.SownFirst, Outcome.SownLast, Outcome.OffMat, Outcome.PottedUp, Outcome.OnTable) = (-1, -1, -1, -1, -1);
        Outcome.Finishing = -1;
        (Outcome.OutFirst, Outcome.OutMedian, Outcome.OutLast) = (-1, -1, -1);
    }

    public BatchPlan Plan { get; }

    public int Number { get; }

    public TwinClimate Climate { get; }

    public Crop Crop => Plan.Crop;

    public int SowDay { get; }

    public int SetOutDay { get; }

    public double FlatGrowth { get; }

    public double TrayGrowth { get; }

    /// <summary>What is sown: trays of a direct batch, flats of a pot-up batch.</summary>
    public IReadOnlyList<TwinTray> Unsown { get; set; }

    /// <summary>Day from which a sowing that is past its own waits.</summary>
    public int WaitsFrom { get; set; }

    public BatchOutcome Outcome { get; } = new();

    /// <summary>Seedlings passed on from flats potted up to the next.</summary>
    public int CarriedOver { get; set; }

    public int TraysFilled { get; set; }

    /// <summary>Trays set out, in the order in which they went.</summary>
    public List<TwinTray> GoneOut { get; } = [];

    public int LastSownDay { get; set; } = -1;

    public int DaysWaited(int day) => day - Math.Max(SowDay, WaitsFrom);

    public double HeatAtFraction(double fraction)
    {
        if (!_heats.TryGetValue(fraction, out var heat))
        {
            heat = RunningSum.Millionths(Crop.EmergeHeat * Math.Exp(Crop.EmergeSigma * Normal.Quantile(fraction)) * _emergence);
            _heats.Add(fraction, heat);
        }

        return heat;
    }

    /// <summary>Seedlings a flat yields after the losses of potting up.</summary>
    public int SeedlingsOf(TwinTray flat) =>
        Binomial(
            Plan.Order.SeedsPerFlat,
            SeedChance(flat) * (1 - Crop.PotUpLoss) * flat.Left,
            _luck.Fill(_season, LuckPurpose.Flat, flat.Index)
        );

    /// <summary>Plants a tray brings to the field.</summary>
    public int PlantsOf(TwinTray tray)
    {
        var chance = (1 - _loss) * tray.Left;
        var tries = tray.Seedlings;
        if (Plan.Flat is null)
        {
            tries = Plan.Tray.Cells;
            chance *= 1 - Math.Pow(1 - SeedChance(tray), Plan.Order.SeedsPerCell);
        }

        return Binomial(tries, chance, _luck.Fill(_season, LuckPurpose.Tray, tray.Index));
    }

    private double SeedChance(TwinTray tray) => _packet * RelativeGermination(Crop, tray.MeanMedium);

    public static double RelativeGermination(Crop crop, double degrees)
    {
        var curve = crop.GerminationCurve;
        if (curve.IsDefaultOrEmpty)
        {
            return 1;
        }

        var right = 0;
        while (right < curve.Length && curve[right].TemperatureC < degrees)
        {
            right++;
        }

        var percent =
            right == 0 ? curve[0].Percent
            : right == curve.Length ? curve[^1].Percent
            : curve[right - 1].Percent
                + (
                    (curve[right].Percent - curve[right - 1].Percent)
                    * (degrees - curve[right - 1].TemperatureC)
                    / (curve[right].TemperatureC - curve[right - 1].TemperatureC)
                );
        return percent / curve.Max(point => point.Percent);
    }

    // The smallest number whose cumulative chance is at least u.
    private static int Binomial(int tries, double chance, double u)
    {
        if (chance <= 0 || chance >= 1)
        {
            return chance <= 0 ? 0 : tries;
        }

        var logWays = 0.0;
        var sum = 0.0;
        for (var number = 0; number < tries; number++)
        {
            sum += Math.Exp(logWays + (number * Math.Log(chance)) + ((tries - number) * Math.Log(1 - chance)));
            if (sum >= u)
            {
                return number;
            }

            logWays += Math.Log(tries - number) - Math.Log(number + 1);
        }

        return tries;
    }
}
