using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using BenchSim.Season.Values;

namespace BenchSim.Season.Fields;

/// <summary>A kind of value that a key or a column may hold, in words.</summary>
/// <param name="what">What is written: "whole number", "yes or no".</param>
/// <param name="unit">Its unit; empty where there is none.</param>
/// <param name="range">Least and greatest; empty where there are none.</param>
public abstract class Kind(string what, string unit = "", string range = "")
{
    /// <summary>What is written: "whole number", "yes or no".</summary>
    public string What { get; } = what;

    /// <summary>Its unit; empty where there is none.</summary>
    public string Unit { get; } = unit;

    /// <summary>Least and greatest: "0 to 365", "above 0 %"; empty where there are none.</summary>
    public string Range { get; } = range;

    /// <summary>Whether the word none stands for no value.</summary>
    public virtual bool TakesNone => false;

    /// <summary>Whether an empty text may be written.</summary>
    public virtual bool MayBeEmpty => false;

    /// <summary>The words of which one is written; none where others may be.</summary>
    public virtual IEnumerable<string> Choices => [];

    /// <summary>Whether several values may be written.</summary>
    public virtual bool IsList => false;
}

/// <summary>A kind of value: how it is read, shown and written.</summary>
/// <typeparam name="T">The value inside.</typeparam>
public abstract class Kind<T>(string what, string unit = "", string range = "") : Kind(what, unit, range)
{
    /// <summary>Reads a value; false when nothing is written, and when what is written is a fault, which is reported.</summary>
    public abstract bool TryRead(IWritten written, [MaybeNullWhen(false)] out T value);

    /// <summary>A value as people read it, with its unit.</summary>
    public abstract string Show(T value, UnitSystem units);

    /// <summary>A value as it is written in a file.</summary>
    public virtual string Write(T value, UnitSystem units) => Show(value, units);

    /// <summary>Whether two values are the same.</summary>
    public virtual bool IsSame(T one, T other) => EqualityComparer<T>.Default.Equals(one, other);

    /// <summary>For kinds whose reading gives a value or null.</summary>
    private protected static bool Found<TValue>(TValue? read, out TValue value)
        where TValue : struct
    {
        value = read.GetValueOrDefault();
        return read.HasValue;
    }

    /// <summary>Reads a plain decimal number, as the reader does: digits, one point, a sign before it.</summary>
    private protected static bool IsNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    /// <summary>A number as people read it, to at most three decimals.</summary>
    private protected static string Plain(double number) => FormattableString.Invariant($"{Math.Round(number, 3):#,##0.###}");
}

/// <summary>A whole number within bounds.</summary>
/// <param name="least">Least.</param>
/// <param name="most">Greatest; <see cref="Many"/> for no bound that anyone meets.</param>
/// <param name="noun">What is counted, one of it; empty for a bare number.</param>
/// <param name="unit">Unit, where it is not the plural of the noun.</param>
/// <param name="isBare">Shown without its noun.</param>
public sealed class WholeKind(int least, int most, string noun = "", string? unit = null, bool isBare = false)
    : Kind<int>(
        "whole number",
        unit ?? (noun.Length == 0 ? "" : noun + "s"),
        most >= Many ? $"{least} or more" : FormattableString.Invariant($"{least} to {most:#,##0}")
    )
{
    /// <summary>A bound that nobody meets, and that is not named as one.</summary>
    public const int Many = 1_000_000;

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out int value) => Found(written.Whole(least, most), out value);

    /// <inheritdoc/>
    public override string Show(int value, UnitSystem units) =>
        noun.Length == 0 || isBare ? Plain(value) : $"{Plain(value)} {(value == 1 ? noun : noun + "s")}";

    /// <inheritdoc/>
    public override string Write(int value, UnitSystem units) => FormattableString.Invariant($"{value}");
}

/// <summary>Any whole number, 0 or more.</summary>
public sealed class SeedKind() : Kind<ulong>("whole number")
{
    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out ulong value)
    {
        if (ulong.TryParse(written.Text, NumberStyles.None, null, out value))
        {
            return true;
        }

        if (written.Text.Length > 0)
        {
            written.Refuse($"is {written.Quoted}", "write a whole number, 0 or more");
        }

        return false;
    }

    /// <inheritdoc/>
    public override string Show(ulong value, UnitSystem units) => FormattableString.Invariant($"{value}");
}

/// <summary>A number within bounds.</summary>
/// <param name="least">Least.</param>
/// <param name="most">Greatest; from a million on no bound that anyone meets.</param>
/// <param name="unit">Unit; empty for none.</param>
/// <param name="noun">What follows the number where it is shown, one of it; empty for the number alone.</param>
/// <param name="plural">Several of it; the noun with an s when it is left out.</param>
/// <param name="isMoney">Whether a currency sign may stand beside it.</param>
public sealed class NumberKind(double least, double most, string unit = "", string noun = "", string? plural = null, bool isMoney = false)
    : Kind<double>("number", unit, most >= WholeKind.Many ? $"{Plain(least)} or more" : $"{Plain(least)} to {Plain(most)}")
{
    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out double value) =>
        Found(isMoney ? written.Money(least, most) : written.Number(least, most), out value);

    /// <inheritdoc/>
    public override string Show(double value, UnitSystem units) =>
        noun.Length == 0 ? Plain(value) : $"{Plain(value)} {(value == 1 ? noun : plural ?? noun + "s")}";

    /// <inheritdoc/>
    public override string Write(double value, UnitSystem units) => FormattableString.Invariant($"{value:0.########}");
}

/// <summary>A share: 0 to 1 inside.</summary>
/// <param name="aboveNone">Whether 0 is left out.</param>
/// <param name="belowAll">Whether 1 is left out.</param>
/// <param name="isFactor">Whether it is shown as a number instead of in percent.</param>
/// <param name="what">What is written.</param>
public sealed class ShareKind(bool aboveNone = false, bool belowAll = false, bool isFactor = false, string what = "share")
    : Kind<double>(
        what,
        "% or 0 to 1",
        (aboveNone, belowAll) switch
        {
            (true, true) => "above 0 % and below 100 %",
            (true, false) => "above 0 %",
            (false, true) => "below 100 %",
            _ => "",
        }
    )
{
    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out double value) => Found(written.Share(aboveNone, belowAll), out value);

    /// <summary>A share in percent, as exact as it was set: 92.25 %.</summary>
    public override string Show(double value, UnitSystem units) =>
        isFactor ? Plain(value) : FormattableString.Invariant($"{value * 100:0.####} %");
}

/// <summary>A number with a unit of its own.</summary>
/// <param name="quantity">What it measures.</param>
/// <param name="least">Least, in the units used inside.</param>
/// <param name="most">Greatest.</param>
/// <param name="what">What is written, in words.</param>
/// <param name="unit">Its units, in words.</param>
public sealed class MeasuredKind(Quantity quantity, double least, double most, string what, string unit)
    : Kind<double>(what, unit, Bounds(quantity, least, most))
{
    /// <summary>What it measures.</summary>
    public Quantity Quantity { get; } = quantity;

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out double value) => Found(written.Measured(Quantity, least, most), out value);

    /// <inheritdoc/>
    public override string Show(double value, UnitSystem units) => Quantity.Show(value, units);

    /// <inheritdoc/>
    public override string Write(double value, UnitSystem units) => Quantity.Write(value, units);

    // "0 to 30 C (0 to 54 F)"; nothing where no bound is.
    private static string Bounds(Quantity quantity, double least, double most) =>
        double.IsInfinity(most)
            ? ""
            : $"{Both(quantity, least, most, UnitSystem.Metric)} ({Both(quantity, least, most, UnitSystem.Imperial)})";

    private static string Both(Quantity quantity, double least, double most, UnitSystem units) =>
        $"{Rough(quantity.Write(least, units))} to {Rough(quantity.Write(most, units))} {quantity.UnitOf(units)?.Name}";

    // Three figures: what is round in one unit is not in the other.
    private static string Rough(string written)
    {
        var number = double.Parse(written.Split(' ')[0], CultureInfo.InvariantCulture);
        var step = number == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(number))) - 2);
        return FormattableString.Invariant($"{Math.Round(number / step) * step:#,##0.###}");
    }
}

/// <summary>A text: anything, or, for a name, visible characters on one line in one spelling.</summary>
/// <param name="what">What is written: "text" for anything, "name", "crop id".</param>
/// <param name="isFree">Whether anything may be written.</param>
public sealed class TextKind(string what, bool isFree = false) : Kind<string>(what)
{
    /// <inheritdoc/>
    public override bool MayBeEmpty => isFree;

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, [MaybeNullWhen(false)] out string value)
    {
        value = isFree ? written.Text : written.Name();
        return value is { Length: > 0 };
    }

    /// <inheritdoc/>
    public override string Show(string value, UnitSystem units) => value;
}

/// <summary>A date.</summary>
public sealed class DateKind() : Kind<DateOnly>("date")
{
    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out DateOnly value) => Found(written.Date(), out value);

    /// <inheritdoc/>
    public override string Show(DateOnly value, UnitSystem units) => FormattableString.Invariant($"{value:yyyy-MM-dd}");
}

/// <summary>A time of the day.</summary>
public sealed class TimeKind() : Kind<TimeOnly>("time", "hours and minutes")
{
    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out TimeOnly value) => Found(written.Time(), out value);

    /// <inheritdoc/>
    public override string Show(TimeOnly value, UnitSystem units) => FormattableString.Invariant($"{value:HH:mm}");
}

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What the words mean.</typeparam>
/// <param name="words">The words with what they mean; the first word of a meaning is the one that is written.</param>
/// <param name="what">What is written; the words themselves when it is left out.</param>
/// <param name="named">How many words, from the first on, a fault names.</param>
/// <param name="shown">What people read for a meaning; its word when it is left out.</param>
public sealed class ChoiceKind<T>(
    ImmutableArray<(string Word, T Value)> words,
    string? what = null,
    int named = int.MaxValue,
    Func<T, string>? shown = null
) : Kind<T>(what ?? OneOf(words.DistinctBy(each => each.Value).Select(each => each.Word)))
{
    private readonly string _choices = OneOf(words.Take(named).Select(each => $"\"{each.Word}\""));

    /// <summary>The words, one for each meaning.</summary>
    public override IEnumerable<string> Choices => words.DistinctBy(each => each.Value).Select(each => each.Word);

    /// <summary>The word of a meaning.</summary>
    public string this[T value] => words.First(each => EqualityComparer<T>.Default.Equals(each.Value, value)).Word;

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, [MaybeNullWhen(false)] out T value) => written.TryChoose(words, _choices, out value!);

    /// <inheritdoc/>
    public override string Show(T value, UnitSystem units) => shown?.Invoke(value) ?? this[value];

    /// <inheritdoc/>
    public override string Write(T value, UnitSystem units) => this[value];

    private static string OneOf(IEnumerable<string> words)
    {
        string[] all = [.. words];
        return string.Join(", ", all[..^1]) + " or " + all[^1];
    }
}

/// <summary>A kind of value that may be left out.</summary>
/// <typeparam name="T">The value where there is one.</typeparam>
/// <param name="kind">Its kind.</param>
/// <param name="none">What is shown where there is none.</param>
/// <param name="takesNone">Whether the word none stands for no value.</param>
public sealed class OptionalKind<T>(Kind<T> kind, string none, bool takesNone)
    : Kind<T?>(takesNone ? kind.What + ", or none" : kind.What, kind.Unit, kind.Range)
    where T : struct
{
    /// <inheritdoc/>
    public override bool TakesNone => takesNone;

    /// <inheritdoc/>
    public override IEnumerable<string> Choices => kind.Choices;

    /// <inheritdoc/>
    public override bool IsList => kind.IsList;

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out T? value)
    {
        value = kind.TryRead(written, out var read) ? read : null;
        return value.HasValue;
    }

    /// <inheritdoc/>
    public override string Show(T? value, UnitSystem units) => value is { } known ? kind.Show(known, units) : none;

    /// <inheritdoc/>
    public override string Write(T? value, UnitSystem units) => value is { } known ? kind.Write(known, units) : none;
}

/// <summary>A kind of thing that may be left out.</summary>
/// <typeparam name="T">The thing where there is one.</typeparam>
/// <param name="kind">Its kind.</param>
/// <param name="none">What is shown where there is none.</param>
public sealed class OptionalThingKind<T>(Kind<T> kind, string none) : Kind<T?>(kind.What, kind.Unit, kind.Range)
    where T : class
{
    /// <inheritdoc/>
    public override bool TryRead(IWritten written, [MaybeNullWhen(false)] out T? value) => kind.TryRead(written, out value);

    /// <inheritdoc/>
    public override string Show(T? value, UnitSystem units) => value is null ? none : kind.Show(value, units);

    /// <inheritdoc/>
    public override string Write(T? value, UnitSystem units) => value is null ? none : kind.Write(value, units);
}

/// <summary>A list of values.</summary>
/// <typeparam name="T">One of them.</typeparam>
/// <param name="each">Kind of each.</param>
/// <param name="what">What is written, in words.</param>
/// <param name="tidy">Puts what was read into its order.</param>
/// <param name="isEmpty">What is wrong with a list of none, and what would be right; null where that may be.</param>
/// <param name="once">What to do about a value that is named twice; null where it may be.</param>
public sealed class ListKind<T>(
    Kind<T> each,
    string what,
    Func<IEnumerable<T>, IEnumerable<T>> tidy,
    (string What, string Instead)? isEmpty = null,
    string? once = null
) : Kind<ImmutableArray<T>>(what, each.Unit, each.Range)
{
    /// <inheritdoc/>
    public override bool IsList => true;

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out ImmutableArray<T> value)
    {
        value = [];
        if (written.Items() is not { } items)
        {
            return false;
        }

        if (items.Count == 0 && isEmpty is { } fault)
        {
            written.Refuse(fault.What, fault.Instead);
        }

        var values = new List<T>();
        foreach (var item in items)
        {
            if (each.TryRead(item, out var read))
            {
                if (once is not null && values.Contains(read))
                {
                    item.Refuse($"names {item.Quoted} a second time", once);
                }

                values.Add(read);
            }
        }

        value = [.. tidy(values)];
        return true;
    }

    /// <inheritdoc/>
    public override string Show(ImmutableArray<T> value, UnitSystem units) =>
        value.IsEmpty ? "none" : string.Join(", ", value.Select(item => each.Show(item, units)));

    /// <inheritdoc/>
    public override string Write(ImmutableArray<T> value, UnitSystem units) =>
        value.IsEmpty ? "none" : string.Join(", ", value.Select(item => each.Write(item, units)));

    /// <inheritdoc/>
    public override bool IsSame(ImmutableArray<T> one, ImmutableArray<T> other) =>
        one.Length == other.Length && one.Zip(other).All(pair => each.IsSame(pair.First, pair.Second));
}

/// <summary>Twelve numbers, one for each month, January first.</summary>
/// <param name="each">Kind of each.</param>
/// <param name="what">What is written, in words.</param>
/// <param name="unit">Its unit, in words.</param>
public sealed class MonthsKind(Kind<double> each, string what, string unit) : Kind<ImmutableArray<double>>(what, unit, each.Range)
{
    /// <summary>How many there are.</summary>
    public const int Months = 12;

    private const string Twelve = "write 12, one for each month, January first";

    /// <inheritdoc/>
    public override bool TryRead(IWritten written, out ImmutableArray<double> value)
    {
        value = [];
        if (written.Items("12 numbers between square brackets, one for each month, January first", Twelve) is not { } items)
        {
            return false;
        }

        if (items.Count != Months)
        {
            written.Refuse($"has {items.Count} numbers", Twelve);
            return false;
        }

        value = [.. items.Select(item => each.TryRead(item, out var read) ? read : (double?)null).OfType<double>()];
        return value.Length == Months;
    }

    /// <inheritdoc/>
    public override string Show(ImmutableArray<double> value, UnitSystem units) => Words(value, factor => each.Show(factor, units));

    /// <inheritdoc/>
    public override string Write(ImmutableArray<double> value, UnitSystem units) => Words(value, factor => each.Write(factor, units));

    /// <inheritdoc/>
    public override bool IsSame(ImmutableArray<double> one, ImmutableArray<double> other) => one.SequenceEqual(other);

    private static string Words(ImmutableArray<double> value, Func<double, string> word) =>
        value.Distinct().Count() == 1 ? $"{word(value[0])} in each month" : string.Join(", ", value.Select(word));
}
