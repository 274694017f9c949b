namespace BenchSim.Answers.Asking;

/// <summary>Watches over plays: is told how far they are, and stops them.</summary>
/// <param name="cancel">Stops them.</param>
public class PlayWatch(CancellationToken cancel)
{
    /// <summary>Stops a play.</summary>
    public CancellationToken Cancel => cancel;

    /// <summary>Plays, told how far it is.</summary>
    /// <param name="parts">Parts that the play tells of, such as seasons: it is done when the last is told.</param>
    /// <param name="play">Plays; given whom to tell, null for nobody.</param>
    public virtual T Over<T>(int parts, Func<IProgress<int>?, T> play)
    {
        ArgumentNullException.ThrowIfNull(play);
        return play(null);
    }
}
