namespace BenchSim.Study.Mending;

/// <summary>Turns seasons played into thousandths of a whole that is only guessed: it rises, and is done when the search is.</summary>
internal sealed class MendProgress(IProgress<int>? progress)
{
    /// <summary>Parts of the whole.</summary>
    public const int Parts = 1000;

    private readonly Lock _gate = new();
    private long _done;
    private long _whole = 1;
    private int _told;

    /// <summary>Says how many more seasons there are to be played, about.</summary>
    public void Expect(long seasons)
    {
        lock (_gate)
        {
            _whole = _done + Math.Max(1, seasons);
        }
    }

    /// <summary>Counts seasons.</summary>
    public void Count(int seasons)
    {
        if (progress is null)
        {
            return;
        }

        lock (_gate)
        {
            _done += seasons;
            var now = (int)Math.Min(Parts - 1, Parts * _done / _whole);
            if (now > _told)
            {
                progress.Report(_told = now);
            }
        }
    }

    /// <summary>All is played.</summary>
    public void Finish() => progress?.Report(Parts);
}
