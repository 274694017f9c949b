using BenchSim.Answers.Words;

namespace BenchSim.Answers.Asking;

/// <summary>What came of a question, to be shown to people or to machines.</summary>
public abstract record Answer
{
    /// <summary>The scenario folder as the user would write it; null for one in memory.</summary>
    public string? ScenarioFolder { get; init; }

    /// <summary>What people read first; null for an answer that is short, or read whole.</summary>
    public virtual FirstScreen? Screen => null;

    /// <summary>The whole answer in words, what stands on the first screen in more detail.</summary>
    public Passages Words
    {
        get
        {
            var passages = new Passages();
            Tell(passages);
            return passages;
        }
    }

    /// <summary>What was asked for by name, and is shown below the first screen.</summary>
    public virtual Passages Asked => [];

    /// <summary>The answer as one JSON object, UTF-8, with a line feed at the end (docs/json.md).</summary>
    public abstract byte[] Json();

    /// <summary>Tells the answer in words.</summary>
    private protected abstract void Tell(Passages passages);
}
