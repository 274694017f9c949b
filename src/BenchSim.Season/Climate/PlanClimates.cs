using BenchSim.Season.Inputs;

namespace BenchSim.Season.Climate;

/// <summary>The climates of a plan's seasons.</summary>
internal sealed class PlanClimates
{
    private readonly KeptClimates _kept;

    /// <summary>Makes the climates of a plan.</summary>
    /// <param name="scenario">Scenario of the plan.</param>
    /// <param name="days">Days of the season.</param>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="store">Keeps them for other plays; null where there are none.</param>
    public PlanClimates(Scenario scenario, int days, ulong seed, ClimateStore? store = null)
    {
        _kept = (store ?? ClimateStore.OfOnePlay()).Of(scenario, days, seed);
        Layout = new ClimateLayout(scenario, _kept.Slots);
    }

    /// <summary>What the plan needs.</summary>
    public ClimateLayout Layout { get; }

    /// <summary>Gives the weather.</summary>
    public WeatherSource Source => _kept.Source;

    /// <summary>Borrows the climate of a season; to be given back. A season asked for again by the thread that gave it back last is still there.</summary>
    /// <param name="season">Number of the season.</param>
    public SeasonClimate Take(int season) => _kept.Take(season).SeenBy(Layout);

    /// <summary>Gives back what was borrowed.</summary>
    /// <param name="climate">Climate from <see cref="Take"/>.</param>
    public void Return(SeasonClimate climate) => _kept.Return(climate.Heat);

    /// <summary>The climate of normal weather.</summary>
    public SeasonClimate Normal() => _kept.Normal().SeenBy(Layout);
}
