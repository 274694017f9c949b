namespace BenchSim.Season.Weather;

/// <summary>
/// Fits what curves and spreads leave of the temperatures: the law of the residuals by month, how their normal scores carry over from day
/// to day, and what a whole year has in common (docs/weather.md says how).
/// </summary>
internal sealed class ResidualFit
{
    // A month with so many days, some twenty years of it, has a law of its own; one with fewer takes its neighbours' days too.
    private const int DaysOfOwnLaw = 600;

    // Each round takes what a year has in common out of the carry-over, and finds what is in common anew; a round mends the last by a
    // tenth.
    private const int Rounds = 8;

    private readonly RecordDays _days;

    private ResidualFit(RecordDays days, TemperatureSeries tmin, TemperatureSeries tmax)
    {
        _days = days;
        TminShapes = ShapesOf(tmin);
        TmaxShapes = ShapesOf(tmax);
        (CarryOver, Years) = Fit(tmin, tmax);
    }

    /// <summary>Law of the lowest temperature's residuals, by month.</summary>
    public ResidualShape[] TminShapes { get; }

    /// <summary>Law of the highest temperature's residuals, by month.</summary>
    public ResidualShape[] TmaxShapes { get; }

    /// <summary>How scores carry over, without what a year has in common.</summary>
    public ResidualModel CarryOver { get; }

    /// <summary>What the days of a year have in common.</summary>
    public YearParts Years { get; }

    /// <summary>Fits.</summary>
    /// <param name="days">The record.</param>
    /// <param name="tmin">Curves, spreads and residuals of the lowest temperature.</param>
    /// <param name="tmax">Those of the highest.</param>
    public static ResidualFit Of(RecordDays days, TemperatureSeries tmin, TemperatureSeries tmax) => new(days, tmin, tmax);

    private ResidualShape[] ShapesOf(TemperatureSeries series)
    {
        var shapes = new ResidualShape[12];
        for (var month = 0; month < 12; month++)
        {
            var own = _days.WetDays[month] + _days.DryDays[month];
            shapes[month] = ResidualShape.OfSample(Sample(series, month, own >= DaysOfOwnLaw ? 0 : 1));
        }

        return shapes;
    }

    // Residuals of a month and of so many on either side.
    private double[] Sample(TemperatureSeries series, int month, int reach)
    {
        var sample = new double[_days.Count];
        var count = 0;
        for (var day = 0; day < _days.Count; day++)
        {
            if ((_days.Month[day] - month + reach + 12) % 12 <= 2 * reach)
            {
                sample[count++] = series.Residuals[day];
            }
        }

        Array.Resize(ref sample, count);
        return sample;
    }

    // A wet day after a dry one keeps some of the dry day's temperature, so a record carries over more than its residuals and its wet and
    // dry means tell apart: the products of one day's residual with the next day's wet-or-dry departure. The generator draws residuals
    // without regard to rain, so these products are added to the carry-over of the residuals, and the temperatures as a whole carry over
    // as in the record.
    private (ResidualModel CarryOver, YearParts Years) Fit(TemperatureSeries tmin, TemperatureSeries tmax)
    {
        var (max, min) = (Scores(tmax, TmaxShapes), Scores(tmin, TminShapes));
        if (max is null || min is null)
        {
            return (ResidualModel.UnitedStatesAverage, YearParts.None);
        }

        var (dMax, dMin) = (Departures(tmax), Departures(tmin));
        var plain = new double[4];
        var joint = new double[4];
        var (pairs, cross) = (0, 0.0);
        for (var i = 0; i < _days.Count; i++)
        {
            cross += max[i] * min[i];
            if (!_days.FollowsOn(i))
            {
                continue;
            }

            pairs++;
            Add(0, max, dMax, max, dMax, i);
            Add(1, max, dMax, min, dMin, i);
            Add(2, min, dMin, max, dMax, i);
            Add(3, min, dMin, min, dMin, i);
        }

        if (pairs == 0)
        {
            return (ResidualModel.UnitedStatesAverage, YearParts.None);
        }

        cross = Math.Clamp(cross / _days.Count, -0.99, 0.99);
        var seasons = new SeasonMeans(_days, max, dMax, min, dMin);
        return Split(cross, Array.ConvertAll(joint, sum => sum / pairs), seasons)
            ?? Split(cross, Array.ConvertAll(plain, sum => sum / pairs), seasons)
            ?? (ResidualModel.UnitedStatesAverage, YearParts.None);

        void Add(int k, double[] today, double[] todayWet, double[] yesterday, double[] yesterdayWet, int i)
        {
            plain[k] += today[i] * yesterday[i - 1];
            joint[k] += (today[i] * yesterday[i - 1]) + (today[i] * yesterdayWet[i - 1]) + (todayWet[i] * yesterday[i - 1]);
        }
    }

    // Correlations of the scores told apart into what a year has in common and what carries over from day to day; null where no
    // autoregression has such correlations.
    private static (ResidualModel CarryOver, YearParts Years)? Split(double cross, double[] lag, SeasonMeans seasons)
    {
        var alone = YearParts.None.TakeFrom(cross, lag);
        if (!Reproduces(alone))
        {
            return null;
        }

        var (model, years) = (alone, YearParts.None);
        for (var round = 0; round < Rounds; round++)
        {
            years = seasons.YearParts(model);
            model = years.TakeFrom(cross, lag);
            if (!Reproduces(model))
            {
                return (alone, YearParts.None);
            }
        }

        return (model, years);
    }

    // Correlations no autoregression can have give a model whose long-run variances are not 1.
    private static bool Reproduces(ResidualModel model)
    {
        if (!model.IsStable)
        {
            return false;
        }

        var (varianceMax, _, varianceMin) = model.LongRun();
        return Math.Abs(varianceMax - 1) < 1e-3 && Math.Abs(varianceMin - 1) < 1e-3;
    }

    // Normal scores of the residuals, of variance 1 as a whole; null where they do not differ.
    private double[]? Scores(TemperatureSeries series, ResidualShape[] shapes)
    {
        var scores = new double[_days.Count];
        var (squares, residuals) = (0.0, 0.0);
        for (var day = 0; day < scores.Length; day++)
        {
            scores[day] = shapes[_days.Month[day]].ScoreOf(series.Residuals[day]);
            squares += scores[day] * scores[day];
            residuals += series.Residuals[day] * series.Residuals[day];
        }

        if (residuals / _days.Count < 1e-9)
        {
            return null;
        }

        var spread = Math.Sqrt(squares / _days.Count);
        return Array.ConvertAll(scores, score => score / spread);
    }

    // How far the mean of a day's kind (wet or dry) lies from the mean of all days, in standard deviations.
    private double[] Departures(TemperatureSeries series)
    {
        var departures = new double[_days.Count];
        for (var day = 0; day < departures.Length; day++)
        {
            var (month, place) = (_days.Month[day], _days.Place[day]);
            var wet = (double)_days.WetDays[month] / (_days.WetDays[month] + _days.DryDays[month]);
            var middle = (wet * series.CurveAt(place, true)) + ((1 - wet) * series.CurveAt(place, false));
            departures[day] = (series.CurveAt(place, _days.IsWet[day]) - middle) / series.SpreadCurve[place];
        }

        return departures;
    }
}
