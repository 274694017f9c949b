using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary>The help of a command, with examples and the exit codes below it.</summary>
internal sealed class HelpWithExamples(IReadOnlyDictionary<Command, string[]> examples) : SynchronousCommandLineAction
{
    private const int Width = 80;

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        new HelpAction { MaxWidth = Width }.Invoke(parseResult);
        if (examples.TryGetValue(parseResult.CommandResult.Command, out var lines))
        {
            output.Write(lines.Length == 1 ? "Example:\n" : "Examples:\n");
            foreach (var line in lines)
            {
                output.Write($"  {line}\n");
            }

            output.Write("\n");
        }

        output.Write(
            """
            Exit codes:
              0    done
              1    done, but the share asked for with --require is not met, or results
                   of a sweep that is to be merged are lacking
              2    a fault in the command or the files, or a folder that cannot be used
              70   a fault of the program itself
              130  stopped with Ctrl-C


            """.ReplaceLineEndings("\n")
        );
        return ExitCode.Done;
    }
}
