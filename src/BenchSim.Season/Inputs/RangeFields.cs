using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>The columns of ranges.csv.</summary>
public static class RangeFields
{
    /// <summary>Name of the file.</summary>
    public const string File = "ranges.csv";

    private static readonly TextKind s_end = new("value, or change in percent");

    private static readonly ChoiceKind<RangeShape> s_shape = new([
        ("uniform", RangeShape.Uniform),
        ("triangular", RangeShape.Triangular),
        ("lognormal", RangeShape.Lognormal),
        ("odds", RangeShape.Odds),
    ]);

    /// <summary>The columns, in the order of the reference.</summary>
    public static FieldTable<WrittenRange> Table { get; } =
        FieldTable
            .Of(File, File, WrittenRange.Nothing)
            .Key("what", new TextKind("key or column"), row => row.What, (row, what) => row with { What = what })
            .Means("The key or column whose value may be wrong, such as days_to_ready or u_value.")
            .Required("name a key or column, such as days_to_ready")
            .Key("of", new TextKind("crop or house ids separated by |"), row => row.Of, (row, of) => row with { Of = of })
            .Means(
                "Ids of the crops or houses whose values it is, separated by |: they move together.",
                leftOut: "all that the plan uses; for a key of [rules] the site"
            )
            .Key("low", s_end, row => row.Low, (row, low) => row with { Low = low })
            .Means("The least it may be, as the value is written, or a change in percent with its sign: -20 %.")
            .Required("write the least that the value may be")
            .Key("high", s_end, row => row.High, (row, high) => row with { High = high })
            .Means("The most it may be, likewise: +30 %.")
            .Required("write the most that the value may be")
            .Key("shape", s_shape, row => row.Shape ?? default, (row, shape) => row with { Shape = shape })
            .Means(
                "How likely which part is: uniform; triangular, most likely as given; lognormal, for shares odds, with one in twenty below "
                    + "low and one above high.",
                leftOut: "triangular for a temperature, odds for a share, else lognormal"
            )
            .Table();
}

/// <summary>A row of ranges.csv as it is written.</summary>
/// <param name="What">Key or column.</param>
/// <param name="Of">Ids.</param>
/// <param name="Low">Low end.</param>
/// <param name="High">High end.</param>
/// <param name="Shape">Shape; null where none is named.</param>
public sealed record WrittenRange(string What, string Of, string Low, string High, RangeShape? Shape)
{
    /// <summary>A row in which nothing is said.</summary>
    public static WrittenRange Nothing { get; } = new("", "", "", "", null);
}
