namespace BenchSim.Study.Statistics;

/// <summary>Student factors of 95 % intervals, worked out once a sample size: a study asks for the same one thousands of times.</summary>
internal sealed class StudentFactors
{
    private readonly Dictionary<int, double> _factors = [];

    /// <summary>t(0.975, n - 1).</summary>
    /// <param name="sample">2 or more.</param>
    public double For(int sample)
    {
        if (!_factors.TryGetValue(sample, out var factor))
        {
            factor = StudentT.Quantile(0.975, sample - 1);
            _factors.Add(sample, factor);
        }

        return factor;
    }
}
