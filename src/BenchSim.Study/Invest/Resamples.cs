using BenchSim.Study.Money;

namespace BenchSim.Study.Invest;

/// <summary>
/// The seasons resampled (Efron 1979, Annals of Statistics 7, 1-26): as many are drawn from those played, each evenly and with return, many
/// times over. How far a figure strays from resample to resample says how far it would stray had other seasons been played.
/// </summary>
internal sealed class Resamples
{
    /// <summary>Resamples drawn.</summary>
    public const int Drawn = 400;

    /// <summary>Position of the 2.5 % point among so many in order.</summary>
    public const int LowAt = (Drawn / 40) - 1;

    /// <summary>Position of the 97.5 % point.</summary>
    public const int HighAt = Drawn - (Drawn / 40);

    private const int LivesEach = 1000;

    private readonly CaseInputs _inputs;
    private readonly double[][] _means = new double[Drawn][];

    /// <summary>Draws them.</summary>
    /// <param name="inputs">Inputs.</param>
    /// <param name="saved">Savings by kind and season.</param>
    /// <param name="benefits">Net benefit by season.</param>
    /// <param name="draws">Draws.</param>
    /// <param name="cancel">Stops the work.</param>
    public Resamples(CaseInputs inputs, double[][] saved, double[] benefits, Lives draws, CancellationToken cancel)
    {
        _inputs = inputs;
        var seasons = new int[benefits.Length];
        var shares = new double[Drawn];
        for (var resample = 0; resample < Drawn; resample++)
        {
            cancel.ThrowIfCancellationRequested();

            // Row 0 of a resample holds its seasons; the lives follow.
            draws.Draw(resample + 1, 0, seasons);
            _means[resample] = [.. saved.Select(kind => Mean(kind, seasons))];
            shares[resample] = Share(inputs, benefits, seasons, draws, resample + 1);
        }

        Array.Sort(shares);
        Pays = (shares[LowAt], shares[HighAt]);
    }

    /// <summary>The middle 95 % of the share of lives that pay.</summary>
    public (double Low, double High) Pays { get; }

    /// <summary>The break-even value of an input in each resample, in rising order.</summary>
    /// <param name="input">Input.</param>
    /// <param name="isFloor">Whether it is a floor.</param>
    public double[] BreakEvens(InvestInput input, bool isFloor) =>
        [.. _means.Select(mean => Invest.BreakEvens.At(input, _inputs, mean, isFloor)).Order()];

    private static double Mean(double[] values, int[] seasons)
    {
        double sum = 0;
        foreach (var season in seasons)
        {
            sum += values[season];
        }

        return sum / seasons.Length;
    }

    private static double Share(CaseInputs inputs, double[] benefits, int[] seasons, Lives draws, int resample)
    {
        var years = new int[inputs.Life];
        var flows = new double[inputs.Life + 1];
        flows[0] = -inputs.Capital;
        var pays = 0;
        for (var life = 0; life < LivesEach; life++)
        {
            draws.Draw(resample, life + 1, years);
            for (var year = 0; year < years.Length; year++)
            {
                flows[year + 1] = benefits[seasons[years[year]]];
            }

            flows[^1] += inputs.Residual;
            pays += PresentValue.Net(inputs.Rate, flows) > 0 ? 1 : 0;
        }

        return (double)pays / LivesEach;
    }
}
