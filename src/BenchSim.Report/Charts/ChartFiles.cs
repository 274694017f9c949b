using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Charts;

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
                new ChartFile($"charts/occupancy-{space + 1}-{PlainText.FilePart(at.Space.Id)}.png", () =>
                    OccupancyPicture.Draw(at, result)
                )
            );
        }

        var rows = BatchBar.ByGrower(result).SelectMany(grower => grower.Bars.Select(bar => (grower.Grower, Bar: bar))).ToArray();
        var pictures = (rows.Length + BatchesAPicture - 1) / BatchesAPicture;
        for (var picture = 0; picture < pictures; picture++)
        {
            var part = rows.Skip(picture * BatchesAPicture).Take(BatchesAPicture).ToArray();
            var name = pictures == 1 ? "charts/batches.png" : $"charts/batches-{picture + 1}.png";
            files.Add(new ChartFile(name, () => BatchesPicture.Draw(part, result)));
        }

        return files;
    }
}
