namespace BenchSim.Report.Pdf;

/// <summary>A colour; black when nothing is said.</summary>
/// <param name="Red">Red, 0 to 255.</param>
/// <param name="Green">Green, 0 to 255.</param>
/// <param name="Blue">Blue, 0 to 255.</param>
internal readonly record struct Ink(byte Red, byte Green, byte Blue)
{
    /// <summary>Black.</summary>
    public static readonly Ink Black;

    /// <summary>Grey for rules and small print; dark enough to read (7:1 on white).</summary>
    public static readonly Ink Grey = new(0x55, 0x55, 0x55);

    /// <summary>Light grey for the ground of headings.</summary>
    public static readonly Ink Pale = new(0xE8, 0xE8, 0xE8);
}
