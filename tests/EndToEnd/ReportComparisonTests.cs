using SkiaSharp;

namespace EndToEnd;

/// <summary>The comparison itself finds what it should find.</summary>
public sealed class ReportComparisonTests
{
    [Fact]
    public void Shades_do_not_count_but_a_moved_block_does()
    {
        var picture = Picture(40, shade: 0);
        Assert.Null(ReportComparison.PictureDifference(picture, Picture(40, shade: 10)));

        // 20 pixels wide moved by 1: 2 columns of 20 pixels = 40 of 10,000 = 0.4 %, above the tolerance of 0.2 %.
        Assert.Equal("40 of 10000 pixels differ", ReportComparison.PictureDifference(picture, Picture(41, shade: 0)));
    }

    [Fact]
    public void Text_is_compared_byte_for_byte_and_missing_and_new_files_are_named()
    {
        using var folder = new TemporaryFolder();
        var was = folder.In("was");
        var now = folder.In("now");
        Directory.CreateDirectory(was);
        Directory.CreateDirectory(now);
        File.WriteAllText(Path.Combine(was, "same.csv"), "a\nb\n");
        File.WriteAllText(Path.Combine(now, "same.csv"), "a\nb\n");
        File.WriteAllText(Path.Combine(was, "table.csv"), "a\nb\n");
        File.WriteAllText(Path.Combine(now, "table.csv"), "a\nc\n");
        File.WriteAllText(Path.Combine(was, "gone.csv"), "");
        File.WriteAllText(Path.Combine(now, ".new"), "");
        string[] differences = [.. ReportComparison.Differences(was, now)];
        Assert.Equal(3, differences.Length);
        Assert.Equal("gone.csv is approved but was not written", differences[0]);
        Assert.Equal(".new was written but is not approved", differences[1]);
        Assert.StartsWith("table.csv: differs from line 2 on:", differences[2], StringComparison.Ordinal);
    }

    private static byte[] Picture(int left, byte shade)
    {
        using var bitmap = new SKBitmap(100, 100);
        bitmap.Erase(new SKColor((byte)(255 - shade), 255, 255));
        for (var x = left; x < left + 20; x++)
        {
            for (var y = 40; y < 60; y++)
            {
                bitmap.SetPixel(x, y, SKColors.Black);
            }
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
