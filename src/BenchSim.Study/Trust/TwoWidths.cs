namespace BenchSim.Study.Trust;

/// <summary>
/// What values and luck each add to how seasons differ. All sets are played on the same seasons, so this is a table of sets by seasons with
/// one number a cell, and the sets are a random effect: the variance between sets is that of their means less what the luck of a set by
/// itself leaves in a mean (Searle, Casella and McCulloch 1992, Variance Components, two-way crossed classification).
/// </summary>
/// <param name="Values">Variance of the mean of a set: what the values do. 0 or more.</param>
/// <param name="Luck">The rest of the variance of a season: what the luck does. 0 or more.</param>
public readonly record struct TwoWidths(double Values, double Luck)
{
    /// <summary>The share of the variance of a season that the values make, 0 to 1; 0 where no season differs.</summary>
    public double ShareOfValues => Values + Luck > 0 ? Values / (Values + Luck) : 0;

    /// <summary>The widths of a measure.</summary>
    /// <param name="outcomes">Two sets or more, of two seasons or more.</param>
    /// <param name="measure">Number of the measure.</param>
    public static TwoWidths Of(SetOutcomes outcomes, int measure)
    {
        ArgumentNullException.ThrowIfNull(outcomes);
        var (sets, seasons) = (outcomes.Sets, outcomes.Seasons);
        var (ofSets, ofSeasons, total) = (outcomes.Means(measure), new double[seasons], 0.0);
        for (var season = 0; season < seasons; season++)
        {
            for (var set = 0; set < sets; set++)
            {
                ofSeasons[season] += outcomes[measure, set, season] / sets;
            }
        }

        var mean = ofSets.Average();
        for (var set = 0; set < sets; set++)
        {
            for (var season = 0; season < seasons; season++)
            {
                var rest = outcomes[measure, set, season] - ofSets[set] - ofSeasons[season] + mean;
                total += rest * rest;
            }
        }

        var ofRest = total / ((sets - 1) * (seasons - 1));
        var (betweenSets, betweenSeasons) = (Variance(ofSets, mean), Variance(ofSeasons, mean));
        var values = Math.Max(0, betweenSets - (ofRest / seasons));
        return new TwoWidths(values, Math.Max(0, betweenSeasons - (ofRest / sets)) + ofRest);
    }

    private static double Variance(double[] numbers, double mean) =>
        numbers.Sum(number => (number - mean) * (number - mean)) / (numbers.Length - 1);
}
