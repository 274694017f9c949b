using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Season.Doubt;

/// <summary>
/// A key or column whose value is a fact that the play depends on, and so may be wrong. What is decided (set-points, dates, nights of
/// hardening, the forecast that lets trays out) is not among them: the farm does what it decides.
/// </summary>
/// <param name="Field">The key or column.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Kind">How it may be off.</param>
/// <param name="Measure">How one would measure it, as an order to a grower, without a full stop.</param>
public abstract record DoubtColumn(Field Field, DoubtGroup Group, DoubtKind Kind, string Measure)
{
    /// <summary>The columns of crops, of houses and of the rules whose values may be wrong.</summary>
    public static ImmutableArray<DoubtColumn> All { get; } = [.. DoubtColumns.Crops, .. DoubtColumns.Houses, .. DoubtColumns.Rules];

    /// <summary>What the value is called in a sentence: "emerge heat".</summary>
    public string Title { get; init; } = Field.Name.Replace('_', ' ');

    /// <summary>Whether it is of crops.</summary>
    public bool IsOfCrops => this is DoubtColumn<Crop>;

    /// <summary>Whether it is the days to field size.</summary>
    public bool IsGrowth => ReferenceEquals(Field, CropFields.Table.Find("days_to_ready"));

    /// <summary>Whether it is of houses.</summary>
    public bool IsOfHouses => this is DoubtColumn<House>;

    /// <summary>Whether its ends may be written as changes in percent of the value in force.</summary>
    public bool MayBeRelative => Kind is DoubtKind.Days or DoubtKind.Amount or DoubtKind.Spread;

    /// <summary>The shape of a range where the user names none.</summary>
    public RangeShape UsualShape =>
        Kind switch
        {
            DoubtKind.Temperature => RangeShape.Triangular,
            DoubtKind.Share => RangeShape.Odds,
            _ => RangeShape.Lognormal,
        };

    /// <summary>An end of a range as it is written; null where it is a fault, which is reported.</summary>
    public abstract double? Read(IWritten written);

    /// <summary>
    /// A value as exact as anybody knows it: a tenth of a degree in the units of the site, a thousandth of a share, else three figures.
    /// </summary>
    /// <param name="value">The value.</param>
    /// <param name="units">Units of the site.</param>
    public double Rounded(double value, UnitSystem units)
    {
        var step = (Kind, units) switch
        {
            (DoubtKind.Temperature, UnitSystem.Imperial) => 0.1 / 1.8,
            (DoubtKind.Temperature, _) => 0.1,
            (DoubtKind.Share, _) => 0.001,
            _ => Math.Pow(10, Math.Floor(Math.Log10(Math.Max(Math.Abs(value), 1e-9))) - 2),
        };
        return Math.Round(value / step) * step;
    }

    /// <summary>What the value may be where the user does not say; null where nothing is in doubt.</summary>
    /// <param name="value">The value in force; one at an end that it cannot leave is in no doubt.</param>
    /// <param name="trust">Where it comes from.</param>
    public ValueRange? RangeOf(double value, Trust trust) =>
        (Kind, value, Judgement.Off(Kind, trust)) switch
        {
            (_, _, 0) => null,
            (DoubtKind.Temperature, _, var off) => ValueRange.OfTemperature(value, off),
            (DoubtKind.Share, > 0 and < 1, var off) => ValueRange.OfShare(value, off),
            (DoubtKind.Share, _, _) => null,
            (_, > 0, var off) => ValueRange.OfFactor(value, off),
            _ => null,
        };
}

/// <summary>A column of a record that may be wrong.</summary>
/// <typeparam name="TRecord">The record.</typeparam>
/// <param name="Field">The key or column.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Kind">How it may be off.</param>
/// <param name="Measure">How one would measure it.</param>
/// <param name="Get">The value in force, in the units used inside; null where there is none.</param>
/// <param name="With">The record with another value.</param>
/// <param name="Say">The value in words.</param>
/// <param name="TrustOf">Where the value comes from.</param>
/// <param name="ReadEnd">An end of a range as it is written.</param>
internal sealed record DoubtColumn<TRecord>(
    Field Field,
    DoubtGroup Group,
    DoubtKind Kind,
    string Measure,
    Func<TRecord, double?> Get,
    Func<TRecord, double, TRecord> With,
    Func<TRecord, UnitSystem, string> Say,
    Func<TRecord, Trust> TrustOf,
    Func<IWritten, double?> ReadEnd
) : DoubtColumn(Field, Group, Kind, Measure)
{
    /// <summary>What is written less what is played: days that the crop counts before it is up, and while it hardens.</summary>
    public Func<TRecord, double> Offset { get; init; } = _ => 0;

    /// <inheritdoc/>
    public override double? Read(IWritten written) => ReadEnd(written);

    /// <summary>Whether the play of a plan looks at the value.</summary>
    public Func<SeasonPlan, TRecord, bool> IsUsed { get; init; } = (_, _) => true;

    /// <summary>A column whose value is that of a field.</summary>
    public static DoubtColumn<TRecord> Of(
        Field<TRecord> field,
        DoubtGroup group,
        DoubtKind kind,
        string measure,
        TRecord nothing,
        Func<TRecord, Trust> trust
    ) => new(field, group, kind, measure, field.Number, field.WithNumber, field.Show, trust, Reading(field, nothing));

    /// <summary>Reads an end of a range as a field reads its value.</summary>
    /// <typeparam name="TField">Record of the field.</typeparam>
    public static Func<IWritten, double?> Reading<TField>(Field<TField> field, TField nothing) =>
        written =>
            field.Number(field.Read(written, field.WithNumber(nothing, double.NaN))) is { } read && !double.IsNaN(read) ? read : null;
}
