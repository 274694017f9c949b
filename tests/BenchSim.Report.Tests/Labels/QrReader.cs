using BenchSim.Report.Tests.Pdf;
using ZXing;
using ZXing.Common;

namespace BenchSim.Report.Tests.Labels;

/// <summary>Reads the square codes of a page as a telephone would, with another library than their writer: from
/// the rectangles that the PDF draws.</summary>
internal static class QrReader
{
    // Ten dots a millimetre: 254 dpi, a common office printer.
    private const int DotsAMm = 10;
    private const int BorderMm = 3;

    /// <summary>The texts of the codes of a page, in the order drawn.</summary>
    public static string[] Read(byte[] pdf, int page) => [.. PdfReader.Shapes(pdf, page).Where(shape => shape.Length > 20).Select(Read)];

    private static string Read((double Left, double Top, double Right, double Bottom)[] shape)
    {
        (var left, var top) = (shape.Min(part => part.Left) - BorderMm, shape.Min(part => part.Top) - BorderMm);
        var width = (int)((shape.Max(part => part.Right) + BorderMm - left) * DotsAMm);
        var height = (int)((shape.Max(part => part.Bottom) + BorderMm - top) * DotsAMm);
        var grey = new byte[width * height];
        Array.Fill(grey, (byte)255);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                (var atX, var atY) = (left + ((x + 0.5) / DotsAMm), top + ((y + 0.5) / DotsAMm));
                if (Array.Exists(shape, part => atX >= part.Left && atX < part.Right && atY >= part.Top && atY < part.Bottom))
                {
                    grey[(y * width) + x] = 0;
                }
            }
        }

        var reader = new BarcodeReaderGeneric
        {
            Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true },
        };
        return reader.Decode(new RGBLuminanceSource(grey, width, height, RGBLuminanceSource.BitmapFormat.Gray8))?.Text ?? "";
    }
}
