using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Heat of the houses and days of the mats, worked out once the season has been played.</summary>
internal sealed partial class SeasonCore
{
    private void KeepHeat()
    {
        for (var space = 0; space < held.Length; space++)
        {
            if (scenario.Spaces[space].Kind == SpaceKind.Mat)
            {
                result.MatDays[space] = result.Held[space].AsSpan().Length - result.Held[space].AsSpan().Count(0);
            }
        }

        for (var house = 0; house < scenario.Houses.Length; house++)
        {
            KeepHeat(house);
        }
    }

    private void KeepHeat(int house)
    {
        var place = scenario.Houses[house];
        var loss = place.Heat?.Loss.WattsPerKelvin ?? 0;
        var first = DayOf(place.Opening == HouseOpening.FromDate ? place.OpensOn : null) ?? 0;
        var last = DayOf(scenario.Window.Closes)!.Value;
        var kelvinHours = loss > 0 ? climate.HeatingKelvinHours(house) : null;
        for (var at = 0; at < tables.Days; at++)
        {
            if (!IsOpen(house, at, first, last))
            {
                continue;
            }

            result.DaysOpen[house]++;
            if (kelvinHours is not null)
            {
                result.HeatWattHours[house][at] = (long)Math.Round(loss * kelvinHours[at]);
            }
        }
    }

    // A house is shut once the season has closed and nothing stands in it. "When needed" is any day with trays in it, and the day before.
    private bool IsOpen(int house, int at, int first, int last) =>
        scenario.Houses[house].Opening is HouseOpening.AllSeason or HouseOpening.FromDate
            ? at >= first && (at <= last || HoldsIn(house, at))
            : HoldsIn(house, at) || (at + 1 < tables.Days && HoldsIn(house, at + 1));

    private int? DayOf(DateOnly? date) => date?.DayNumber - scenario.Window.Opens.DayNumber;

    private bool HoldsIn(int house, int at)
    {
        for (var space = 0; space < held.Length; space++)
        {
            if (layout.AirOf(space) == house + 1 && result.Held[space][at] > 0)
            {
                return true;
            }
        }

        return false;
    }
}
