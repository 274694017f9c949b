using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Fields;

/// <summary>The keys of a section, or the columns of a file, in their order.</summary>
public abstract class FieldTable
{
    private protected FieldTable(string section, string heading) => (Section, Heading) = (section, heading);

    /// <summary>Section of site.toml ("house", "space.changes") or name of the file ("plan.csv").</summary>
    public string Section { get; }

    /// <summary>The section as it is written: "[rules]", "[[house]]".</summary>
    public string Heading { get; }

    /// <summary>The keys or columns.</summary>
    public abstract ImmutableArray<Field> Fields { get; }

    /// <summary>Keys or columns that a file of before may have, and what to write in their place.</summary>
    public ImmutableDictionary<string, FormerKey> Former { get; internal init; } =
        ImmutableDictionary.Create<string, FormerKey>(StringComparer.Ordinal);

    /// <summary>Names of the keys or columns.</summary>
    public ImmutableArray<string> Names => field.IsDefault ? field = [.. Fields.Select(each => each.Name)] : field;

    /// <summary>Begins a table.</summary>
    /// <param name="section">Section of site.toml, or name of the file.</param>
    /// <param name="heading">The section as it is written.</param>
    /// <param name="normal">A record in which nothing is said: the defaults come from it.</param>
    public static FieldTableMaker<TRecord> Of<TRecord>(string section, string heading, TRecord normal) => new(section, heading, normal);
}

/// <summary>A key that there is no more.</summary>
/// <param name="Now">The key that takes its place, so that a file of before has just the one fault.</param>
/// <param name="Instead">What to write in its place.</param>
public sealed record FormerKey(string Now, string Instead);

/// <summary>The keys of a section, or the columns of a file, as values of a record.</summary>
/// <typeparam name="TRecord">The record.</typeparam>
public sealed class FieldTable<TRecord> : FieldTable
{
    private readonly ImmutableArray<Field<TRecord>> _fields;

    internal FieldTable(string section, string heading, ImmutableArray<Field<TRecord>> fields)
        : base(section, heading) => _fields = fields;

    /// <inheritdoc/>
    public override ImmutableArray<Field> Fields => ImmutableArray<Field>.CastUp(_fields);

    /// <summary>The keys or columns with their values.</summary>
    public ImmutableArray<Field<TRecord>> Values => _fields;

    /// <summary>The key or column of a name; null when there is none.</summary>
    public Field<TRecord>? Find(string name) => _fields.FirstOrDefault(field => string.Equals(field.Name, name, StringComparison.Ordinal));
}

/// <summary>Puts a table together, key by key: what follows a key says more of it.</summary>
/// <typeparam name="TRecord">The record.</typeparam>
public sealed class FieldTableMaker<TRecord>
{
    private readonly string _section;
    private readonly string _heading;
    private readonly TRecord _normal;
    private readonly List<Field<TRecord>> _fields = [];
    private readonly Dictionary<string, FormerKey> _former = new(StringComparer.Ordinal);

    internal FieldTableMaker(string section, string heading, TRecord normal) => (_section, _heading, _normal) = (section, heading, normal);

    /// <summary>Adds a key or column.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="kind">What may be written.</param>
    /// <param name="get">Its value in a record; null for one that says how something is to be read.</param>
    /// <param name="set">The record with another value; null where the value is read elsewhere.</param>
    /// <param name="show">The value in words; null for those of the kind.</param>
    public FieldTableMaker<TRecord> Key<T>(
        string name,
        Kind<T> kind,
        Func<TRecord, T>? get = null,
        Func<TRecord, T, TRecord>? set = null,
        Func<TRecord, UnitSystem, string>? show = null
    )
    {
        _fields.Add(new Field<TRecord, T>(_section, name, kind, get, set, show));
        return this;
    }

    /// <summary>Says what the last key means.</summary>
    /// <param name="meaning">One sentence for a grower.</param>
    /// <param name="why">Where the default comes from.</param>
    /// <param name="leftOut">What holds when it is left out, where the value in the record does not say it.</param>
    public FieldTableMaker<TRecord> Means(string meaning, string why = "", string? leftOut = null)
    {
        (_fields[^1].Meaning, _fields[^1].Why) = (meaning, why);
        (_fields[^1].Default, _fields[^1].HasDefault) = (leftOut ?? "", leftOut is not null);
        return this;
    }

    /// <summary>The last key must be written.</summary>
    /// <param name="example">An example, as it is written in the file, or what to write in an empty cell.</param>
    public FieldTableMaker<TRecord> Required(string example)
    {
        (_fields[^1].Example, _fields[^1].Default, _fields[^1].HasDefault) = (example, "required", true);
        return this;
    }

    /// <summary>A variant cannot change the last key.</summary>
    public FieldTableMaker<TRecord> Fixed(string because)
    {
        _fields[^1].FixedBecause = because;
        return this;
    }

    /// <summary>A key or column that there is no more: the last key takes its place in a file of before.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="instead">What to write in its place.</param>
    public FieldTableMaker<TRecord> NoLonger(string name, string instead)
    {
        _former.Add(name, new FormerKey(_fields[^1].Name, instead));
        return this;
    }

    /// <summary>Where a variant gives the last key, these of the base are left out: they say the same in another way.</summary>
    public FieldTableMaker<TRecord> InsteadOf(params ImmutableArray<string> names)
    {
        _fields[^1].InsteadOf = names;
        return this;
    }

    /// <summary>The table.</summary>
    public FieldTable<TRecord> Table()
    {
        foreach (var field in _fields.Where(field => !field.HasDefault))
        {
            field.Default = field.Write(_normal, UnitSystem.Metric);
        }

        return new(_section, _heading, [.. _fields]) { Former = _former.ToImmutableDictionary(StringComparer.Ordinal) };
    }
}
