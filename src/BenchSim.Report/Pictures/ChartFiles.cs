using BenchSim.Report.Charts;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Pictures;

/// <summary>A picture of the report.</summary>
/// <param name="Name">Name in the report folder.</param>
/// <param name="Draw">Draws it, as PNG.</param>
internal sealed record ChartFile(string Name, Func<byte[]> Draw);

/// <summary>The pictures that go with a result.</summary>
internal static class ChartFiles
{
    /// <summary>Most batches on one picture: beyond it the rows would be taller than a page can show.</summary>
    public const int BatchesAPicture = 80;

    /// <summary>One picture a space, then the batches on as many as they need.</summary>
    public static IReadOnlyList<ChartFile> Of(StudyResult result)
    {
        var files = new List<ChartFile>();
        for (var space = 0; space < result.Spaces.Length; space++)
        {
            var at = result.Spaces[space];
            files.Add(
                new ChartFile($"charts/occupancy-{space + 1}-{PlainText.FilePart(at.Space.Id, "space")}.png", () =>
                    PngPainter.Draw((OccupancyChart.Of(at, result), PictureLayout.Plot))
                )
            );
        }

        var pictures = BatchBar
            .ByGrower(result)
            .SelectMany(grower => grower.Bars.Select(bar => (grower.Grower, Bar: bar)))
            .Chunk(BatchesAPicture)
            .ToArray();
        for (var picture = 0; picture < pictures.Length; picture++)
        {
            var rows = pictures[picture]
                .GroupBy(row => row.Grower, StringComparer.Ordinal)
                .Select(grower => (grower.Key, grower.Select(row => row.Bar).ToArray()));
            var name = pictures.Length == 1 ? "charts/batches.png" : $"charts/batches-{picture + 1}.png";
            files.Add(new ChartFile(name, () => PngPainter.Draw((BatchesChart.Of(rows, result), PictureLayout.Batches))));
        }

        return files;
    }
}
