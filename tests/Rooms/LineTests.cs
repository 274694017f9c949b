using System.Globalization;
using System.Text.RegularExpressions;
using Support;

namespace Rooms;

/// <summary>Lines stay within the length that .editorconfig sets: the formatter breaks code, but no texts and no remarks.</summary>
public sealed partial class LineTests
{
    [Fact]
    public void No_line_is_longer_than_the_editor_is_told()
    {
        var most = MostCharacters();
        string[] tooLong =
        [
            .. from folder in new[] { "src", "tests" }
            from path in Sources.Of(folder)
            from line in Sources.Text(path).ReplaceLineEndings("\n").Split('\n').Index()
            where line.Item.Length > most
            select $"{path}:{line.Index + 1}: {line.Item.Length} characters; at most {most}",
        ];
        Assert.True(tooLong.Length == 0, string.Join('\n', tooLong));
    }

    private static int MostCharacters() =>
        int.Parse(
            MaxLineLength().Match(File.ReadAllText(Path.Combine(Repository.Root, ".editorconfig"))).Groups["most"].Value,
            CultureInfo.InvariantCulture
        );

    [GeneratedRegex(@"^\[\*\.cs\][^[]*^max_line_length = (?<most>\d+)", RegexOptions.Multiline)]
    private static partial Regex MaxLineLength();
}
