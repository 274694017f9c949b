using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>
/// The weather of one season and the heat that follows from it: airs, heat sums, nights and what heaters must make up, each worked out when
/// it is first asked for, in room that is used again for the next season. Not for use by several threads at once.
/// </summary>
internal sealed class SeasonHeat
{
    private readonly HeatSlots _slots;
    private readonly int _days;
    private readonly HeatSums _inAirs;
    private readonly HeatSums _onMats;
    private readonly Outdoors _outdoors;
    private readonly List<AirDays> _airs = [];
    private HeatTable?[] _tables = [];
    private SeasonClimate? _seen;

    /// <summary>Makes room for a season without weather yet.</summary>
    /// <param name="slots">Numbers of the airs, mats and sums.</param>
    /// <param name="light">Factor of the light on growth, by day of the season.</param>
    /// <param name="offsetK">Temperature of the medium off the mats less that of the air, kelvin.</param>
    /// <param name="sun">The sun of the site; null where it does not say where it lies.</param>
    public SeasonHeat(HeatSlots slots, double[] light, double offsetK, SunDays? sun = null)
    {
        _outdoors = new Outdoors(sun);
        (_slots, _days) = (slots, light.Length);
        Weather = new SeasonWeather(0);
        _inAirs = new HeatSums(_days, light, offsetK, FillAir);
        _onMats = new HeatSums(_days, light, 0, (mat, day, airC) => airC.Fill(slots.Mat(mat).On(day)));
    }

    /// <summary>Weather of the season.</summary>
    public SeasonWeather Weather { get; private set; }

    /// <summary>Number of the weather it holds; null where it holds none that could be asked for again.</summary>
    public int? Holds { get; private set; }

    /// <summary>Bytes it takes, weather and small change not counted.</summary>
    public long Bytes => _inAirs.Bytes + _onMats.Bytes;

    /// <summary>Bytes that are counted as kept; the keeper's to count.</summary>
    public long BytesCounted { get; set; }

    /// <summary>Takes other weather: all that follows from it is worked out anew when it is asked for.</summary>
    /// <param name="weather">Weather of the season, the days of the forecast past its end included.</param>
    /// <param name="number">Number of the weather.</param>
    public void Renew(SeasonWeather weather, int? number)
    {
        (Weather, Holds) = (weather, number);
        _outdoors.Take(weather);
        _inAirs.Renew();
        _airs.ForEach(air => air.Clear());
    }

    /// <summary>The climate of the season as a plan sees it.</summary>
    /// <param name="layout">Layout of the plan, of the same numbers.</param>
    public SeasonClimate SeenBy(ClimateLayout layout) => _seen?.Layout == layout ? _seen : _seen = new SeasonClimate(layout, this);

    /// <summary>A heat sum, by its number.</summary>
    public HeatTable Table(int slot)
    {
        if (slot < _tables.Length && _tables[slot] is { } table)
        {
            if (!table.Block.IsAsked)
            {
                _inAirs.Ask(table.Block);
            }

            return table;
        }

        if (slot >= _tables.Length)
        {
            Array.Resize(ref _tables, slot + 1);
        }

        var asked = _slots.Slot(slot);
        return _tables[slot] = asked.IsMat ? _onMats.Add(asked.Law, asked.Number) : _inAirs.Add(asked.Law, asked.Number);
    }

    /// <summary>
    /// Temperature of the night after the round of a day, by day, in an air, degrees Celsius: outdoors the next day's lowest; in a house
    /// the lowest from 18:00 to 06:00.
    /// </summary>
    /// <param name="air">Number of the air.</param>
    public double[] NightC(int air)
    {
        var days = DaysOf(air);
        if (!days.HasNights)
        {
            days.NightsC ??= new double[Weather.Days - 1];
            days.Hours.FillNights(_outdoors, days.NightsC);
            days.HasNights = true;
        }

        return days.NightsC!;
    }

    /// <summary>Kelvin-hours that the heater of a house must make up, by day; 0 in an unheated house.</summary>
    /// <param name="air">Number of the air.</param>
    public double[] HeatingKelvinHours(int air)
    {
        var days = DaysOf(air);
        if (!days.HasHeating)
        {
            days.Heating ??= new double[_days];
            days.Hours.FillHeating(_outdoors, days.Heating);
            days.HasHeating = true;
        }

        return days.Heating!;
    }

    /// <summary>A day in a house in a few figures.</summary>
    /// <param name="air">Number of the air, that of a house.</param>
    /// <param name="day">Day, 0 or later.</param>
    public DayInHouse Look(int air, int day) => DaysOf(air).Hours.Look(_outdoors, day);

    private void FillAir(int air, int day, Span<double> airC) => DaysOf(air).Hours.FillDay(_outdoors, day, airC);

    private AirDays DaysOf(int air)
    {
        while (_airs.Count <= air)
        {
            _airs.Add(new AirDays(new AirHours(_slots.Air(_airs.Count))));
        }

        return _airs[air];
    }

    /// <summary>What is told of an air by day.</summary>
    private sealed class AirDays(AirHours hours)
    {
        public AirHours Hours { get; } = hours;

        public double[]? NightsC { get; set; }

        public bool HasNights { get; set; }

        public double[]? Heating { get; set; }

        public bool HasHeating { get; set; }

        public void Clear() => (HasNights, HasHeating) = (false, false);
    }
}
