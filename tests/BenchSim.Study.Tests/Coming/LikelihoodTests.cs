using BenchSim.Study.Coming;

namespace BenchSim.Study.Tests.Coming;

/// <summary>The three words and their bounds: 9, 5 and 1 of 10.</summary>
public class LikelihoodTests
{
    [Theory]
    [InlineData(400, 400, Likelihood.Sure)]
    [InlineData(360, 400, Likelihood.Sure)]
    [InlineData(359, 400, Likelihood.Likely)]
    [InlineData(200, 400, Likelihood.Likely)]
    [InlineData(199, 400, Likelihood.Maybe)]
    [InlineData(40, 400, Likelihood.Maybe)]
    [InlineData(39, 400, Likelihood.Rare)]
    [InlineData(0, 1, Likelihood.Rare)]
    [InlineData(1, 1, Likelihood.Sure)]
    public void A_word_holds_from_its_share_on(int happened, int seasons, Likelihood word) =>
        Assert.Equal(word, Likelihoods.Of(happened, seasons));
}
