using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Report;
using BenchSim.Season.Values;
using BenchSim.Study.Invest;

namespace BenchSim.Answers.Invest;

/// <summary>Asks whether a variant pays.</summary>
public sealed record InvestQuestion
{
    /// <summary>The scenario, with the variant.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>Name of the variant; its file has a table [invest].</summary>
    public required string Variant { get; init; }

    /// <summary>How both are played.</summary>
    public PlayWish Play { get; init; } = new();

    /// <summary>Folder for a chart and tables; null for none.</summary>
    public string? Out { get; init; }

    /// <summary>Plays the base and the variant, and writes the folder where one is asked for.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario or the variant has faults, or nothing says what it costs.</exception>
    public InvestAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        if (Out is not null)
        {
            InvestFolder.Check(Out);
        }

        var plan = Scenario.Open().Plan;
        var variant = Scenario.OpenVariants(plan, [Variant]).Plans[0];
        if (variant.Plan.Scenario.Invest is null)
        {
            throw new FaultsFoundException([
                new Fault(
                    new SourcePlace(FileNames.OfVariant(Variant), 0, 0),
                    "there is no table [invest], so nothing says what the variant costs",
                    "add [invest] with capital, life_years and discount_rate"
                ),
            ]);
        }

        var options = Play.Of(plan);
        var result = watch.Over(options.Seasons, progress => InvestRunner.Play(plan, variant, options, progress, watch.Cancel));
        if (Out is not null)
        {
            InvestFolder.Write(Out, result, watch.Cancel);
        }

        return new InvestAnswer(result, Out) { ScenarioFolder = Scenario.Directory };
    }
}

/// <summary>Whether a variant pays.</summary>
/// <param name="Result">The money case.</param>
/// <param name="Folder">Folder of the chart and tables; null where none was written.</param>
public sealed record InvestAnswer(InvestResult Result, string? Folder) : Answer
{
    /// <inheritdoc />
    public override byte[] Json() => AnswerContext.Write(InvestDocument.Of(Result, Folder));

    /// <inheritdoc />
    public override FirstScreen? Screen => InvestScreen.Of(this);

    private protected override void Tell(Passages passages) => InvestTelling.Tell(passages, Result, Folder);
}
