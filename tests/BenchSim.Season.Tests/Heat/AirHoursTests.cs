using BenchSim.Season.Heat;

namespace BenchSim.Season.Tests.Heat;

/// <summary>
/// Many hours or days at a step have the bits of each hour by itself; odd numbers of days leave a rest whatever the step.
/// </summary>
public class AirHoursTests
{
    private const int Days = 173;

    private static readonly HouseAir?[] Airs =
    [
        null,
        new HouseAir(12, 16, 24, 8),
        new HouseAir(15.5, null, 24.4, 8),
        new HouseAir(null, null, 22, 6.5),
        new HouseAir(15, 5, 18, 0),
        new HouseAir(null, 9, 30, 3),
    ];

    private readonly double[] _tmin = new double[Days + 1];
    private readonly double[] _tmax = new double[Days + 1];

    public AirHoursTests()
    {
        var random = new Random(3);
        for (var day = 0; day <= Days; day++)
        {
            _tmin[day] = -20 + (40 * random.NextDouble());
            _tmax[day] = _tmin[day] + (18 * random.NextDouble());
        }
    }

    [Fact]
    public void Hours_of_days()
    {
        var airC = new double[24];
        foreach (var air in Airs)
        {
            for (var day = 0; day < Days; day++)
            {
                new AirHours(air).FillDay(_tmin[day], _tmax[day], airC);
                Assert.Equal(Enumerable.Range(0, 24).Select(hour => HourC(air, hour, day)), airC);
            }
        }
    }

    [Fact]
    public void Nights_of_days()
    {
        var nightsC = new double[Days];
        foreach (var air in Airs)
        {
            new AirHours(air).FillNights(_tmin, _tmax, nightsC);
            Assert.Equal(Enumerable.Range(0, Days).Select(day => NightC(air, day)), nightsC);
        }
    }

    [Fact]
    public void Heating_of_days()
    {
        var kelvinHours = new double[Days];
        foreach (var air in Airs)
        {
            kelvinHours.AsSpan().Fill(-1);
            new AirHours(air).FillHeating(_tmin, _tmax, kelvinHours);
            Assert.Equal(
                Enumerable
                    .Range(0, Days)
                    .Select(day => air is { } house ? HourlyClimate.HeatingKelvinHours(house, _tmin[day], _tmax[day]) : 0),
                kelvinHours
            );
        }
    }

    private double HourC(HouseAir? air, int hour, int day) =>
        air is { } house
            ? HourlyClimate.InsideC(house, hour, _tmin[day], _tmax[day])
            : HourlyClimate.OutdoorC(hour, _tmin[day], _tmax[day]);

    private double NightC(HouseAir? air, int day) =>
        air is null ? _tmin[day + 1] : Enumerable.Range(18, 12).Min(hour => HourC(air, hour % 24, hour < 24 ? day : day + 1));
}
