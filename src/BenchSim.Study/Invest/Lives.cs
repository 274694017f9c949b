using BenchSim.Engine.Randomness;

namespace BenchSim.Study.Invest;

/// <summary>
/// Draws of seasons from those played: every draw is a number of its own place (resample, row, position), so that no order matters and the
/// same seed gives the same draws.
/// </summary>
internal readonly struct Lives(ulong seed, int seasons)
{
    private const int WordsABlock = 4;

    private readonly PhiloxKey _key = PhiloxKey.Of(seed, "years of a life");

    /// <summary>Fills a row with seasons, each drawn evenly from all.</summary>
    /// <param name="resample">Number of the resample, 0 for the lives themselves.</param>
    /// <param name="row">Number of the life or row.</param>
    /// <param name="drawn">Takes the positions of the seasons.</param>
    public void Draw(int resample, int row, Span<int> drawn)
    {
        for (var at = 0; at < drawn.Length; at += WordsABlock)
        {
            var (a, b, c, d) = Philox.Block(new PhiloxBlock((uint)(at / WordsABlock), (uint)row, (uint)resample, 0), _key);
            ReadOnlySpan<uint> words = [a, b, c, d];

            // 32 bits spread over the seasons: uneven by seasons / 2^32 at most.
            for (var word = 0; word < Math.Min(WordsABlock, drawn.Length - at); word++)
            {
                drawn[at + word] = (int)(((ulong)words[word] * (uint)seasons) >> 32);
            }
        }
    }
}
