using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Results;
using Spectre.Console;

namespace BenchSim.Cli.Printing;

/// <summary>Plays with a bar on standard error, where that is a terminal. The bar goes again when the play is over.</summary>
internal static class PlayProgress
{
    public static StudyResult Play(SeasonPlan plan, StudyOptions options, Desk desk) =>
        Draw(desk, options.Seasons, progress => StudyRunner.Play(plan, options, progress, desk.Cancel));

    /// <summary>Draws the bar of any play of so many seasons.</summary>
    public static T Draw<T>(Desk desk, int seasons, Func<IProgress<int>?, T> play)
    {
        if (!desk.Terminal)
        {
            return play(null);
        }

        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(desk.Error) });
        return console
            .Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(context =>
            {
                var bar = context.AddTask("Playing seasons", maxValue: seasons);
                return play(new Count(bar));
            });
    }

    private sealed class Count(ProgressTask bar) : IProgress<int>
    {
        public void Report(int value) => bar.Value = value;
    }
}
