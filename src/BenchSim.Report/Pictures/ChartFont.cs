using ScottPlot;
using SkiaSharp;

namespace BenchSim.Report.Pictures;

/// <summary>
/// The font of the pictures, carried in the program: a machine without fonts would draw blank labels and report no error. Whatever family
/// is asked for, it answers; so no picture depends on what a machine has installed.
/// </summary>
internal sealed class ChartFont : IFontResolver
{
    /// <summary>Name of the family.</summary>
    public const string Family = "DejaVu Sans Condensed";

    private static readonly Lazy<ChartFont> s_installed = new(Install);
    private readonly SKTypeface _regular = Load("Fonts/DejaVuSansCondensed.ttf");
    private readonly SKTypeface _bold = Load("Fonts/DejaVuSansCondensed-Bold.ttf");

    /// <summary>Makes the pictures use the font; once for the life of the program, safe to call from any thread.</summary>
    public static ChartFont Use() => s_installed.Value;

    /// <inheritdoc/>
    public SKTypeface CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
        weight >= FontWeight.SemiBold ? _bold : _regular;

    /// <inheritdoc/>
    public SKTypeface CreateTypeface(string fontName, bool bold, bool italic) => bold ? _bold : _regular;

    private static ChartFont Install()
    {
        var font = new ChartFont();
        ScottPlot.Fonts.FontResolvers.Clear();
        ScottPlot.Fonts.FontResolvers.Add(font);
        ScottPlot.Fonts.Default = Family;
        ScottPlot.Fonts.Sans = Family;
        ScottPlot.Fonts.Serif = Family;
        ScottPlot.Fonts.Monospace = Family;
        return font;
    }

    private static SKTypeface Load(string resource)
    {
        using var stream = typeof(ChartFont).Assembly.GetManifestResourceStream(resource)
            ?? throw new InvalidOperationException($"The font {resource} is missing from the program.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The font {resource} cannot be read.");
    }
}
