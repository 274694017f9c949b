using System.Text.Json;
using BenchSim.Answers.Json;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;

namespace BenchSim.Answers.Asking;

/// <summary>What came of a question, to be shown to people or to machines.</summary>
public abstract record Answer
{
    /// <summary>The scenario folder as the user would write it; null for one in memory.</summary>
    public string? ScenarioFolder { get; init; }

    /// <summary>From what it was played; null for whole seasons.</summary>
    public PlayedFrom? From { get; init; }

    /// <summary>What people read first; null for an answer that is short, or read whole.</summary>
    public virtual FirstScreen? Screen => null;

    /// <summary>What people read first, with what to know of the day from which it was played.</summary>
    public FirstScreen? Front => Screen is { } screen && From is { } from ? UnderwayWords.On(screen, from) : Screen;

    /// <summary>The whole answer in words, what stands on the first screen in more detail.</summary>
    public Passages Words
    {
        get
        {
            var passages = new Passages();
            Tell(passages);
            if (From is { } from)
            {
                passages.Heading($"Played from {Dates.Full(from.Today)} on:");
                foreach (var sentence in UnderwayWords.Of(from))
                {
                    passages.Point(sentence);
                }
            }

            return passages;
        }
    }

    /// <summary>What was asked for by name, and is shown below the first screen.</summary>
    public virtual Passages Asked => [];

    /// <summary>The answer as one JSON object, UTF-8, with a line feed at the end (docs/json.md).</summary>
    public abstract byte[] Json();

    /// <summary>The answer as one JSON object, within what to know of the day from which it was played.</summary>
    public byte[] Document()
    {
        if (From is not { } from)
        {
            return Json();
        }

        using var whole = JsonDocument.Parse(Json());
        return AnswerContext.Write(UnderwayDocument.Of(from.Plan, from.Today, from.Due, whole.RootElement));
    }

    /// <summary>Tells the answer in words.</summary>
    private protected abstract void Tell(Passages passages);
}
