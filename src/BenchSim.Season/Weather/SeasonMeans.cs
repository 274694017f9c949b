namespace BenchSim.Season.Weather;

/// <summary>
/// How much the means of three months differ between the years of a record: about each month from February to November the month, the one
/// before and the one after. What they differ more than days that carry over would make them is what a year has in common.
/// </summary>
internal sealed class SeasonMeans
{
    private const int FirstMiddle = 1;
    private const int LastMiddle = 10;
    private const int LeastYears = 3;
    private const int DaysOfSeason = 91;
    private const int LeastDaysOfSeason = 80;

    // A season's own excess counts by its years, that of all seasons by so many.
    private const double YearsOfAllSeasons = 50;

    // More than this no year has in common.
    private const double MostShare = 0.8;

    // Seasons of a year that do not overlap.
    private const double SeasonsAYear = 4;

    private readonly Variance[] _seasons = new Variance[12];
    private readonly int _counted;
    private readonly double _years;

    /// <summary>Takes the means of a record.</summary>
    /// <param name="days">The record.</param>
    /// <param name="max">Scores of the highest temperature.</param>
    /// <param name="maxWet">Its departures by rain, which the generator draws apart: what they alone differ is taken off.</param>
    /// <param name="min">Scores of the lowest temperature.</param>
    /// <param name="minWet">Its departures by rain.</param>
    public SeasonMeans(RecordDays days, double[] max, double[] maxWet, double[] min, double[] minWet)
    {
        var first = days.Year[0];
        var months = new Means[(days.Year[^1] - first + 1) * 12];
        for (var day = 0; day < days.Count; day++)
        {
            ref var month = ref months[((days.Year[day] - first) * 12) + days.Month[day]];
            month = month.And(new Means(1, max[day], maxWet[day], min[day], minWet[day]));
        }

        for (var middle = FirstMiddle; middle <= LastMiddle; middle++)
        {
            _seasons[middle] = Variance.Of(Seasons(months, middle));
            if (_seasons[middle].Years >= LeastYears)
            {
                _counted++;
                _years += _seasons[middle].Years;
            }
        }

        _years /= Math.Max(1, _counted);
    }

    /// <summary>What the days of a year have in common, beside a carry-over.</summary>
    /// <param name="carryOver">Carry-over of the rest.</param>
    public YearParts YearParts(ResidualModel carryOver)
    {
        if (_counted == 0)
        {
            return Weather.YearParts.None;
        }

        var mean = default(Variance);
        foreach (var season in _seasons)
        {
            mean = season.Years >= LeastYears ? mean.And(season, 1.0 / _counted) : mean;
        }

        var (ofMax, ofBoth, ofMin) = VarianceOfMean(carryOver, DaysOfSeason);
        var (max, trustMax) = Pooled(mean.Max, ofMax);
        var (min, trustMin) = Pooled(mean.Min, ofMin);
        var (ofYearMax, ofYearMin) = (new double[12], new double[12]);
        for (var month = 0; month < 12; month++)
        {
            var season = Nearest(month);
            ofYearMax[month] = Share(season.Max, ofMax, season.Years, max, trustMax);
            ofYearMin[month] = Share(season.Min, ofMin, season.Years, min, trustMin);
        }

        var correlation = 0.0;
        if (max > 0 && min > 0)
        {
            var both = mean.Both - (Math.Sqrt((1 - max) * (1 - min)) * ofBoth);
            correlation = Math.Clamp(both / Math.Sqrt(max * min), -1, 1);
        }

        return new YearParts(ofYearMax, ofYearMin, correlation);
    }

    // V = S + (1 - S) R: the year's share S of a variance of 1, and the mean R of the rest. The variance V of n means of a normal law has
    // the standard error V sqrt(2 / (n - 1)).
    private (double Share, double Trust) Pooled(double variance, double rest)
    {
        var share = Math.Min((variance - rest) / (1 - rest), MostShare);
        var error = variance * Math.Sqrt(2 / (SeasonsAYear * (_years - 1))) / (1 - rest);
        return share <= 0 ? (0, 0) : (share, share * share / ((share * share) + (error * error)));
    }

    private static double Share(double variance, double rest, int years, double all, double trust)
    {
        var own = (variance - rest) / (1 - rest);
        return Math.Clamp(trust * ((years * own) + (YearsOfAllSeasons * all)) / (years + YearsOfAllSeasons), 0, MostShare);
    }

    private Variance Nearest(int month)
    {
        var nearest = -12;
        for (var middle = FirstMiddle; middle <= LastMiddle; middle++)
        {
            if (_seasons[middle].Years >= LeastYears && Math.Abs(middle - month) < Math.Abs(nearest - month))
            {
                nearest = middle;
            }
        }

        return _seasons[nearest];
    }

    private static Means[] Seasons(Means[] months, int middle)
    {
        var seasons = new Means[months.Length / 12];
        var count = 0;
        for (var at = middle; at < months.Length; at += 12)
        {
            var season = months[at - 1].And(months[at]).And(months[at + 1]);
            if (season.Days >= LeastDaysOfSeason)
            {
                seasons[count++] = season.Mean();
            }
        }

        Array.Resize(ref seasons, count);
        return seasons;
    }

    // Variance of the mean of L days of a first-order autoregression: (1 / L^2) (L M + sum over k of (L - k) (A^k M + (A^k M)')).
    private static (double Max, double Both, double Min) VarianceOfMean(ResidualModel model, int days)
    {
        var (m11, m12, m22) = model.LongRun();
        var (c11, c12, c21, c22) = (m11, m12, m12, m22);
        var (max, both, min) = (days * m11, days * m12, days * m22);
        for (var lag = 1; lag < days; lag++)
        {
            (c11, c12, c21, c22) = (
                (model.A11 * c11) + (model.A12 * c21),
                (model.A11 * c12) + (model.A12 * c22),
                (model.A21 * c11) + (model.A22 * c21),
                (model.A21 * c12) + (model.A22 * c22)
            );
            max += 2 * (days - lag) * c11;
            both += (days - lag) * (c12 + c21);
            min += 2 * (days - lag) * c22;
        }

        double squared = days * days;
        return (max / squared, both / squared, min / squared);
    }

    // Sums, or means of one season, of scores and of departures by rain.
    private readonly record struct Means(int Days, double Max, double MaxWet, double Min, double MinWet)
    {
        public Means And(in Means other) =>
            new(Days + other.Days, Max + other.Max, MaxWet + other.MaxWet, Min + other.Min, MinWet + other.MinWet);

        public Means Mean() => new(Days, Max / Days, MaxWet / Days, Min / Days, MinWet / Days);
    }

    // Variances between years of a season's mean temperature in scores, rain and all, less those of rain alone.
    private readonly record struct Variance(int Years, double Max, double Both, double Min)
    {
        public static Variance Of(Means[] seasons)
        {
            if (seasons.Length < 2)
            {
                return new Variance(seasons.Length, 0, 0, 0);
            }

            var sum = default(Means);
            foreach (var season in seasons)
            {
                sum = sum.And(season with { Days = 1 });
            }

            var mean = sum.Mean();
            var (max, both, min) = (0.0, 0.0, 0.0);
            foreach (var season in seasons)
            {
                var (maxWet, minWet) = (season.MaxWet - mean.MaxWet, season.MinWet - mean.MinWet);
                var (ofMax, ofMin) = (season.Max - mean.Max + maxWet, season.Min - mean.Min + minWet);
                max += (ofMax * ofMax) - (maxWet * maxWet);
                both += (ofMax * ofMin) - (maxWet * minWet);
                min += (ofMin * ofMin) - (minWet * minWet);
            }

            double freedom = seasons.Length - 1;
            return new Variance(seasons.Length, max / freedom, both / freedom, min / freedom);
        }

        public Variance And(in Variance other, double weight) =>
            new(Years, Max + (weight * other.Max), Both + (weight * other.Both), Min + (weight * other.Min));
    }
}
