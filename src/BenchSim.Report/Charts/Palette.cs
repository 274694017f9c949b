namespace BenchSim.Report.Charts;

/// <summary>
/// Colours of the charts, told apart with every common kind of colour blindness: Okabe and Ito, "Color Universal Design" (2008),
/// darkened a little where a line must stand out on white. The page has the same ones in report.css.
/// </summary>
internal static class Palette
{
    public const string Ink = "#1d2521";
    public const string Rule = "#dddbd2";
    public const string Paper = "#ffffff";
    public const string Held = "#0072b2";
    public const string Wanted = "#b84a00";
    public const string Mat = "#d55e00";
    public const string Bench = "#009e73";
    public const string Table = "#56b4e9";
    public const string Hold = "#b3508a";
}
