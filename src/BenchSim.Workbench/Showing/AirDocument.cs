using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Season.Air;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Workbench.Showing;

/// <summary>A term, and what is said under it.</summary>
internal sealed record TermDocument(string Term, string Words);

/// <summary>A size by a rule of the trade: of what, from where to where, and how far the rule may be trusted.</summary>
internal sealed record SizeDocument(string What, string Size, string Trust);

/// <summary>Heater, fans and vents of a house.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsShort">Whether its heater does not carry the coldest night.</param>
/// <param name="Terms">Its heater, what comes when that stops, and its fans.</param>
/// <param name="Sizes">Its fans and vents.</param>
internal sealed record HouseAirDocument(string Name, bool IsShort, ImmutableArray<TermDocument> Terms, ImmutableArray<SizeDocument> Sizes);

/// <summary>Heater, fans and vents of the houses whose size is given, as "check --all" tells them.</summary>
/// <param name="Title">What they are.</param>
/// <param name="Houses">The houses, in the order of the file.</param>
/// <param name="Notes">What holds for all of them.</param>
internal sealed record AirDocument(string Title, ImmutableArray<HouseAirDocument> Houses, ImmutableArray<string> Notes)
{
    private const int LongestName = 60;

    /// <summary>Those of a site; null where the size of no house is given.</summary>
    public static AirDocument? Of(Scenario scenario)
    {
        var needs = HouseAirNeed.Of(scenario);
        return needs.IsEmpty
            ? null
            : new AirDocument(AirWords.Title, [.. needs.Select(need => Of(need, scenario.Units))], [.. AirWords.Notes(needs)]);
    }

    private static HouseAirDocument Of(HouseAirNeed need, UnitSystem units) =>
        new(
            PlainText.Short(need.House.Name, LongestName),
            need.Heater?.Carries is false,
            [
                .. AirWords.Terms(need, units).Select(each => new TermDocument(each.Term, each.Words)),
                new TermDocument("Fans", AirWords.Fans(need, units)),
            ],
            [.. AirWords.Lines(need, units).Select(line => new SizeDocument(line.What, line.Size, line.Trust))]
        );
}
