using System.CommandLine;
using System.CommandLine.Help;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary>All commands together.</summary>
internal static class RootMenu
{
    public static RootCommand Make(Desk desk)
    {
        var root = new RootCommand(
            "Says whether a season of seedling trays fits the heat mats, benches and hardening tables of a site, "
                + "where and when it does not, and what that costs in late or lost plants."
        )
        {
            HelpName = Shell.Program,
        };
        root.Directives.Clear();

        var examples = new Dictionary<Command, string[]>
        {
            [root] = ["benchsim new spring", "benchsim check spring", "benchsim run spring"],
        };
        Add(NewCommand.Make(desk), NewCommand.Examples);
        Add(OpenCommand.Make(desk), OpenCommand.Examples);
        Add(CheckCommand.Make(desk), CheckCommand.Examples);
        Add(RunCommand.Make(desk), RunCommand.Examples);
        Add(WeatherCommand.Make(desk), WeatherCommand.Examples);
        Add(CompareCommand.Make(desk), CompareCommand.Examples);
        Add(MendCommand.Make(desk), MendCommand.Examples);
        Add(BottlenecksCommand.Make(desk), BottlenecksCommand.Examples);
        Add(TrustCommand.Make(desk), TrustCommand.Examples);
        Add(SweepCommand.Make(desk), SweepCommand.Examples);
        Add(MergeCommand.Make(desk), MergeCommand.Examples);
        Add(InvestCommand.Make(desk), InvestCommand.Examples);
        Add(AgreeCommand.Make(desk), AgreeCommand.Examples);
        Add(PrintCommand.Make(desk), PrintCommand.Examples);
        Add(ReviewCommand.Make(desk), ReviewCommand.Examples);
        Add(SizeCommand.Make(desk), SizeCommand.Examples);
        Add(DenseCommand.Make(desk), DenseCommand.Examples);
        Add(LevelCommand.Make(desk), LevelCommand.Examples);
        Add(SuccessionCommand.Make(desk), SuccessionCommand.Examples);
        Add(LearnCommand.Make(desk), LearnCommand.Examples);

        foreach (var help in root.Options.OfType<HelpOption>())
        {
            help.Action = new HelpWithExamples(examples);
        }

        return root;

        void Add(Command command, string[] lines)
        {
            root.Add(command);
            examples.Add(command, lines);
        }
    }
}
