using BenchSim.Answers.Asking;
using BenchSim.Answers.Json;
using BenchSim.Answers.Laying;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;

namespace BenchSim.Answers.New;

/// <summary>Asks which starters there are.</summary>
public sealed record StartersQuestion
{
    /// <summary>Answers it.</summary>
    public static StartersAnswer Ask() => new();
}

/// <summary>The starters, and the climates they come in.</summary>
public sealed record StartersAnswer : Answer
{
    /// <inheritdoc />
    public override byte[] Json() =>
        AnswerContext.Write(
            new StartersDocument(
                JsonDialect.Version,
                [.. Starters.All.Select(starter => new StarterDocument(starter.Id, starter.About))],
                [.. StarterClimate.All.Select(climate => new StarterDocument(climate.Id, climate.About(isImperial: false)))]
            )
        );

    private protected override void Tell(Passages passages)
    {
        passages.Sentence("Invented farms to start from. Each fits at first, and has a variant to try that may not.");
        foreach (var starter in Starters.All)
        {
            passages.Point($"{starter.Id}: {starter.About}.");
        }

        passages.Gap();
        passages.Sentence("Each comes in three climates, invented as well:");
        foreach (var climate in StarterClimate.All)
        {
            passages.Point($"{climate.Id}: {climate.About(isImperial: true)} ({climate.Coldest(isImperial: false)}).");
        }

        passages.Gap();
        passages.Line("Lay one down:");
        var first = Starters.All[0].Id;
        passages.Line($"{Shell.Program} new spring --farm {first} --climate {StarterClimate.Usual.Id}", 2);
    }
}
