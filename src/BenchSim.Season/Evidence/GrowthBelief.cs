using BenchSim.Engine.Randomness;

namespace BenchSim.Season.Evidence;

/// <summary>
/// The factor of growth by what was seen: the lognormal law of mean 1 with its weights by steps, drawn by inversion. Where a ready and a
/// not ready are all that was seen, it is the law cut off at both.
/// </summary>
internal sealed class GrowthBelief
{
    private readonly double _sigma;
    private readonly (double Above, double UpTo, double Weight, double Mass)[] _steps;

    public GrowthBelief(StepWeights weights, double cv)
    {
        _sigma = Lognormal.Sigma(cv);
        if (_sigma == 0)
        {
            (_steps, Mass) = ([], weights.Of(1));
            return;
        }

        _steps =
        [
            .. weights
                .Steps.Select(step => (Above: Score(step.Above), UpTo: Score(step.UpTo), step.Weight))
                .Where(step => step.UpTo > step.Above)
                .Select(step => (step.Above, step.UpTo, step.Weight, step.Weight * Between(step.Above, step.UpTo))),
        ];
        Mass = _steps.Sum(step => step.Mass);
    }

    /// <summary>Chance of what was seen, but for a factor that is the same for all.</summary>
    public double Mass { get; }

    /// <summary>The factor that it is below with a chance.</summary>
    /// <param name="u">Chance strictly between 0 and 1.</param>
    public double Quantile(double u)
    {
        if (_sigma == 0)
        {
            return 1;
        }

        var left = u * Mass;
        var last = Array.FindLastIndex(_steps, step => step.Mass > 0);
        for (var index = 0; index < last; index++)
        {
            if (left <= _steps[index].Mass)
            {
                last = index;
            }
            else
            {
                left -= _steps[index].Mass;
            }
        }

        var (above, upTo, weight, _) = _steps[last];
        var part = Math.Max(0, left / weight);
        var score = above > 0 ? -Probit(Normal.Cumulative(-above) - part) : Probit(Normal.Cumulative(above) + part);
        return Math.Exp((_sigma * Math.Clamp(score, above, upTo)) - (0.5 * _sigma * _sigma));
    }

    private double Score(double factor) => factor <= 0 ? double.NegativeInfinity : (Math.Log(factor) + (0.5 * _sigma * _sigma)) / _sigma;

    // From the nearer tail, so that none of its digits are lost.
    private static double Between(double low, double high) =>
        low > 0 ? Normal.Cumulative(-low) - Normal.Cumulative(-high) : Normal.Cumulative(high) - Normal.Cumulative(low);

    private static double Probit(double chance) => Normal.Quantile(Math.Clamp(chance, 1e-300, Math.BitDecrement(1)));
}
