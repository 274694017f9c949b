using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Fields;

/// <summary>
/// One key of site.toml or of a variant, or one column of a table: all that is known of it, said once. The reader, the reference in
/// docs/folder.md, what check prints, what a variant changes and a form on a page come from it.
/// </summary>
public abstract class Field
{
    private protected Field(string section, string name, Kind kind) => (Section, Name, Kind) = (section, name, kind);

    /// <summary>Section of site.toml ("house", "space.changes") or name of the file ("plan.csv").</summary>
    public string Section { get; }

    /// <summary>Name of the key or column.</summary>
    public string Name { get; }

    /// <summary>What may be written.</summary>
    public Kind Kind { get; }

    /// <summary>What it means, in one sentence for a grower; its range is not in it.</summary>
    public string Meaning { get; internal set; } = "";

    /// <summary>What it means, with its range at the end of the first sentence.</summary>
    public string Help
    {
        get
        {
            var end = Meaning.IndexOf(". ", StringComparison.Ordinal) is >= 0 and var found ? found : Meaning.TrimEnd('.').Length;
            return Kind.Range.Length == 0 ? Meaning : $"{Meaning[..end]}; {Kind.Range}{Meaning[end..]}";
        }
    }

    /// <summary>What it is called in a sentence: its meaning up to the first pause.</summary>
    public string Label => Pause(Meaning) is > 0 and var pause ? Meaning[..pause].TrimEnd() : Meaning;

    // A time of day and a decimal have no pause in them.
    private static int Pause(string meaning) =>
        Enumerable
            .Range(0, meaning.Length)
            .FirstOrDefault(at =>
                meaning[at] is '(' || (meaning[at] is ';' or ':' or '.' && (at + 1 == meaning.Length || meaning[at + 1] is ' '))
            );

    /// <summary>What holds when it is left out; "required" when it may not be.</summary>
    public string Default { get; internal set; } = "";

    /// <summary>Whether <see cref="Default"/> has been said.</summary>
    internal bool HasDefault { get; set; }

    /// <summary>Where the default comes from; empty where there is none.</summary>
    public string Why { get; internal set; } = "";

    /// <summary>Whether it must be written.</summary>
    public bool IsRequired => Example.Length > 0;

    /// <summary>
    /// For one that must be written: an example, as it is written in the file, or what to write in an empty cell. Else empty.
    /// </summary>
    public string Example { get; internal set; } = "";

    /// <summary>Why a variant cannot change it; empty where one can.</summary>
    public string FixedBecause { get; internal set; } = "";

    /// <summary>
    /// Names of the keys that say the same in another way: where a variant gives this one, those of the base are left out.
    /// </summary>
    public ImmutableArray<string> InsteadOf { get; internal set; } = [];
}

/// <summary>A key or column that is a value of a record.</summary>
/// <typeparam name="TRecord">The record.</typeparam>
public abstract class Field<TRecord> : Field
{
    private protected Field(string section, string name, Kind kind)
        : base(section, name, kind) { }

    /// <summary>The record with the value that is written; as it was where none is, or a bad one, which is reported.</summary>
    public abstract TRecord Read(IWritten written, TRecord record);

    /// <summary>The value as people read it, in the units of the site.</summary>
    public abstract string Show(TRecord record, UnitSystem units);

    /// <summary>The value as it is written in a file, in the units of the site.</summary>
    public abstract string Write(TRecord record, UnitSystem units);

    /// <summary>Whether two records have the same value.</summary>
    public abstract bool IsSame(TRecord one, TRecord other);

    /// <summary>The value as a number, in the units used inside; null where it is none, or there is none.</summary>
    public abstract double? Number(TRecord record);

    /// <summary>The record with another number; as it was where the value is none.</summary>
    public abstract TRecord WithNumber(TRecord record, double number);
}

/// <summary>A key or column with the type of its value.</summary>
/// <typeparam name="TRecord">The record.</typeparam>
/// <typeparam name="T">The value.</typeparam>
internal sealed class Field<TRecord, T>(
    string section,
    string name,
    Kind<T> kind,
    Func<TRecord, T>? get,
    Func<TRecord, T, TRecord>? set,
    Func<TRecord, UnitSystem, string>? show
) : Field<TRecord>(section, name, kind)
{
    public override TRecord Read(IWritten written, TRecord record) =>
        set is not null && kind.TryRead(written, out var value) ? set(record, value) : record;

    public override string Show(TRecord record, UnitSystem units) =>
        show is not null ? show(record, units)
        : get is not null ? kind.Show(get(record), units)
        : "";

    public override bool IsSame(TRecord one, TRecord other) => get is null || kind.IsSame(get(one), get(other));

    public override string Write(TRecord record, UnitSystem units) => get is null ? "" : kind.Write(get(record), units);

    public override double? Number(TRecord record) =>
        get switch
        {
            Func<TRecord, double> number => number(record),
            Func<TRecord, double?> number => number(record),
            _ => null,
        };

    public override TRecord WithNumber(TRecord record, double number) =>
        set switch
        {
            Func<TRecord, double, TRecord> with => with(record, number),
            Func<TRecord, double?, TRecord> with => with(record, number),
            _ => record,
        };
}
