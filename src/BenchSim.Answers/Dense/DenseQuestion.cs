using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Report;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Dense;

namespace BenchSim.Answers.Dense;

/// <summary>Asks what dense sowing with later pot-up changes.</summary>
public sealed record DenseQuestion
{
    /// <summary>The scenario.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>The one crop to look at; null for every crop that stands on a heat mat.</summary>
    public string? Crop { get; init; }

    /// <summary>Open flat for sowings that the plan sows directly; null for the first by id.</summary>
    public string? Flat { get; init; }

    /// <summary>Seeds a flat; null for what the plan says of sowings it pots up, and the flat of the others.</summary>
    public int? SeedsPerFlat { get; init; }

    /// <summary>How it is played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Folder for a chart and tables; null for none.</summary>
    public string? Out { get; init; }

    /// <summary>Plays each crop both ways, and writes the folder where one is asked for.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario has faults.</exception>
    /// <exception cref="RefusedException">There is no such crop or flat.</exception>
    public DenseAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        if (Out is not null)
        {
            DenseFolder.Check(Out);
        }

        var opened = Scenario.Open();
        var plan = opened.Plan;
        var settings = new DenseSettings(CropOf(plan), FlatOf(opened.OpenFlats), SeedsPerFlat);
        var options = Play.Of(plan);
        var result = watch.Over(options.Seasons, progress => DenseRunner.Play(plan, settings, options, progress, watch.Cancel));
        if (Out is not null)
        {
            DenseFolder.Write(Out, result, watch.Cancel);
        }

        return new DenseAnswer(result, Out) { ScenarioFolder = Scenario.Directory, From = opened.From };
    }

    private string? CropOf(SeasonPlan plan)
    {
        if (Crop is null)
        {
            return null;
        }

        BatchPlan[] ofCrop = [.. plan.Batches.Where(batch => string.Equals(batch.Order.CropId, Crop, StringComparison.Ordinal))];
        if (ofCrop.Any(batch => batch.Mats.Length > 0))
        {
            return Crop;
        }

        string[] known =
        [
            .. plan
                .Batches.Where(batch => batch.Mats.Length > 0)
                .Select(batch => batch.Order.CropId)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        var what =
            ofCrop.Length > 0
                ? $"The crop {PlainText.Quote(Crop)} does not stand on a heat mat. "
                : $"The plan has no crop {PlainText.Quote(Crop)}. ";
        throw new RefusedException(what + Meant(Crop, known, "The crops on its heat mats are ", "No crop of it stands on a heat mat."));
    }

    private TrayType FlatOf(ImmutableArray<TrayType> flats)
    {
        if (Flat is null)
        {
            return flats[0];
        }

        return flats.FirstOrDefault(flat => string.Equals(flat.Id, Flat, StringComparison.Ordinal))
            ?? throw new RefusedException(
                $"There is no open flat {PlainText.Quote(Flat)}. "
                    + Meant(Flat, [.. flats.Select(flat => flat.Id)], "The open flats are ", "")
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
            ? $"{all}{PlainText.List([.. known.Select(PlainText.Quote)])}."
            : $"Did you mean {string.Join(" or ", near.Select(PlainText.Quote))}?";
    }
}

/// <summary>What dense sowing with later pot-up changes.</summary>
/// <param name="Result">The crops, both ways.</param>
/// <param name="Folder">Folder of the chart and tables; null where none was written.</param>
public sealed record DenseAnswer(DenseResult Result, string? Folder) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(DenseDocument.Of(Result, Folder));

    /// <inheritdoc />
    public override FirstScreen? Screen => DenseScreen.Of(this);

    private protected override void Tell(Passages passages) => DenseTelling.Tell(passages, Result, Folder);
}
