using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Heat of the houses and days of the mats, worked out once the season has been played.</summary>
internal sealed class HouseDays(SeasonState state)
{
    // Planned dates are walked without them.
    private OpenDays[]? _open;

    public void Keep()
    {
        for (var space = 0; space < state.Places.Spaces; space++)
        {
            if (state.Scenario.Spaces[space].Kind == SpaceKind.Mat)
            {
                var held = state.Result.Held[space].AsSpan();
                state.Result.MatDays[space] = held.Length - held.Count(0);
            }
        }

        _open ??= OpenDays.Of(state.Scenario, state.Batches.Select(batch => batch.Plan), state.Layout);
        for (var house = 0; house < _open.Length; house++)
        {
            Keep(house, _open[house]);
        }
    }

    private void Keep(int house, OpenDays open)
    {
        var place = state.Scenario.Houses[house];
        var isHeated = place.WattsPerKelvinOn(0) > 0 || place.WattsPerKelvinOn(state.Tables.Days) > 0;
        var kelvinHours = isHeated ? state.Climate.HeatingKelvinHours(house) : null;
        for (var day = 0; day < state.Tables.Days; day++)
        {
            if (!open.Has(state.Result.Held, day, state.Tables.Days))
            {
                continue;
            }

            state.Result.DaysOpen[house]++;
            if (kelvinHours is not null)
            {
                state.Result.HeatWattHours[house][day] = (long)Math.Round(place.WattsPerKelvinOn(day) * kelvinHours[day]);
            }
        }
    }
}
