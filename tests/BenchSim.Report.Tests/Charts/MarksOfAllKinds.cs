using BenchSim.Report.Charts;

namespace BenchSim.Report.Tests.Charts;

/// <summary>Two charts made by hand, which have every kind of mark between them.</summary>
internal static class MarksOfAllKinds
{
    /// <summary>A chart with an axis at the left: a band from 2 to 6, a line at 4, dots, edges both ways; 10 days by 10 places.</summary>
    public static Chart Plot(string name) =>
        new()
        {
            Title = name,
            Label = name,
            Table = "tables/none.csv",
            Across = Axis(),
            Up = new ChartAxis(0, 10) { Name = "places" },
            Key = [new KeyEntry(Looks.HeldBand, "band"), new KeyEntry(Looks.Played, name), new KeyEntry(Looks.Enough, "dots")],
            Marks =
            [
                new BandMark(Looks.HeldBand, [(0, 2, 6), (10, 2, 6)]),
                new LineMark(Looks.Played, [(0, 4), (10, 4)]),
                new LineMark(Looks.Enough, [(5, 8)]),
                new EdgeMark(Looks.Goal, 9, IsUpright: false),
                new EdgeMark(Looks.Even, 5, IsUpright: true),
            ],
        };

    /// <summary>A chart with rows, two bars each, in a group with a heading.</summary>
    public static Chart Rows(string name) =>
        new()
        {
            Title = name,
            Label = name,
            Table = "tables/none.csv",
            Across = Axis(),
            Lanes = 2,
            Key = [new KeyEntry(Looks.Mat, "bar"), new KeyEntry(Looks.InField, name)],
            Groups = [new RowGroup(name, [Row(name), new ChartRow("plain")])],
            Marks = [new EdgeMark(Looks.Even, 5, IsUpright: true)],
        };

    private static ChartRow Row(string name) =>
        new(name)
        {
            Detail = name,
            Told = name,
            Marks =
            [
                new BarMark(Looks.Mat, 6, 2),
                new SpanMark(Looks.Reach, 1, 3),
                new SpanMark(Looks.Waited, 4, 6, Lane: 1) { IsBelow = true },
                new NoteMark(name, 0),
                new PointMark(Looks.PottedUp, 7),
                new PointMark(Looks.InField, 8),
                new FigureMark("left", 2, IsLeft: true),
            ],
            Figures = [new FigureMark("right", 6, IsLeft: false, Lane: 1)],
        };

    private static ChartAxis Axis() => new(0, 10) { Ticks = _ => [new AxisTick(0, "start"), new AxisTick(5, "middle")] };
}
