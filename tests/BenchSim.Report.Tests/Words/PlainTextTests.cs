using System.Text;
using BenchSim.Report.Words;
using CsCheck;

namespace BenchSim.Report.Tests.Words;

/// <summary>No text from users can move the cursor, change colours or turn the reading direction.</summary>
public sealed class PlainTextTests
{
    [Theory]
    [InlineData("Ann & Co", "Ann & Co")]
    [InlineData("[red]Ann[/]", "[red]Ann[/]")]
    [InlineData("a\u001b[31mb", "a\uFFFD[31mb")]
    [InlineData("a\u009b31mb", "a\uFFFD31mb")]
    [InlineData("a\r\nb\tc", "a  b c")]
    [InlineData("a\u0007\u0008b", "a\uFFFD\uFFFDb")]
    [InlineData("a\u202Eb\u2066c\u200Fd", "a\uFFFDb\uFFFDc\uFFFDd")]
    [InlineData("a\uFEFFb\u200Bc", "a\uFFFDb\uFFFDc")]
    [InlineData("\u0915\u094D\u200D\u0937 \u2764", "\u0915\u094D\u200D\u0937 \u2764")]
    public void Dangerous_characters_are_replaced_and_others_stay(string text, string safe) => Assert.Equal(safe, PlainText.OneLine(text));

    [Fact]
    public void A_lone_half_of_a_pair_is_replaced() => Assert.Equal("a\uFFFDb", PlainText.OneLine("a\uD800b"));

    [Fact]
    public void Nothing_that_a_terminal_obeys_gets_through_whatever_the_text() =>
        Gen.String[Gen.Char['\0', '\uFFFF'], 0, 40]
            .Sample(
                text =>
                    PlainText
                        .OneLine(text)
                        .EnumerateRunes()
                        .All(rune =>
                            !Rune.IsControl(rune)
                            && rune.Value is not ((>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069) or 0x200E or 0x200F or 0x061C)
                        ),
                iter: 2000,
                seed: "0000000000001",
                threads: 1
            );

    [Theory]
    [InlineData("abcdef", 6, "abcdef")]
    [InlineData("abcdef", 5, "abcd…")]
    [InlineData("e\u0301e\u0301e\u0301", 2, "e\u0301…")]
    public void Long_names_are_cut_between_characters_as_readers_count_them(string text, int most, string cut) =>
        Assert.Equal(cut, PlainText.Short(text, most));
}
