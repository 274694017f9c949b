using System.Collections.Immutable;
using Probit = BenchSim.Engine.Randomness.Normal;

namespace BenchSim.Season.Weather;

/// <summary>
/// The law of a standardized residual, mean 0 and variance 1, as the residual at each normal score: 11 quantiles, at the scores -2.5 to 2.5
/// by halves, joined by straight lines. Beyond them it goes on straight at the slope between 1.5 and 2.5, so that no tail ends at the
/// coldest night on record, and none runs away. Safe for use by several threads.
/// </summary>
public sealed class ResidualShape : IEquatable<ResidualShape>
{
    /// <summary>Quantiles kept.</summary>
    public const int Nodes = 11;

    private const double FirstScore = -2.5;
    private const double NodesAUnit = 2;
    private const int Pieces = Nodes + 1;

    // A sample counts against so many days of the normal law.
    private const double NormalDays = 100;

    // Residual = intercept + slope x score on each piece: below the first quantile, between two, and above the last.
    private readonly double[] _intercept = new double[Pieces];
    private readonly double[] _slope = new double[Pieces];

    private ResidualShape(double[] quantiles)
    {
        for (var piece = 1; piece < Nodes; piece++)
        {
            SetPiece(piece, piece - 1, piece);
        }

        SetPiece(0, 0, 2);
        _intercept[0] = quantiles[0] - (_slope[0] * FirstScore);
        SetPiece(Nodes, Nodes - 3, Nodes - 1);
        _intercept[Nodes] = quantiles[^1] + (_slope[Nodes] * FirstScore);

        void SetPiece(int piece, int from, int to)
        {
            _slope[piece] = (quantiles[to] - quantiles[from]) / (ScoreAt(to) - ScoreAt(from));
            _intercept[piece] = quantiles[from] - (_slope[piece] * ScoreAt(from));
        }
    }

    /// <summary>The normal law: the residual is its score.</summary>
    public static ResidualShape Normal { get; } = new([.. Enumerable.Range(0, Nodes).Select(ScoreAt)]);

    /// <summary>
    /// The law of a sample: its quantiles after Blom 1958 (the i-th smallest of n stands at the chance (i - 3/8) / (n + 1/4)), drawn
    /// towards the normal law as if a hundred days of that had been among them, and brought to mean 0 and variance 1.
    /// </summary>
    /// <param name="residuals">Residuals; they are put in order.</param>
    public static ResidualShape OfSample(double[] residuals)
    {
        ArgumentNullException.ThrowIfNull(residuals);
        var count = residuals.Length;
        if (count < 2)
        {
            return Normal;
        }

        Array.Sort(residuals);
        var weight = count / (count + NormalDays);
        var quantiles = new double[Nodes];
        for (var node = 0; node < Nodes; node++)
        {
            var place = (Probit.Cumulative(ScoreAt(node)) * (count + 0.25)) + 0.375 - 1;
            quantiles[node] = (weight * Between(residuals, place)) + ((1 - weight) * ScoreAt(node));
        }

        var shape = new ResidualShape(quantiles);
        shape.Standardize();
        return shape;
    }

    /// <summary>The residual at a normal score.</summary>
    /// <param name="score">Score, any finite number.</param>
    public double At(double score)
    {
        var piece = (int)Math.Clamp((NodesAUnit * (score - FirstScore)) + 1, 0, Pieces - 1);
        return _intercept[piece] + (_slope[piece] * score);
    }

    /// <summary>The residuals at the scores -2.5 to 2.5 by halves.</summary>
    public ImmutableArray<double> Quantiles() => [.. Enumerable.Range(0, Nodes).Select(node => At(ScoreAt(node)))];

    /// <summary>The normal score of a residual: the inverse of <see cref="At"/>.</summary>
    /// <param name="residual">Residual, any finite number.</param>
    public double ScoreOf(double residual)
    {
        var piece = 0;
        while (piece < Nodes && residual >= _intercept[piece] + (_slope[piece] * ScoreAt(piece)))
        {
            piece++;
        }

        return (residual - _intercept[piece]) / _slope[piece];
    }

    /// <summary>Whether two laws are the same number for number.</summary>
    /// <param name="other">The other law.</param>
    public bool Equals(ResidualShape? other) =>
        other is not null
        && (
            ReferenceEquals(this, other)
            || (_intercept.AsSpan().SequenceEqual(other._intercept) && _slope.AsSpan().SequenceEqual(other._slope))
        );

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as ResidualShape);

    /// <summary>Equal for equal laws.</summary>
    public override int GetHashCode() => HashCode.Combine(_intercept[1], _slope[1]);

    private static double ScoreAt(int node) => FirstScore + (node / NodesAUnit);

    // Between the values of a sorted sample on a straight line; a place beyond them, in a sample below a hundred days, has the outermost.
    private static double Between(double[] sorted, double place)
    {
        place = Math.Clamp(place, 0, sorted.Length - 1);
        var below = Math.Min((int)place, sorted.Length - 2);
        return sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below]));
    }

    // Mean and variance under the standard normal law, piece by piece: on scores from l to u with chance P between them, E z = phi(l) -
    // phi(u) and E z^2 = P + l phi(l) - u phi(u).
    private void Standardize()
    {
        var (mean, square) = (0.0, 0.0);
        for (var piece = 0; piece < Pieces; piece++)
        {
            var (low, high) = (piece == 0 ? -40 : ScoreAt(piece - 1), piece == Pieces - 1 ? 40 : ScoreAt(piece));
            var chance = Probit.Cumulative(high) - Probit.Cumulative(low);
            var first = Bell(low) - Bell(high);
            var second = chance + (low * Bell(low)) - (high * Bell(high));
            var (a, b) = (_intercept[piece], _slope[piece]);
            mean += (a * chance) + (b * first);
            square += (a * a * chance) + (2 * a * b * first) + (b * b * second);
        }

        var spread = Math.Sqrt(square - (mean * mean));
        for (var piece = 0; piece < Pieces; piece++)
        {
            _intercept[piece] = (_intercept[piece] - mean) / spread;
            _slope[piece] /= spread;
        }
    }

    private static double Bell(double score) => Math.Exp(-0.5 * score * score) / Math.Sqrt(2 * Math.PI);
}
