using BenchSim.Report.Charts;

namespace BenchSim.Report.Pictures;

/// <summary>Sizes of a picture, in pixels of layout.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height, of a chart with rows without them.</param>
/// <param name="RowHeight">Height of a row or of a heading above rows.</param>
/// <param name="HalfBar">Half the height of a bar, as a share of a row.</param>
internal sealed record PictureLayout(int Width, int Height, int RowHeight = 0, double HalfBar = 0)
{
    /// <summary>A chart with an axis at the left.</summary>
    public static readonly PictureLayout Plot = new(960, 420);

    /// <summary>The batches.</summary>
    public static readonly PictureLayout Batches = new(1000, 110, 20, 0.32);

    /// <summary>A bar a row, with figures at its ends.</summary>
    public static readonly PictureLayout Bars = new(960, 130, 44, 0.3);

    /// <summary>Two bars a row.</summary>
    public static readonly PictureLayout Pairs = new(960, 130, 52, 0.17);

    /// <summary>Height with the rows of a chart.</summary>
    public int HeightOf(Chart chart) =>
        Height + (RowHeight * Math.Max(1, chart.Groups.Sum(group => group.Rows.Length + (group.Heading is null ? 0 : 1))));
}
