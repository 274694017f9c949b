namespace BenchSim.Season.Play;

/// <summary>
/// A conditional activity: a step of the work round, tried for each batch that has anything to ask, in rank (docs/model.md section 3). It changes the
/// state only through the books it is given.
/// </summary>
internal abstract class Activity(SeasonState state)
{
    protected SeasonState State => state;

    /// <summary>Tries the step for all batches asked.</summary>
    public virtual void Attempt()
    {
        foreach (var batch in SeasonState.Each(state.Asked))
        {
            Attempt(batch);
        }
    }

    /// <summary>Tries the step for a batch.</summary>
    protected abstract void Attempt(BatchState batch);
}
