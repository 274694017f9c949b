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
        CaseFolder.Write(_folder.At("case"), CaseSample.Spring(), CaseSample.Inputs, CancellationToken.None);

        var files = TemporaryFolder.Files(_folder.At("case"));
        Assert.Equal([".benchsim-report", "case.pdf", "inputs/plan.csv", "inputs/site.toml"], files.Keys.ToArray());
        Assert.Equal(CaseSample.Inputs[0].Bytes.ToArray(), files["inputs/plan.csv"]);
        Assert.Equal("%PDF-"u8.ToArray(), files["case.pdf"][..5]);
    }

    [Fact]
    public void An_earlier_case_is_replaced_as_a_whole_and_nothing_else_is()
    {
        CaseFolder.Write(_folder.At("case"), CaseSample.Spring(), CaseSample.Inputs, CancellationToken.None);
        CaseFolder.Write(_folder.At("case"), CaseSample.Spring(), CaseSample.Inputs[..1], CancellationToken.None);
        Assert.False(File.Exists(_folder.At("case/inputs/site.toml")));

        File.WriteAllText(_folder.At("case/mine.txt"), "mine");
        Assert.Throws<ReportRefusedException>(() => CaseFolder.Check(_folder.At("case")));
        ReportFolder.Write(_folder.At("report"), SyntheticStudy.Tiny(), CaseSample.Inputs, null, CancellationToken.None);
        Assert.Throws<ReportRefusedException>(() =>
            CaseFolder.Write(_folder.At("report"), CaseSample.Spring(), CaseSample.Inputs, CancellationToken.None)
        );
        Assert.True(File.Exists(_folder.At("report/report.html")));
        File.WriteAllText(_folder.At("letter"), "dear");
        Assert.Throws<ReportRefusedException>(() => CaseFolder.Check(_folder.At("letter")));
    }

    [Fact]
    public void A_stopped_case_leaves_nothing()
    {
        Assert.Throws<OperationCanceledException>(() =>
            CaseFolder.Write(_folder.At("case"), CaseSample.Spring(), CaseSample.Inputs, new CancellationToken(canceled: true))
        );
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void A_report_can_hold_a_case_and_is_replaced_with_it()
    {
        var study = SyntheticStudy.Tiny();
        ReportFolder.Write(_folder.At("report"), study, CaseSample.Inputs, null, CaseSample.Run(study), CancellationToken.None);
        Assert.True(File.Exists(_folder.At("report/case.pdf")));
        ReportFolder.Write(_folder.At("report"), study, CaseSample.Inputs, null, CancellationToken.None);
        Assert.False(File.Exists(_folder.At("report/case.pdf")));
    }
}
