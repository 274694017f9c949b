namespace BenchSim.Season.Weather;

/// <summary>One temperature of a record: month means, spreads, their curves and what they leave.</summary>
internal sealed class TemperatureSeries
{
    private double[] _wetCurve = new double[MeanPreservingCurve.TableDays];
    private double[] _dryCurve = new double[MeanPreservingCurve.TableDays];

    /// <summary>Month means of wet days, degrees Celsius.</summary>
    public double[] Wet { get; } = new double[12];

    /// <summary>Month means of dry days, degrees Celsius.</summary>
    public double[] Dry { get; } = new double[12];

    /// <summary>Month spreads, kelvin.</summary>
    public double[] Spread { get; } = new double[12];

    /// <summary>Spread through the year, kelvin.</summary>
    public double[] SpreadCurve { get; private set; } = [];

    /// <summary>Standardized residuals, in order of the record.</summary>
    public double[] Residuals { get; set; } = [];

    /// <summary>The curve at a place of the table of the year, degrees Celsius.</summary>
    public double CurveAt(int place, bool wet) => (wet ? _wetCurve : _dryCurve)[place];

    /// <summary>Joins the month means.</summary>
    public void JoinMeans()
    {
        _wetCurve = MeanPreservingCurve.Daily(Wet);
        _dryCurve = MeanPreservingCurve.Daily(Dry);
    }

    /// <summary>Joins the month spreads, in the logarithm.</summary>
    public void JoinSpreads() => SpreadCurve = Array.ConvertAll(MeanPreservingCurve.Daily(Array.ConvertAll(Spread, Math.Log)), Math.Exp);
}
