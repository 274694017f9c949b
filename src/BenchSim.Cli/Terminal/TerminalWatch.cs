using BenchSim.Answers.Asking;
using Spectre.Console;

namespace BenchSim.Cli.Terminal;

/// <summary>Draws a bar on a terminal while seasons are played. It goes again when the play is over.</summary>
internal sealed class TerminalWatch(TextWriter terminal, CancellationToken cancel) : PlayWatch(cancel)
{
    public override T Over<T>(int parts, Func<IProgress<int>?, T> play) =>
        AnsiConsole
            .Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(terminal) })
            .Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(context => play(new Count(context.AddTask("Playing seasons", maxValue: parts))));

    private sealed class Count(ProgressTask bar) : IProgress<int>
    {
        public void Report(int value) => bar.Value = value;
    }
}
