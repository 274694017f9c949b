using BenchSim.Cli.Commands;

namespace BenchSim.Cli.Tests;

/// <summary>Faults of the command line: exit code 2, a sentence each, all in one pass.</summary>
public sealed class UsageFaultTests
{
    [Theory]
    [InlineData("--seasons \"0\" cannot be used; write a whole number from 1 to 1,000,000, without commas.", "run", "x", "--seasons", "0")]
    [InlineData(
        "--seasons \"1,000\" cannot be used; write a whole number from 1 to 1,000,000, without commas.",
        "run",
        "x",
        "--seasons",
        "1,000"
    )]
    [InlineData("--seed \"-1\" cannot be used; write a whole number from 0 to 18446744073709551615.", "run", "x", "--seed", "-1")]
    [InlineData(
        "--threads \"many\" cannot be used; write a whole number from 1 to 1,024, without commas.",
        "run",
        "x",
        "--threads",
        "many"
    )]
    [InlineData("--year \"20\" cannot be used; write a year from 1901 to 2198.", "new", "x", "--farm", "container", "--year", "20")]
    [InlineData(
        "--require \"1.5\" cannot be used; write a share from 0 to 1, such as 0.9, or a percentage, such as 90%.",
        "run",
        "x",
        "--require",
        "1.5"
    )]
    [InlineData(
        "--require \"NaN\" cannot be used; write a share from 0 to 1, such as 0.9, or a percentage, such as 90%.",
        "run",
        "x",
        "--require",
        "NaN"
    )]
    [InlineData("--season and --batch go together; write both to read the story of one batch in one season.", "run", "x", "--season", "3")]
    [InlineData(
        "--season and --batch go together; write both to read the story of one batch in one season.",
        "run",
        "x",
        "--batch",
        "kale"
    )]
    [InlineData("--out and --no-report contradict each other; leave one out.", "run", "x", "--out", "y", "--no-report")]
    [InlineData(
        "--out does not go with --season and --batch: a story plays one season and writes no report; leave it out.",
        "run",
        "x",
        "--season",
        "1",
        "--batch",
        "b",
        "--out",
        "y"
    )]
    [InlineData(
        "--threads does not go with --season and --batch: a story plays one season and writes no report; leave it out.",
        "run",
        "x",
        "--season",
        "1",
        "--batch",
        "b",
        "--threads",
        "2"
    )]
    [InlineData(
        "--from \"rubbish\" cannot be used; write a date from 1900 to 2199 as year-month-day, such as 2027-03-15.",
        "print",
        "x",
        "--from",
        "rubbish",
        "--to",
        "2027-05-01"
    )]
    [InlineData(
        "--to \"soon\" cannot be used; write a date from 1900 to 2199 as year-month-day, such as 2027-03-15.",
        "print",
        "x",
        "--from",
        "2027-05-01",
        "--to",
        "soon"
    )]
    [InlineData("DIR is empty; write a name.", "check", "")]
    [InlineData("FILE is empty; write a name.", "weather", " ")]
    [InlineData("--temperature-unit \"K\" cannot be used; write C or F.", "weather", "x", "--temperature-unit", "K")]
    [InlineData("--rain-unit \"\" cannot be used; write mm or in.", "weather", "x", "--rain-unit", "")]
    [InlineData("Did you mean --rain-unit?", "weather", "x", "--rain-unt", "mm")]
    [InlineData("Did you mean check?", "chekc", "x")]
    [InlineData("Did you mean --threads?", "run", "x", "--thread", "2")]
    public void Each_fault_has_its_sentence(string sentence, params string[] args)
    {
        var call = Call.Run(args);
        Assert.Equal(2, call.Code);
        Assert.Empty(call.Output);
        Assert.Contains(sentence + "\n", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("compare")]
    public void A_switch_that_is_given_a_word_is_a_fault_of_the_command_line(string command)
    {
        var call = Call.Run(command, "x", "--case=maybe");
        Assert.Equal(2, call.Code);
        Assert.Contains("maybe", call.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("fault of its own", call.Error, StringComparison.Ordinal);
    }

    // 99.9 % of 1,000 seasons are 999: the share that was asked for must be the very number that 999 / 1000 is.
    [Fact]
    public void A_percentage_is_the_share_that_so_many_of_a_thousand_are()
    {
        var option = Commands.CommonOptions.Share("--require", "P", "A share.");
        var command = new System.CommandLine.RootCommand { option };
        Assert.All(Enumerable.Range(0, 1001), tenths =>
            Assert.Equal(
                tenths / 1000.0,
                command.Parse(["--require", FormattableString.Invariant($"{tenths / 10}.{tenths % 10}%")]).GetValue(option)
            )
        );
    }

    [Fact]
    public void All_faults_are_told_in_one_pass()
    {
        var error = Call.Run("run", "x", "--seasons", "none", "--seed", "lucky", "--require", "often").Error;
        foreach (var option in new[] { "--seasons", "--seed", "--require" })
        {
            Assert.Contains(option + " \"", error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_name_that_begins_with_an_at_sign_is_a_folder_like_any_other()
    {
        // Some parsers read "@file" as a file of further arguments.
        var call = Call.Run("check", "@nowhere");
        Assert.Equal(2, call.Code);
        Assert.StartsWith("@nowhere:0:0: there is no such folder; ", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Machines_get_the_fault_as_json()
    {
        var call = Call.Run("run", "x", "--seasons", "none", "--json");
        Assert.Equal(2, call.Code);
        using var json = System.Text.Json.JsonDocument.Parse(call.Output);
        Assert.StartsWith("--seasons \"none\" cannot be used", json.RootElement.GetProperty("error").GetString(), StringComparison.Ordinal);
    }
}
