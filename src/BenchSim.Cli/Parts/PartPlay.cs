using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Cli.Printing;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Shards;

namespace BenchSim.Cli.Parts;

/// <summary>Plays a part of a run and writes what was counted.</summary>
internal static class PartPlay
{
    /// <summary>Plays it.</summary>
    /// <exception cref="RefusedException">There are fewer seasons than shares, or the part cannot be written.</exception>
    public static int Play(RunSettings settings, Share share, OpenedScenario opened, SeasonPlan plan, StudyOptions options, Desk desk)
    {
        if (share.Of > options.Seasons)
        {
            throw new RefusedException(
                $"{Figures.Count(options.Seasons, "season", "seasons")} cannot be split into {Figures.Whole(share.Of)} shares; ask for fewer shares, or more seasons with --seasons."
            );
        }

        var path = settings.PartPlace(share);
        var place = new PartPlace(path);
        place.Check();

        (var first, var count) = share.SeasonsOf(options.Seasons);
        var counts = PlayProgress.Draw(desk, count, progress => PartRunner.Play(plan, options, share, progress, desk.Cancel));
        place.Write(Part(settings, share, opened, plan, options, counts).ToBytes(), desk.Cancel);
        if (settings.Json)
        {
            PrintJson(desk, share, options, first, count, path);
        }
        else
        {
            Print(desk, share, options, first, count, path);
        }

        return ExitCode.Done;
    }

    private static RunPart Part(
        RunSettings settings,
        Share share,
        OpenedScenario opened,
        SeasonPlan plan,
        StudyOptions options,
        byte[] counts
    )
    {
        string[] read = [.. opened.Inputs.Select(input => input.Name)];
        var header = new PartHeader
        {
            Share = share,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Folder = settings.FolderName(),
            Build = BuildMark.Text,
            Unread =
            [
                .. plan
                    .Warnings.Select(warning => warning.Place.File)
                    .Except(read, StringComparer.Ordinal)
                    .Distinct(StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ],
        };
        return new RunPart(header, [.. opened.Inputs.Select(input => new PartInput(input.Name, input.Bytes.AsMemory()))], counts);
    }

    private static void Print(Desk desk, Share share, StudyOptions options, int first, int count, string path)
    {
        desk.SayWrapped(
            $"Part {Figures.Whole(share.Number)} of {Figures.Whole(share.Of)}: {Figures.Count(count, "season", "seasons")} played, {Figures.Whole(first + 1)} to {Figures.Whole(first + count)} of {Figures.Whole(options.Seasons)}."
        );
        desk.SayWrapped($"The answer comes when all parts are there: {RootMenu.ProgramName} merge adds them.");
        desk.Say($"Part: {path}");
    }

    private static void PrintJson(Desk desk, Share share, StudyOptions options, int first, int count, string path) =>
        desk.SayJson(json =>
        {
            json.WriteNumber("part", share.Number);
            json.WriteNumber("parts", share.Of);
            json.WriteNumber("first_season", first + 1);
            json.WriteNumber("last_season", first + count);
            json.WriteNumber("seasons", options.Seasons);
            json.WriteNumber("seed", options.Seed);
            json.WriteString("file", path);
        });
}
