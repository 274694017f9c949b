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

    /// <summary>
    /// Borrows the climate of a season, given back when it is disposed of. A season asked for again by the thread that gave it back last is
    /// still there.
    /// </summary>
    /// <param name="season">Number of the season.</param>
    public Borrowed Borrow(int season) => new(_kept, _kept.Take(season).SeenBy(Layout));

    /// <summary>The climate of normal weather.</summary>
    public SeasonClimate Normal() => _kept.Normal().SeenBy(Layout);

    /// <summary>A climate that is lent.</summary>
    /// <param name="from">Where it goes back to.</param>
    /// <param name="climate">The climate.</param>
    public readonly struct Borrowed(KeptClimates from, SeasonClimate climate) : IDisposable
    {
        /// <summary>The climate, until it is given back.</summary>
        public SeasonClimate Climate => climate;

        /// <summary>Gives it back.</summary>
        public void Dispose() => from.Return(climate.Heat);
    }
}
