namespace BenchSim.Cli.Terminal;

/// <summary>Breaks a sentence into lines.</summary>
internal static class Paragraph
{
    /// <summary>Lines of at most <paramref name="width"/> characters, broken at spaces; a longer word gets a line of its own.</summary>
    public static IEnumerable<string> Lines(string text, int width)
    {
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : line + " " + word;
            }
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }
}
