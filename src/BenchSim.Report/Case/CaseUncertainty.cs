using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>How far each figure may be off, and what no figure holds.</summary>
internal static class CaseUncertainty
{
    private const int MostHouses = 3;

    /// <summary>Writes the section.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        var seasons = Numbers.Count(input.Base.Seasons, "season", "seasons");
        flow.KeepTogether(45);
        flow.Heading("5. Uncertainty");
        if (input.Comparison is { } comparison)
        {
            flow.Table(
                [
                    new($"Means of {seasons} of each", 4),
                    new("Without", 2, TextSide.Right),
                    new("With", 2, TextSide.Right),
                    new("Difference", 2, TextSide.Right),
                    new("Interval", 3, TextSide.Right),
                ],
                Differences(input.Variant!),
                isSmall: true
            );
            flow.Small(
                $"Each interval allows for all {Numbers.Whole(comparison.Comparisons)} comparisons (Bonferroni), "
                    + $"so that with {ChanceWords.Setting(comparison.Confidence)} confidence every one holds at once: Newcombe's paired "
                    + "interval for the chance, Student's interval of the mean difference, season by season, for the rest. "
                    + "An interval that holds 0 shows no clear difference."
            );
        }
        else
        {
            // Where there is a change, the summary says it.
            flow.Paragraph(OfValues(input));
        }

        Spread(flow, input, seasons);
        flow.Heading("What the figures leave out", 2);
        foreach (
            var sentence in Verdict
                .Of(input.Base)
                .LeavesOut.Union(input.Changed is { } changed ? Verdict.Of(changed).LeavesOut : [], StringComparer.Ordinal)
        )
        {
            flow.Point(sentence);
        }

        var beyond = input.Base.Plan.Scenario.Mishaps.IsEmpty ? "Pests" : "But for the mishaps counted, pests";
        flow.Point(
            $"{beyond}, disease, breakdowns, sickness of people and the market are left out. Seasons played are not seasons to come: "
                + "they show what follows from the files that were played."
        );
    }

    /// <summary>How wide the chance of the plan as it is really is: by luck, and by the values behind it.</summary>
    public static string OfValues(CaseInput input) =>
        string.Join(
            ' ',
            new[]
            {
                $"The plan as it is fits in {ChanceWords.Fine(input.Base.Fits.Share)} of {Numbers.Whole(input.Base.Seasons)} seasons, "
                    + $"by luck alone {ChanceWords.FineInterval(input.Base.Fits)}.",
                VerdictChance.Weak(input.Base),
                input.OverValues,
            }.OfType<string>()
        );

    private static IEnumerable<IReadOnlyList<string>> Differences(VariantResult variant)
    {
        var fits = variant.Fits;
        yield return
        [
            "chance that the plan fits, %",
            ChanceWords.FineNumber(fits.Base.Share),
            ChanceWords.FineNumber(fits.Variant.Share),
            ChanceWords.SignedPoints(fits.Difference),
            ChanceWords.SignedPoints(fits),
        ];
        foreach (var change in variant.Changes)
        {
            var measure = change.Measure;
            var decimals = CompareFigures.Decimals(change);
            var isSaid = measure.IsMoney || measure.Name.Contains(measure.Unit, StringComparison.Ordinal);
            var unit = isSaid ? "" : $", {PlainText.Short(measure.Unit, 20)}";
            yield return
            [
                PlainText.Short(measure.Name, 60) + unit,
                CompareFigures.Amount(measure, change.Base, decimals),
                CompareFigures.Amount(measure, change.Variant, decimals),
                CompareFigures.Signed(measure, change.Difference, decimals),
                CompareFigures.Interval(change) ?? "–",
            ];
        }
    }

    private static void Spread(PdfFlow flow, CaseInput input, string seasons)
    {
        var first = $"Mean of {seasons}";
        if (input.Changed is not { } changed)
        {
            flow.Table(
                [new("Figure", 4), new($"{first} (95 % interval)", 4, TextSide.Right), new("8 seasons of 10", 3, TextSide.Right)],
                Figures(input).Select(row => new[] { row.Name, Mean(row.Figure(input.Base)), Range(row.Figure(input.Base)) }),
                isSmall: true
            );
            return;
        }

        flow.Table(
            [
                new("Figure", 5),
                new($"Without: mean of {seasons} (95 % interval)", 5, TextSide.Right),
                new("8 seasons of 10", 4, TextSide.Right),
                new($"With: mean of {seasons} (95 % interval)", 5, TextSide.Right),
                new("8 seasons of 10", 4, TextSide.Right),
            ],
            Figures(input)
                .Select(row =>
                    new[]
                    {
                        row.Name,
                        Mean(row.Figure(input.Base)),
                        Range(row.Figure(input.Base)),
                        Mean(row.Figure(changed)),
                        Range(row.Figure(changed)),
                    }
                ),
            isSmall: true
        );
    }

    private static IEnumerable<(string Name, Func<StudyResult, Estimate?> Figure)> Figures(CaseInput input)
    {
        var wanted = Numbers.Whole(input.Base.PlantsWanted);
        var other =
            input.Changed is { } with && with.PlantsWanted != input.Base.PlantsWanted ? $" ({Numbers.Whole(with.PlantsWanted)} with)" : "";
        yield return ($"plants out in time, of {wanted} wanted{other}", result => result.PlantsInTime);
        yield return ("plants out late", result => result.PlantsLate);
        yield return ("plants never out", result => result.PlantsShort);
        if (!input.Base.Plan.Scenario.Mishaps.IsEmpty || input.Changed?.Plan.Scenario.Mishaps.IsEmpty == false)
        {
            yield return ("plants lost to mishaps", result => result.PlantsLostToMishaps);
        }

        yield return ("late plant-days, every late day counted", result => result.LatePlantDays);
        yield return ("trays past their best, for whatever reason", result => result.OverHeld);
        yield return ("hours of work", result => result.Work.Hours);
        var houses = input
            .Base.Houses.Concat(input.Changed?.Houses ?? [])
            .Where(house => house.Fuel is not null)
            .DistinctBy(house => house.House.Id, StringComparer.Ordinal);
        foreach (var house in houses.Take(MostHouses).Select(result => result.House))
        {
            var measure = new FuelMeasure(house.Heat!.Fuel, input.Base.Plan.Scenario.Units);
            yield return ($"fuel of {CaseWords.Name(house.Name)}, {measure.Plural}", result =>
                result.Houses.FirstOrDefault(other => string.Equals(other.House.Id, house.Id, StringComparison.Ordinal))?.Fuel is { } fuel
                    ? measure.Of(fuel)
                    : null
            );
        }
    }

    private static string Mean(Estimate? figure) =>
        figure switch
        {
            null => "–",
            { } estimate when double.IsNaN(estimate.HalfWidth) => Numbers.Short(estimate.Mean),
            { } estimate => $"{Numbers.Short(estimate.Mean)} ({Spreads.MeanRange(estimate, Numbers.Short)})",
        };

    private static string Range(Estimate? figure) =>
        figure is { } estimate ? $"{Numbers.Short(estimate.P10)} to {Numbers.Short(estimate.P90)}" : "–";
}
