using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Commands;

/// <summary>What is wrong with the command line.</summary>
internal static class UsageFaults
{
    /// <summary>Prints every fault of the command line, with the names that were probably meant.</summary>
    public static int Print(Desk desk, bool json, ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;

        // A mistyped command is also a missing one; the mistyped word says more.
        var isMistyped = command is RootCommand && parsed.UnmatchedTokens.Count > 0;
        string[] messages =
        [
            .. parsed
                .Errors.Where(fault =>
                    !isMistyped
                    || fault.SymbolResult is null or not CommandResult
                    || fault.Message.Contains(parsed.UnmatchedTokens[0], StringComparison.Ordinal)
                )
                .Select(fault => PlainText.OneLine(fault.Message))
                .Distinct(StringComparer.Ordinal),
        ];
        foreach (var message in messages)
        {
            desk.Complain(message);
        }

        foreach (var word in parsed.UnmatchedTokens)
        {
            if (Near(word, command) is { Length: > 0 } near)
            {
                desk.Complain($"Did you mean {near}?");
            }
        }

        var name = command is RootCommand ? Shell.Program : $"{Shell.Program} {command.Name}";
        desk.Complain($"See {name} --help.");
        if (json)
        {
            desk.Say(RefusedException.Json(string.Join(' ', messages)));
        }

        return ExitCode.BadInput;
    }

    private static string Near(string word, Command command)
    {
        IEnumerable<Symbol> known = word.StartsWith('-') ? command.Options : command.Subcommands;
        return string.Join(" or ", NearNames.Of(word, known.Select(symbol => symbol.Name)));
    }
}
