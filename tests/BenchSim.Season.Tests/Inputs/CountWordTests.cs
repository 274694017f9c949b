using BenchSim.Season.Inputs;

namespace BenchSim.Season.Tests.Inputs;

/// <summary>Words in the place of counts.</summary>
public class CountWordTests
{
    // A quarter of 72 is 18, three quarters are 54, and 95 of 100 are 68.4.
    [Fact]
    public void Of_a_tray_of_72_cells() =>
        Assert.Equal(
            [new CountRange(0, 18), new CountRange(19, 54), new CountRange(55, 68), new CountRange(69, 72)],
            CountWords.All.Select(each => CountWords.Range(each.Value, 72))
        );

    [Fact]
    public void Each_number_has_one_word_and_each_word_a_number()
    {
        for (var of = CountWords.Fewest; of <= 1000; of++)
        {
            var next = 0;
            foreach (var (_, word) in CountWords.All)
            {
                var range = CountWords.Range(word, of);
                Assert.Equal(next, range.Least);
                Assert.True(range.Most >= range.Least);
                next = range.Most + 1;
            }

            Assert.Equal(of + 1, next);
        }
    }
}
