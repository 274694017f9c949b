using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;

namespace BenchSim.Cli.Tests.Hostile;

/// <summary>What the program has written, read by the rules of each kind of file and not by the program's own readers.</summary>
internal sealed partial class Written(string folder)
{
    private static readonly string[] s_elements =
    [
        "a",
        "b",
        "bdi",
        "body",
        "caption",
        "circle",
        "code",
        "dd",
        "details",
        "div",
        "dl",
        "dt",
        "figcaption",
        "figure",
        "footer",
        "g",
        "h1",
        "h2",
        "h3",
        "h4",
        "head",
        "header",
        "html",
        "i",
        "li",
        "line",
        "main",
        "meta",
        "nav",
        "p",
        "path",
        "rect",
        "section",
        "span",
        "strong",
        "style",
        "summary",
        "svg",
        "table",
        "tbody",
        "td",
        "text",
        "tfoot",
        "th",
        "thead",
        "title",
        "tr",
        "tspan",
        "ul",
    ];

    private static readonly string[] s_calendarWords =
    [
        "BEGIN",
        "END",
        "VERSION",
        "PRODID",
        "CALSCALE",
        "METHOD",
        "X-WR-CALNAME",
        "UID",
        "DTSTAMP",
        "DTSTART",
        "DTEND",
        "SUMMARY",
        "DESCRIPTION",
        "CATEGORIES",
        "TRANSP",
        "SEQUENCE",
        "CLASS",
    ];

    /// <summary>
    /// What a reader sees of a text: line breaks as blanks, a sign in the place of other control characters and of marks that turn the
    /// direction.
    /// </summary>
    public static string Visible(string text) =>
        string.Concat(
            text.Select(letter =>
                letter is '\r' or '\n' or '\u2028' or '\u0085' ? " "
                : letter == '\u202E' || char.IsControl(letter) ? "\uFFFD"
                : letter.ToString()
            )
        );

    /// <summary>Nothing in any file does more than stand there.</summary>
    public void AssertInert()
    {
        var pages = 0;
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var name = Path.GetRelativePath(folder, path).Replace('\\', '/');
            Assert.Matches("^[A-Za-z0-9._/-]+$", name);
            if (name.Contains("/inputs/", StringComparison.Ordinal) || Path.GetFileName(name).StartsWith('.'))
            {
                continue;
            }

            switch (Path.GetExtension(name))
            {
                case ".html":
                    AssertInertPage(name);
                    pages++;
                    break;
                case ".csv":
                    AssertInertTable(name);
                    break;
                case ".ics":
                    Assert.NotEmpty(CalendarText(name));
                    break;
                case ".xlsx":
                    Assert.NotEmpty(WorkbookText(name));
                    break;
                case ".json":
                    using (JsonDocument.Parse(File.ReadAllBytes(path)))
                    {
                        break;
                    }

                case ".pdf":
                    var pdf = Encoding.Latin1.GetString(File.ReadAllBytes(path));
                    Assert.StartsWith("%PDF-", pdf, StringComparison.Ordinal);
                    Assert.DoesNotMatch("/(JavaScript|JS|Launch|URI|OpenAction|AA)[ /<(]", pdf);
                    break;
                case ".png":
                    Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(path)[..4]);
                    break;
                default:
                    Assert.Fail($"What kind of file is {name}?");
                    break;
            }
        }

        Assert.Equal(4, pages);
    }

    /// <summary>The words of a page, and those it shows when pointed at.</summary>
    public string PageText(string name)
    {
        var page = Page(name);
        return page.Root!.Value + "\n" + string.Join('\n', page.Descendants().Attributes("title").Select(title => title.Value));
    }

    /// <summary>The cells of a table, after RFC 4180.</summary>
    public string[] Cells(string name) => [.. Rows(name).SelectMany(row => row)];

    /// <summary>
    /// The values of a calendar file, after RFC 5545: lines of at most 75 octets, folded ones joined, each with a word that may begin it.
    /// </summary>
    public string CalendarText(string name)
    {
        var text = File.ReadAllText(Path.Combine(folder, name));
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        var lines = text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.All(lines, line => Assert.Contains(line.Split(':', ';')[0], s_calendarWords, StringComparer.Ordinal));
        Assert.Equal(lines.Count(line => line == "BEGIN:VEVENT"), lines.Count(line => line.StartsWith("UID:", StringComparison.Ordinal)));
        return Backslash().Replace(string.Join('\n', lines), "${sign}");
    }

    /// <summary>The texts of a workbook: its parts are XML, and none is a formula or leads elsewhere.</summary>
    public string WorkbookText(string name)
    {
        using var zip = ZipFile.OpenRead(Path.Combine(folder, name));
        var text = new StringBuilder();
        foreach (var entry in zip.Entries)
        {
            using var stream = entry.Open();
            var part = XDocument.Load(stream);
            Assert.DoesNotContain(part.Descendants(), element => element.Name.LocalName is "f" or "hyperlink");
            Assert.DoesNotContain(part.Descendants().Attributes("TargetMode"), mode => mode.Value == "External");
            text.AppendJoin(
                    '\n',
                    part.Descendants().Where(element => element.Name.LocalName is "t" or "v").Select(element => element.Value)
                )
                .Append('\n');
        }

        return text.ToString();
    }

    private XDocument Page(string name)
    {
        using var reader = XmlReader.Create(
            Path.Combine(folder, name),
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
        );
        return XDocument.Load(reader);
    }

    private void AssertInertPage(string name)
    {
        var page = Page(name);
        Assert.DoesNotContain(page.Root!.ToString(), letter =>
            letter == '\u202E' || (char.IsControl(letter) && letter is not ('\n' or '\r' or '\t'))
        );
        foreach (var element in page.Descendants())
        {
            Assert.Contains(element.Name.LocalName, s_elements, StringComparer.Ordinal);
            Assert.DoesNotContain(element.Attributes(), attribute =>
                attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
                || attribute.Name.LocalName is "src" or "style" or "action"
            );
            if (element.Attribute("href") is { } link)
            {
                Assert.Matches(@"^(#[a-z0-9-]+|tables/[a-z-]+\.csv|charts/[a-z0-9-]+\.png|result\.json)$", link.Value);
            }
        }
    }

    private void AssertInertTable(string name)
    {
        var rows = Rows(name);
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        Assert.All(Cells(name), cell =>
            Assert.True(cell.TrimStart() is not ['=' or '+' or '-' or '@', ..] || Number().IsMatch(cell), cell)
        );
    }

    private string[][] Rows(string name)
    {
        var text = File.ReadAllText(Path.Combine(folder, name)).TrimStart('\uFEFF');
        var rows = new List<string[]>();
        var row = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var at = 0; at < text.Length; at++)
        {
            var letter = text[at];
            if (quoted)
            {
                if (letter != '"')
                {
                    cell.Append(letter);
                }
                else if (at + 1 < text.Length && text[at + 1] == '"')
                {
                    cell.Append(text[++at]);
                }
                else
                {
                    quoted = false;
                }
            }
            else if (letter == '"')
            {
                quoted = true;
            }
            else if (letter == ',' || letter == '\n')
            {
                row.Add(cell.ToString());
                cell.Clear();
                if (letter == '\n')
                {
                    rows.Add([.. row]);
                    row.Clear();
                }
            }
            else if (letter != '\r')
            {
                cell.Append(letter);
            }
        }

        return [.. rows];
    }

    [GeneratedRegex(@"\\(?<sign>[\\;,])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Backslash();

    [GeneratedRegex(@"^-?\d+(\.\d+)?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}
