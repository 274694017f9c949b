using BenchSim.Report.Pdf;
using QRCoder;

namespace BenchSim.Report.Labels;

/// <summary>A QR code drawn from rectangles, so that it stays sharp at any size.</summary>
internal static class QrSquare
{
    /// <summary>Modules of white that a reader needs around the code (ISO/IEC 18004).</summary>
    private const int Quiet = 4;

    /// <summary>The smallest module that an office printer and a telephone manage; a code that would be finer is left out.</summary>
    private const double LeastModuleMm = 0.25;

    /// <summary>Draws the code with its white border in a square.</summary>
    /// <returns>False when it would be too fine to read, and is not drawn.</returns>
    public static bool Draw(PdfSheet sheet, string text, double x, double y, double sideMm)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var border = (code.ModuleMatrix.Count - Inner(code)) / 2;
        var modules = Inner(code) + (2 * Quiet);
        var module = sideMm / modules;
        if (module < LeastModuleMm)
        {
            return false;
        }

        sheet.FillAll(
            Runs(code, border)
                .Select(run =>
                    (x + ((run.Column - border + Quiet) * module), y + ((run.Row - border + Quiet) * module), run.Length * module, module)
                ),
            Ink.Black
        );
        return true;
    }

    // The library adds a border of its own.
    private static int Inner(QRCodeData code) => (4 * code.Version) + 17;

    // Dark modules side by side are one rectangle.
    private static IEnumerable<(int Row, int Column, int Length)> Runs(QRCodeData code, int border)
    {
        for (var row = border; row < code.ModuleMatrix.Count - border; row++)
        {
            var line = code.ModuleMatrix[row];
            for (var column = border; column < line.Count - border; column++)
            {
                if (!line[column])
                {
                    continue;
                }

                var first = column;
                while (column < line.Count - border && line[column])
                {
                    column++;
                }

                yield return (row, first, column - first);
            }
        }
    }
}
