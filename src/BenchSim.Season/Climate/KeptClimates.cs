using System.Collections.Concurrent;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>
/// The seasons of one weather: lends out room for the heat of a season, one borrower at a time, and keeps the weather of seasons. Safe for
/// use by several threads.
/// </summary>
internal sealed class KeptClimates
{
    // Weathers that are so few are kept whatever else is; a season plays one of them again and again.
    private const int Few = 64;

    private readonly ClimateStore _store;
    private readonly double[] _light;
    private readonly SunDays? _sun;
    private readonly ConcurrentDictionary<int, SeasonWeather> _weathers = new();

    // A thread gets back what it gave last, so that a season played twice finds its heat.
    private readonly ConcurrentBag<SeasonHeat> _idle = [];
    private int _lent;

    public KeptClimates(ClimateStore store, ClimateKey key, Scenario scenario)
    {
        (_store, Key) = (store, key);
        WeatherDays = key.Days + key.ForecastNights + 1;
        Source = WeatherSource.Of(scenario, WeatherDays);
        _sun = key.Latitude is { } latitude ? new SunDays(latitude, key.SunCoefficient, key.Opens, WeatherDays) : null;
        _light = [.. Enumerable.Range(0, key.Days).Select(day => key.Light[key.Opens.AddDays(day).Month - 1])];
    }

    /// <summary>What they depend on.</summary>
    public ClimateKey Key { get; }

    /// <summary>Gives the weather.</summary>
    public WeatherSource Source { get; }

    /// <summary>Numbers of the airs, mats and heat sums that plans have asked for.</summary>
    public HeatSlots Slots { get; } = new();

    /// <summary>Bytes kept of them; the store's to count.</summary>
    public long Bytes { get; set; }

    /// <summary>Whether the store has dropped them; they still serve whoever holds them, and keep nothing.</summary>
    public bool IsDropped { get; private set; }

    private int WeatherDays { get; }

    /// <summary>Borrows the heat of a season; to be given back.</summary>
    /// <param name="season">Number of the season.</param>
    public SeasonHeat Take(int season)
    {
        Interlocked.Increment(ref _lent);
        var number = Source.Distinct is null ? season : Source.Which(Key.Seed, season);
        var heat = _idle.TryTake(out var idle) ? idle : Room();
        if (heat.Holds != number)
        {
            heat.Renew(WeatherOf(number, season, heat.Weather), number);
        }

        return heat;
    }

    /// <summary>Gives back what was borrowed.</summary>
    /// <param name="heat">Heat from <see cref="Take"/>.</param>
    public void Return(SeasonHeat heat)
    {
        var grown = heat.Bytes - heat.BytesCounted;
        if (_store.Keep(this, grown))
        {
            heat.BytesCounted += grown;
            _idle.Add(heat);
        }
        else
        {
            _store.Free(this, heat.BytesCounted);
        }

        Interlocked.Decrement(ref _lent);
    }

    /// <summary>The heat of normal weather, the caller's own.</summary>
    public SeasonHeat Normal()
    {
        var (weather, heat) = (new SeasonWeather(WeatherDays), Room());
        Source.FillNormal(weather);
        heat.Renew(weather, null);
        return heat;
    }

    /// <summary>Lets everything go where nothing is lent; false where something is. The store's to call.</summary>
    public bool TryDrop()
    {
        if (Volatile.Read(ref _lent) > 0)
        {
            return false;
        }

        IsDropped = true;
        _weathers.Clear();
        _idle.Clear();
        return true;
    }

    private SeasonHeat Room() => new(Slots, _light, Key.MediumOffsetK, _sun);

    // Weather that is not kept is drawn into the room of that before, unless others may be reading it.
    private SeasonWeather WeatherOf(int number, int season, SeasonWeather before)
    {
        if (_weathers.TryGetValue(number, out var kept))
        {
            return kept;
        }

        var isKept = (_store.KeepsDrawn || Source.Distinct <= Few) && _store.Keep(this, SeasonWeather.BytesOf(WeatherDays));
        var weather = isKept || before.IsKept || before.Days != WeatherDays ? new SeasonWeather(WeatherDays) : before;
        Source.Fill(Key.Seed, season, weather);
        weather.IsKept = isKept;
        if (isKept && !_weathers.TryAdd(number, weather))
        {
            _store.Free(this, SeasonWeather.BytesOf(WeatherDays));
        }

        return weather;
    }
}
