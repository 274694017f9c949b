using System.Text;
using System.Text.RegularExpressions;

namespace Rooms;

/// <summary>
/// Breaks the prose of a page of Markdown at one width. Code, tables, headings and pictures stay as they are; a piece of code in a sentence
/// is not broken.
/// </summary>
internal static partial class PageWrap
{
    /// <summary>The page with its prose broken anew.</summary>
    /// <param name="page">The page, with line feeds.</param>
    /// <param name="width">Most characters of a line; a single word may be longer.</param>
    public static string Wrap(string page, int width)
    {
        var made = new List<string>();
        var block = new List<string>();
        var inFence = false;

        // How deep the words of the item stand that we are in; 0 outside lists.
        var depth = 0;
        foreach (var line in page.Split('\n'))
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                inFence = !inFence;
                Flush();
                made.Add(line);
            }
            else if (inFence || IsKept(line) || (block.Count == 0 && Blanks(line) >= depth + 4))
            {
                Flush();
                depth = line.Length == 0 || line[0] == ' ' ? depth : 0;
                made.Add(line);
            }
            else
            {
                if (ListItem().Match(line) is { Success: true } item)
                {
                    Flush();
                    depth = item.Length;
                }
                else if (block.Count == 0 && line[0] != ' ')
                {
                    depth = 0;
                }

                block.Add(line);
            }
        }

        Flush();
        return string.Join('\n', made);

        void Flush()
        {
            if (block.Count > 0)
            {
                made.AddRange(Lines(block, width));
                block.Clear();
            }
        }
    }

    private static int Blanks(string line) => line.Length - line.TrimStart(' ').Length;

    private static bool IsKept(string line) => line.Length == 0 || line[0] is '|' or '#' or '!' or '<' or '>';

    // The first line of a block says how deep it stands; those below stand under its words.
    private static IEnumerable<string> Lines(List<string> block, int width)
    {
        var head = ListItem().Match(block[0]) is { Success: true } item ? item.Value : new string(' ', Blanks(block[0]));
        var below = new string(' ', head.Length);
        var line = new StringBuilder(head);
        var isEmpty = true;
        foreach (var word in Words(string.Join(' ', block.Select(each => each.Trim()))[head.TrimStart().Length..].TrimStart()))
        {
            if (!isEmpty && line.Length + 1 + word.Length > width)
            {
                yield return line.ToString();
                line.Clear().Append(below);
                isEmpty = true;
            }

            line.Append(isEmpty ? "" : " ").Append(word);
            isEmpty = false;
        }

        yield return line.ToString();
    }

    // A word that would open a block at the beginning of a line goes with the one before it.
    private static List<string> Words(string text)
    {
        var words = new List<string>();
        foreach (Match match in Word().Matches(text))
        {
            if (words.Count > 0 && OpensABlock().IsMatch(match.Value))
            {
                words[^1] += " " + match.Value;
            }
            else
            {
                words.Add(match.Value);
            }
        }

        return words;
    }

    [GeneratedRegex(@"^ *(?:[-*]|\d+\.) +")]
    private static partial Regex ListItem();

    // Blanks inside a piece of code belong to it.
    [GeneratedRegex(@"(?:`[^`]*`|[^\s`])+")]
    private static partial Regex Word();

    // A list, a heading, a table or a quotation.
    [GeneratedRegex(@"^(?:[-+*>|]|#+|\d+[.)])$")]
    private static partial Regex OpensABlock();
}
