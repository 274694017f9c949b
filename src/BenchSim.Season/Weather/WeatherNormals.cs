using System.Collections.Immutable;

namespace BenchSim.Season.Weather;

/// <summary>
/// Monthly climate normals, where there is no daily record, and what is assumed of the things normals do not tell. The defaults below are
/// averages over the 24 city-months of the published daily record of two cities (tests/Published/data/weather_reference.json) unless they
/// say otherwise.
/// </summary>
public sealed record WeatherNormals
{
    /// <summary>Default standard deviation of the lowest temperature of a day within a month, kelvin.</summary>
    public const double DefaultTminSdC = 3.15;

    /// <summary>Default standard deviation of the highest temperature of a day within a month, kelvin.</summary>
    public const double DefaultTmaxSdC = 3.9;

    /// <summary>Default of <see cref="WetLessDryTminC"/>, kelvin.</summary>
    public const double DefaultWetLessDryTminC = 1.43;

    /// <summary>Default of <see cref="WetLessDryTmaxC"/>, kelvin.</summary>
    public const double DefaultWetLessDryTmaxC = -1.02;

    /// <summary>Default of <see cref="RainShape"/>.</summary>
    public const double DefaultRainShape = 0.74;

    /// <summary>
    /// Default of <see cref="RainPersistence"/>: chance of rain after a dry day = 0.75 times the share of wet days (Geng, Penning de
    /// Vries and Supit 1986, Agricultural and Forest Meteorology 36, 363-376, as quoted in several later works; the paper itself was not
    /// read). That is the same as a persistence of 0.25. The two cities of the published record average 0.24.
    /// </summary>
    public const double DefaultRainPersistence = 0.25;

    private static readonly int[] s_monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    /// <summary>January to December, twelve months.</summary>
    public required ImmutableArray<MonthNormals> Months { get; init; }

    /// <summary>Where the normals come from, in words.</summary>
    public required string Source { get; init; }

    /// <summary>Chance of rain after a wet day less chance of rain after a dry day, 0 to below 1.</summary>
    public double RainPersistence { get; init; } = DefaultRainPersistence;

    /// <summary>Shape of the gamma distribution of rain on a wet day, 0.05 to 100.</summary>
    public double RainShape { get; init; } = DefaultRainShape;

    /// <summary>Mean lowest temperature of wet days less that of dry days, kelvin.</summary>
    public double WetLessDryTminC { get; init; } = DefaultWetLessDryTminC;

    /// <summary>Mean highest temperature of wet days less that of dry days, kelvin.</summary>
    public double WetLessDryTmaxC { get; init; } = DefaultWetLessDryTmaxC;

    /// <summary>How the temperatures carry over from day to day.</summary>
    public ResidualModel Residuals { get; init; } = ResidualModel.UnitedStatesAverage;

    /// <summary>Everything in the normals that cannot be, a sentence each; empty when there is nothing.</summary>
    public ImmutableArray<string> Problems()
    {
        var problems = ImmutableArray.CreateBuilder<string>();
        if (Months.IsDefault || Months.Length != 12)
        {
            problems.Add("there must be twelve months");
            return problems.ToImmutable();
        }

        for (var month = 0; month < 12; month++)
        {
            AddProblems(month, problems);
        }

        if (!(RainPersistence is >= 0 and < 1))
        {
            problems.Add("the persistence of rain must be 0 or more and below 1");
        }

        if (!(RainShape is >= 0.05 and <= 100))
        {
            problems.Add("the shape of the rain must lie between 0.05 and 100");
        }

        if (!double.IsFinite(WetLessDryTminC) || !double.IsFinite(WetLessDryTmaxC))
        {
            problems.Add("the difference of wet and dry days must be a number");
        }

        if (!Residuals.IsStable)
        {
            problems.Add("the residuals must not grow from day to day");
        }

        return problems.ToImmutable();
    }

    /// <summary>
    /// The weather model of these normals. The spread given for a month is the spread of its days about the month's mean; the part of it
    /// that the seasonal curve and the difference of wet and dry days make is taken off, at most down to half.
    /// </summary>
    /// <exception cref="InvalidOperationException">There are problems; the message lists them all.</exception>
    public WeatherModel ToModel()
    {
        var problems = Problems();
        if (!problems.IsEmpty)
        {
            throw new InvalidOperationException("The monthly normals cannot be used: " + string.Join("; ", problems) + ".");
        }

        var drift = new[] { WithinMonth(month => month.TminC), WithinMonth(month => month.TmaxC) };
        var months = ImmutableArray.CreateBuilder<MonthWeather>(12);
        for (var month = 0; month < 12; month++)
        {
            months.Add(ToMonth(month, drift[0][month], drift[1][month]));
        }

        return new WeatherModel
        {
            Months = months.MoveToImmutable(),
            Residuals = Residuals,
            LeastRangeC = 0.5,
            Source = Source,
            Assumptions = Assume(),
        };
    }

    private void AddProblems(int month, ImmutableArray<string>.Builder problems)
    {
        var normals = Months[month];
        var name = MonthNames.Of(month);
        if (!(normals.TminC is > -60 and < 60) || !(normals.TmaxC is > -60 and < 60))
        {
            problems.Add($"{name}: mean temperatures must lie between -60 and 60 C");
        }
        else if (normals.TmaxC < normals.TminC)
        {
            problems.Add($"{name}: the mean highest temperature is below the mean lowest");
        }

        if (!(normals.RainDays >= 0 && normals.RainDays <= s_monthDays[month]))
        {
            problems.Add($"{name}: rain days must lie between 0 and {s_monthDays[month]}");
        }

        if (!(normals.RainMm is >= 0 and < 10_000))
        {
            problems.Add($"{name}: rain must be 0 mm or more");
        }
        else if (normals.RainMm > 0 != normals.RainDays > 0)
        {
            problems.Add($"{name}: rain and rain days must both be 0 or both be above 0");
        }

        if (normals.TminSdC is { } low && !(low is > 0 and < 30))
        {
            problems.Add($"{name}: the spread of the lowest temperature must lie between 0 and 30 kelvin");
        }

        if (normals.TmaxSdC is { } high && !(high is > 0 and < 30))
        {
            problems.Add($"{name}: the spread of the highest temperature must lie between 0 and 30 kelvin");
        }
    }

    private MonthWeather ToMonth(int month, double tminDrift, double tmaxDrift)
    {
        var normals = Months[month];
        var wet = normals.RainDays / s_monthDays[month];
        var afterDry = wet * (1 - RainPersistence);
        var meanMm = normals.RainDays > 0 ? normals.RainMm / normals.RainDays : 1;
        var mixed = wet * (1 - wet);
        return new MonthWeather
        {
            WetAfterDry = afterDry,
            WetAfterWet = afterDry + RainPersistence,
            RainShape = RainShape,
            RainScaleMm = meanMm / RainShape,
            TminWetC = normals.TminC + ((1 - wet) * WetLessDryTminC),
            TminDryC = normals.TminC - (wet * WetLessDryTminC),
            TmaxWetC = normals.TmaxC + ((1 - wet) * WetLessDryTmaxC),
            TmaxDryC = normals.TmaxC - (wet * WetLessDryTmaxC),
            TminSdC = Left(normals.TminSdC ?? DefaultTminSdC, (mixed * WetLessDryTminC * WetLessDryTminC) + tminDrift),
            TmaxSdC = Left(normals.TmaxSdC ?? DefaultTmaxSdC, (mixed * WetLessDryTmaxC * WetLessDryTmaxC) + tmaxDrift),
        };
    }

    private static double Left(double spread, double explained) => Math.Sqrt(Math.Max(spread * spread / 4, (spread * spread) - explained));

    // Variance of the seasonal curve about each month's mean.
    private double[] WithinMonth(Func<MonthNormals, double> value)
    {
        var curve = MeanPreservingCurve.Daily([.. Months.Select(value)]);
        var variance = new double[12];
        for (var day = new DateOnly(2001, 1, 1); day.Year == 2001; day = day.AddDays(1))
        {
            var away = curve[MeanPreservingCurve.PlaceOf(day)] - value(Months[day.Month - 1]);
            variance[day.Month - 1] += away * away / s_monthDays[day.Month - 1];
        }

        return variance;
    }

    private static string InBoth(double kelvin) => $"{kelvin} C ({kelvin * 1.8:0.0} F)";

    private ImmutableArray<string> Assume()
    {
        var said = ImmutableArray.CreateBuilder<string>();
        if (Months.Any(month => month.TminSdC is null || month.TmaxSdC is null))
        {
            said.Add(
                $"Where the spread of daily temperatures is not given: {InBoth(DefaultTminSdC)} for the lowest "
                    + $"and {InBoth(DefaultTmaxSdC)} for the highest, the average of two cities' record."
            );
        }

        if (RainPersistence == DefaultRainPersistence)
        {
            said.Add("Rain follows rain as in Geng and others 1986: the chance after a dry day is 0.75 times the share of wet days.");
        }

        if (RainShape == DefaultRainShape)
        {
            said.Add($"Rain amounts have a gamma shape of {DefaultRainShape}, the average of two cities' record.");
        }

        if (WetLessDryTminC == DefaultWetLessDryTminC && WetLessDryTmaxC == DefaultWetLessDryTmaxC)
        {
            said.Add(
                $"Wet days are {InBoth(DefaultWetLessDryTminC)} milder by night and {InBoth(-DefaultWetLessDryTmaxC)} cooler by day, "
                    + "the average of two cities' record."
            );
        }

        if (Residuals == ResidualModel.UnitedStatesAverage)
        {
            said.Add("Temperatures carry over from day to day as in the average of United States stations (Richardson and Wright 1984).");
        }

        return said.ToImmutable();
    }
}
