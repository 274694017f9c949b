using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>How far each figure may be off, and what no figure holds.</summary>
internal static class CaseUncertainty
{
    private const int MostHouses = 3;

    /// <summary>Writes the section.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        string seasons = Numbers.Count(input.Base.Seasons, "season", "seasons");
        flow.Heading("5. Uncertainty");
        if (input.Comparison is { } comparison)
        {
            flow.Table(
                [new($"Means of {seasons} of each", 4), new("Without", 2, TextSide.Right), new("With", 2, TextSide.Right), new("Difference", 2, TextSide.Right), new("Interval", 3, TextSide.Right)],
                Differences(input.Variant!),
                isSmall: true);
            flow.Small($"Each interval allows for all {Numbers.Whole(comparison.Comparisons)} comparisons (Bonferroni), so that with {Numbers.Percent(comparison.Confidence)} % confidence every one holds at once: Newcombe's paired interval for the chance, Student's interval of the mean difference, season by season, for the rest. "
                + "An interval that holds 0 says that no difference can be told.");
        }

        flow.Table(
            [new($"Season by season, {seasons}{(input.Comparison is null ? "" : " of each")}", 4), new(input.Changed is null ? "Mean" : "", 2), new("Mean and 95 % interval", 4, TextSide.Right), new("8 seasons of 10", 3, TextSide.Right)],
            Spread(input),
            isSmall: true);
        flow.Heading("What the figures leave out", 2);
        foreach (string sentence in Verdict.Of(input.Base).LeavesOut)
            flow.Point(sentence);
        flow.Point("Pests, disease, breakdowns, sickness of people and the market are left out. Seasons played are not seasons to come: they show what follows from the files that were played.");
    }

    private static IEnumerable<IReadOnlyList<string>> Differences(VariantResult variant)
    {
        FitChange fits = variant.Fits;
        yield return
        [
            "chance that the plan fits, %", CaseWords.Points(fits.Base.Share), CaseWords.Points(fits.Variant.Share), CaseWords.SignedPoints(fits.Difference),
            $"{CaseWords.SignedPoints(fits.Low)} to {CaseWords.SignedPoints(fits.High)}",
        ];
        foreach (MeasureChange change in variant.Changes)
        {
            Measure measure = change.Measure;
            string unit = measure.Kind == MeasureKind.EnergyCost || measure.Unit.Length == 0 ? "" : $", {PlainText.Short(measure.Unit, 20)}";
            yield return
            [
                PlainText.Short(measure.Name, 60) + unit, CaseWords.Amount(measure, change.Base), CaseWords.Amount(measure, change.Variant),
                CaseWords.Signed(measure, change.Difference), CaseWords.Interval(change),
            ];
        }
    }

    private static IEnumerable<IReadOnlyList<string>> Spread(CaseInput input)
    {
        foreach ((string name, Func<StudyResult, Estimate> figure) in Figures(input.Base))
        {
            yield return Row(name, input.Changed is null ? "" : "without", figure(input.Base));
            if (input.Changed is { } changed)
                yield return Row("", "with", figure(changed));
        }

        foreach (HouseResult house in input.Base.Houses.Where(house => house.Fuel is not null).Take(MostHouses))
        {
            var measure = new FuelMeasure(house.House.Heat!.Fuel, input.Base.Plan.Scenario.Units);
            string name = $"fuel of {CaseWords.Name(house.House.Name)}, {measure.Plural}";
            yield return Row(name, input.Changed is null ? "" : "without", measure.Of(house.Fuel!.Value));
            if (input.Changed?.Houses.FirstOrDefault(other => string.Equals(other.House.Id, house.House.Id, StringComparison.Ordinal))?.Fuel is { } fuel)
                yield return Row("", "with", measure.Of(fuel));
        }
    }

    private static (string Name, Func<StudyResult, Estimate> Figure)[] Figures(StudyResult study) =>
    [
        ($"plants out in time, of {Numbers.Whole(study.PlantsWanted)} wanted", result => result.PlantsInTime),
        ("plants out late", result => result.PlantsLate),
        ("plants never out", result => result.PlantsShort),
        ("late plant-days, every late day counted", result => result.LatePlantDays),
        ("trays that stood too long", result => result.OverHeld),
        ("hours of work", result => result.Work.Hours),
    ];

    private static IReadOnlyList<string> Row(string name, string which, Estimate estimate) =>
    [
        name,
        which,
        double.IsNaN(estimate.HalfWidth) ? Numbers.Short(estimate.Mean) : $"{Numbers.Short(estimate.Mean)} ({Spreads.MeanRange(estimate, Numbers.Short)})",
        $"{Numbers.Short(estimate.P10)} to {Numbers.Short(estimate.P90)}",
    ];
}
