namespace BenchSim.Folder.Site;

/// <summary>How many whole trays a bench or a mat holds.</summary>
internal static class BenchPlaces
{
    /// <summary>
    /// Length of the outline of a 1020 tray, metres: 21.22 in (supplier plug-flat specification sheet, 11.00 x 21.22 in).
    /// </summary>
    public const double TrayLengthM = 0.539;

    /// <summary>Width of the outline of a 1020 tray, metres: 11.00 in, rounded down to whole millimetres.</summary>
    public const double TrayWidthM = 0.279;

    // A bench made to measure (5 trays of 0.279 m on 1.395 m) must not lose a tray to the last binary digit.
    private const double RoundingM = 1e-6;

    // A mat sold for a 1020 tray is 10 x 20 in: the tray of 11.00 x 21.22 in lies 1 in over it one way and 1.22 in the other.
    private const double OverhangM = 0.03175;

    /// <summary>
    /// Whole trays on a bench, all lying one way, whichever way holds more: floor(L/a) x floor(W/b). Area over area would overstate it: a
    /// tray cannot be cut.
    /// </summary>
    /// <param name="lengthM">Length of the bench, metres.</param>
    /// <param name="widthM">Width of the bench, metres.</param>
    public static int Of(double lengthM, double widthM) =>
        Math.Max(Count(lengthM, TrayLengthM) * Count(widthM, TrayWidthM), Count(lengthM, TrayWidthM) * Count(widthM, TrayLengthM));

    /// <summary>
    /// Whole trays side by side on a mat, all lying one way, whichever way holds more. In each direction they may hang over the mat by
    /// 1.25 in together: a mat for four 1020 trays is 48 x 20 in.
    /// </summary>
    /// <param name="lengthM">Length of the mat, metres.</param>
    /// <param name="widthM">Width of the mat, metres.</param>
    public static int OnMat(double lengthM, double widthM) => Of(lengthM + OverhangM, widthM + OverhangM);

    /// <summary>Whole trays on the usable share of a bench, rounded down.</summary>
    /// <param name="lengthM">Length of the bench, metres.</param>
    /// <param name="widthM">Width of the bench, metres.</param>
    /// <param name="usable">Usable share, 0 to 1.</param>
    public static int Usable(double lengthM, double widthM, double usable) => (int)Math.Floor((Of(lengthM, widthM) * usable) + 1e-9);

    private static int Count(double bench, double tray) => (int)Math.Floor((bench + RoundingM) / tray);
}
