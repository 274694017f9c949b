using System.Globalization;
using System.Text;

namespace EndToEnd.Faults;

/// <summary>
/// Absurd sizes within stated memory. The runtime is told how much memory its objects may take (DOTNET_GCHeapHardLimit, hexadecimal);
/// beyond it the command would end with a fault of its own. These are smaller than the sizes of docs/verification.md, which has the command
/// for each.
/// </summary>
public sealed class SizeTests
{
    // 3,000 sowings, checked, in 60 MB; 10,000 take 214 MB of the machine in all, the program itself included.
    [Fact]
    public async Task Thousands_of_batches_fit_in_sixty_megabytes()
    {
        using var farm = await SmallFarm.MakeAsync();
        File.WriteAllText(Path.Combine(farm.Scenario, "plan.csv"), Plan(3_000));

        var run = await Command.RunAsync([Most(60)], "run", farm.Scenario, "--seasons", "1", "--no-report");

        Assert.True(run.Code == 0, run.Error);
    }

    // Were anything kept of each season, 4,000 more of them would not fit in the same 16 MB.
    [Theory]
    [InlineData("50")]
    [InlineData("4000")]
    public async Task Many_seasons_take_no_more_memory_than_few(string seasons)
    {
        using var farm = await SmallFarm.MakeAsync();

        var run = await Command.RunAsync([Most(16)], "run", farm.Scenario, "--seasons", seasons, "--no-report", "--threads", "2");

        Assert.True(run.Code == 0, run.Error);
    }

    [Fact]
    public async Task More_batches_than_a_plan_may_have_are_a_fault_of_the_file()
    {
        using var farm = await SmallFarm.MakeAsync();
        File.WriteAllText(Path.Combine(farm.Scenario, "plan.csv"), Plan(10_001));

        var check = await Command.RunAsync("check", farm.Scenario);

        Assert.Equal(2, check.Code);
        Assert.Contains("the file has 10001 rows and was not read; it may have up to 10000", check.Error, StringComparison.Ordinal);
    }

    private static (string Name, string Value) Most(int megabytes) =>
        ("DOTNET_GCHeapHardLimit", (megabytes * 1024L * 1024).ToString("X", CultureInfo.InvariantCulture));

    private static string Plan(int batches)
    {
        var text = new StringBuilder("id,crop,grower,plants,sow\n");
        for (var index = 0; index < batches; index++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"b{index},tomato,grower {index % 40},{50 + (index % 100)},{new DateOnly(2027, 2, 15).AddDays(index % 60):yyyy-MM-dd}\n"
            );
        }

        return text.ToString();
    }
}
