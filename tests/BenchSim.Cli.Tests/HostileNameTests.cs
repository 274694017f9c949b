namespace BenchSim.Cli.Tests;

/// <summary>Names a careless or ill-willed person may write into a plan.</summary>
public sealed class HostileNameTests
{
    private const string Hostile = "[bold]x[/] \u001b]0;title\u0007 \u202Eevil";

    [Theory]
    [InlineData("check")]
    [InlineData("check", "--all")]
    [InlineData("check", "--sources")]
    [InlineData("check", "--json")]
    [InlineData("check", "--stand")]
    [InlineData("run", "--seasons=5", "--no-report")]
    [InlineData("run", "--season=1", "--batch=basil")]
    [InlineData("print", "--what=list,order")]
    [InlineData("print", "--what=list,order", "--grower=[bold]Salad[/] crew")]
    [InlineData("level", "--seasons=2", "--fill=50%")]
    [InlineData("succession", "--batch=basil", "--every=7", "--times=2", "--gap=9", "--seasons=2")]
    public void Reach_the_terminal_harmless(string command, params string[] options)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        var plan = Path.Combine(spring, "plan.csv");
        File.WriteAllText(plan, File.ReadAllText(plan).Replace("Salad crew", "[bold]Salad[/] crew", StringComparison.Ordinal));
        var site = Path.Combine(spring, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("Main benches", "[red]Main[/] benches", StringComparison.Ordinal));
        var call = Call.Run([command, spring, .. options]);
        Assert.Equal(0, call.Code);
        AssertHarmless(call);
        if (options is ["--all"])
        {
            Assert.Contains("[bold]Salad[/] crew", call.Output, StringComparison.Ordinal);
            Assert.Contains("[red]Main[/] benches", call.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("check")]
    [InlineData("run")]
    [InlineData("new")]
    [InlineData("weather")]
    [InlineData("level")]
    public void A_hostile_folder_name_reaches_the_terminal_harmless(string command)
    {
        using var folder = new TemporaryFolder();
        var call = Call.Run(command, folder.In(Hostile + (string.Equals(command, "new", StringComparison.Ordinal) ? "" : "/none")));
        AssertHarmless(call);
        Assert.Contains("[bold]x[/]", call.Output + call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_words_of_the_command_line_reach_the_terminal_harmless()
    {
        var call = Call.Run("run", "x", "--" + Hostile, "--seasons", Hostile, "--batch", Hostile);
        Assert.Equal(2, call.Code);
        AssertHarmless(call);
    }

    [Fact]
    public void A_hostile_cell_reaches_the_terminal_harmless()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        File.AppendAllText(Path.Combine(spring, "plan.csv"), $"{Hostile},{Hostile},{Hostile},{Hostile},{Hostile},,,,,,,,,,,,,,\n");
        var call = Call.Run("check", spring);
        Assert.Equal(2, call.Code);
        AssertHarmless(call);
    }

    [Theory]
    [InlineData("--json")]
    [InlineData("--rain-unit=mm")]
    public void A_hostile_name_of_a_weather_record_reaches_the_terminal_harmless(string option)
    {
        using var folder = new TemporaryFolder();
        var record = folder.In(Hostile.Replace("/", "", StringComparison.Ordinal));
        File.WriteAllText(record, Record.Years(2));
        var call = Call.Run("weather", record, option, "--out", folder.In("\u001b[31mfit"));
        Assert.Equal(0, call.Code);
        AssertHarmless(call);
        File.WriteAllText(record, $"date,tmin,tmax,rain\n{Hostile},{Hostile},1,0\n");
        var faulty = Call.Run("weather", record, option);
        Assert.Equal(2, faulty.Code);
        AssertHarmless(faulty);
    }

    [Fact]
    public void A_hostile_currency_reaches_the_terminal_harmless()
    {
        using var folder = new TemporaryFolder();
        var call = Call.Run(
            "check",
            PaperFarm.In(folder, house: PaperFarm.HoopHouse, sections: "[prices]\ncurrency = \"[red]$\"\nlabour_hour = 30\n"),
            "--all"
        );
        Assert.Equal(0, call.Code);
        AssertHarmless(call);
        Assert.Contains("[red]$30.00", call.Output, StringComparison.Ordinal);
    }

    private static void AssertHarmless(Call call)
    {
        var all = call.Output + call.Error;
        Assert.DoesNotContain(all, c => (char.IsControl(c) && c != '\n') || c is '\u202E' or '\u200F');
    }
}
