using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Papers;

/// <summary>Sentences that stand on more than one paper.</summary>
internal static class PaperWords
{
    /// <summary>What the dates are.</summary>
    public const string Dates =
        "These are the dates of the plan: normal weather, and a place for every tray. Weather, seed and full benches move them, "
        + "and where the plan does not fit, the trays will mostly be later than this. The run command plays the season many times and "
        + "tells how much later.";

    /// <summary>That moves from bench to bench are missing, where the rules have them; begins with a blank.</summary>
    public static string MovesBack(SiteRules rules) =>
        rules.MoveBack
            ? " Moves from one bench to another as room appears (move_back) are not listed: when they come depends on the season."
            : "";

    /// <summary>What the hours are of, and what they leave out.</summary>
    public static string Hours(SiteRules rules) =>
        $"The hours are those of sowing, {(rules.Seconds.ThinCell > 0 ? "thinning, " : "")}potting up, moving and loading. "
        + $"{PlainText.Capital(WorkWords.NotCounted(rules))} are not counted.";

    /// <summary>Where thinning comes from.</summary>
    public static string Thinning(SiteRules rules) =>
        "Thinning is listed for the first work day on which it can begin; wait until the first true leaves show."
        + (rules.Seconds.ThinCell > 0 ? "" : " Its hours are not counted, for the site gives no minutes for it.");

    /// <summary>What the chances of cold nights are.</summary>
    public static string Nights(SeasonPlan plan, int years)
    {
        var from = plan.Scenario.Weather switch
        {
            ConstantWeather => "the scenario has the same weather every day, so that each night is cold for certain or never",
            _ when years == 1 => "counted over the one year of weather that is played",
            RecordedWeather => $"counted over the {years} years of the weather record that are played",
            _ => $"counted over {years} generated years of weather",
        };
        var cover = plan.Scenario.Rules.CoverGainK > 0 ? "" : " The site's rules name no cover (cover_gain is 0).";
        return $"The chance that a night is too cold for the crop to stand uncovered: {from}. It is the climate, not a forecast: "
            + $"before each evening look at the forecast.{cover}";
    }

    /// <summary>How the order is counted.</summary>
    public const string Order =
        "Everything is counted as planned: no spare seed, no spare trays, no allowance for mix that is spilt, "
        + "and seed and trays are not rounded up to packets or cases, but for what stands under \"To buy\" (supplies.csv). "
        + "Round up to the sizes your supplier sells.";

    /// <summary>What the order of one grower leaves out.</summary>
    public const string OrderOfOne =
        "This is one grower's share. Growers share packs, bales and what is on hand, so the rounded amounts of all growers' orders add up "
        + "to more than you need together. Buy from the order of all growers.";

    /// <summary>How the packs are counted.</summary>
    public const string Purchases =
        "What the plan needs, less what is on hand, rounded up to whole packs. \"Needed by\" is the first day on which it is sown or "
        + "filled; \"Order by\" takes the days of delivery off. Old seed comes up worse: test it before you count on it.";

    /// <summary>What "most at once" and carriers mean.</summary>
    public const string Trays =
        "\"Filled\" is what to have where no tray is used twice. \"Most at once\" is the most that stand on one day on the plan's "
        + "dates: enough where each is washed and used again as soon as it comes back empty, and too few where trays stay longer. "
        + "Carriers, the solid trays that cell trays stand in, are counted so too: one under each cell tray.";
}
