namespace BenchSim.Cli.Tests;

/// <summary>What "learn" refuses, word for word: exit code 2, nothing on standard output, nothing written.</summary>
public sealed class LearnRefusalTests
{
    private const string Log = "date,batch,what,trays,space\n2027-03-01,a,sown,2,mats\n";
    private const string SeeHelp = "See benchsim learn --help.\n";

    private const string Prior =
        " cannot be used; write three numbers from 0.01 to 2 with commas between them, none below the one before, such as 0.15,0.3,0.5.\n"
        + SeeHelp;

    [Theory]
    [InlineData("0.15,0.3")]
    [InlineData("0.5,0.3,0.15")]
    [InlineData("0,0.3,0.5")]
    [InlineData("little,some,much")]
    public void Numbers_that_are_no_prior(string prior)
    {
        using var farm = Farm();
        Refused($"--prior \"{prior}\"" + Prior, farm.Path, "--prior", prior);
    }

    [Fact]
    public void No_folder() => Refused("Required argument 'DIR' missing for command: 'learn'.\n" + SeeHelp);

    [Fact]
    public void An_empty_name() => Refused("DIR is empty; write a name.\n" + SeeHelp, "");

    [Fact]
    public void A_folder_that_is_not_there()
    {
        using var folder = new TemporaryFolder();
        var missing = folder.In("nowhere");
        Refused(
            $"{missing}:0:0: there is no such folder; check the name; \"benchsim new\" makes a folder to fill in\n"
                + "1 fault found. Mend it and try again.\n",
            missing
        );
    }

    [Theory]
    [InlineData(null)]
    [InlineData("date,batch,what,trays,space\n")]
    public void A_season_without_a_log(string? log)
    {
        using var farm = Farm(log);
        Refused(
            $"\"{farm.Path}\" has no row in log.csv, so there is nothing to learn from. Write down what was done and seen there, or "
                + "name the folder of a season that has a log.\n",
            farm.Path
        );
    }

    [Fact]
    public void The_same_season_twice()
    {
        using var farm = Farm();
        Refused(
            $"\"{farm.Path}\" and \"{farm.Path}/\" are the same folder. Name each season once: what its log says would count twice.\n",
            farm.Path,
            farm.Path + "/"
        );
    }

    [Fact]
    public void Logs_with_faults_all_at_once_each_with_its_folder()
    {
        using var one = Farm(Log + "2027-03-02,aa,moved,2,bench\n");
        using var other = Farm(Log + "2027-03-02,a,moved,3,bench\n");
        var learn = Call.Run("learn", one.Path, other.Path, "--write");
        Assert.Equal((2, ""), (learn.Code, learn.Output));
        Assert.Contains($"{one.Path}/log.csv:3:12: ", learn.Error, StringComparison.Ordinal);
        Assert.Contains($"{other.Path}/log.csv:3:", learn.Error, StringComparison.Ordinal);
        Assert.EndsWith("2 faults found. Mend them and try again.\n", learn.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(other.In("crops.csv")));
    }

    [Fact]
    public void A_row_after_the_season()
    {
        using var farm = Farm(Log + "2029-03-02,a,ready,,\n");
        var learn = Call.Run("learn", farm.Path);
        Assert.Equal((2, ""), (learn.Code, learn.Output));
        Assert.StartsWith("log.csv:3:1: date is 2029-03-02, ", learn.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Crops_with_faults_are_not_written_over()
    {
        using var farm = Farm();
        farm.Write("crops.csv", "id,emerge_heat\ntomato,much\n");
        var learn = Call.Run("learn", farm.Path, "--write");
        Assert.Equal((2, ""), (learn.Code, learn.Output));
        Assert.StartsWith("crops.csv:2:8: ", learn.Error, StringComparison.Ordinal);
        Assert.Equal("id,emerge_heat\ntomato,much\n", File.ReadAllText(farm.In("crops.csv")));
    }

    [Fact]
    public void A_link_in_the_place_of_the_crops()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var farm = Farm();
        using var elsewhere = new TemporaryFolder();
        elsewhere.Write("crops.csv", "id,emerge_heat\n");
        File.CreateSymbolicLink(farm.In("crops.csv"), elsewhere.In("crops.csv"));
        Refused(
            $"\"{farm.In("crops.csv")}\" is a link or no regular file, and stays as it is. Put the file itself there.\n",
            farm.Path,
            "--write"
        );
        Assert.Equal("id,emerge_heat\n", File.ReadAllText(elsewhere.In("crops.csv")));
    }

    private static FarmFolder Farm(string? log = Log)
    {
        var farm = new FarmFolder();
        if (log is not null)
        {
            farm.Write("log.csv", log);
        }

        return farm;
    }

    private static void Refused(string message, params string[] words)
    {
        var learn = Call.Run(["learn", .. words]);
        Assert.Equal((2, "", message), (learn.Code, learn.Output, learn.Error));
    }
}
