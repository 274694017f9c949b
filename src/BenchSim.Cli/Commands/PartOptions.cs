using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Shards;

namespace BenchSim.Cli.Commands;

/// <summary>The option for a part of a run.</summary>
internal static class PartOptions
{
    public static Option<Share?> Shard() =>
        Shard(
            "Play only the K-th of N shares of the seasons, and write what was counted to a file. "
                + "\"benchsim merge\" adds the N files into the run."
        );

    /// <summary>The option for a share of something else.</summary>
    /// <param name="what">What is played of it.</param>
    public static Option<Share?> Shard(string what) =>
        new("--shard")
        {
            HelpName = "K/N",
            Description = what,
            CustomParser = result =>
            {
                if (Share.TryParse(result.Tokens[0].Value, out var share))
                {
                    return share;
                }

                result.AddError(
                    $"--shard {PlainText.Quote(result.Tokens[0].Value)} cannot be used; "
                        + "write the number of the share and how many there are, such as 2/8, "
                        + $"from 1/1 to {Numbers.Whole(Share.Most)} shares."
                );
                return null;
            },
        };

    /// <summary>Refuses what a part cannot do.</summary>
    public static void RefuseContradictions(CommandResult result, Option shard, IEnumerable<Option> others)
    {
        if (!result.IsGiven(shard))
        {
            return;
        }

        foreach (var option in others.Where(option => result.IsGiven(option)))
        {
            result.AddError(
                $"{option.Name} does not go with --shard: a part has no answer of its own; "
                    + $"leave it out{(option.Name is "--require" or "--no-report" ? ", and give it to \"benchsim merge\"" : "")}."
            );
        }
    }
}
