using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Results;
using Spectre.Console;

namespace BenchSim.Cli.Printing;

/// <summary>Plays a plan with a bar on standard error, where that is a terminal. The bar goes again when the play is over.</summary>
internal static class PlayProgress
{
    public static StudyResult Play(SeasonPlan plan, StudyOptions options, Desk desk) =>
        desk.Terminal ? PlayWithBar(plan, options, desk) : StudyRunner.Play(plan, options, null, desk.Cancel);

    private static StudyResult PlayWithBar(SeasonPlan plan, StudyOptions options, Desk desk)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(desk.Error) });
        return console.Progress()
            .AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(context =>
            {
                ProgressTask bar = context.AddTask("Playing seasons", maxValue: options.Seasons);
                return StudyRunner.Play(plan, options, new Count(bar), desk.Cancel);
            });
    }

    private sealed class Count(ProgressTask bar) : IProgress<int>
    {
        public void Report(int value) => bar.Value = value;
    }
}
