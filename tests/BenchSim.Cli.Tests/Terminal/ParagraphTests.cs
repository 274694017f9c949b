using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Tests.Terminal;

/// <summary>Lines of a terminal.</summary>
public sealed class ParagraphTests
{
    [Fact]
    public void A_sentence_is_broken_at_spaces_and_a_long_word_stays_whole() =>
        Assert.Equal(["the mats", "are", "overflowing", "now"], Paragraph.Lines("the mats are overflowing now", 8), StringComparer.Ordinal);
}
