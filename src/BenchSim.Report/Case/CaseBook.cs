using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>A case report as a PDF: the paper that goes with a request for a grant or a loan. The same case gives the same bytes.</summary>
internal static class CaseBook
{
    private const int MostFindings = 9;

    // A little smaller than the other papers, so that it stays within six pages.
    private const double TextPoints = 9;

    /// <summary>Writes it.</summary>
    /// <param name="input">The case.</param>
    /// <param name="inputs">The files that were played.</param>
    public static byte[] Write(CaseInput input, IReadOnlyList<ReportInput> inputs)
    {
        CaseInput.Check(input);
        var scenario = input.Base.Plan.Scenario;
        var title = $"Case report: {PlainText.Short(scenario.Name, 80)}";
        using var book = new PdfBook(title);
        var flow = new PdfFlow(book, input.Paper == CasePaper.Letter ? PaperSize.Letter : PaperSize.A4, title, TextPoints);
        flow.Title(title);
        About(flow, input);
        CaseSummary.Write(flow, input);
        Front(flow, input);
        CaseMethod.Write(flow, input);
        CaseCharts.Write(flow, input);
        CaseMoney.Write(flow, input);
        CaseUncertainty.Write(flow, input);
        CaseCautions.Write(flow, input);
        CaseChecklist.Write(flow, input, inputs);
        flow.Finish();
        return book.ToBytes();
    }

    private static void About(PdfFlow flow, CaseInput input)
    {
        var study = input.Base;
        flow.Small(
            $"{Dates.Full(study.Plan.FirstDay)} to {Dates.Full(study.Plan.LastDay)} · "
                + $"{Numbers.Count(study.Batches.Length, "batch", "batches")} · {Numbers.Count(study.PlantsWanted, "plant", "plants")} "
                + $"wanted{ClusterWords.OfWhich(study.Plan)} · {Numbers.Count(study.Seasons, "season", "seasons")} played"
                + $"{(input.Comparison is null ? "" : " of each")} · "
                + "made with BenchSim"
        );
    }

    private static void Front(PdfFlow flow, CaseInput input)
    {
        flow.Heading("1. Question and answer");
        flow.Paragraph("Question: " + CaseWords.Question(input));
        var verdict = Verdict.Of(input.Base);
        if (input.Variant is { } variant)
        {
            Compared(flow, input, variant);
        }
        else
        {
            flow.Paragraph($"Answer: {verdict.Headline} {verdict.Chance}", isBold: true);
            foreach (var sentence in verdict.Sentences.Take(MostFindings))
            {
                flow.Point(sentence);
            }
        }

        flow.Space(1.5);
        if (input.Note is { } note)
        {
            flow.Small(PlainText.Short(note, 500));
        }
    }

    private static void Compared(PdfFlow flow, CaseInput input, VariantResult variant)
    {
        flow.Paragraph("Answer: " + CompareSentences.Fits(variant.Name, variant.Fits, input.Base.Seasons), isBold: true);
        flow.Point(
            $"Without it the plan fits in {ChanceWords.OfAllSeasons(input.Base.Fits)}; "
                + $"with it in {ChanceWords.OfAllSeasons(input.Changed!.Fits)}."
        );
        foreach (var change in variant.Changes.Where(change => change.IsReal && !change.Measure.Is(Measures.MeanHeld)).Take(5))
        {
            flow.Point(CaseWords.Real(change));
        }

        if (!variant.Changes.Any(change => change.IsReal))
        {
            flow.Point("No other difference is clear.");
        }

        if (input.Money is { } money)
        {
            flow.Point(InvestSentences.Headline(money));
            flow.Point(InvestSentences.Chance(money));
        }

        flow.Space(1.5);
        flow.Small(
            $"All differences are means of {Numbers.Count(input.Base.Seasons, "season", "seasons")} of each, the same ones. "
                + $"With 95 % confidence the intervals of all {Numbers.Whole(input.Comparison!.Comparisons)} differences compared hold at "
                + "once (section 5)."
        );
    }
}
