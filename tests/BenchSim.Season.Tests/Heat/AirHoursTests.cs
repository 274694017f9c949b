using BenchSim.Season.Climate;
using BenchSim.Season.Heat;

namespace BenchSim.Season.Tests.Heat;

/// <summary>
/// Many hours or days at a step are each hour by itself, as docs/model.md section 6 has it; odd numbers of days leave a rest whatever the
/// step.
/// </summary>
public class AirHoursTests
{
    private const int Days = 173;
    private const double Latitude = 42;

    private static readonly DateOnly s_opens = new(2027, 2, 1);

    // Rises by 0.03 K, 0.15 K at night and 0.005 K vented, for a watt a square metre.
    private static readonly HouseSun s_sun = new(0.03, 0.15, 0.005);

    private static readonly HouseAir?[] s_airs =
    [
        null,
        new HouseAir(12, 16, 24, 8),
        new HouseAir(15.5, null, 24.4, 8),
        new HouseAir(null, null, 22, 6.5),
        new HouseAir(15, 5, 18, 0),
        new HouseAir(null, 9, 30, 3),
        new HouseAir(12, 16, 24, 0, s_sun),
        new HouseAir(null, null, 22, 0, s_sun),
    ];

    private readonly SeasonWeather _weather = new(Days + 1);
    private readonly Outdoors _outdoors = new(new SunDays(Latitude, Sun.Inland, s_opens, Days + 1));

    public AirHoursTests()
    {
        var random = new Random(3);
        for (var at = 0; at < _weather.Tmin.Length; at++)
        {
            _weather.Tmin[at] = -20 + (40 * random.NextDouble());
            _weather.Tmax[at] = _weather.Tmin[at] + (18 * random.NextDouble());
        }

        _outdoors.Take(_weather);
    }

    [Fact]
    public void Hours_of_days()
    {
        var airC = new double[24];
        foreach (var air in s_airs)
        {
            for (var day = 0; day < Days; day++)
            {
                new AirHours(air).FillDay(_outdoors, day, airC);
                Assert.All(airC.Index(), hour => Assert.Equal(HourC(air, hour.Index, day), hour.Item, 1e-9));
            }
        }
    }

    [Fact]
    public void Nights_of_days()
    {
        var nightsC = new double[Days];
        foreach (var air in s_airs)
        {
            new AirHours(air).FillNights(_outdoors, nightsC);
            Assert.All(nightsC.Index(), night => Assert.Equal(NightC(air, night.Index), night.Item, 1e-9));
        }
    }

    [Fact]
    public void Heating_of_days()
    {
        var kelvinHours = new double[Days];
        foreach (var air in s_airs)
        {
            kelvinHours.AsSpan().Fill(-1);
            new AirHours(air).FillHeating(_outdoors, kelvinHours);
            Assert.All(kelvinHours.Index(), day => Assert.Equal(HeatingOf(air, day.Index), day.Item, 1e-9));
        }
    }

    // A house that was another until a day is that other before it, hour for hour, and itself from then on.
    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(Days)]
    public void A_house_that_was_another(int until)
    {
        foreach (var (was, now) in s_airs[1..^1].Zip(s_airs[2..], (was, now) => (was!.Value, now!.Value)))
        {
            var hours = new AirHours(now with { Was = new AirWas(was, until) });
            var (airC, nightsC, kelvinHours) = (new double[24], new double[Days], new double[Days]);
            hours.FillNights(_outdoors, nightsC);
            hours.FillHeating(_outdoors, kelvinHours);
            for (var day = 0; day < Days; day++)
            {
                HouseAir? air = day < until ? was : now;
                hours.FillDay(_outdoors, day, airC);
                Assert.All(airC.Index(), hour => Assert.Equal(HourC(air, hour.Index, day), hour.Item, 1e-9));
                Assert.Equal(NightC(air, day), nightsC[day], 1e-9);
                Assert.Equal(HeatingOf(air, day), kelvinHours[day], 1e-9);
            }
        }
    }

    [Fact]
    public void A_span_of_another_length_is_refused() =>
        Assert.Throws<ArgumentException>(() => new AirHours(s_airs[1]).FillDay(_outdoors, 0, new double[23]));

    private double OutdoorC(int hour, int day)
    {
        var (low, high) = (_weather.TminOf(day), _weather.TmaxOf(day));
        return ((high + low) / 2) + ((high - low) / 2 * Math.Cos(2 * Math.PI * (hour - 15) / 24));
    }

    private double SunOf(int day)
    {
        var range = _weather.TmaxOf(day) - _weather.TminOf(day);
        var above = Sun.AboveTheAir(Latitude, s_opens.AddDays(day).DayOfYear);
        return Math.Min(0.16 * Math.Sqrt(range), 0.75) * above;
    }

    private static double Height(int hour, int day) =>
        Sun.SineOfHeight(Latitude, s_opens.AddDays(day).DayOfYear, hour) is > 1e-6 and var height ? height : 0;

    // Watts a square metre: a day's megajoules by the sine of the sun's height.
    private double WattsOf(int hour, int day) =>
        SunOf(day) * 1e6 / 3600 * Height(hour, day) / Enumerable.Range(0, 24).Sum(each => Height(each, day));

    // A third of 5 W for each kelvin-hour that the sun lifted the air, spread over the hours without sun; at most 12 W.
    private double GroundOf(HouseSun sun, int day) =>
        Math.Min(
            12,
            5.0
                / 3
                * Enumerable.Range(0, 24).Sum(hour => WattsOf(hour, day) * sun.RiseKPerWatt)
                / Enumerable.Range(0, 24).Count(hour => Height(hour, day) == 0)
        );

    private double LiftK(HouseAir air, int hour, int day)
    {
        if (air.Sun is not { } sun)
        {
            return air.DayLiftK * Math.Max(0, Math.Sin(Math.PI * (hour - 6) / 12));
        }

        var watts = WattsOf(hour, day);
        return watts > 0 ? watts * sun.RiseKPerWatt : GroundOf(sun, hour < 12 ? day - 1 : day) * sun.BackKPerWatt;
    }

    private static double? SetPoint(HouseAir air, int hour) => hour is >= 6 and < 18 ? air.DayC ?? air.NightC : air.NightC;

    private double HourC(HouseAir? air, int hour, int day)
    {
        var outdoor = OutdoorC(hour, day);
        if (air is not { } house)
        {
            return outdoor;
        }

        var vented = house.Sun is { } sun ? WattsOf(hour, day) * sun.VentedKPerWatt : 0;
        var inside = Math.Min(outdoor + LiftK(house, hour, day), Math.Max(house.VentC, outdoor + vented));
        return SetPoint(house, hour) is { } set ? Math.Max(set, inside) : inside;
    }

    private double NightC(HouseAir? air, int day) =>
        air is null ? _weather.TminOf(day + 1) : Enumerable.Range(18, 12).Min(hour => HourC(air, hour % 24, hour < 24 ? day : day + 1));

    private double HeatingOf(HouseAir? air, int day) =>
        air is { NightC: not null } house
            ? Enumerable.Range(0, 24).Sum(hour => Math.Max(0, SetPoint(house, hour)!.Value - OutdoorC(hour, day) - LiftK(house, hour, day)))
            : 0;
}
