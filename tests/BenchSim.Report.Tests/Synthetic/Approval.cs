using System.Text;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>
/// Compares with the approved files in Approved. Run the tests with BENCHSIM_APPROVE=1 to write them anew; then read what changed.
/// </summary>
internal static class Approval
{
    public static bool IsApproving { get; } = Environment.GetEnvironmentVariable("BENCHSIM_APPROVE") == "1";

    public static void Check(string name, byte[] actual)
    {
        var file = Repository.File("tests/BenchSim.Report.Tests/Approved/" + name);
        if (IsApproving)
        {
            File.WriteAllBytes(file, actual);
        }

        Assert.Equal(Encoding.UTF8.GetString(File.ReadAllBytes(file)), Encoding.UTF8.GetString(actual));
    }
}
