using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Twin.Tests;

/// <summary>The air, the medium, the nights and the heat of one season, straight from docs/model.md sections 4 to 7.</summary>
internal sealed class TwinClimate
{
    private readonly Scenario _scenario;
    private readonly SeasonPlan _plan;
    private readonly SeasonWeather _weather;
    private readonly int _hours;
    private readonly Dictionary<(int Space, string Crop), RunningSum> _warmth = [];
    private readonly Dictionary<(int Space, string Crop), RunningSum> _growth = [];
    private readonly Dictionary<int, RunningSum> _medium = [];
    private readonly Dictionary<(string House, int Hour), double> _houseAir = [];

    public TwinClimate(SeasonPlan plan, ulong seed, int season)
    {
        (_plan, _scenario) = (plan, plan.Scenario);
        var days = plan.Days + _scenario.Rules.ForecastNights + 1;
        _weather = new SeasonWeather(days);
        WeatherSource.Of(_scenario, days).Fill(seed, season, _weather);
        _hours = (plan.Days + 1) * 24;
    }

    /// <summary>Degree-days towards emergence, of the medium of a space.</summary>
    public RunningSum Warmth(int space, Crop crop) =>
        Kept(_warmth, (space, crop.Id), hour => EmergenceDegrees(crop, MediumAt(space, hour)));

    /// <summary>Degree-days towards growth, in the air of a space.</summary>
    public RunningSum Growth(int space, Crop crop) =>
        Kept(_growth, (space, crop.Id), hour =>
            (_scenario.Spaces[space].IsChamber ? 0 : 1)
            * Math.Max(0, Math.Min(AirAt(space, hour), crop.GrowthCapC) - crop.GrowthBaseC)
            * _scenario.Rules.Light[_plan.FirstDay.AddDays(hour / 24).Month - 1]
        );

    /// <summary>Temperature of the medium of a space, summed over days.</summary>
    public RunningSum Medium(int space) => Kept(_medium, space, hour => MediumAt(space, hour));

    /// <summary>Temperature on a table in the night after the round of a day, under the row cover where that goes on.</summary>
    public double NightOnTable(int table, int day, Crop crop)
    {
        var night = NightOf(table, day);
        return night < crop.TableAboveC ? night + _scenario.Rules.CoverGainK : night;
    }

    /// <summary>True when every forecast night lets trays go to a table.</summary>
    public bool TableAllowed(int table, int day, Crop crop)
    {
        for (var night = day; night < day + _scenario.Rules.ForecastNights; night++)
        {
            if (NightOnTable(table, night, crop) < crop.TableAboveC)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// True when the forecast nights, under what covers the batch in the field, and the rain of the two days before, where it gets in, let
    /// trays go there.
    /// </summary>
    public bool FieldAllowed(int day, BatchPlan batch)
    {
        var rules = _scenario.Rules;
        var warmer = batch.Order.FieldCover switch
        {
            FieldCover.Open => 0,
            FieldCover.RowCover => rules.RowCoverGainK,
            FieldCover.LowTunnel => rules.LowTunnelGainK,
            _ => rules.TunnelGainK,
        };
        for (var night = day; night < day + _scenario.Rules.ForecastNights; night++)
        {
            if (_weather.TminOf(night + 1) + warmer < batch.Crop.FieldAboveC)
            {
                return false;
            }
        }

        return batch.Order.FieldCover == FieldCover.Tunnel || _weather.RainOf(day - 1) + _weather.RainOf(day - 2) <= rules.WetLimitMm;
    }

    /// <summary>Heat a heated house takes in a day, whole watt-hours; 0 where its shell is not given.</summary>
    public long WattHours(House house, int day)
    {
        if (house.Heat is null || house.NightC is null)
        {
            return 0;
        }

        var kelvinHours = 0.0;
        for (var hour = 0; hour < 24; hour++)
        {
            kelvinHours += Math.Max(0, SetPoint(house, hour)!.Value - Outdoors((24 * day) + hour) - Lift(house, (24 * day) + hour));
        }

        return (long)Math.Round(house.Body!.Loss.WattsPerKelvin * kelvinHours);
    }

    private static double EmergenceDegrees(Crop crop, double degrees)
    {
        if (degrees <= crop.EmergeBaseC || degrees >= crop.EmergeCeilingC)
        {
            return 0;
        }

        if (degrees <= crop.EmergeOptimumC)
        {
            return degrees - crop.EmergeBaseC;
        }

        var best = crop.EmergeOptimumC - crop.EmergeBaseC;
        var level = crop.WrittenEmergePlateauC ?? crop.EmergeOptimumC;
        return degrees <= level ? best : best * (crop.EmergeCeilingC - degrees) / (crop.EmergeCeilingC - level);
    }

    private static double? SetPoint(House house, int hourOfDay) => hourOfDay is >= 6 and < 18 ? house.DayC ?? house.NightC : house.NightC;

    private double Lift(House house, int hour)
    {
        if (!IsSunny(house))
        {
            return (house.DayLiftK ?? 8) * Math.Max(0, Math.Sin(Math.PI * ((hour % 24) - 6) / 12));
        }

        var watts = SunAt(hour / 24, hour % 24);
        return watts > 0 ? Rise(house) * watts : FromGround(house, hour % 24 < 12 ? (hour / 24) - 1 : hour / 24) / EachM2(house);
    }

    private bool IsSunny(House house) => house.DayLiftK is null && house.Body is not null && _scenario.Latitude is not null;

    private static double EachM2(House house) => house.Body!.Loss.WattsPerKelvin / house.Body.Shell.FloorM2;

    private static double Rise(House house) => house.Body!.Transmission * house.Body.SunShare / (EachM2(house) + 5);

    // What the ground gives back in each dark hour after a day, watts a square metre.
    private double FromGround(House house, int day)
    {
        var dark = Enumerable.Range(0, 24).Count(hour => Height(day, hour) == 0);
        var taken = 5 * Enumerable.Range(0, 24).Sum(hour => Rise(house) * SunAt(day, hour));
        return dark == 0 ? 0 : Math.Min(12, taken / 3 / dark);
    }

    // Sun on level ground at an hour, watts a square metre.
    private double SunAt(int day, int hour)
    {
        var all = Enumerable.Range(0, 24).Sum(each => Height(day, each));
        return all > 0 ? Radiation(day) * 1e6 / 3600 * Height(day, hour) / all : 0;
    }

    private double Height(int day, int hour)
    {
        var (place, tilt) = (_scenario.Latitude!.Value * Math.PI / 180, Tilt(day));
        var height = (Math.Sin(place) * Math.Sin(tilt)) + (Math.Cos(place) * Math.Cos(tilt) * Math.Cos(Math.PI * (hour - 12) / 12));
        return height > 1e-6 ? height : 0;
    }

    private double Tilt(int day) => 0.409 * Math.Sin((2 * Math.PI / 365 * _plan.FirstDay.AddDays(day).DayOfYear) - 1.39);

    // Megajoules a square metre in a day, FAO-56 eqs. 21 and 50.
    private double Radiation(int day)
    {
        var (place, tilt) = (_scenario.Latitude!.Value * Math.PI / 180, Tilt(day));
        var sunset = Math.Acos(Math.Clamp(-Math.Tan(place) * Math.Tan(tilt), -1, 1));
        var near = 1 + (0.033 * Math.Cos(2 * Math.PI / 365 * _plan.FirstDay.AddDays(day).DayOfYear));
        var height = (sunset * Math.Sin(place) * Math.Sin(tilt)) + (Math.Cos(place) * Math.Cos(tilt) * Math.Sin(sunset));
        var clear = _scenario.SunCoefficient * Math.Sqrt(_weather.TmaxOf(day) - _weather.TminOf(day));
        return Math.Min(clear, 0.75) * 1440 / Math.PI * 0.0820 * near * height;
    }

    private double NightOf(int table, int day)
    {
        if (_scenario.Spaces[table].HouseId is null)
        {
            return _weather.TminOf(day + 1);
        }

        // From 18:00 of the day to the last whole hour before 06:00 of the next.
        return Enumerable.Range((24 * day) + 18, 12).Min(hour => AirAt(table, hour));
    }

    private double MediumAt(int space, int hour) => _scenario.Spaces[space].MatC ?? AirAt(space, hour) + _scenario.Rules.MediumOffsetK;

    private double AirAt(int space, int hour)
    {
        if (_scenario.Spaces[space].HouseId is not { } id)
        {
            return Outdoors(hour);
        }

        if (!_houseAir.TryGetValue((id, hour), out var air))
        {
            var house = _scenario.Houses.Single(one => one.Id == id);
            var outdoors = Outdoors(hour);
            var vented = IsSunny(house) ? house.VentedRiseK / 800 * SunAt(hour / 24, hour % 24) : 0;
            air = Math.Min(outdoors + Lift(house, hour), Math.Max(house.VentC, outdoors + vented));
            air = SetPoint(house, hour % 24) is { } heating ? Math.Max(heating, air) : air;
            _houseAir.Add((id, hour), air);
        }

        return air;
    }

    private double Outdoors(int hour)
    {
        var (low, high) = (_weather.TminOf(hour / 24), _weather.TmaxOf(hour / 24));
        return ((high + low) / 2) + ((high - low) / 2 * Math.Cos(2 * Math.PI * ((hour % 24) - 15) / 24));
    }

    private RunningSum Kept<TKey>(Dictionary<TKey, RunningSum> kept, TKey key, Func<int, double> aDay)
        where TKey : notnull
    {
        if (!kept.TryGetValue(key, out var sum))
        {
            kept.Add(key, sum = new RunningSum(_hours, aDay));
        }

        return sum;
    }
}
