using PdfSharp.Fonts;

namespace BenchSim.Report.Pdf;

/// <summary>The fonts of every PDF, carried in the program, so that a page looks the same on a machine without fonts. Whatever family is
/// asked for, they answer.</summary>
internal sealed class PdfFontResolver : IFontResolver
{
    /// <summary>Name of the family.</summary>
    public const string Family = "DejaVu Sans Condensed";

    private const string Regular = "Fonts/DejaVuSansCondensed.ttf";
    private const string Bold = "Fonts/DejaVuSansCondensed-Bold.ttf";

    private static readonly Lazy<PdfFontResolver> s_installed = new(Install);

    /// <summary>Makes every PDF use the fonts; once for the life of the program, safe to call from any thread.</summary>
    public static PdfFontResolver Use() => s_installed.Value;

    /// <inheritdoc/>
    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    /// <inheritdoc/>
    public byte[] GetFont(string faceName) => Read(faceName == Bold);

    /// <summary>The bytes of a face.</summary>
    public static byte[] Read(bool bold)
    {
        var resource = bold ? Bold : Regular;
        using var stream = typeof(PdfFontResolver).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The font {resource} is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static PdfFontResolver Install()
    {
        var resolver = new PdfFontResolver();
        GlobalFontSettings.FontResolver = resolver;
        return resolver;
    }
}
