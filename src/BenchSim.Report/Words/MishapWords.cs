using BenchSim.Season.Inputs;

namespace BenchSim.Report.Words;

/// <summary>Tells what may go wrong in a season.</summary>
public static class MishapWords
{
    private const int MostTold = 5;

    /// <summary>What a mishap strikes: names of crop, space and house; "all trays" where none is named.</summary>
    public static string Struck(Scenario scenario, Mishap mishap)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(mishap);
        string?[] named =
        [
            mishap.CropId is { } crop ? scenario.Crops.FirstOrDefault(each => each.Id == crop)?.Name ?? crop : null,
            mishap.SpaceId is { } space ? scenario.Spaces.First(each => each.Id == space).Name : null,
            mishap.HouseId is { } house ? scenario.Houses.First(each => each.Id == house).Name : null,
        ];
        string[] shown = [.. named.OfType<string>()];
        return shown.Length == 0 ? "all trays" : string.Join(", ", shown);
    }

    /// <summary>The first few mishaps, each as told, and how many more there are.</summary>
    /// <param name="scenario">Scenario.</param>
    /// <param name="tell">Tells one.</param>
    public static string First(Scenario scenario, Func<Mishap, string> tell)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var mishaps = scenario.Mishaps;
        var more = mishaps.Length > MostTold ? $", and {mishaps.Length - MostTold} more" : "";
        return string.Join(", ", mishaps.Take(MostTold).Select(tell)) + more;
    }
}
