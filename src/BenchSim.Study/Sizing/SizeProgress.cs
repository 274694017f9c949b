namespace BenchSim.Study.Sizing;

/// <summary>Progress over several plays whose number is not known beforehand, in thousandths of about as many as a search takes.</summary>
internal sealed class SizeProgress(IProgress<int>? whole, int seasons)
{
    /// <summary>Thousandths of the whole.</summary>
    public const int Parts = 1000;

    private long _planned = 1;
    private long _done;
    private int _told;

    /// <summary>Says about how many numbers of places are still to come.</summary>
    public void Plan(int plays) => _planned = Math.Max(1, _done + plays);

    /// <summary>Progress of the next so many numbers of places, played side by side.</summary>
    public IProgress<int>? Of(int plays)
    {
        if (whole is null)
        {
            return null;
        }

        var before = _done;
        _done += plays;
        _planned = Math.Max(_planned, _done);
        return new Part(this, before, plays);
    }

    private void Report(long before, int plays, int season)
    {
        var share = (before + ((double)plays * season / seasons)) / _planned;
        var told = (int)Math.Min(Parts, Parts * share);
        if (told <= _told)
        {
            return;
        }

        _told = told;
        whole!.Report(told);
    }

    private sealed class Part(SizeProgress owner, long before, int plays) : IProgress<int>
    {
        public void Report(int value) => owner.Report(before, plays, value);
    }
}
