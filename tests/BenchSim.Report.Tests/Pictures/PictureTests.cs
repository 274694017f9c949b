using BenchSim.Report.Pictures;
using BenchSim.Report.Tests.Synthetic;
using SkiaSharp;

namespace BenchSim.Report.Tests.Pictures;

public class PictureTests
{
    private const double Tolerance = 0.002;

    [Fact]
    public void Pictures_have_their_size()
    {
        using var picture = PictureFixture.Occupancy(SyntheticStudy.Tiny());

        Assert.Equal(PictureLayout.Plot.Width * PngPainter.Scale, picture.Width);
        Assert.Equal(PictureLayout.Plot.Height * PngPainter.Scale, picture.Height);
    }

    [Theory]
    [InlineData("occupancy")]
    [InlineData("batches")]
    public void Pictures_are_as_approved(string name)
    {
        using var picture =
            name == "occupancy" ? PictureFixture.Occupancy(SyntheticStudy.Tiny()) : PictureFixture.Batches(SyntheticStudy.Tiny());
        var file = Repository.File($"tests/BenchSim.Report.Tests/Approved/{name}.png");
        if (Approval.IsApproving)
        {
            File.WriteAllBytes(file, picture.Encode(SKEncodedImageFormat.Png, 100).ToArray());
        }

        using var approved = SKBitmap.Decode(file);

        Assert.InRange(PictureFixture.Difference(approved, picture), 0, Tolerance);
    }

    [Fact]
    public void The_comparison_sees_another_drawing()
    {
        using var one = PictureFixture.Occupancy(SyntheticStudy.Tiny(), space: 0);
        using var other = PictureFixture.Occupancy(SyntheticStudy.Tiny(), space: 1);

        Assert.True(PictureFixture.Difference(one, other) > 5 * Tolerance);
    }

    [Fact]
    public void Every_family_is_answered_with_the_font_carried_along()
    {
        var carried = ChartFont.Use().CreateTypeface("", bold: false, italic: false);

        Assert.Equal("DejaVu Sans", carried.FamilyName);
        foreach (var family in new[] { ScottPlot.Fonts.Default, ScottPlot.Fonts.Sans, "Segoe UI", "no such family", "" })
        {
            Assert.Same(carried, ScottPlot.Fonts.GetTypeface(family, bold: false, italic: false));
        }

        Assert.True(ScottPlot.Fonts.GetTypeface("anything", bold: true, italic: false).IsBold);
    }

    [Fact]
    public void The_font_has_the_letters_of_the_report()
    {
        var font = ChartFont.Use().CreateTypeface("", bold: false, italic: false);

        Assert.True(font.ContainsGlyphs("The heat mats, 5 April: 1,234 % … Åéñßğž Ελ Жы"));
    }

    [Fact]
    public void Labels_draw_dark_pixels_where_labels_stand()
    {
        using var picture = PictureFixture.Batches(SyntheticStudy.Tiny());

        // The batch labels stand left of the axis; the title above the plot; the legend below.
        var width = picture.Width;
        var height = picture.Height;
        Assert.True(PictureFixture.Dark(picture, new SKRectI(0, 60, 140, height - 140)) > 200, "batch labels");
        Assert.True(PictureFixture.Dark(picture, new SKRectI(width / 4, 0, 3 * width / 4, 60)) > 500, "title");
        Assert.True(PictureFixture.Dark(picture, new SKRectI(0, height - 90, width, height)) > 500, "legend");
    }

    [Fact]
    public void The_batch_labels_change_with_the_names()
    {
        using var one = PictureFixture.Batches(PictureFixture.Named("aaa", "Grower"));
        using var other = PictureFixture.Batches(PictureFixture.Named("www", "Grower"));

        Assert.NotEqual(one.Bytes, other.Bytes);
    }

    [Theory]
    [InlineData("🍅🍆")]
    [InlineData("עגבנייה")]
    [InlineData("two\nlines")]
    [InlineData("\uD83D")]
    [InlineData("")]
    public void Odd_names_are_drawn_without_a_fault_and_without_moving_the_plot(string name)
    {
        using var picture = PictureFixture.Batches(PictureFixture.Named(name, name));
        using var plain = PictureFixture.Batches(PictureFixture.Named("b01", "Grower"));

        Assert.Equal(plain.Height, picture.Height);
    }

    [Fact]
    public void A_missing_letter_is_drawn_as_a_box()
    {
        using var missing = PictureFixture.Batches(PictureFixture.Named("🍅", "Grower"));
        using var blank = PictureFixture.Batches(PictureFixture.Named(" ", "Grower"));

        Assert.NotEqual(blank.Bytes, missing.Bytes);
    }

    [Fact]
    public void A_name_of_300_letters_leaves_room_for_the_plot()
    {
        using var picture = PictureFixture.Batches(PictureFixture.Named(new string('W', 300), new string('W', 300)));

        // Bars stand in the right half all the same: bench green, told from its channels.
        var green = 0;
        for (var x = picture.Width / 2; x < picture.Width; x++)
        {
            for (var y = 0; y < picture.Height; y++)
            {
                var color = picture.GetPixel(x, y);
                green += color is { Red: < 40, Green: > 130, Blue: > 90 and < 140 } ? 1 : 0;
            }
        }

        Assert.True(green > 1000);
    }

    [Fact]
    public void Pictures_drawn_at_once_are_those_drawn_alone()
    {
        var result = SyntheticStudy.Tiny();
        byte[][] alone = [.. ChartFiles.Of(result).Select(chart => chart.Draw())];
        var atOnce = new byte[alone.Length][];

        Parallel.ForEach(ChartFiles.Of(result).Select((chart, index) => (chart, index)), item => atOnce[item.index] = item.chart.Draw());

        Assert.Equal(alone, atOnce);
    }

    [Fact]
    public void More_than_eighty_batches_take_another_picture()
    {
        var result = SyntheticStudy.Tiny();
        var many = result with { Batches = [.. Enumerable.Repeat(result.Batches[0], 81)] };

        Assert.Equal(
            ["charts/batches-1.png", "charts/batches-2.png"],
            ChartFiles.Of(many).TakeLast(2).Select(chart => chart.Name).ToArray()
        );
    }

    [Fact]
    public void No_batches_take_no_picture() =>
        Assert.DoesNotContain(ChartFiles.Of(SyntheticStudy.Tiny() with { Batches = [] }), chart =>
            chart.Name.Contains("batches", StringComparison.Ordinal)
        );
}
