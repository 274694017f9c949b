using System.Diagnostics.CodeAnalysis;

namespace BenchSim.Study.Figures;

/// <summary>
/// Something that is kept of every season played: how it is read off a season, how it is counted, and what it is called. Counting, parts of
/// runs, results and tables go through the lists of figures, so that a new one is described once and stands in all of them. A season gives
/// it whole numbers, so that sums do not depend on their order.
/// </summary>
/// <typeparam name="TOwner">Whose it is: what one season tells of a batch, of a space, of the whole.</typeparam>
public abstract class Figure<TOwner>
{
    private protected Figure(string id, string name, string unit) => (Id, Name, Unit) = (id, name, unit);

    /// <summary>Name for machines, lower case with underscores: the key in JSON, the beginning of its columns in tables.</summary>
    public string Id { get; }

    /// <summary>What a grower calls it, in lower case, fit for the head of a column.</summary>
    public string Name { get; }

    /// <summary>What it is, in more words where the name needs them.</summary>
    [AllowNull]
    public string Meaning
    {
        get => field ?? Name;
        internal init;
    }

    /// <summary>Unit in the plural, as "trays"; empty for chances and dates.</summary>
    public string Unit { get; }

    /// <summary>
    /// Whether the numbers spread so widely that there may be too many to count each (docs/decisions/004-exact-counting.md).
    /// </summary>
    internal bool IsWide { get; init; }

    /// <summary>Whole numbers counted to one unit; null for one.</summary>
    internal Func<TOwner, double>? Parts { get; init; }

    /// <summary>Whether an owner has it at all; null for yes.</summary>
    internal Func<TOwner, bool>? IsTold { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Id;
}

/// <summary>Whether something happens in a season; told as a share of the seasons with its interval.</summary>
public sealed class ChanceFigure<TOwner> : Figure<TOwner>
{
    internal ChanceFigure(string id, string name, Func<TOwner, bool> happens)
        : base(id, name, "") => Happens = happens;

    internal Func<TOwner, bool> Happens { get; }
}

/// <summary>Which one of a few things is so in a season, or none of them; told as the number of seasons of each.</summary>
public sealed class ChoiceFigure<TOwner> : Figure<TOwner>
{
    internal ChoiceFigure(string id, string name, int choices, Func<TOwner, int> which)
        : base(id, name, "seasons") => (Choices, Which) = (choices, which);

    internal int Choices { get; }

    /// <summary>Number of the one that is so, from 0; -1 for none.</summary>
    internal Func<TOwner, int> Which { get; }
}

/// <summary>The day on which something happens; told as a spread of dates over the seasons in which it does.</summary>
public sealed class DateFigure<TOwner> : Figure<TOwner>
{
    internal DateFigure(string id, string name, Func<TOwner, int> day)
        : base(id, name, "") => Day = day;

    /// <summary>Day from 0; -1 where it never happens.</summary>
    internal Func<TOwner, int> Day { get; }
}

/// <summary>A quantity; told as a mean with its interval, and quantiles.</summary>
public sealed class AmountFigure<TOwner> : Figure<TOwner>
{
    internal AmountFigure(string id, string name, string unit, Func<TOwner, long> amount)
        : base(id, name, unit) => Amount = amount;

    /// <summary>Whole number of 0 or more; -1 where the season has none.</summary>
    internal Func<TOwner, long> Amount { get; }

    /// <summary>Whether a season may have none, which is not the same as 0.</summary>
    internal bool IsOfSome { get; init; }
}

/// <summary>A row of quantities: one a space, a reason, a week.</summary>
public sealed class RowFigure<TOwner> : Figure<TOwner>
{
    internal RowFigure(string stem, string by, string name, string unit, Func<TOwner, int> count, Func<TOwner, long[]> row)
        : base($"{stem}_by_{by}", name, unit) => (Stem, By, Count, Row) = (stem, by, count, row);

    /// <summary>Beginning of its columns in tables.</summary>
    public string Stem { get; }

    /// <summary>What its quantities are one of each: "space", "reason", "relief", "week" or "month".</summary>
    public string By { get; }

    /// <summary>Length of the row, the same for all seasons.</summary>
    internal Func<TOwner, int> Count { get; }

    internal Func<TOwner, long[]> Row { get; }
}

/// <summary>A whole number a day, or a week; told as quantiles of each.</summary>
public sealed class DailyFigure<TOwner> : Figure<TOwner>
{
    internal DailyFigure(string id, string name, string unit, Func<TOwner, int> count, Func<TOwner, int[]> days)
        : base(id, name, unit) => (Count, Days) = (count, days);

    /// <inheritdoc cref="RowFigure{TOwner}.Count"/>
    internal Func<TOwner, int> Count { get; }

    internal Func<TOwner, int[]> Days { get; }
}
