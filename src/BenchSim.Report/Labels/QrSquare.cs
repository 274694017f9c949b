using BenchSim.Report.Pdf;

namespace BenchSim.Report.Labels;

/// <summary>A QR code drawn from rectangles, so that it stays sharp at any size.</summary>
internal static class QrSquare
{
    /// <summary>The smallest module that an office printer and a telephone manage; a code that would be finer is left out.</summary>
    private const double LeastModuleMm = 0.25;

    /// <summary>Draws the code with its white border in a square.</summary>
    /// <returns>False when it would be too fine to read, and is not drawn.</returns>
    public static bool Draw(PdfSheet sheet, string text, double x, double y, double sideMm)
    {
        var code = QrRuns.Of(text);
        var module = sideMm / (code.Side + (2 * QrRuns.Quiet));
        if (module < LeastModuleMm)
        {
            return false;
        }

        sheet.FillAll(
            code.Dark.Select(run =>
                (x + ((run.Column + QrRuns.Quiet) * module), y + ((run.Row + QrRuns.Quiet) * module), run.Length * module, module)
            ),
            Ink.Black
        );
        return true;
    }
}
