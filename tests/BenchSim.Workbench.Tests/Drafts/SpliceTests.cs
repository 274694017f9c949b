using BenchSim.Workbench.Drafts;
using CsCheck;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>The part of a text that gave way to another.</summary>
public sealed class SpliceTests
{
    // By its definition: made, the splices between two sets of texts give the second; taken back, the first.
    [Fact]
    public void Made_it_gives_the_text_after_and_taken_back_the_one_before() =>
        Gen.Select(Text, Text)
            .Sample(
                (before, after) =>
                {
                    var (one, other) = (Texts.None.With("a", before), Texts.None.With("a", after));
                    var now = Splice.Between(one, other).Aggregate(one, (texts, splice) => splice.Made(texts)!);
                    Assert.Equal(after, now.Of("a"));
                    var back = Splice.Between(one, other).Reverse().Aggregate(other, (texts, splice) => splice.TakenBack(texts)!);
                    Assert.Equal(before, back.Of("a"));
                },
                seed: "0000000000001",
                iter: 2000
            );

    [Fact]
    public void It_is_as_small_as_the_change()
    {
        var splice = Assert.Single(Splice.Between(Texts.None.With("a", "id,100,x"), Texts.None.With("a", "id,150,x")));
        Assert.Equal(("0", "5"), (splice.Out, splice.In));
    }

    [Fact]
    public void A_text_that_is_another_is_left_alone()
    {
        var splice = new Splice("a", 3, "100", "150");
        Assert.Null(splice.Made(Texts.None.With("a", "id,200")));
        Assert.Null(splice.Made(Texts.None.With("a", "id")));
        Assert.Null(splice.Made(Texts.None));
    }

    private static readonly string[] s_parts = ["a", "b", "\U0001F331", "\U0001F332", "\n"];

    // Pairs of halves, so that characters of two halves are cut in every way.
    private static Gen<string?> Text { get; } =
        Gen.OneOf(
            Gen.Const((string?)null),
            Gen.Int[0, 4].Select(at => s_parts[at]).Array[0, 8].Select(parts => (string?)string.Concat(parts))
        );
}
