using BenchSim.Report.Case;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Writing;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Case;

public sealed class CaseFolderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_case_stands_beside_the_files_that_were_played()
    {
        CaseFolder.Write(_folder.In("case"), CaseSample.Spring(), CaseSample.Inputs, CancellationToken.None);

        var files = TemporaryFolder.Files(_folder.In("case"));
        Assert.Equal([".benchsim-files", ".benchsim-report", "case.pdf", "inputs/plan.csv", "inputs/site.toml"], files.Keys.ToArray());
        Assert.Equal(CaseSample.Inputs[0].Bytes.ToArray(), files["inputs/plan.csv"]);
        Assert.Equal("%PDF-"u8.ToArray(), files["case.pdf"][..5]);
    }

    [Fact]
    public void An_earlier_case_is_replaced_as_a_whole_and_nothing_else_is()
    {
        CaseFolder.Write(_folder.In("case"), CaseSample.Spring(), CaseSample.Inputs, CancellationToken.None);
        CaseFolder.Write(_folder.In("case"), CaseSample.Spring(), CaseSample.Inputs[..1], CancellationToken.None);
        Assert.False(File.Exists(_folder.In("case/inputs/site.toml")));

        File.WriteAllText(_folder.In("case/mine.txt"), "mine");
        Assert.Throws<ReportRefusedException>(() => CaseFolder.Check(_folder.In("case")));
        ReportFolder.Write(_folder.In("report"), SyntheticStudy.Tiny(), CaseSample.Inputs, null, null, CancellationToken.None);
        Assert.Throws<ReportRefusedException>(() =>
            CaseFolder.Write(_folder.In("report"), CaseSample.Spring(), CaseSample.Inputs, CancellationToken.None)
        );
        Assert.True(File.Exists(_folder.In("report/report.html")));
        File.WriteAllText(_folder.In("letter"), "dear");
        Assert.Throws<ReportRefusedException>(() => CaseFolder.Check(_folder.In("letter")));
    }

    [Fact]
    public void A_stopped_case_leaves_nothing()
    {
        Assert.Throws<OperationCanceledException>(() =>
            CaseFolder.Write(_folder.In("case"), CaseSample.Spring(), CaseSample.Inputs, new CancellationToken(canceled: true))
        );
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void A_report_can_hold_a_case_and_is_replaced_with_it()
    {
        var study = SyntheticStudy.Tiny();
        ReportFolder.Write(_folder.In("report"), study, CaseSample.Inputs, null, CaseSample.Run(study), CancellationToken.None);
        Assert.True(File.Exists(_folder.In("report/case.pdf")));
        ReportFolder.Write(_folder.In("report"), study, CaseSample.Inputs, null, null, CancellationToken.None);
        Assert.False(File.Exists(_folder.In("report/case.pdf")));
    }
}
