namespace BenchSim.Cli.Tests;

/// <summary>
/// Does what docs/tutorial.md says, from its first line to its last, in an empty folder, and compares what is shown with what comes. The
/// page has
/// these blocks between lines of three backquotes:
/// <list type="bullet">
/// <item><c>console</c>: a line that begins with <c>$ benchsim</c> is run; the lines below it, up to the next such line, are what it
/// prints: standard output, then
/// standard error. A line <c>...</c> stands for any number of lines, none too. A last line <c>[exit code N]</c> is how it ends, 0 where
/// there is none.</item>
/// <item><c>toml FILE</c>, <c>csv FILE</c>: the whole of a file, written anew.</item>
/// <item><c>diff FILE</c>: the one line that begins like the text behind <c>-</c> gives way to the lines behind <c>+</c> that
/// follow.</item>
/// </list>
/// </summary>
[Collection("Changes the current folder")]
public sealed class TutorialTests
{
    [Fact]
    public void Every_command_of_the_tutorial_prints_what_it_shows()
    {
        using var folder = new TemporaryFolder();
        var before = Directory.GetCurrentDirectory();
        Directory.SetCurrentDirectory(folder.Path);
        try
        {
            var commands = 0;
            foreach ((var head, var lines) in Blocks(File.ReadAllLines(Path.Combine(Repository.Root, "docs", "tutorial.md"))))
            {
                var words = head.Split(' ');
                if (head == "console")
                {
                    commands += RunAll(lines);
                }
                else if (words is ["diff", var changed])
                {
                    Change(changed, lines);
                }
                else if (words is ["toml" or "csv", var written])
                {
                    WriteFile(written, lines);
                }
                else
                {
                    Assert.Fail($"What is a block \"{head}\"?");
                }
            }

            Assert.Equal(11, commands);
        }
        finally
        {
            Directory.SetCurrentDirectory(before);
        }
    }

    [Theory]
    [InlineData("a|b|c", "a|b|c", true)]
    [InlineData("a|...|c", "a|b|b|c", true)]
    [InlineData("a|...|c", "a|c", true)]
    [InlineData("...|b|...", "a|b|c", true)]
    [InlineData("a|c", "a|b|c", false)]
    [InlineData("a|...", "b|a", false)]
    [InlineData("...|a", "a|b", false)]
    [InlineData("...|c|...|a|...", "a|b|c", false)]
    [InlineData("a|b", "a", false)]
    [InlineData("...|a|...|a", "a", false)]
    public void Shown_lines_are_found_in_their_order_and_gaps_only_where_dots_are(string shown, string printed, bool same) =>
        Assert.Equal(same, Missing(shown.Split('|'), printed.Split('|')) is null);

    private static IEnumerable<(string Head, string[] Lines)> Blocks(string[] page)
    {
        for (var at = 0; at < page.Length; at++)
        {
            if (!page[at].StartsWith("```", StringComparison.Ordinal))
            {
                continue;
            }

            var end = Array.IndexOf(page, "```", at + 1);
            Assert.True(end > at, $"The block in line {at + 1} has no end.");
            yield return (page[at][3..], page[(at + 1)..end]);
            at = end;
        }
    }

    private static int RunAll(string[] lines)
    {
        var commands = 0;
        var at = 0;
        while (at < lines.Length)
        {
            const string prompt = "$ benchsim ";
            Assert.StartsWith(prompt, lines[at], StringComparison.Ordinal);
            var end = Array.FindIndex(lines, at + 1, line => line.StartsWith("$ ", StringComparison.Ordinal));
            end = end < 0 ? lines.Length : end;
            RunOne(lines[at][prompt.Length..], lines[(at + 1)..end]);
            commands++;
            at = end;
        }

        return commands;
    }

    private static void RunOne(string command, string[] shown)
    {
        var code = 0;
        if (shown is [.., var last] && last.StartsWith("[exit code ", StringComparison.Ordinal))
        {
            code = last["[exit code ".Length] - '0';
            shown = shown[..^1];
        }

        var call = Call.Run(command.Split(' '));
        var printed = (call.Output + call.Error).TrimEnd();
        Assert.True(code == call.Code, $"{command} ends with {call.Code}: {printed}");
        var missing = Missing(shown, [.. printed.Split('\n').Select(line => line.TrimEnd())]);
        Assert.True(missing is null, $"benchsim {command} does not print, where the tutorial shows it,\n{missing}\nbut\n{printed}");
    }

    /// <summary>The first piece of what is shown that is not printed in its place; null when all are.</summary>
    private static string? Missing(string[] shown, string[] printed)
    {
        var at = 0;
        var anywhere = false;
        var from = 0;
        while (from <= shown.Length)
        {
            var end = Array.IndexOf(shown, "...", from);
            var isLast = end < 0;
            var piece = shown[from..(isLast ? shown.Length : end)];
            var least = isLast && piece.Length > 0 && anywhere ? Math.Max(at, printed.Length - piece.Length) : at;
            var found = Enumerable
                .Range(least, Math.Max(0, printed.Length - least + 1))
                .Take(anywhere ? int.MaxValue : 1)
                .FirstOrDefault(start => printed.Skip(start).Take(piece.Length).SequenceEqual(piece, StringComparer.Ordinal), -1);
            if (found < 0 || (isLast && piece.Length > 0 && found + piece.Length != printed.Length))
            {
                return string.Join('\n', piece);
            }

            if (isLast)
            {
                return piece.Length == 0 && !anywhere && printed.Length > at ? printed[at] : null;
            }

            at = found + piece.Length;
            anywhere = true;
            from = end + 1;
        }

        return null;
    }

    private static void WriteFile(string file, string[] lines)
    {
        if (Path.GetDirectoryName(file) is { Length: > 0 } parent)
        {
            Directory.CreateDirectory(parent);
        }

        File.WriteAllLines(file, lines);
    }

    private static void Change(string file, string[] lines)
    {
        List<string> text = [.. File.ReadAllLines(file)];
        var at = -1;
        foreach (var line in lines)
        {
            if (line[0] == '-')
            {
                at = text.FindIndex(each => each.StartsWith(line[1..], StringComparison.Ordinal));
                Assert.True(at >= 0, $"{file} has no line that begins with {line[1..]}");
                Assert.Equal(at, text.FindLastIndex(each => each.StartsWith(line[1..], StringComparison.Ordinal)));
                text.RemoveAt(at);
            }
            else
            {
                Assert.Equal('+', line[0]);
                text.Insert(at++, line[1..]);
            }
        }

        File.WriteAllLines(file, text);
    }
}
