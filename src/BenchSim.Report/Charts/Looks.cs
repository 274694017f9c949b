using System.Collections.Immutable;

namespace BenchSim.Report.Charts;

/// <summary>The looks of all charts.</summary>
internal static class Looks
{
    // Places of a space, from what lies lowest.
    public static readonly Look HeldBand = new("band", Palette.Held) { IsFilled = true, Cover = 0.25 };
    public static readonly Look Places = new("capacity", Palette.Ink) { Width = 2.5f, Layer = 1 };
    public static readonly Look Wanted = new("wanted", Palette.Wanted) { IsDashed = true, Layer = 2 };
    public static readonly Look Held = new("held", Palette.Held) { Layer = 3 };

    // Where what was ends and what may come begins.
    public static readonly Look FromToday = new("equal", Palette.Ink) { IsDashed = true, Layer = 4 };

    // The way of a batch.
    public static readonly Look Mat = new("mat", Palette.Mat) { IsFilled = true };
    public static readonly Look Bench = new("bench", Palette.Bench) { IsFilled = true };
    public static readonly Look Table = new("table", Palette.Table) { IsFilled = true };
    public static readonly Look PottedUp = new("pot", Palette.Ink) { Width = 3, Dot = Dot.Upright };
    public static readonly Look Waited = new("wait", Palette.Ink);
    public static readonly Look HeldByWeather = new("hold", Palette.Hold);
    public static readonly Look InField = new("diamond", Palette.Ink)
    {
        Dot = Dot.Diamond,
        DotSize = 11,
        Layer = 1,
    };

    // What changes from how it is given, where it breaks even or is aimed at, and the interval of what was played.
    public static readonly Look Lower = new("lower", Palette.Table) { IsFilled = true };
    public static readonly Look Higher = new("higher", Palette.Held) { IsFilled = true };
    public static readonly Look Even = new("even", Palette.Wanted) { IsDashed = true };
    public static readonly Look Given = new("given", Palette.Ink);
    public static readonly Look Reach = new("reach", Palette.Ink);
    public static readonly Look Goal = new("goal", Palette.Wanted) { IsDashed = true };
    public static readonly Look Interval = HeldBand with { Name = "interval" };
    public static readonly Look Played = Dotted("played", Palette.Held);
    public static readonly Look Today = Hollow("today", Palette.Ink, Dot.Square, 14);
    public static readonly Look Enough = Hollow("enough", Palette.Mat, Dot.Ring, 14);

    // Weather as generated; a record stands beside it as hollow rings, so that a line that meets them is seen through them.
    public static readonly Look MadeHigh = new("made-high", Palette.Wanted);
    public static readonly Look MadeLow = new("made-low", Palette.Held);
    public static readonly Look MadeWet = new("made-wet", Palette.Bench);
    public static readonly Look RecordHigh = Hollow("record-high", Palette.Wanted, Dot.Ring, 11);
    public static readonly Look RecordLow = Hollow("record-low", Palette.Held, Dot.Ring, 11);
    public static readonly Look RecordWet = Hollow("record-wet", Palette.Bench, Dot.Ring, 11);

    /// <summary>Curves of one kind, told apart by colour: more of them would say nothing.</summary>
    public static readonly ImmutableArray<Look> Series =
    [
        Dotted("series-1", Palette.Held),
        Dotted("series-2", Palette.Mat),
        Dotted("series-3", Palette.Bench),
        Dotted("series-4", Palette.Table),
        Dotted("series-5", Palette.Ink),
    ];

    private static Look Dotted(string name, string colour) => new(name, colour) { Dot = Dot.Disc, DotSize = 6 };

    private static Look Hollow(string name, string colour, Dot dot, float size) =>
        new(name, colour)
        {
            Width = 2.5f,
            Dot = dot,
            DotSize = size,
        };
}
