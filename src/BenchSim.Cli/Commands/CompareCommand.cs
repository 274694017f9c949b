using System.Collections.Immutable;
using System.CommandLine;
using BenchSim.Cli.Printing;
using BenchSim.Cli.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Compare;

namespace BenchSim.Cli.Commands;

/// <summary><c>compare DIR --with NAME...</c>: plays the base and its variants on the same luck and prints the differences.</summary>
internal static class CompareCommand
{
    private const int MostVariants = 50;

    public static readonly string[] Examples =
    [
        "benchsim compare spring --with more-mats",
        "benchsim compare spring --with more-mats second-house --seasons 2000",
    ];

    public static Command Make(Desk desk)
    {
        Argument<string> folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv, with the variants in its folder \"variants\".");
        var with = new Option<string[]>("--with")
        {
            HelpName = "NAME",
            Description = "Variants to compare with the base: the names of files variants/NAME.toml, without the ending.",
            Required = true,
            AllowMultipleArgumentsPerToken = true,
        };
        with.Validators.Add(result =>
        {
            if (result.Tokens.Count > MostVariants)
                result.AddError($"--with takes up to {MostVariants} variants; compare them in parts.");
        });
        Option<int?> seasons = CommonOptions.Whole("--seasons", "N", 1, 1_000_000, "Seasons to play of each. Default: what site.toml says.");
        Option<ulong?> seed = CommonOptions.Seed("--seed", "S", "Seed of all luck: the same seed gives the same answer. Default: what site.toml says.");
        Option<int?> threads = CommonOptions.Whole("--threads", "T", 1, 1024, "Threads to play on; the answer does not depend on it. Default: one a core.");
        Option<bool> json = CommonOptions.ForMachines("the differences");
        var command = new Command("compare", "Plays the base and its variants on the same luck and says which differences are real and which cannot be told.") { folder, with, seasons, seed, threads, json };
        command.SetAction(parsed => Compare(
            parsed.GetRequiredValue(folder),
            [.. parsed.GetRequiredValue(with).Distinct(StringComparer.Ordinal)],
            plan => new StudyOptions
            {
                Seasons = parsed.GetValue(seasons) ?? plan.Scenario.Play.Seasons,
                Seed = parsed.GetValue(seed) ?? plan.Scenario.Play.Seed,
                Threads = parsed.GetValue(threads) ?? 0,
            },
            parsed.GetValue(json),
            desk));
        return command;
    }

    private static int Compare(string directory, ImmutableArray<string> names, Func<SeasonPlan, StudyOptions> optionsOf, bool json, Desk desk)
    {
        OpenedScenario opened = OpenedScenario.Open(directory);
        if (opened.Plan is not { } plan)
            return FaultList.Print(desk, json, opened.Faults);

        OpenedVariants variants = OpenedVariants.Open(directory, plan, names);
        if (variants.Plans.IsEmpty)
            return FaultList.Print(desk, json, variants.Faults);

        StudyOptions options = optionsOf(plan);
        CompareResult result = PlayProgress.Draw(desk, options.Seasons, progress => CompareRunner.Play(plan, variants.Plans, options, progress, desk.Cancel));
        if (json)
            CompareJson.Print(desk, result);
        else
            ComparePrinter.Print(desk, result);
        return ExitCode.Done;
    }
}
