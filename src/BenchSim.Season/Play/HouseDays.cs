using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Heat of the houses and days of the mats, worked out once the season has been played.</summary>
internal sealed class HouseDays(SeasonState state)
{
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

        for (var house = 0; house < state.Scenario.Houses.Length; house++)
        {
            Keep(house);
        }
    }

    private void Keep(int house)
    {
        var place = state.Scenario.Houses[house];
        var loss = place.Heat?.Loss.WattsPerKelvin ?? 0;
        var first = DayOf(place.Opening == HouseOpening.FromDate ? place.OpensOn : null) ?? 0;
        var last = DayOf(state.Scenario.Window.Closes)!.Value;
        var kelvinHours = loss > 0 ? state.Climate.HeatingKelvinHours(house) : null;
        for (var day = 0; day < state.Tables.Days; day++)
        {
            if (!IsOpen(house, day, first, last))
            {
                continue;
            }

            state.Result.DaysOpen[house]++;
            if (kelvinHours is not null)
            {
                state.Result.HeatWattHours[house][day] = (long)Math.Round(loss * kelvinHours[day]);
            }
        }
    }

    // A house is shut once the season has closed and nothing stands in it. "When needed" is any day with trays in it, and the day before.
    private bool IsOpen(int house, int day, int first, int last) =>
        state.Scenario.Houses[house].Opening is HouseOpening.AllSeason or HouseOpening.FromDate
            ? day >= first && (day <= last || HoldsIn(house, day))
            : HoldsIn(house, day) || (day + 1 < state.Tables.Days && HoldsIn(house, day + 1));

    private int? DayOf(DateOnly? date) => date?.DayNumber - state.Scenario.Window.Opens.DayNumber;

    private bool HoldsIn(int house, int day)
    {
        for (var space = 0; space < state.Places.Spaces; space++)
        {
            if (state.Layout.AirOf(space) == house + 1 && state.Result.Held[space][day] > 0)
            {
                return true;
            }
        }

        return false;
    }
}
