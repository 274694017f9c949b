using System.CommandLine;
using BenchSim.Answers.Asking;
using BenchSim.Cli.Commands;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Writing;

namespace BenchSim.Cli.Commands;

/// <summary>The program: parse, call, print, and never a stack trace.</summary>
internal static class CommandLine
{
    /// <summary>Environment variable that asks for the details of an unexpected failure.</summary>
    public const string DebugVariable = "BENCHSIM_DEBUG";

    // "@file" is a folder's name like any other here, and "-xyz" is never three options.
    private static readonly ParserConfiguration s_parser = new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };

    /// <summary>Runs one command.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="error">Where faults, notes and progress go.</param>
    /// <param name="terminal">True when <paramref name="error"/> is a terminal.</param>
    /// <param name="cancel">Stops the command.</param>
    /// <returns>The exit code (<see cref="ExitCode"/>).</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error, bool terminal, CancellationToken cancel)
    {
        try
        {
            return Answer(args, new Desk(output, error, terminal, cancel));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Not even the refusal could be written, as on a full disk: the exit code is all that is left to say it with.
            return ExitCode.BadInput;
        }
    }

    private static int Answer(string[] args, Desk desk)
    {
        var json = args.Contains(OutputOptions.Json, StringComparer.Ordinal);
        try
        {
            return Obey(args, desk, json);
        }
        catch (OperationCanceledException stopped)
        {
            desk.Complain(stopped is StoppedException ? stopped.Message : "Stopped. Nothing was left half-written.");
            return ExitCode.Cancelled;
        }
        catch (FaultsFoundException found)
        {
            return desk.Say(found, json);
        }
        catch (OutputFailedException failure)
        {
            desk.Complain(failure.Message);
            return ExitCode.BadInput;
        }
        catch (Exception failure) when (failure is RefusedException or ReportRefusedException)
        {
            return desk.Refuse(failure.Message, json);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return desk.Refuse($"The disk or the system refused: {failure.Message}", json);
        }
        catch (Exception failure)
        {
            desk.Complain(
                "BenchSim stopped on a fault of its own, not of your files. "
                    + $"Run it again with {DebugVariable}=1 to see the details, and report them."
            );
            if (string.Equals(Environment.GetEnvironmentVariable(DebugVariable), "1", StringComparison.Ordinal))
            {
                desk.Error.Write(failure + "\n");
            }

            return ExitCode.Broken;
        }
    }

    private static int Obey(string[] args, Desk desk, bool json)
    {
        var root = RootMenu.Make(desk);
        var parsed = root.Parse(args, s_parser);
        var writers = new InvocationConfiguration
        {
            Output = desk.Output,
            Error = desk.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        };
        if (args.Length == 0)
        {
            root.Parse(["--help"], s_parser).Invoke(new InvocationConfiguration { Output = desk.Error, Error = desk.Error });
            return ExitCode.BadInput;
        }

        return parsed.Errors.Count > 0 && parsed.Action is not HelpWithExamples
            ? UsageFaults.Print(desk, json, parsed)
            : parsed.Invoke(writers);
    }
}
