using ScottPlot;

namespace BenchSim.Report.Charts;

/// <summary>
/// Colours of the pictures, told apart with every common kind of colour blindness: Okabe and Ito, "Color Universal Design" (2008),
/// darkened a little where a line must stand out on white. The page has the same ones in report.css.
/// </summary>
internal static class Palette
{
    public static readonly Color Ink = Color.FromHex("#1d2521");
    public static readonly Color Soft = Color.FromHex("#56605a");
    public static readonly Color Rule = Color.FromHex("#dddbd2");
    public static readonly Color Paper = Color.FromHex("#ffffff");
    public static readonly Color Held = Color.FromHex("#0072b2");
    public static readonly Color Wanted = Color.FromHex("#b84a00");
    public static readonly Color Mat = Color.FromHex("#d55e00");
    public static readonly Color Bench = Color.FromHex("#009e73");
    public static readonly Color Table = Color.FromHex("#56b4e9");
    public static readonly Color Hold = Color.FromHex("#b3508a");
}
