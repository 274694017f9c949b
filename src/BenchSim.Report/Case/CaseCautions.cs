using BenchSim.Report.Pdf;
using BenchSim.Report.Words;
using BenchSim.Season.Heat;
using BenchSim.Study.Invest;

namespace BenchSim.Report.Case;

/// <summary>What a reader must know before money is spent or anything is built.</summary>
internal static class CaseCautions
{
    /// <summary>Writes the section.</summary>
    public static void Write(PdfFlow flow, CaseInput input)
    {
        flow.Heading("6. Cautions");
        string[] main = [.. Main(input)];
        foreach (var caution in main[..^1])
        {
            flow.Point(caution);
        }

        if (input.Base.Houses.Any(house => house.Fuel is not null) || input.Changed?.Houses.Any(house => house.Fuel is not null) == true)
        {
            flow.Point("Fuel: " + HeatCautions.Fuel);
        }

        flow.Point("Trays in an aisle can block the way out. Keep exits and access clear.");
        flow.Point(main[^1]);
    }

    /// <summary>Those that stand on the summary too, the one of the money last.</summary>
    public static IEnumerable<string> Main(CaseInput input) =>
        [
            "This report counts places and days. It says nothing about whether a structure, a heater, a circuit or a bench is safe.",
            InvestCautions.Building,
            "Heat mats and other electrical equipment near water can kill: outlets, ground-fault protection and loads are for "
                + "licensed electricians.",
            input.Money is null ? "This is no financial advice. It is only as good as the figures put in." : InvestCautions.Advice,
        ];
}
