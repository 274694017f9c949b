using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Case;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Shards;

namespace BenchSim.Answers.Parts;

/// <summary>Asks for a part of a run: a share of its seasons, counted and written to a file.</summary>
public sealed record PartQuestion
{
    /// <summary>The scenario folder.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Which share of the seasons.</summary>
    public required Share Share { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>File for the part; null for the scenario folder's name with ".K-of-N.part", beside it.</summary>
    public string? Out { get; init; }

    /// <summary>Plays it and writes what was counted.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">There are fewer seasons than shares, or the part cannot be written.</exception>
    public PartAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var opened = Scenario.Open();
        var plan = opened.Plan;
        var options = Play.Of(plan);
        if (Share.Of > options.Seasons)
        {
            throw new RefusedException(
                $"{Numbers.Count(options.Seasons, "season", "seasons")} cannot be split into {Numbers.Whole(Share.Of)} shares; "
                    + "ask for fewer shares, or more seasons with --seasons."
            );
        }

        var path = Out ?? BesideScenario.Folder(Scenario.Directory, Ending());
        var place = new PartPlace(path);
        place.Check();

        (var first, var count) = Share.SeasonsOf(options.Seasons);
        var counts = watch.Over(count, progress => PartRunner.Play(plan, options, Share, progress, watch.Cancel));
        place.Write(Part(opened, options, counts).ToBytes(), watch.Cancel);
        return new PartAnswer(Share, options.Seasons, options.Seed, first, count, path);
    }

    // 2 of 12 parts go to NAME.02-of-12.part, so that they stand in order.
    private string Ending()
    {
        var of = Share.Of.ToString(CultureInfo.InvariantCulture);
        return $".{Share.Number.ToString(CultureInfo.InvariantCulture).PadLeft(of.Length, '0')}-of-{of}.part";
    }

    private RunPart Part(OpenedScenario opened, StudyOptions options, byte[] counts)
    {
        string[] read = [.. opened.Inputs.Select(input => input.Name)];
        var header = new PartHeader
        {
            Share = Share,
            Seasons = options.Seasons,
            Seed = options.Seed,
            Folder = Scenario.FolderName(),
            Build = BuildMark.Text,
            Unread =
            [
                .. opened
                    .Plan.Warnings.Select(warning => warning.Place.File)
                    .Except(read, StringComparer.Ordinal)
                    .Distinct(StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ],
        };
        return new RunPart(header, [.. opened.Inputs.Select(input => new PartInput(input.Name, input.Bytes.AsMemory()))], counts);
    }
}

/// <summary>A part of a run that was played.</summary>
/// <param name="Share">Which share of the seasons.</param>
/// <param name="Seasons">Seasons of the run.</param>
/// <param name="Seed">Seed of all luck.</param>
/// <param name="First">Its first season, from 0.</param>
/// <param name="Count">Its seasons.</param>
/// <param name="File">Its file.</param>
public sealed record PartAnswer(Share Share, int Seasons, ulong Seed, int First, int Count, string File) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(
            new PartDocument(
                JsonDialect.Version,
                Share.Number,
                Share.Of,
                First + 1,
                First + Count,
                Seasons,
                Seed.ToString(CultureInfo.InvariantCulture),
                File
            )
        );

    private protected override void Tell(Passages passages)
    {
        passages.Sentence(
            $"Part {Numbers.Whole(Share.Number)} of {Numbers.Whole(Share.Of)}: {Numbers.Count(Count, "season", "seasons")} played, "
                + $"{Numbers.Whole(First + 1)} to {Numbers.Whole(First + Count)} of {Numbers.Whole(Seasons)}."
        );
        passages.Sentence($"The answer comes when all parts are there: {Shell.Program} merge adds them.");
        passages.Line($"Part: {File}");
    }
}
