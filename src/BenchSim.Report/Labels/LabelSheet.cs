using BenchSim.Report.Pdf;

namespace BenchSim.Report.Labels;

/// <summary>A sheet of labels: paper, size of one label, how many stand on a sheet and how far apart. All lengths are in millimetres;
/// labels stand in the middle of the paper.</summary>
public sealed record LabelSheet
{
    /// <summary>Short name, as written on the command line.</summary>
    public required string Name { get; init; }

    /// <summary>True for Letter paper, false for A4.</summary>
    public bool IsLetter { get; init; }

    /// <summary>Width of a label.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Height of a label.</summary>
    public required double HeightMm { get; init; }

    /// <summary>Labels side by side.</summary>
    public required int Columns { get; init; }

    /// <summary>Labels one below the other.</summary>
    public required int Rows { get; init; }

    /// <summary>Between two labels side by side.</summary>
    public double GapXMm { get; init; }

    /// <summary>Between two labels one below the other.</summary>
    public double GapYMm { get; init; }

    /// <summary>True when the sheet is plain and the labels are cut out by hand, along lines that are drawn.</summary>
    public bool IsCut { get; init; }

    /// <summary>Labels on a sheet.</summary>
    public int Count => Columns * Rows;

    /// <summary>"A4, 3 x 7 labels of 63.5 x 38.1 mm".</summary>
    public string Words =>
        FormattableString.Invariant($"{Paper.Name}, {Columns} x {Rows} labels of {WidthMm:0.##} x {HeightMm:0.##} mm")
        + (IsCut ? ", to be cut out" : "");

    internal PaperSize Paper => IsLetter ? PaperSize.Letter : PaperSize.A4;

    internal double UsedWidthMm => (Columns * WidthMm) + ((Columns - 1) * GapXMm);

    internal double UsedHeightMm => (Rows * HeightMm) + ((Rows - 1) * GapYMm);

    /// <summary>Left upper corner of a label.</summary>
    internal (double X, double Y) Corner(int number) =>
        (
            ((Paper.WidthMm - UsedWidthMm) / 2) + (number % Columns * (WidthMm + GapXMm)),
            ((Paper.HeightMm - UsedHeightMm) / 2) + (number / Columns * (HeightMm + GapYMm))
        );
}
