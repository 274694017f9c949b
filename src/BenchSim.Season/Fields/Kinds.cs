namespace BenchSim.Season.Fields;

/// <summary>The kinds of value that many keys and columns have.</summary>
public static class Kinds
{
    private const string InSiteUnits = "a bare number is in the units of [site]";

    /// <summary>Anything.</summary>
    public static TextKind Text { get; } = new("text", isFree: true);

    /// <summary>A text for people on one line.</summary>
    public static TextKind Title { get; } = new("text");

    /// <summary>A name.</summary>
    public static TextKind Name { get; } = new("name");

    /// <summary>Yes or no.</summary>
    public static ChoiceKind<bool> YesNo { get; } =
        new([("yes", true), ("no", false), ("true", true), ("false", false), ("y", true), ("n", false)], named: 2);

    /// <summary>A date.</summary>
    public static DateKind Date { get; } = new();

    /// <summary>A time of the day.</summary>
    public static TimeKind Time { get; } = new();

    /// <summary>A share, 0 to 1.</summary>
    public static ShareKind Share { get; } = new();

    /// <summary>Days, up to a year of them.</summary>
    public static WholeKind Days { get; } = new(0, 365, "day");

    /// <summary>An amount of the user's money.</summary>
    public static NumberKind Money { get; } = MoneyFor("money");

    /// <summary>A temperature.</summary>
    public static MeasuredKind Temperature { get; } =
        new(Quantity.Temperature, double.NegativeInfinity, double.PositiveInfinity, "temperature", $"C or F; {InSiteUnits}");

    /// <summary>A depth of rain.</summary>
    public static MeasuredKind Rain { get; } = new(Quantity.Rain, 0, 2000, "depth", "mm or in; a bare number is in mm or in");

    /// <summary>Money for something, such as "money a litre".</summary>
    public static NumberKind MoneyFor(string unit) => new(0, WholeKind.Many, unit, isMoney: true);

    /// <summary>A temperature within bounds, degrees Celsius.</summary>
    public static MeasuredKind TemperatureFrom(double least, double most) =>
        new(Quantity.Temperature, least, most, "temperature", $"C or F; {InSiteUnits}");

    /// <summary>A difference of temperatures within bounds, kelvin.</summary>
    public static MeasuredKind Difference(double least, double most) => new(Quantity.Difference, least, most, "difference", "C or F");

    /// <summary>A length within bounds, metres.</summary>
    public static MeasuredKind Length(double least, double most) =>
        new(Quantity.Length, least, most, "length", "m, cm, mm, ft or in; a bare number is in metres or feet");

    /// <summary>The same kind of value where it may be left out.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="none">What is shown where there is none.</param>
    /// <param name="takesNone">Whether the word none stands for no value.</param>
    public static OptionalKind<T> OrNone<T>(this Kind<T> kind, string none, bool takesNone = false)
        where T : struct => new(kind, none, takesNone);

    /// <summary>The same kind of thing where it may be left out.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="none">What is shown where there is none.</param>
    public static OptionalThingKind<T> OrNothing<T>(this Kind<T> kind, string none)
        where T : class => new(kind, none);
}
