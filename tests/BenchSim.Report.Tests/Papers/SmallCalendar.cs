using System.Text;

namespace BenchSim.Report.Tests.Papers;

/// <summary>
/// A small reader of calendar files, written from RFC 5545 and not from the writer: lines end in CRLF and have at most 75 octets (3.1), a
/// line that begins with a blank goes on with the one before (3.1), values are escaped with a backslash (3.3.11).
/// </summary>
internal sealed class SmallCalendar
{
    private SmallCalendar(List<Dictionary<string, string>> events, Dictionary<string, string> head) => (Events, Head) = (events, head);

    /// <summary>The events, property by name; parameters stay with the name: <c>DTSTART;VALUE=DATE</c>.</summary>
    public List<Dictionary<string, string>> Events { get; }

    /// <summary>The properties of the calendar itself.</summary>
    public Dictionary<string, string> Head { get; }

    public static SmallCalendar Read(byte[] bytes)
    {
        var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var raw = text.Split("\r\n")[..^1];
        Assert.All(raw, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 1, 75));

        var open = new Stack<string>();
        var calendar = new SmallCalendar([], new(StringComparer.Ordinal));
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            Assert.True(colon > 0, line);
            (var name, var value) = (line[..colon], line[(colon + 1)..]);
            switch (name)
            {
                case "BEGIN":
                    open.Push(value);
                    if (value == "VEVENT")
                    {
                        calendar.Events.Add(new(StringComparer.Ordinal));
                    }

                    break;
                case "END":
                    Assert.Equal(open.Pop(), value);
                    break;
                default:
                    var into = open.Peek() == "VEVENT" ? calendar.Events[^1] : calendar.Head;
                    into.Add(name, Unescaped(value));
                    break;
            }
        }

        Assert.Empty(open);
        return calendar;
    }

    private static string Unescaped(string value)
    {
        var text = new StringBuilder();
        for (var at = 0; at < value.Length; at++)
        {
            if (value[at] != '\\')
            {
                text.Append(value[at]);
                continue;
            }

            at++;
            Assert.Contains(value[at], "\\;,nN");
            text.Append(value[at] is 'n' or 'N' ? '\n' : value[at]);
        }

        return text.ToString();
    }
}
