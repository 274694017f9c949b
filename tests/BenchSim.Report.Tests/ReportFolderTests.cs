using BenchSim.Report.Tests.Synthetic;

namespace BenchSim.Report.Tests;

public class ReportFolderTests
{
    [Fact]
    public void Draft()
    {
        string root = Environment.GetEnvironmentVariable("DRAFT") ?? "";
        if (root.Length == 0)
            return;
        foreach (var (name, result) in new[] { ("spring", SyntheticStudy.Spring()), ("large", SyntheticStudy.Large()) })
        {
            for (int i = 0; i < 3; i++)
            {
                var watch = System.Diagnostics.Stopwatch.StartNew();
                ReportFolder.Write(Path.Combine(root, name), result, [new ReportInput("site.toml", new byte[] { 65 })], null, default);
                Console.WriteLine($"{name} {watch.Elapsed.TotalMilliseconds:F0} ms");
            }
        }
    }
}
