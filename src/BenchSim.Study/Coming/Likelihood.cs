namespace BenchSim.Study.Coming;

/// <summary>How likely something is, in the words of a page for the clipboard: no percentages beside jobs.</summary>
public enum Likelihood
{
    /// <summary>In fewer seasons than that: not worth a line.</summary>
    Rare,

    /// <summary>In at least 1 season of 10.</summary>
    Maybe,

    /// <summary>In at least 5 seasons of 10.</summary>
    Likely,

    /// <summary>In at least 9 seasons of 10.</summary>
    Sure,
}

/// <summary>The bounds of the words.</summary>
public static class Likelihoods
{
    /// <summary>Seasons of 10 from which on something is sure.</summary>
    public const int SureOfTen = 9;

    /// <summary>Seasons of 10 from which on it is likely.</summary>
    public const int LikelyOfTen = 5;

    /// <summary>Seasons of 10 from which on it is listed.</summary>
    public const int MaybeOfTen = 1;

    /// <summary>The word for something that happened in some of the seasons played.</summary>
    /// <param name="happened">Seasons in which it did, 0 or more.</param>
    /// <param name="seasons">Seasons played, 1 or more.</param>
    public static Likelihood Of(int happened, int seasons)
    {
        return IsAtLeast(SureOfTen) ? Likelihood.Sure
            : IsAtLeast(LikelyOfTen) ? Likelihood.Likely
            : IsAtLeast(MaybeOfTen) ? Likelihood.Maybe
            : Likelihood.Rare;

        // In whole numbers, so that 90 of 100 are 9 of 10.
        bool IsAtLeast(int ofTen) => 10L * happened >= (long)ofTen * seasons;
    }
}
