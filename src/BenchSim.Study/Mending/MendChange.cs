using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Mending;

/// <summary>One change that might mend a plan: a thing that a grower can do, and that a variant file can say.</summary>
public abstract record MendChange
{
    /// <summary>What it changes, without how much: kind, then what it is done to. What is marked as not here is marked by this.</summary>
    public abstract string Mark { get; }

    /// <summary>Name for machines, unique among the changes of a plan.</summary>
    public abstract string Code { get; }

    /// <summary>What it settles: two changes that settle the same thing cannot be made together.</summary>
    public virtual ImmutableArray<string> Settles => [Mark];

    /// <summary>Whether something has to be bought for it; what it costs in work, heat, seed and mix comes on top.</summary>
    public virtual bool IsBought => false;

    /// <summary>Material that has to be bought, in tray places: to rank what has no price.</summary>
    public virtual double Material => 0;

    /// <summary>Whether it changes what the field asked for: such changes are listed apart.</summary>
    public virtual bool IsOfTheOrder => false;

    /// <summary>Whether two changes cannot be made together.</summary>
    public bool Excludes(MendChange other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Settles.Any(each => other.Settles.Contains(each, StringComparer.Ordinal));
    }
}

/// <summary>More places of a space.</summary>
/// <param name="Space">The space, as it is.</param>
/// <param name="Steps">Units, or lengths, that it is larger by.</param>
/// <param name="Places">Places more; where it is made longer, about.</param>
/// <param name="LengthM">Metres that it is made longer by; 0 where places are added.</param>
public sealed record PlacesChange(Space Space, int Steps, int Places, double LengthM) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "places " + Space.Id;

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} +{Steps}");

    /// <inheritdoc />
    public override bool IsBought => true;

    /// <inheritdoc />
    public override double Material => Places;
}

/// <summary>A house opened earlier.</summary>
/// <param name="House">The house, as it is.</param>
/// <param name="From">First open day.</param>
public sealed record OpeningChange(House House, DateOnly From) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "open " + House.Id;

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} {From:yyyy-MM-dd}");
}

/// <summary>Other set-points of a house.</summary>
/// <param name="House">The house, as it is.</param>
/// <param name="NightC">Night set-point, degrees Celsius.</param>
/// <param name="DayC">Day set-point, degrees Celsius.</param>
public sealed record SetPointChange(House House, double NightC, double DayC) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "heat " + House.Id;

    /// <inheritdoc />
    public override string Code =>
        FormattableString.Invariant($"{Mark} {NightC - House.NightC:+0.0;-0.0;0} {DayC - DayBefore:+0.0;-0.0;0}");

    /// <summary>Day set-point as it is, degrees Celsius.</summary>
    public double DayBefore => House.DayC ?? House.NightC ?? 0;
}

/// <summary>A row cover on the hardening tables.</summary>
/// <param name="GainK">Warmth it adds, kelvin.</param>
/// <param name="Places">Places of the tables it covers.</param>
public sealed record CoverChange(double GainK, int Places) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "cover";

    /// <inheritdoc />
    public override string Code => Mark;

    /// <inheritdoc />
    public override bool IsBought => true;

    // A sheet over trays is less than a tenth of what carries them: common practice, and only to rank what has no price.
    /// <inheritdoc />
    public override double Material => Places / 10.0;
}

/// <summary>A relief that is off, put in force.</summary>
/// <param name="Relief">The relief.</param>
public sealed record ReliefChange(Relief Relief) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "relief " + ReliefFields.Word[Relief];

    /// <inheritdoc />
    public override string Code => Mark;
}

/// <summary>A crop sown dense in open flats and potted up.</summary>
/// <param name="CropId">The crop.</param>
/// <param name="Flat">The flat.</param>
/// <param name="SeedsPerFlat">Seeds a flat.</param>
/// <param name="SetOut">Set-out dates to be written where the plan gives none, by line of the plan.</param>
public sealed record DenseChange(string CropId, TrayType Flat, int SeedsPerFlat, ImmutableArray<(string Line, DateOnly On)> SetOut)
    : MendChange
{
    /// <inheritdoc />
    public override string Mark => "dense " + CropId;

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} {SeedsPerFlat}");

    /// <inheritdoc />
    public bool Equals(DenseChange? other) => other is not null && string.Equals(Code, other.Code, StringComparison.Ordinal);

    /// <inheritdoc />
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Code);
}

/// <summary>A crop that goes to finish on the bench of another house.</summary>
/// <param name="CropId">The crop.</param>
/// <param name="Bench">The bench.</param>
/// <param name="At">Share of growth from which it goes there.</param>
public sealed record FinishChange(string CropId, Space Bench, double At) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "finish " + CropId;

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} {Bench.Id} {At}");
}

/// <summary>More slack between being ready and the set-out date, for sowings whose sow date is worked out from it.</summary>
/// <param name="From">Days as it is.</param>
/// <param name="To">Days.</param>
public sealed record SlackChange(int From, int To) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "slack";

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} {To}");
}

/// <summary>One sowing moved.</summary>
/// <param name="Line">Id of its line of the plan.</param>
/// <param name="Grower">Grower.</param>
/// <param name="From">Sow date as planned.</param>
/// <param name="To">Sow date.</param>
/// <param name="SetOut">Set-out date, which stays.</param>
public sealed record SowingMove(string Line, string Grower, DateOnly From, DateOnly To, DateOnly SetOut)
{
    /// <summary>Days moved, below 0 for earlier.</summary>
    public int Days => To.DayNumber - From.DayNumber;
}

/// <summary>Sowings moved; their set-out dates stay.</summary>
/// <param name="Moves">The moves, one or more.</param>
public sealed record SowChange(ImmutableArray<SowingMove> Moves) : MendChange
{
    /// <inheritdoc />
    public override string Mark => Moves.Length == 1 ? "sow " + Moves[0].Line : "level";

    /// <inheritdoc />
    public override string Code => Moves.Length == 1 ? FormattableString.Invariant($"{Mark} {Moves[0].To:yyyy-MM-dd}") : Mark;

    /// <inheritdoc />
    public override ImmutableArray<string> Settles => [.. Moves.Select(move => "sow " + move.Line)];

    /// <inheritdoc />
    public bool Equals(SowChange? other) => other is not null && Moves.SequenceEqual(other.Moves);

    /// <inheritdoc />
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Code);
}

/// <summary>Fewer plants of a line of the plan.</summary>
/// <param name="Line">Id of the line.</param>
/// <param name="From">Plants of each sowing as wanted.</param>
/// <param name="To">Plants of each.</param>
public sealed record FewerChange(string Line, int From, int To) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "fewer " + Line;

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} {To}");

    /// <inheritdoc />
    public override bool IsOfTheOrder => true;
}

/// <summary>A line of the plan sown and wanted later.</summary>
/// <param name="Line">Id of the line.</param>
/// <param name="Days">Days later.</param>
public sealed record LaterChange(string Line, int Days) : MendChange
{
    /// <inheritdoc />
    public override string Mark => "later " + Line;

    /// <inheritdoc />
    public override string Code => FormattableString.Invariant($"{Mark} {Days}");

    /// <inheritdoc />
    public override bool IsOfTheOrder => true;
}
