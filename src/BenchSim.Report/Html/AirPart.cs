using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Values;

namespace BenchSim.Report.Html;

/// <summary>The heater, fans and vents that a house takes, as entries of the list of the house.</summary>
internal static class AirPart
{
    public static void Write(HtmlText html, HouseAirNeed need, UnitSystem units)
    {
        if (AirWords.Heater(need, units) is { } heater)
        {
            html.Add($"<div><dt>Heater</dt><dd>{heater}</dd></div>");
        }

        if (AirWords.Stops(need) is { } stops)
        {
            html.Add($"<div><dt>When it stops</dt><dd>{stops}");
            if (need.Heater?.FreezesAfter is not null)
            {
                html.Add($" {AirWords.Cooling}");
            }

            html.Add($"</dd></div>");
        }

        var lines = string.Join("; ", AirWords.Lines(need, units).Select(line => line.Words));
        html.Add($"<div><dt>Fans and vents, by rules of thumb</dt><dd>{lines}.</dd></div>");
    }
}
