using BenchSim.Report.Pictures;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Study.Results;
using SkiaSharp;

namespace BenchSim.Report.Tests.Pictures;

/// <summary>Draws pictures and reads their pixels.</summary>
internal static class PictureFixture
{
    public static SKBitmap Batches(StudyResult result) => SKBitmap.Decode(ChartFiles.Of(result)[^1].Draw());

    public static SKBitmap Occupancy(StudyResult result, int space = 0) => SKBitmap.Decode(ChartFiles.Of(result)[space].Draw());

    /// <summary>Pixels darker than middle grey in a part of a picture.</summary>
    public static int Dark(SKBitmap picture, SKRectI part)
    {
        var dark = 0;
        for (var y = part.Top; y < part.Bottom; y++)
        {
            for (var x = part.Left; x < part.Right; x++)
            {
                var color = picture.GetPixel(x, y);
                if (color.Red + color.Green + color.Blue < 3 * 128)
                {
                    dark++;
                }
            }
        }

        return dark;
    }

    /// <summary>
    /// Share of pixels of which some channel differs by more than 48 of 255; 1 where the sizes differ. Smoothing of edges may differ
    /// between processors, the drawing may not.
    /// </summary>
    public static double Difference(SKBitmap one, SKBitmap other)
    {
        if (one.Width != other.Width || one.Height != other.Height)
        {
            return 1;
        }

        long differ = 0;
        var left = one.Pixels;
        var right = other.Pixels;
        for (var at = 0; at < left.Length; at++)
        {
            var far =
                Math.Abs(left[at].Red - right[at].Red) > 48
                || Math.Abs(left[at].Green - right[at].Green) > 48
                || Math.Abs(left[at].Blue - right[at].Blue) > 48;
            differ += far ? 1 : 0;
        }

        return (double)differ / left.Length;
    }

    public static StudyResult Named(string id, string grower)
    {
        var result = SyntheticStudy.Tiny();
        return result with
        {
            Batches =
            [
                .. result.Batches.Select(batch =>
                    batch with
                    {
                        Plan = batch.Plan with { Order = batch.Plan.Order with { Id = id, Grower = grower } },
                    }
                ),
            ],
        };
    }
}
