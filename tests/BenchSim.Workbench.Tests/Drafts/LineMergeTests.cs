using BenchSim.Workbench.Drafts;
using CsCheck;

namespace BenchSim.Workbench.Tests.Drafts;

/// <summary>Two changes of a text, put together line by line.</summary>
public sealed class LineMergeTests
{
    [Theory]
    [InlineData("a\nb\nc\n", "a\nB\nc\n", "a\nb\nc\nd\n", "a\nB\nc\nd\n")]
    [InlineData("a\nb\nc\nd\n", "b\nc\nd\n", "a\nb\nc\nD\n", "b\nc\nD\n")]
    [InlineData("a\nb\nc\nd\ne\n", "a\nB\nc\nd\ne\n", "a\nb\nc\nD\ne\n", "a\nB\nc\nD\ne\n")]
    [InlineData("a\nb\n", "a\nX\n", "a\nX\n", "a\nX\n")]
    [InlineData("a\r\nb\r\nc", "A\r\nb\r\nc", "a\r\nb\r\nC", "A\r\nb\r\nC")]
    public void Changes_of_other_lines_both_stand(string from, string one, string other, string merged)
    {
        Assert.Equal(merged, LineMerge.Of(from, one, other));
        Assert.Equal(merged, LineMerge.Of(from, other, one));
    }

    [Theory]
    [InlineData("a\nb\nc\n", "a\nB\nc\n", "a\nX\nc\n")]
    [InlineData("a\nb\nc\n", "a\nc\n", "a\nX\nc\n")]
    [InlineData("a\n", "a\nx\n", "a\ny\n")]
    [InlineData("a\nb\nc\n", "A\nb\nc\n", "a\nB\nc\n")]
    public void Changes_that_meet_are_not_put_together(string from, string one, string other)
    {
        Assert.Null(LineMerge.Of(from, one, other));
        Assert.Null(LineMerge.Of(from, other, one));
    }

    // By its definition: with nothing changed on one side, the other side stands, whatever both are.
    [Fact]
    public void With_one_side_unchanged_the_other_stands() =>
        Gen.Select(Text, Text)
            .Sample(
                (from, one) =>
                {
                    Assert.Equal(one, LineMerge.Of(from, one, from));
                    Assert.Equal(one, LineMerge.Of(from, from, one));
                    Assert.Equal(one, LineMerge.Of(from, one, one));
                },
                seed: "0000000000001",
                iter: 2000
            );

    private static Gen<string> Text { get; } = Gen.Char["ab\n"].Array[0, 12].Select(letters => new string(letters));
}
