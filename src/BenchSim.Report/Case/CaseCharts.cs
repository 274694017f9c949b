using BenchSim.Report.Charts;
using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>The spaces through the season, with and without the change, on one page.</summary>
internal static class CaseCharts
{
    private const int MostSpaces = 5;
    private const double LeastRowMm = 28;
    private const double MostRowMm = 44;
    private const double CaptionMm = 11;

    // All drawings together are no taller than this, so that the report keeps its length.
    private const double DrawingsMm = 180;

    /// <summary>Writes the section.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        var all = Pairs(input);
        (SpaceResult? Without, SpaceResult? With)[] shown =
        [
            .. all.OrderByDescending(Waited).Take(MostSpaces).OrderBy(pair => Array.IndexOf(all, pair)),
        ];
        flow.KeepTogether(30 + LeastRowMm + CaptionMm);
        flow.Heading(input.Comparison is null ? "3. The spaces through the season" : "3. With and without: the spaces through the season");
        var side = input.Comparison is null ? "" : $" Left: without; right: with {CaseWords.Name(input.Variant!.Name)}.";
        flow.Drawing(
            5,
            (sheet, left, top) => PdfPainter.Key(sheet, OccupancyChart.Key, left, top, flow.WidthMm),
            $"Trays by day, in places. Wanted is what the plan would take without limits, every tray on its first choice.{side} Below "
                + $"each: most places there are, and the median of {Numbers.Count(input.Base.Seasons, "season", "seasons")}, "
                + "eight seasons of ten in brackets."
        );
        var row = Math.Clamp((DrawingsMm / shown.Length) - CaptionMm, LeastRowMm, MostRowMm);
        foreach ((var without, var with) in shown)
        {
            var name = PlainText.Short((without ?? with)!.Space.Name, 80);
            flow.Drawing(
                row,
                (sheet, left, top) => Draw(sheet, input, name, without, with, left, top, flow.WidthMm, row),
                Reading(input, without, with)
            );
        }

        if (all.Length > shown.Length)
        {
            var names = all.Except(shown).Take(6).Select(pair => PlainText.Short((pair.Without ?? pair.With)!.Space.Name, 30));
            flow.Small(
                $"Not drawn: {Numbers.Count(all.Length - shown.Length, "space", "spaces")} with less waiting, {string.Join(", ", names)}."
            );
        }
    }

    private static void Draw(
        PdfSheet sheet,
        CaseInput input,
        string name,
        SpaceResult? without,
        SpaceResult? with,
        double left,
        double top,
        double width,
        double height
    )
    {
        var up = OccupancyChart.Up(new Dates(input.Base.Plan), [.. new[] { without, with }.OfType<SpaceResult>()]);
        if (input.Changed is not { } changed)
        {
            Half(name, without, input.Base, left, width);
            return;
        }

        var half = (width - 4) / 2;
        Half("without: " + name, without, input.Base, left, half);
        Half("with: " + name, with, changed, left + half + 4, half);

        // Both charts of a space have one scale.
        void Half(string title, SpaceResult? space, StudyResult result, double x, double wide)
        {
            if (space is null)
            {
                PdfPainter.Blank(sheet, title, "not there", x, top, wide, height);
                return;
            }

            PdfPainter.Plot(sheet, OccupancyChart.Of(space, result) with { Title = title, Up = up }, x, top, wide, height);
        }
    }

    // Spaces of both, those of the base first, each with its like.
    private static (SpaceResult? Without, SpaceResult? With)[] Pairs(CaseInput input)
    {
        if (input.Changed is not { } changed)
        {
            return [.. input.Base.Spaces.Select(space => ((SpaceResult?)space, (SpaceResult?)null))];
        }

        var others = changed.Spaces.ToDictionary(space => space.Space.Id, StringComparer.Ordinal);
        var known = input.Base.Spaces.Select(space => space.Space.Id).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. input.Base.Spaces.Select(space => ((SpaceResult?)space, others.GetValueOrDefault(space.Space.Id))),
            .. changed.Spaces.Where(space => !known.Contains(space.Space.Id)).Select(space => ((SpaceResult?)null, (SpaceResult?)space)),
        ];
    }

    private static double Waited((SpaceResult? Without, SpaceResult? With) pair) =>
        Math.Max(pair.Without?.WaitedDays.Mean ?? 0, pair.With?.WaitedDays.Mean ?? 0);

    private static string Reading(CaseInput input, SpaceResult? without, SpaceResult? with)
    {
        if (input.Comparison is null)
        {
            return $"{Words(without!)}.";
        }

        if (without is null || with is null)
        {
            return without is null ? $"Not there without; with: {Words(with!)}." : $"Without: {Words(without)}; with: not there.";
        }

        return $"Without: {Words(without)}. With: {Numbers.Whole(with.Places.Max())} places, {Use(with)}.";
    }

    private static string Words(SpaceResult space) => $"{Numbers.Count(space.Places.Max(), "place", "places")}, {Use(space)}";

    // A space that is nobody's first choice is not superfluous: it holds what finds no place elsewhere.
    private static string Use(SpaceResult space)
    {
        var wanted = space.Wanted.Max(day => day.P50);
        var demand =
            wanted == 0 && space.Peak.Most > 0
                ? "no tray's first choice, it takes what finds no place elsewhere"
                : $"{Numbers.Whole(wanted)} wanted on the fullest date";
        return $"{demand}, {Spreads.Cell(space.Peak)} held at the peak, {Spreads.Cell(space.WaitedDays)} tray-days waited";
    }
}
