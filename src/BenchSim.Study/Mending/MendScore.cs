namespace BenchSim.Study.Mending;

/// <summary>
/// How short a season falls, and how sure it is that one plan falls less short than another. A season that does not fit counts 1, and the
/// plants that are late count by their share of all wanted: so it is the fit that leads, and the plants lead where nothing fits yet.
/// </summary>
/// <param name="wanted">Plants wanted in all.</param>
internal sealed class MendScore(long wanted)
{
    /// <summary>What is too little to be worth a change: half a season of a hundred.</summary>
    public const double Least = 0.005;

    // A season of fifty.
    private const double Little = 0.02;

    // The best of many is looked for, so that a plain 2 would let luck through.
    private const double Sure = 2.5;
    private const double Equal = 2;

    /// <summary>How much less short the second falls, on average, and the standard error of that.</summary>
    /// <param name="before">Seasons.</param>
    /// <param name="after">The same seasons, or the first of them.</param>
    public (double Mean, double Error) Gain(MendSeason[] before, MendSeason[] after)
    {
        var count = Math.Min(before.Length, after.Length);
        double sum = 0;
        double squares = 0;
        for (var at = 0; at < count; at++)
        {
            var gain = Of(before[at]) - Of(after[at]);
            sum += gain;
            squares += gain * gain;
        }

        var mean = sum / count;
        return (mean, count < 2 ? 0 : Math.Sqrt(Math.Max(0, squares - (count * mean * mean)) / (count - 1.0) / count));
    }

    /// <summary>Whether the second is better beyond luck, and by enough to be worth it.</summary>
    public bool IsBetter(MendSeason[] before, MendSeason[] after)
    {
        var (mean, error) = Gain(before, after);
        return mean >= Least && mean > Sure * error;
    }

    /// <summary>Whether the second is better in seasons that it was not chosen for.</summary>
    public bool IsConfirmed(MendSeason[] before, MendSeason[] after)
    {
        var (mean, error) = Gain(before, after);
        return mean >= Least && mean > Equal * error;
    }

    /// <summary>Whether the two cannot be told apart, or differ by less than matters.</summary>
    public bool IsEqual(MendSeason[] one, MendSeason[] other)
    {
        var (mean, error) = Gain(one, other);
        return Math.Abs(mean) <= Math.Max(Equal * error, Least);
    }

    /// <summary>Whether the second is so little worse that half of the material is worth more.</summary>
    public bool IsLittleWorse(MendSeason[] before, MendSeason[] after) => Gain(before, after).Mean > -Little;

    /// <summary>Whether the second is as good as the first, or so near that the difference does not matter.</summary>
    public bool IsNoWorse(MendSeason[] before, MendSeason[] after) => Gain(before, after).Mean > -Least;

    private double Of(MendSeason season) => (season.Fits ? 0 : 1) + ((double)season.Late / wanted);
}
