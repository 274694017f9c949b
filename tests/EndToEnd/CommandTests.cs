namespace EndToEnd;

/// <summary>The command as it is built, in a process of its own.</summary>
public sealed class CommandTests
{
    [Fact]
    public async Task From_nothing_to_a_report_in_three_commands()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        Assert.Equal(0, (await Command.RunAsync("new", spring)).Code);
        Assert.Equal(0, (await Command.RunAsync("check", spring)).Code);
        var run = await Command.RunAsync("run", spring, "--seasons", "20");
        Assert.Equal(0, run.Code);
        Assert.Empty(run.Error);
        Assert.True(File.Exists(folder.In("spring-report/report.html")));
        Assert.True(File.Exists(folder.In("spring-report/result.json")));
        Assert.NotEmpty(Directory.GetFiles(folder.In("spring-report/charts"), "*.png"));
    }

    [Fact]
    public async Task Output_that_goes_to_a_file_has_no_control_codes()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.In("spring");
        await Command.RunAsync("new", spring);
        foreach (var call in new[] { new[] { "check", spring }, ["run", spring, "--seasons", "5", "--no-report"], ["run", "--help"] })
        {
            var done = await Command.RunAsync(call);
            Assert.Equal(0, done.Code);
            Assert.DoesNotContain(done.Output + done.Error, c => char.IsControl(c) && c is not ('\n' or '\r'));
        }
    }

    [Fact]
    public async Task Bad_input_ends_with_exit_code_2_and_no_trace()
    {
        var check = await Command.RunAsync("check", "no-such-folder-anywhere");
        Assert.Equal(2, check.Code);
        Assert.Empty(check.Output);
        Assert.DoesNotContain("   at ", check.Error, StringComparison.Ordinal);
    }
}
