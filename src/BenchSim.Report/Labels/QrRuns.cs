using System.Collections.Immutable;
using QRCoder;

namespace BenchSim.Report.Labels;

/// <summary>Dark modules of a QR code side by side.</summary>
/// <param name="Row">Row, from 0 at the top.</param>
/// <param name="Column">Column of the first, from 0 at the left.</param>
/// <param name="Length">How many there are, 1 or more.</param>
public readonly record struct QrRun(int Row, int Column, int Length);

/// <summary>A QR code (ISO/IEC 18004, error correction M) as runs of dark modules, to be drawn at any size.</summary>
/// <param name="Side">Modules of a side, without the white border.</param>
/// <param name="Dark">The runs, row by row.</param>
public sealed record QrRuns(int Side, ImmutableArray<QrRun> Dark)
{
    /// <summary>Modules of white that a reader needs around the code.</summary>
    public const int Quiet = 4;

    /// <summary>The code of a text.</summary>
    /// <param name="text">Text, at most some 2,000 letters.</param>
    public static QrRuns Of(string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
        var side = (4 * code.Version) + 17;

        // The library adds a border of its own.
        var border = (code.ModuleMatrix.Count - side) / 2;
        return new QrRuns(side, [.. Runs(code, border)]);
    }

    private static IEnumerable<QrRun> Runs(QRCodeData code, int border)
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

                yield return new QrRun(row - border, first - border, column - first);
            }
        }
    }
}
