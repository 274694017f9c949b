namespace BenchSim.Report.Charts;

/// <summary>How a mark looks, for every painter. Sizes are pixels of a picture.</summary>
/// <param name="Name">Its name, which is its class on the page: there report.css has its colour, in light and in dark.</param>
/// <param name="Colour">Its colour in pictures and on paper, of <see cref="Palette"/>.</param>
internal sealed record Look(string Name, string Colour)
{
    public float Width { get; init; } = 2;

    public bool IsDashed { get; init; }

    public bool IsFilled { get; init; }

    /// <summary>How much of it covers what lies below, 0 to 1.</summary>
    public double Cover { get; init; } = 1;

    public Dot Dot { get; init; }

    public float DotSize { get; init; }

    /// <summary>Its place in the key of a picture, which begins with what lies lowest; looks of one layer keep
    /// the order of the key.</summary>
    public int Layer { get; init; }

    /// <summary>True where it is drawn as dots alone, without a line.</summary>
    public bool IsDotsAlone => Dot is Dot.Ring or Dot.Square or Dot.Diamond;
}

/// <summary>What stands at the points of a line or in a row.</summary>
internal enum Dot
{
    None,

    /// <summary>A small filled circle, on a line.</summary>
    Disc,

    /// <summary>A hollow circle.</summary>
    Ring,

    /// <summary>A hollow square.</summary>
    Square,

    /// <summary>A filled diamond.</summary>
    Diamond,

    /// <summary>A short upright line.</summary>
    Upright,
}
