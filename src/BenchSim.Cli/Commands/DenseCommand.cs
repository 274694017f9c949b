using System.Collections.Immutable;
using System.CommandLine;
using BenchSim.Answers;
using BenchSim.Answers.Words;
using BenchSim.Cli.Printing;
using BenchSim.Report;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Dense;

namespace BenchSim.Cli.Commands;

/// <summary><c>dense DIR</c>: direct sowing against dense sowing with later pot-up.</summary>
internal static class DenseCommand
{
    public static readonly string[] Examples =
    [
        "benchsim dense spring",
        "benchsim dense spring --crop tomato --seeds-per-flat 200 --out tomato-dense",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var crop = CommonOptions.Text("--crop", "CROP", "The one crop to look at. Default: every crop that stands on a heat mat.");
        var flat = CommonOptions.Text(
            "--flat",
            "FLAT",
            "Open flat for sowings that the plan sows directly. Default: the first open flat by id."
        );
        var density = CommonOptions.Whole(
            "--seeds-per-flat",
            "N",
            1,
            DenseBreakEven.MostSeeds,
            "Seeds a flat. Default: what the plan says of sowings it pots up, and the flat of the others."
        );
        var play = new PlayOptions("Seasons to play of each way.");
        var place = CommonOptions.Text("--out", "DIR", "Folder for a chart and tables. Default: none is written.");
        var json = CommonOptions.ForMachines("the differences");
        var command = new Command(
            "dense",
            "Plays each crop of the heat mats sown directly, and sown dense and potted up later, and says what mats that frees, what benches and work it takes, and from which density on."
        )
        {
            folder,
            crop,
            flat,
            density,
            play.Seasons,
            play.Seed,
            play.Threads,
            place,
            json,
        };
        command.SetAction(parsed =>
            Dense(
                parsed.GetRequiredValue(folder),
                opened => new DenseSettings(
                    CropOf(opened.Plan!, parsed.GetValue(crop)),
                    FlatOf(opened.OpenFlats, parsed.GetValue(flat)),
                    parsed.GetValue(density)
                ),
                play.Of(parsed),
                parsed.GetValue(place),
                parsed.GetValue(json),
                desk
            )
        );
        return command;
    }

    private static int Dense(
        string directory,
        Func<OpenedScenario, DenseSettings> settingsOf,
        Func<SeasonPlan, StudyOptions> optionsOf,
        string? place,
        bool json,
        Desk desk
    )
    {
        if (place is not null)
        {
            DenseFolder.Check(place);
        }

        var opened = OpenedScenario.Open(directory);
        if (opened.Plan is not { } plan)
        {
            return FaultList.Print(desk, json, opened.Faults);
        }

        var settings = settingsOf(opened);
        var options = optionsOf(plan);
        var result = PlayProgress.Draw(desk, options.Seasons, progress => DenseRunner.Play(plan, settings, options, progress, desk.Cancel));
        if (place is not null)
        {
            DenseFolder.Write(place, result, desk.Cancel);
        }

        if (json)
        {
            DenseJson.Print(desk, result, place);
        }
        else
        {
            DensePrinter.Print(desk, result, place);
        }

        return ExitCode.Done;
    }

    private static string? CropOf(SeasonPlan plan, string? written)
    {
        if (written is null)
        {
            return null;
        }

        BatchPlan[] ofCrop = [.. plan.Batches.Where(batch => string.Equals(batch.Order.CropId, written, StringComparison.Ordinal))];
        if (ofCrop.Any(batch => batch.Mats.Length > 0))
        {
            return written;
        }

        string[] known =
        [
            .. plan
                .Batches.Where(batch => batch.Mats.Length > 0)
                .Select(batch => batch.Order.CropId)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        throw new RefusedException(
            (
                ofCrop.Length > 0
                    ? $"The crop {SafeText.Quote(written)} does not stand on a heat mat. "
                    : $"The plan has no crop {SafeText.Quote(written)}. "
            ) + Meant(written, known, "The crops on its heat mats are ", "No crop of it stands on a heat mat.")
        );
    }

    private static TrayType FlatOf(ImmutableArray<TrayType> flats, string? written)
    {
        if (written is null)
        {
            return flats[0];
        }

        return flats.FirstOrDefault(flat => string.Equals(flat.Id, written, StringComparison.Ordinal))
            ?? throw new RefusedException(
                $"There is no open flat {SafeText.Quote(written)}. "
                    + Meant(written, [.. flats.Select(flat => flat.Id)], "The open flats are ", "")
            );
    }

    private static string Meant(string written, string[] known, string all, string none)
    {
        if (known.Length == 0)
        {
            return none;
        }

        var near = NearNames.Of(written, known);
        return near.IsEmpty
            ? $"{all}{Figures.List([.. known.Select(SafeText.Quote)])}."
            : $"Did you mean {string.Join(" or ", near.Select(SafeText.Quote))}?";
    }
}
