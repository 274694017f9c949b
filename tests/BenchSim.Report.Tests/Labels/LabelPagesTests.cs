using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Report.Labels;
using BenchSim.Report.Tests.Pdf;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Labels;

public class LabelPagesTests
{
    private static readonly SeasonPlan s_plan = SyntheticPlan.Spring();
    private static readonly ShortCodes s_codes = ShortCodes.Of(s_plan);

    public static TheoryData<string> Sheets => [.. LabelSheets.Known.Select(sheet => sheet.Name), "20x10", "letter:200x60"];

    [Fact]
    public void Every_batch_has_as_many_labels_as_trays_and_flats_numbered_from_one()
    {
        var labels = TrayLabel.All(s_plan, s_codes, s_plan.FirstDay, s_plan.LastDay);
        foreach (var batch in s_plan.Batches)
        {
            TrayLabel[] own = [.. labels.Where(label => label.Batch.Order.Id == batch.Order.Id)];
            Assert.Equal(Enumerable.Range(1, batch.Trays), own.Where(label => !label.IsFlat).Select(label => label.Number));
            Assert.Equal(Enumerable.Range(1, batch.Flats), own.Where(label => label.IsFlat).Select(label => label.Number));
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void The_printed_pages_hold_one_label_a_tray()
    {
        var sheet = LabelSheets.Parse("letter-30", out _)!;
        var labels = TrayLabel.All(s_plan, s_codes, s_plan.FirstDay, s_plan.LastDay);
        var trays = s_plan.Batches.Sum(batch => batch.Trays + batch.Flats);
        var pdf = LabelPages.Draw("labels", labels, sheet, 0, CancellationToken.None);

        var pages = PdfReader.Texts(pdf);
        Assert.Equal((trays + 29) / 30, pages.Length);
        Assert.Equal(LabelPages.Sheets(labels.Length, sheet, 0), pages.Length);
        var all = Squeezed(string.Concat(pages));
        foreach (var batch in s_plan.Batches)
        {
            var what = batch.Flat is null ? "tray" : "pottedtray";
            foreach (var number in Enumerable.Range(1, batch.Trays))
            {
                Assert.Contains(Invariant($"{what}{number}of{batch.Trays}"), all, StringComparison.Ordinal);
            }

            foreach (var number in Enumerable.Range(1, batch.Flats))
            {
                Assert.Contains(Invariant($"flat{number}of{batch.Flats}"), all, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Flats_are_due_on_the_sow_date_and_their_trays_on_the_day_they_are_potted()
    {
        var potted = s_plan.Batches.First(batch => batch.Flat is not null);
        var sown = TrayLabel.All(s_plan, s_codes, potted.SowOn, potted.SowOn);
        var pottedUp = TrayLabel.All(s_plan, s_codes, potted.PotUpOn!.Value, potted.PotUpOn.Value);

        Assert.Equal(potted.Flats, sown.Count(label => label.Batch == potted && label.What == "flat"));
        Assert.Equal(potted.Trays, pottedUp.Count(label => label.Batch == potted && label.What == "potted tray"));
        Assert.DoesNotContain(pottedUp, label => label.Batch == potted && label.IsFlat);
    }

    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Sheets))]
    public void Number_and_dates_are_never_cut_and_nothing_leaves_its_label(string name)
    {
        var sheet = LabelSheets.Parse(name, out _)!;
        var potted = s_plan.Batches.First(each => each.Flat is not null);
        TrayLabel[] labels =
        [
            .. HostileNames
                .All.Cast<object[]>()
                .Select(row => (string)row[0])
                .Select(hostile => new TrayLabel(
                    potted with
                    {
                        Order = potted.Order with { Id = hostile, Variety = hostile, Grower = hostile },
                        Crop = potted.Crop with { Name = hostile },
                    },
                    "K7MR/M",
                    false,
                    12,
                    128
                )),
        ];
        var pdf = LabelPages.Draw("hostile", labels, sheet, 0, CancellationToken.None);

        var texts = PdfReader.Texts(pdf);
        Assert.Equal((labels.Length + sheet.Count - 1) / sheet.Count, texts.Length);
        var text = Squeezed(string.Concat(texts));
        string[] whole =
        [
            "K7MR/M",
            "pottedtray12of128",
            Invariant($"sow{potted.SowOn:yyyy-MM-dd}"),
            Invariant($"potup{potted.PotUpOn:yyyy-MM-dd}"),
            Invariant($"setout{potted.SetOutOn:yyyy-MM-dd}"),
        ];
        Assert.All(whole, part => Assert.Equal(labels.Length, text.Split(part).Length - 1));
        for (var page = 1; page <= texts.Length; page++)
        {
            AssertWithin(pdf, page, sheet);
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_crop_with_a_long_name_leaves_room_for_its_grower(string name)
    {
        var batch = s_plan.Batches[0];
        batch = batch with
        {
            Order = batch.Order with { Grower = "Ines" },
            Crop = batch.Crop with { Name = "A butterhead lettuce with a very long name, early and late" },
        };
        var sheet = LabelSheets.Parse(name, out _)!;
        Assert.Contains(
            "Ines",
            Squeezed(
                PdfReader.Texts(LabelPages.Draw("labels", [new TrayLabel(batch, "K7MR/M", false, 1, 1)], sheet, 0, CancellationToken.None))[
                    0
                ]
            ),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_code_of_each_label_is_read_by_another_reader()
    {
        var sheet = LabelSheets.Parse("a4-21", out _)!;
        ImmutableArray<TrayLabel> labels = [.. TrayLabel.All(s_plan, s_codes, s_plan.FirstDay, s_plan.LastDay).Take(3)];
        var pdf = LabelPages.Draw("labels", labels, sheet, 2, CancellationToken.None);

        var batch = labels[0].Batch;
        string[] expected =
        [
            .. Enumerable
                .Range(1, 3)
                .Select(number =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{batch.Order.Id}; {(labels[0].IsFlat ? "flat" : "tray")} {number}/{labels[0].Of}; sow "
                            + $"{batch.SowOn:yyyy-MM-dd}; out {batch.SetOutOn:yyyy-MM-dd}"
                    )
                ),
        ];
        Assert.Equal(expected, QrReader.Read(pdf, 1));
    }

    [Fact]
    public void Letters_beyond_ascii_are_read_from_the_code_as_they_were_written()
    {
        var batch = s_plan.Batches[0] with { Order = s_plan.Batches[0].Order with { Id = "Brügge-日本 \U0001F345" } };
        var pdf = LabelPages.Draw(
            "labels",
            [new TrayLabel(batch, "K7MR/M", false, 1, 1)],
            LabelSheets.Parse("letter-10", out _)!,
            0,
            CancellationToken.None
        );
        Assert.StartsWith("Brügge-日本 \U0001F345; tray 1/1; ", Assert.Single(QrReader.Read(pdf, 1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_begin_behind_those_already_used()
    {
        var sheet = LabelSheets.Parse("a4-21", out _)!;
        ImmutableArray<TrayLabel> labels = [.. TrayLabel.All(s_plan, s_codes, s_plan.FirstDay, s_plan.LastDay).Take(2)];
        var pdf = LabelPages.Draw("labels", labels, sheet, 20, CancellationToken.None);

        Assert.Equal(2, PdfReader.Texts(pdf).Length);
        (var x, var y) = sheet.Corner(20);
        Assert.All(PdfReader.Letters(pdf, 1), letter => Assert.True(letter.Left >= x && letter.Top >= y));
        Assert.Equal([1, 1, 2, 22], new[] { 1, 21, 22, 442 }.Select(count => LabelPages.Sheets(count, sheet, 0)));
        Assert.Equal(2, LabelPages.Sheets(2, sheet, 20));
    }

    [Fact]
    public void The_same_labels_give_the_same_bytes()
    {
        var sheet = LabelSheets.Parse("a4-65", out _)!;
        var labels = TrayLabel.All(s_plan, s_codes, s_plan.FirstDay, s_plan.LastDay);
        Assert.Equal(
            LabelPages.Draw("labels", labels, sheet, 0, CancellationToken.None),
            LabelPages.Draw("labels", labels, sheet, 0, CancellationToken.None)
        );
    }

    // Each letter and each part of a code lies within one label, and no letter runs into the code beside it.
    private static void AssertWithin(byte[] pdf, int page, LabelSheet sheet)
    {
        const double slack = 0.05;
        var corners = Enumerable.Range(0, sheet.Count).Select(sheet.Corner).ToArray();
        var letters = PdfReader.Letters(pdf, page);
        var parts = PdfReader.Shapes(pdf, page).SelectMany(shape => shape).ToArray();
        int Place(double left, double top, double right, double bottom) =>
            Array.FindIndex(corners, corner =>
                left >= corner.X - slack
                && right <= corner.X + sheet.WidthMm + slack
                && top >= corner.Y - slack
                && bottom <= corner.Y + sheet.HeightMm + slack
            );

        var codes = parts.ToLookup(part => Place(part.Left, part.Top, part.Right, part.Bottom));
        Assert.Empty(codes[-1]);
        foreach (var label in letters.GroupBy(letter => Place(letter.Left, letter.Top, letter.Right, letter.Bottom)))
        {
            Assert.True(
                label.Key >= 0,
                $"{sheet.Name}: \"{label.First().Text}\" at {label.First().Left}, {label.First().Top} leaves its label."
            );
            if (codes[label.Key].Any())
            {
                Assert.True(
                    label.Max(letter => letter.Right) <= codes[label.Key].Min(part => part.Left),
                    $"{sheet.Name}: text runs into the code."
                );
            }
        }
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static string Squeezed(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
