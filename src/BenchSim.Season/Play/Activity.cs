namespace BenchSim.Season.Play;

/// <summary>
/// A conditional activity: a step of the work round, tried for each batch that has anything to ask, in rank (docs/model.md section 3). It
/// changes the
/// state only through the books it is given.
/// </summary>
internal abstract class Activity(SeasonState state)
{
    protected SeasonState State => state;

    /// <summary>The batches it is tried for.</summary>
    protected abstract List<BatchState> Batches { get; }

    /// <summary>Tries the step for each of its batches.</summary>
    public virtual void Attempt()
    {
        foreach (var batch in SeasonState.Each(Batches))
        {
            Attempt(batch);
        }
    }

    /// <summary>Tries the step for a batch.</summary>
    protected abstract void Attempt(BatchState batch);
}
