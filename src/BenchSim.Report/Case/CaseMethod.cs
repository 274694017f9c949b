using BenchSim.Report.Html;
using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Case;

/// <summary>How the answer was found, for a reader who has never heard of simulation.</summary>
internal static class CaseMethod
{
    /// <summary>Writes the section.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        var scenario = input.Base.Plan.Scenario;
        flow.Heading("2. Method in plain words");
        flow.Drawing(
            13,
            (sheet, left, top) => Way(sheet, left, top, flow.WidthMm),
            "Figure 1. The way of a tray. Flats of seedlings are potted up on the bench."
        );
        var same = input.Comparison is null
            ? ""
            : $" The plan is played without and with {CaseWords.Name(input.Variant!.Name)}, with the same weather, seed and "
                + "growth in both, so that a difference comes from the change and not from chance.";
        var waits = scenario.Rules.Reliefs.IsEmpty
            ? "it waits where it stands, and keeps its place there"
            : $"it waits where it stands, or room is made ({string.Join(", ", scenario.Rules.Reliefs.Select(ReliefFields.Deed))})";
        flow.Point(
            "The season is played on a computer day by day and tray by tray. Once each work day, at "
                + $"{scenario.Rules.RoundAt.ToString("HH:mm", null)}, what is ready moves on if there is a place for it; if there is none, "
                + $"{waits}."
        );
        flow.Point(
            $"Weather: {WeatherPart.Words(scenario)}. Cold nights and rain hold trays back; the air in the houses, and so growth, "
                + "follows from it."
        );
        flow.Point(
            "Chance: each season draws anew how good each packet of seed is, how many seeds of a tray come up, "
                + "and how fast each batch comes up and grows."
        );
        if (!scenario.Mishaps.IsEmpty)
        {
            flow.Point(Mishaps(scenario));
        }

        flow.Point(
            $"Seasons: {Numbers.Count(input.Base.Seasons, "season is", "seasons are")} played, from the seed "
                + $"{input.Base.Seed.ToString(null, null)}; the same seed gives the same answer again.{same}"
        );
        flow.Point(
            $"A season fits when {FitRule.Of(input.Base.Plan)}.{(input.Comparison is null ? "" : " Both are judged by this one rule.")}"
        );
        flow.Point(
            "An interval of 95 % says how far a figure may be off because only so many seasons were played. “Eight seasons of ten” "
                + "says how much one season differs from another; more seasons do not narrow it."
        );
        if (input.Comparison is not null)
        {
            Changes(flow, input);
        }
    }

    private static string Mishaps(Scenario scenario) =>
        "Mishaps, each at most once a season: "
        + MishapWords.First(scenario, each =>
            $"{CaseWords.Name(each.Name)} in {ChanceWords.Setting(each.Chance)} of seasons, on a day from {Dates.Full(each.From)} to "
            + $"{Dates.Full(each.To)} ({PlainText.Short(MishapWords.Struck(scenario, each), 60)}: "
            + $"{ChanceWords.Setting(each.Loss)} of the plants lost)"
        )
        + ".";

    private static void Changes(PdfFlow flow, CaseInput input)
    {
        flow.Heading($"What {CaseWords.Name(input.Variant!.Name)} changes", 2);
        foreach (var change in CaseChanges.Of(input.Base.Plan, input.Changed!.Plan))
        {
            flow.Point(change);
        }
    }

    // Five boxes with arrows between them.
    private static void Way(PdfSheet sheet, double left, double top, double width)
    {
        string[] stations = ["sown", "heat mat", "bench", "hardening table", "field"];
        const double gap = 8;
        var box = (width - (gap * (stations.Length - 1))) / stations.Length;
        var style = new TextStyle(9);
        for (var at = 0; at < stations.Length; at++)
        {
            var x = left + (at * (box + gap));
            sheet.Fill(x, top + 1, box, 9, Ink.Pale);
            sheet.Frame(x, top + 1, box, 9, 0.2, Ink.Grey);
            sheet.TextWithin(stations[at], x, top + 3.3, box, style, TextSide.Middle);
            if (at == 0)
            {
                continue;
            }

            sheet.Rule(x - gap + 1, top + 5.5, x - 2, top + 5.5, 0.3);
            sheet.Area([(x - 1, top + 5.5), (x - 3.2, top + 4.6), (x - 3.2, top + 6.4)], Ink.Black);
        }
    }
}
