namespace BenchSim.Cli.Tests;

/// <summary>Every command says what it does, with an example.</summary>
public sealed class HelpTests
{
    [Theory]
    [InlineData("new", "DIR", "benchsim new spring", false)]
    [InlineData("new", "DIR", "benchsim new spring --farm hoop-house --climate cold --units metric", false)]
    [InlineData("check", "DIR", "benchsim check spring")]
    [InlineData("check", "DIR", "benchsim check spring --stand")]
    [InlineData("run", "DIR", "benchsim run spring --season 17 --batch broccoli-2")]
    [InlineData("run", "DIR", "benchsim run spring --precision 2%")]
    [InlineData("run", "DIR", "benchsim run spring --seasons 100000 --shard 2/8")]
    [InlineData("run", "DIR", "benchsim run spring --case")]
    [InlineData("compare", "DIR", "benchsim compare spring --with second-house --case")]
    [InlineData("merge", "PART", "benchsim merge spring.*-of-8.part")]
    [InlineData("dense", "DIR", "benchsim dense spring --crop tomato --seeds-per-flat 200 --out tomato-dense")]
    [InlineData("invest", "DIR", "benchsim invest spring --with second-house")]
    [InlineData("level", "DIR", "benchsim level spring")]
    [InlineData("succession", "DIR", "benchsim succession spring --batch lettuce --every 7 10 14 --times 4 6 --gap 12")]
    [InlineData("weather", "FILE", "benchsim weather spring/weather.csv")]
    [InlineData("weather", "FILE", "benchsim weather station.csv --temperature-unit F --rain-unit in --out station-weather")]
    [InlineData("bottlenecks", "DIR", "benchsim bottlenecks spring")]
    [InlineData("size", "DIR", "benchsim size spring --space table")]
    [InlineData("print", "DIR", "benchsim print spring --week 2027-03-15 --what list,labels --labels a4-21")]
    public void Help_of_a_command_has_an_example(string command, string argument, string example, bool isNeeded = true)
    {
        var help = Call.Run(command, "--help");
        Assert.Equal(0, help.Code);
        Assert.Contains(
            isNeeded ? $"benchsim {command} <{argument}>" : $"benchsim {command} [<{argument}>]",
            help.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("  " + example + "\n", help.Output, StringComparison.Ordinal);
        Assert.Contains("--json", help.Output, StringComparison.Ordinal);
        Assert.Empty(help.Error);
    }

    [Fact]
    public void Help_of_the_program_lists_the_commands_and_the_exit_codes()
    {
        var help = Call.Run("--help");
        Assert.Equal(0, help.Code);
        foreach (
            var text in new[]
            {
                "new <DIR>",
                "check <DIR>",
                "run <DIR>",
                "weather <FILE>",
                "benchsim run spring",
                "130  stopped with Ctrl-C",
            }
        )
        {
            Assert.Contains(text, help.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Help_wins_over_faults_of_the_command_line() => Assert.Equal(0, Call.Run("run", "--nonsense", "--help").Code);

    [Fact]
    public void No_command_at_all_shows_the_help_on_standard_error()
    {
        var nothing = Call.Run();
        Assert.Equal(2, nothing.Code);
        Assert.Empty(nothing.Output);
        Assert.Contains("benchsim run spring", nothing.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Version_is_a_number_without_a_place_or_date() =>
        Assert.Matches(@"\A[0-9]+\.[0-9]+\.[0-9]+\s*\z", Call.Run("--version").Output);
}
