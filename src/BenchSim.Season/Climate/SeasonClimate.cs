using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// The climate of one season: hourly airs, and the running heat sums that stays are looked up in. Tables are made when first asked for.
/// A climate that several threads share may make a table twice; both are equal, and one of them is kept.
/// </summary>
internal sealed class SeasonClimate
{
    private readonly ClimateLayout layout;
    private readonly int days;
    private readonly bool isShared;
    private readonly Air[] airs;
    private readonly Slot[] temperatureSums;
    private readonly Slot[] emergenceSums;
    private readonly Slot[] growthSums;
    private readonly DayValues[] nights;
    private readonly DayValues[] heating;
    private readonly double[] lightOfDay;
    private int version;

    /// <summary>Makes a climate without weather yet.</summary>
    /// <param name="layout">What the plan needs.</param>
    /// <param name="days">Days of the season.</param>
    /// <param name="forecastNights">Nights of forecast past the end.</param>
    /// <param name="isShared">Whether several threads may read it: tables are then filled whole when made.</param>
    public SeasonClimate(ClimateLayout layout, int days, int forecastNights, bool isShared = false)
    {
        this.isShared = isShared;
        this.layout = layout;
        this.days = days;
        Weather = new SeasonWeather(days + forecastNights + 1);
        lightOfDay =
        [
            .. Enumerable.Range(0, days).Select(day => layout.Scenario.Rules.Light[layout.Scenario.Window.Opens.AddDays(day).Month - 1]),
        ];
        airs = Make<Air>(layout.Airs);
        nights = Make<DayValues>(layout.Airs);
        heating = Make<DayValues>(layout.Airs - 1);
        temperatureSums = Make<Slot>(layout.Media);
        emergenceSums = Make<Slot>(layout.Media * layout.Emergences.Length);
        growthSums = Make<Slot>(layout.Airs * layout.Growths.Length);
    }

    public SeasonWeather Weather { get; }

    /// <summary>Seed and season whose weather it holds, so that a season played twice draws it once.</summary>
    public (ulong Seed, int Season)? Holds { get; set; }

    /// <summary>Tells that the weather has been filled anew: every table is made again when asked for.</summary>
    public void Renew() => version++;

    /// <summary>Hourly temperatures of an air, degrees Celsius.</summary>
    public double[] AirC(int air)
    {
        var slot = airs[air];
        if (Volatile.Read(ref slot.Version) != version)
        {
            var hours = slot.Hours ?? new double[days * HourlyClimate.Hours];
            FillAir(air, hours);
            slot.Hours = hours;
            Volatile.Write(ref slot.Version, version);
        }

        return slot.Hours!;
    }

    /// <summary>Running sum of the medium's temperature above -100 C, for means along a path.</summary>
    public HeatTable TemperatureSum(int medium) =>
        Get(temperatureSums[medium], VersionOf(medium), medium, static (climate, key, from, rates) =>
            climate.FillTemperature(key, from, rates)
        );

    /// <summary>Running heat sum of a law of emergence in a medium.</summary>
    public HeatTable EmergenceSum(int emergence, int medium)
    {
        var key = (emergence * layout.Media) + medium;
        return Get(emergenceSums[key], VersionOf(medium), key, static (climate, key, from, rates) =>
            climate.FillEmergence(key, from, rates)
        );
    }

    /// <summary>Running heat sum of a law of growth in an air, the month's light included.</summary>
    public HeatTable GrowthSum(int growth, int air)
    {
        var key = (growth * layout.Airs) + air;
        return Get(growthSums[key], version, key, static (climate, key, from, rates) => climate.FillGrowth(key, from, rates));
    }

    /// <summary>Temperature of the night after the round of a day, by day, in an air: outdoors the next day's lowest; in a house the lowest from 18:00 to 06:00.</summary>
    public double[] NightC(int air)
    {
        var slot = nights[air];
        if (Volatile.Read(ref slot.Version) != version)
        {
            var values = slot.Values ?? new double[Weather.Days - 1];
            FillNights(air, values);
            slot.Values = values;
            Volatile.Write(ref slot.Version, version);
        }

        return slot.Values!;
    }

    /// <summary>Kelvin-hours the heater of a house must make up, by day; 0 in an unheated house.</summary>
    public double[] HeatingKelvinHours(int house)
    {
        var slot = heating[house];
        if (Volatile.Read(ref slot.Version) != version)
        {
            var values = slot.Values ?? new double[days];
            for (var day = 0; day < days; day++)
            {
                values[day] = HourlyClimate.HeatingKelvinHours(layout.Scenario.Houses[house].Air, Weather.TminOf(day), Weather.TmaxOf(day));
            }

            slot.Values = values;
            Volatile.Write(ref slot.Version, version);
        }

        return slot.Values!;
    }

    /// <summary>Shift that keeps running temperature sums from falling.</summary>
    public const double TemperatureShift = 100;

    private static T[] Make<T>(int count)
        where T : new() => [.. Enumerable.Range(0, count).Select(_ => new T())];

    // A mat is as warm in every season, so its tables outlive the weather.
    private int VersionOf(int medium) => medium >= layout.Airs ? 0 : version;

    private HeatTable Get(Slot slot, int wanted, int key, FillRates fill)
    {
        if (Volatile.Read(ref slot.Version) != wanted)
        {
            var table = isShared || slot.Table is null ? new HeatTable(days * HourlyClimate.Hours) : slot.Table;
            table.Start(slot.Rates ??= RatesOf(key, fill));
            if (isShared)
            {
                table.FillAll();
            }

            slot.Table = table;
            Volatile.Write(ref slot.Version, wanted);
        }

        return slot.Table!;
    }

    // By itself, or every look at a table would make what the lambda captures.
    private HeatTable.FillHours RatesOf(int key, FillRates fill) => (from, rates) => fill(this, key, from, rates);

    private void FillTemperature(int medium, int from, Span<double> rates)
    {
        if (medium >= layout.Airs)
        {
            rates.Fill(layout.MatTemperatures[medium - layout.Airs] + TemperatureShift);
            return;
        }

        var air = AirC(medium).AsSpan(from, rates.Length);
        var offset = layout.Scenario.Rules.MediumOffsetK;
        for (var hour = 0; hour < rates.Length; hour++)
        {
            rates[hour] = air[hour] + offset + TemperatureShift;
        }
    }

    private void FillEmergence(int key, int from, Span<double> rates)
    {
        var (law, medium) = Math.DivRem(key, layout.Media);
        var (baseC, optimumC, ceilingC) = layout.Emergences[law];
        if (medium >= layout.Airs)
        {
            rates.Fill(EmergenceRate.Of(layout.MatTemperatures[medium - layout.Airs], baseC, optimumC, ceilingC));
            return;
        }

        EmergenceRate.Fill(AirC(medium).AsSpan(from, rates.Length), layout.Scenario.Rules.MediumOffsetK, baseC, optimumC, ceilingC, rates);
    }

    private void FillGrowth(int key, int from, Span<double> rates)
    {
        var (law, of) = Math.DivRem(key, layout.Airs);
        var (baseC, capC) = layout.Growths[law];
        var air = AirC(of).AsSpan(from, rates.Length);

        // A table is filled from midnight on, a day's hours by one light.
        for (var start = 0; start < rates.Length; start += HourlyClimate.Hours)
        {
            GrowthRate.Fill(
                air.Slice(start, HourlyClimate.Hours),
                lightOfDay[(from + start) / HourlyClimate.Hours],
                baseC,
                capC,
                rates.Slice(start, HourlyClimate.Hours)
            );
        }
    }

    private void FillAir(int air, double[] hours)
    {
        var house = air == 0 ? null : layout.Scenario.Houses[air - 1];
        for (var day = 0; day < days; day++)
        {
            var (low, high) = (Weather.TminOf(day), Weather.TmaxOf(day));
            var into = hours.AsSpan(day * HourlyClimate.Hours, HourlyClimate.Hours);
            if (house is null)
            {
                HourlyClimate.OutdoorDay(low, high, into);
            }
            else
            {
                HourlyClimate.InsideDay(house.Air, low, high, into);
            }
        }
    }

    private void FillNights(int air, double[] values)
    {
        for (var day = 0; day < values.Length; day++)
        {
            values[day] =
                air == 0
                    ? Weather.TminOf(day + 1)
                    : HourlyClimate.LowestOfNightC(layout.Scenario.Houses[air - 1].Air, Outdoors(day), Outdoors(day + 1));
        }
    }

    private (double TminC, double TmaxC) Outdoors(int day) => (Weather.TminOf(day), Weather.TmaxOf(day));

    private delegate void FillRates(SeasonClimate climate, int key, int from, Span<double> rates);

    private sealed class Air
    {
        public int Version = -1;

        public double[]? Hours { get; set; }
    }

    private sealed class Slot
    {
        public int Version = -1;

        public HeatTable? Table { get; set; }

        public HeatTable.FillHours? Rates { get; set; }
    }

    private sealed class DayValues
    {
        public int Version = -1;

        public double[]? Values { get; set; }
    }
}
