using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Words;

/// <summary>What more room saves, in parts of sentences.</summary>
internal static class SavingWords
{
    private const int LongestName = 40;

    /// <summary>A space by name, in quotation marks. Safe to show anywhere.</summary>
    public static string Name(Space space) => $"\"{PlainText.Short(space.Name, LongestName)}\"";

    /// <summary>True when the change really saves something.</summary>
    public static bool IsSaving(MeasureChange change) => change.IsReal && change.Difference < 0;

    /// <summary>An amount of late plant-days, or of plants.</summary>
    public static string Amount(double days) => Numbers.Fine(Math.Abs(days));

    /// <summary>The interval of what is saved, the smaller end first: "1,100 to 1,370"; a dash where one season
    /// tells nothing of it.</summary>
    public static string Range(MeasureChange change) =>
        (double.IsNaN(change.HalfWidth), change.HalfWidth == 0) switch
        {
            (true, _) => "–",
            (_, true) => "in every season",
            _ when change.Difference < 0 => $"{Signed(-change.High)} to {Signed(-change.Low)}",
            _ => $"{Signed(change.Low)} to {Signed(change.High)}",
        };

    /// <summary>The ends of the interval of what is saved: "-12 to 300"; a dash where one season tells nothing of it.</summary>
    public static string Ends(MeasureChange change) =>
        double.IsNaN(change.HalfWidth) ? "–" : $"{Signed(-change.High)} to {Signed(-change.Low)}";

    /// <summary>With a minus below 0.</summary>
    public static string Signed(double amount)
    {
        var text = Numbers.Fine(amount);
        return text.Any(character => character is >= '1' and <= '9') ? text : "0";
    }

    /// <summary>"the one season played", or "any of 1,000 seasons".</summary>
    public static string Any(int seasons) => seasons == 1 ? "the one season played" : $"any of {Numbers.Whole(seasons)} seasons";

    /// <summary>What becomes of the late plant-days: "would save 1,234 late plant-days a season (1,100 to 1,370)".</summary>
    /// <param name="late">Late plant-days.</param>
    /// <param name="seasons">Seasons played.</param>
    /// <param name="why">Why it may do harm, to follow a semicolon; empty where nothing is known of it.</param>
    public static string Effect(MeasureChange late, int seasons, string why = "") =>
        late switch
        {
            { Differing: 0 } => $"changes no late plant-day in {Any(seasons)}",
            _ when IsSaving(late) => $"would save {Amount(late.Difference)} late plant-days a season ({Range(late)})",
            { IsReal: true } => $"makes it worse: {Amount(late.Difference)} more late plant-days a season ({Range(late)})"
                + (why.Length > 0 ? "; " + why : ""),
            _ when double.IsNaN(late.HalfWidth) => "makes no clear difference: one season is not enough to say",
            _ => $"makes no clear difference: {Signed(-late.High)} to {Signed(-late.Low)} late plant-days saved a season",
        };

    /// <summary>What becomes of the plants in time, or else of the late plant-days, with more room in one space, and why, where it does
    /// harm.</summary>
    public static string Effect(BottleneckTrial trial, int seasons) => Effect(trial.PlantsInTime, trial.LatePlantDays, seasons, Why(trial));

    /// <summary>What becomes of the plants in time, where that is sure, or else of the late plant-days.</summary>
    /// <param name="plants">Plants in time.</param>
    /// <param name="late">Late plant-days.</param>
    /// <param name="seasons">Seasons played.</param>
    /// <param name="why">Why it may do harm, to follow a semicolon; empty where nothing is known of it.</param>
    public static string Effect(MeasureChange plants, MeasureChange late, int seasons, string why = "")
    {
        if (!plants.IsReal)
        {
            return Effect(late, seasons, why);
        }

        var reason = why.Length > 0 ? "; " + why : "";
        if (plants.Difference < 0)
        {
            return $"makes it worse: {Amount(plants.Difference)} fewer plants in time a season ({Range(plants)}){reason}";
        }

        var but = late is { IsReal: true, Difference: > 0 }
            ? $", but make {Amount(late.Difference)} more late plant-days ({Range(late)}){reason}"
            : "";
        return $"would bring {Amount(plants.Difference)} more plants out in time a season ({Range(plants)}){but}";
    }

    private static string Why(BottleneckTrial trial)
    {
        var crowded = trial
            .Waited.Select((change, kind) => (Kind: (SpaceKind)kind, Change: change))
            .Where(each => each.Change is { IsReal: true, Difference: > 0 })
            .OrderByDescending(each => each.Change.Difference)
            .Select(each =>
                $"trays then wait {Numbers.Fine(each.Change.Difference)} tray-days more for places on {Trade.Plural(each.Kind)}"
            );
        var slower = trial.Growing is { IsReal: true, Difference: > 0 } growing
            ? $"trays then grow slower, {Numbers.Fine(growing.Difference)} days more from sowing to field size"
            : "";
        string[] reasons = [.. crowded.Take(1).Append(slower).Where(reason => reason.Length > 0)];
        return reasons.Length == 0 ? "the plays do not show why" : string.Join(", and ", reasons);
    }

    /// <summary>What becomes of the chance of fit, to follow an effect; nothing where no season changes.</summary>
    public static string Fits(FitChange fits)
    {
        if (fits.Differing == 0)
        {
            return "";
        }

        return fits.IsReal
            ? $"; {(fits.Difference < 0 ? "but " : "")}the plan would fit in {ChanceWords.Fine(fits.Variant.Share)} of seasons instead of "
                + ChanceWords.Fine(fits.Base.Share)
            : "; no clear change in the chance that the plan fits";
    }

    /// <summary>What one unit more of a space is: "One mat more for "Heat mats" (8 places)"; "About a tenth more room on "Main benches" (24
    /// places)"; "One place more on "Table"".</summary>
    public static string Unit(Space space, int places)
    {
        var many = Numbers.Count(places, "place", "places");
        return (space.UnitPlaces, places) switch
        {
            ({ }, _) => $"One {Noun(space.Kind)} more for {Name(space)} ({many})",
            (null, 1) => $"One place more on {Name(space)}",
            _ => $"About a tenth more room on {Name(space)} ({many})",
        };
    }

    private static string Noun(SpaceKind kind) =>
        kind switch
        {
            SpaceKind.Mat => "mat",
            SpaceKind.Bench => "bench",
            SpaceKind.Table => "table",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
}
