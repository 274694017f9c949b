using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Values;

namespace BenchSim.Report.Html;

/// <summary>The heater, fans and vents that a house takes, as entries of the list of the house.</summary>
internal static class AirPart
{
    public static void Write(HtmlText html, HouseAirNeed need, UnitSystem units)
    {
        foreach (var (term, words) in AirWords.Terms(need, units))
        {
            html.Add($"<div><dt>{term}</dt><dd>{words}</dd></div>");
        }

        var lines = string.Join("; ", AirWords.Lines(need, units).Select(line => line.Words));
        html.Add($"<div><dt>Fans and vents, by rules of thumb</dt><dd>{lines}.</dd></div>");
    }
}
