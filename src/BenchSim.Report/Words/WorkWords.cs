using BenchSim.Season.Inputs;

namespace BenchSim.Report.Words;

/// <summary>Tells which work is counted.</summary>
public static class WorkWords
{
    /// <summary>What is not counted, in a list: "watering, covering against cold nights, thinning and washing trays".</summary>
    public static string NotCounted(SiteRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        string[] all =
        [
            rules.Minutes.Water > 0 ? "" : "watering",
            "covering against cold nights",
            rules.Seconds.ThinCell > 0 ? "" : "thinning",
            "washing trays",
        ];
        return PlainText.List([.. all.Where(each => each.Length > 0)]);
    }

    /// <summary>What a season's hours are of: "Sowing, potting up, moving, loading and carrying in".</summary>
    public static string Counted(SiteRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        string[] all =
        [
            "Sowing",
            rules.Seconds.ThinCell > 0 ? "thinning" : "",
            "potting up",
            "moving",
            "loading",
            rules.Minutes.Water > 0 ? "watering" : "",
            "carrying in",
        ];
        return PlainText.List([.. all.Where(each => each.Length > 0)]);
    }

    /// <summary>", and 3.5 hours of watering"; empty where watering is not counted.</summary>
    public static string Watering(double hours) => hours > 0 ? $", and {Hours(hours)} of watering" : "";

    /// <summary>"1 hour", "3.5 hours".</summary>
    public static string Hours(double hours)
    {
        var shown = Numbers.Fine(hours);
        return shown == "1" ? "1 hour" : shown + " hours";
    }
}
