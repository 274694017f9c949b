namespace BenchSim.Cli.Tests;

/// <summary>The screen that what a command prints first must fit: 24 lines of 80 columns.</summary>
internal static class FirstScreen
{
    private const int Lines = 24;
    private const int Columns = 80;

    /// <summary>The lines of a command that is done and fits a screen. A line that names a path may be longer.</summary>
    public static string[] Of(Call call, params string[] paths)
    {
        Assert.Equal((0, ""), (call.Code, call.Error));
        var lines = call.Output.TrimEnd('\n').Split('\n');
        Assert.True(lines.Length <= Lines, call.Output);
        Assert.All(lines, line =>
            Assert.True(line.Length <= Columns || paths.Any(path => line.Contains(path, StringComparison.Ordinal)), line)
        );
        return lines;
    }
}
