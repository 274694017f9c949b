using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Shelves;

/// <summary>A value as it was before a log taught another, as it stood in the table.</summary>
/// <param name="Column">Its column.</param>
/// <param name="Text">The value as it is written.</param>
/// <param name="Trust">How far it may be trusted.</param>
public sealed record ValueBefore(string Column, string Text, Trust Trust);

/// <summary>
/// What the column <c>source</c> of crops.csv says of values that were learned from logs: which seasons, how many batches, and what stood
/// there before, so that the same seasons can be learned from again:
/// <c>own log, 2026 and 2027, 12 batches; before: emerge_heat 96 (from memory), stand_loss 5 % (assumption); others: my notebook</c>.
/// </summary>
public sealed record OwnLog
{
    private const string Opening = "own log, ";
    private const string BeforePart = "; before: ";
    private const string OthersPart = "; others: ";

    /// <summary>The seasons, in order.</summary>
    public required ImmutableArray<string> Seasons { get; init; }

    /// <summary>Batches that taught something.</summary>
    public required int Batches { get; init; }

    /// <summary>The values that it holds for, as they were before.</summary>
    public required ImmutableArray<ValueBefore> Before { get; init; }

    /// <summary>What the column said before: it holds for the other values of the row; may be empty.</summary>
    public string Others { get; init; } = "";

    /// <summary>Reads a source; null where it is none of this form.</summary>
    /// <param name="text">The text of the column.</param>
    public static OwnLog? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.StartsWith(Opening, StringComparison.Ordinal))
        {
            return null;
        }

        var (rest, others) = Split(text[Opening.Length..], OthersPart);
        var (head, before) = Split(rest, BeforePart);
        var comma = head.LastIndexOf(", ", StringComparison.Ordinal);
        var values = before.Split("), ", StringSplitOptions.RemoveEmptyEntries).Select(Value).ToArray();
        return
            comma < 0
            || !int.TryParse(head[(comma + 2)..].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture, out var batches)
            || Array.Exists(values, value => value is null)
            ? null
            : new OwnLog
            {
                Seasons = [.. head[..comma].Split(" and ")],
                Batches = batches,
                Before = [.. values.OfType<ValueBefore>()],
                Others = others,
            };
    }

    /// <summary>Where a value of a row comes from.</summary>
    /// <param name="text">The text of its column <c>source</c>.</param>
    /// <param name="column">Column of the value.</param>
    internal static Provenance SourceOf(string text, string column) =>
        Read(text) is { } log && log.Find(column) is null ? new Provenance(Trust.User, log.Others) : new Provenance(Trust.User, text);

    /// <summary>The value of a column as it was before; null where it was not learned.</summary>
    public ValueBefore? Find(string column) =>
        Before.FirstOrDefault(value => string.Equals(value.Column, column, StringComparison.Ordinal));

    /// <summary>The text of the column.</summary>
    public override string ToString()
    {
        var before = Before.Select(value => $"{value.Column} {value.Text} ({new Provenance(value.Trust, "").Words})");
        return $"{Opening}{string.Join(" and ", Seasons)}, {Batches} {(Batches == 1 ? "batch" : "batches")}"
            + (Before.IsEmpty ? "" : BeforePart + string.Join(", ", before))
            + (Others.Length == 0 ? "" : OthersPart + Others);
    }

    private static (string Before, string Behind) Split(string text, string at) =>
        text.IndexOf(at, StringComparison.Ordinal) is >= 0 and var found ? (text[..found], text[(found + at.Length)..]) : (text, "");

    private static ValueBefore? Value(string text)
    {
        var (name, bracket) = (text.IndexOf(' ', StringComparison.Ordinal), text.LastIndexOf(" (", StringComparison.Ordinal));
        if (name < 0 || bracket <= name)
        {
            return null;
        }

        var words = text[(bracket + 2)..].TrimEnd(')');
        return Enum.GetValues<Trust>().Where(each => Words(each, words)).Cast<Trust?>().FirstOrDefault() is { } trust
            ? new ValueBefore(text[..name], text[(name + 1)..bracket], trust)
            : null;
    }

    private static bool Words(Trust trust, string words) => string.Equals(new Provenance(trust, "").Words, words, StringComparison.Ordinal);
}
