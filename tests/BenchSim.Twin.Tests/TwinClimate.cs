using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Twin.Tests;

/// <summary>The air, the medium, the nights and the heat of one season, straight from docs/model.md sections 4 to 7.</summary>
internal sealed class TwinClimate
{
    private readonly Scenario scenario;
    private readonly SeasonPlan plan;
    private readonly SeasonWeather weather;
    private readonly int hours;
    private readonly Dictionary<(int Space, string Crop), RunningSum> warmth = [];
    private readonly Dictionary<(int Space, string Crop), RunningSum> growth = [];
    private readonly Dictionary<int, RunningSum> medium = [];
    private readonly Dictionary<(string House, int Hour), double> houseAir = [];

    public TwinClimate(SeasonPlan plan, ulong seed, int season)
    {
        (this.plan, scenario) = (plan, plan.Scenario);
        var days = plan.Days + scenario.Rules.ForecastNights + 1;
        weather = new SeasonWeather(days);
        WeatherSource.Of(scenario, days).Fill(seed, season, weather);
        hours = (plan.Days + 1) * 24;
    }

    /// <summary>Degree-days towards emergence, of the medium of a space.</summary>
    public RunningSum Warmth(int space, Crop crop) => Kept(warmth, (space, crop.Id), hour => EmergenceDegrees(crop, MediumAt(space, hour)));

    /// <summary>Degree-days towards growth, in the air of a space.</summary>
    public RunningSum Growth(int space, Crop crop) =>
        Kept(growth, (space, crop.Id), hour =>
            Math.Max(0, Math.Min(AirAt(space, hour), crop.GrowthCapC) - crop.GrowthBaseC)
            * scenario.Rules.Light[plan.FirstDay.AddDays(hour / 24).Month - 1]
        );

    /// <summary>Temperature of the medium of a space, summed over days.</summary>
    public RunningSum Medium(int space) => Kept(medium, space, hour => MediumAt(space, hour));

    /// <summary>Temperature on a table in the night after the round of a day, under the row cover where that goes on.</summary>
    public double NightOnTable(int table, int day, Crop crop)
    {
        var night = NightOf(table, day);
        return night < crop.HardenAboveC ? night + scenario.Rules.CoverGainK : night;
    }

    /// <summary>True when every forecast night lets trays go to a table.</summary>
    public bool TableAllowed(int table, int day, Crop crop)
    {
        for (var night = day; night < day + scenario.Rules.ForecastNights; night++)
        {
            if (NightOnTable(table, night, crop) < crop.HardenAboveC)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True when the forecast nights and the rain of the two days before let trays go to the field.</summary>
    public bool FieldAllowed(int day, Crop crop)
    {
        for (var night = day; night < day + scenario.Rules.ForecastNights; night++)
        {
            if (weather.TminOf(night + 1) < crop.FieldAboveC)
            {
                return false;
            }
        }

        return weather.RainOf(day - 1) + weather.RainOf(day - 2) <= scenario.Rules.WetLimitMm;
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
            kelvinHours += Math.Max(0, SetPoint(house, hour)!.Value - Outdoors((24 * day) + hour) - Lift(house, hour));
        }

        return (long)Math.Round(house.Heat.Loss.WattsPerKelvin * kelvinHours);
    }

    private static double EmergenceDegrees(Crop crop, double degrees)
    {
        if (degrees <= crop.EmergeBaseC || degrees >= crop.EmergeCeilingC)
        {
            return 0;
        }

        return degrees <= crop.EmergeOptimumC
            ? degrees - crop.EmergeBaseC
            : (crop.EmergeOptimumC - crop.EmergeBaseC) * (crop.EmergeCeilingC - degrees) / (crop.EmergeCeilingC - crop.EmergeOptimumC);
    }

    private static double? SetPoint(House house, int hourOfDay) => hourOfDay is >= 6 and < 18 ? house.DayC ?? house.NightC : house.NightC;

    private static double Lift(House house, int hourOfDay) => house.DayLiftK * Math.Max(0, Math.Sin(Math.PI * (hourOfDay - 6) / 12));

    private double NightOf(int table, int day)
    {
        if (scenario.Spaces[table].HouseId is null)
        {
            return weather.TminOf(day + 1);
        }

        // From 18:00 of the day to the last whole hour before 06:00 of the next.
        return Enumerable.Range((24 * day) + 18, 12).Min(hour => AirAt(table, hour));
    }

    private double MediumAt(int space, int hour) => scenario.Spaces[space].MatC ?? AirAt(space, hour) + scenario.Rules.MediumOffsetK;

    private double AirAt(int space, int hour)
    {
        if (scenario.Spaces[space].HouseId is not { } id)
        {
            return Outdoors(hour);
        }

        if (!houseAir.TryGetValue((id, hour), out var air))
        {
            var house = scenario.Houses.Single(one => one.Id == id);
            var outdoors = Outdoors(hour);
            air = Math.Min(outdoors + Lift(house, hour % 24), Math.Max(house.VentC, outdoors));
            air = SetPoint(house, hour % 24) is { } heating ? Math.Max(heating, air) : air;
            houseAir.Add((id, hour), air);
        }

        return air;
    }

    private double Outdoors(int hour)
    {
        var (low, high) = (weather.TminOf(hour / 24), weather.TmaxOf(hour / 24));
        return ((high + low) / 2) + ((high - low) / 2 * Math.Cos(2 * Math.PI * ((hour % 24) - 15) / 24));
    }

    private RunningSum Kept<TKey>(Dictionary<TKey, RunningSum> kept, TKey key, Func<int, double> aDay)
        where TKey : notnull
    {
        if (!kept.TryGetValue(key, out var sum))
        {
            kept.Add(key, sum = new RunningSum(hours, aDay));
        }

        return sum;
    }
}
