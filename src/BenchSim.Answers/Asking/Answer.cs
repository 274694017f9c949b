using BenchSim.Answers.Words;

namespace BenchSim.Answers.Asking;

/// <summary>What came of a question, to be shown to people or to machines.</summary>
public abstract record Answer
{
    /// <summary>The answer in words.</summary>
    public Passages Words
    {
        get
        {
            var passages = new Passages();
            Tell(passages);
            return passages;
        }
    }

    /// <summary>The answer as one JSON object, UTF-8, with a line feed at the end (docs/json.md).</summary>
    public abstract byte[] Json();

    /// <summary>Tells the answer in words.</summary>
    private protected abstract void Tell(Passages passages);
}
