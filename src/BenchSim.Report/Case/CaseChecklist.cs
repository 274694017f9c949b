using BenchSim.Report.Pdf;
using BenchSim.Report.Writing;

namespace BenchSim.Report.Case;

/// <summary>
/// The appendix: what a reviewer needs to judge and repeat the study, by the checklist STRESS-DES (Monks, Currie, Onggo, Robinson, Kunc and
/// Taylor 2019, "Strengthening the reporting of empirical simulation studies: Introducing the STRESS guidelines", Journal of Simulation
/// 13(1), 55-67).
/// </summary>
internal static class CaseChecklist
{
    /// <summary>Writes the appendix.</summary>
    public static void Write(PdfFlow flow, CaseInput input, IReadOnlyList<ReportInput> inputs)
    {
        flow.KeepTogether(60);
        flow.Heading("Appendix: reporting checklist STRESS-DES");
        flow.Small(
            "For a reviewer who wants to repeat the study. Items and numbers: T. Monks, C. S. M. Currie, B. S. Onggo, S. Robinson, "
                + "M. Kunc and S. J. E. Taylor (2019), Strengthening the reporting of empirical simulation studies: "
                + "Introducing the STRESS guidelines, Journal of Simulation 13(1), 55-67, doi 10.1080/17477778.2018.1442155. "
                + "Pages named docs/ come with the program."
        );
        flow.Table([new("Item", 3), new("In this study", 11)], Rows(input, inputs), isSmall: true);
    }

    /// <summary>All items, in order.</summary>
    public static IReadOnlyList<ChecklistItem> Items(CaseInput input, IReadOnlyList<ReportInput> inputs) =>
        [
            .. ChecklistModel.Objectives(input),
            .. ChecklistModel.Logic(input),
            .. ChecklistStudy.Data(input, inputs),
            .. ChecklistStudy.Experiment(input),
            .. ChecklistStudy.Program(input),
        ];

    private static IEnumerable<IReadOnlyList<string>> Rows(CaseInput input, IReadOnlyList<ReportInput> inputs)
    {
        string[] parts = ["Objectives", "Logic", "Data", "Experimentation", "Implementation", "Code access"];
        var last = '0';
        foreach (var item in Items(input, inputs))
        {
            if (item.Number[0] != last)
            {
                last = item.Number[0];
                yield return [$"{last} {parts[last - '1'].ToUpperInvariant()}", ""];
            }

            yield return [$"{item.Number} {item.Name}", item.Answer];
        }
    }
}
