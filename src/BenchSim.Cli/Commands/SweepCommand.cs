using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Sweep;
using BenchSim.Cli.Terminal;
using BenchSim.Study.Sweeps;

namespace BenchSim.Cli.Commands;

/// <summary><c>sweep FILE</c>: asks the same of many scenario folders, variants and sets of values.</summary>
internal static class SweepCommand
{
    public static readonly string[] Examples =
    [
        "benchsim sweep county.toml --plan",
        "benchsim sweep county.toml",
        "benchsim sweep county.toml --task 17",
        "benchsim sweep county.toml --shard 2/100",
        "benchsim sweep county.toml --merge",
    ];

    public static Command Make(Desk desk)
    {
        var file = CommonOptions.File("Sweep file: which scenario folders and variants are played, and how much of each.");
        var place = CommonOptions.Text(
            "--out",
            "DIR",
            "Folder for the results of the tasks and for the answer. Default: the file's name with \"-sweep\", beside it."
        );
        Option<bool> plan = new("--plan")
        {
            Description = "Play nothing: look for faults in all folders and say how many tasks there are.",
        };
        var task = CommonOptions.Whole(
            "--task",
            "N",
            1,
            SweepGrid.MostTasks,
            "Play only task N, N counting from 1, and write its result; nothing is played where that is there."
        );
        var shard = PartOptions.Shard(
            "Play only the tasks numbered K, K+N, K+2N and so on, and write their results; those that are there are not played again."
        );
        Option<bool> merge = new("--merge")
        {
            Description = "Play nothing: join the results that are there into the answer; exit code 1 where some are lacking.",
        };
        var threads = new PlayOptions().Threads;
        var output = new OutputOptions("the answer");
        var command = new Command(
            "sweep",
            "Plays many scenario folders with their variants and sets of values, as tasks that can be stopped, taken up again and shared "
                + "out over machines, and says which plans fit."
        )
        {
            file,
            place,
            plan,
            task,
            shard,
            merge,
            threads,
        };
        output.AddTo(command);
        Option[] ways = [plan, task, shard, merge];
        command.Validators.Add(result => RefuseSeveral(result, ways));
        command.SetAction(parsed =>
        {
            var sweep = new SweepQuestion
            {
                File = parsed.GetRequiredValue(file),
                Out = parsed.GetValue(place),
                Threads = parsed.GetValue(threads),
            };
            var answer =
                parsed.GetValue(plan) ? sweep.Plan(desk.Watch)
                : parsed.GetValue(merge) ? sweep.Merge(desk.Watch)
                : parsed.GetValue(task) is { } number ? sweep.Task(number, desk.Watch)
                : parsed.GetValue(shard) is { } share ? sweep.Shard(share, desk.Watch)
                : sweep.Ask(desk.Watch);
            var code = desk.Give(answer, output.Of(parsed));
            return answer is SweepLackingAnswer ? ExitCode.Lacking : code;
        });
        return command;
    }

    private static void RefuseSeveral(CommandResult result, Option[] ways)
    {
        string[] given = [.. ways.Where(result.IsGiven).Select(option => option.Name)];
        if (given.Length > 1)
        {
            result.AddError($"{string.Join(" and ", given)} contradict each other; write one of them.");
        }
    }
}
