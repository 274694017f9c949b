using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder;

/// <summary>One key of site.toml or one column of a table, as docs/folder.md shows it.</summary>
/// <param name="Section">Section of site.toml ("house", "space.changes") or file name ("plan.csv").</param>
/// <param name="Name">Name of the key or column.</param>
/// <param name="Type">What is written there, in words.</param>
/// <param name="Unit">Unit; empty where there is none.</param>
/// <param name="Default">What holds when it is left out; "required" when it may not be.</param>
/// <param name="DefaultSource">Where the default comes from; empty where there is none.</param>
/// <param name="Meaning">What it means.</param>
public sealed record FieldDescription(
    string Section,
    string Name,
    string Type,
    string Unit,
    string Default,
    string DefaultSource,
    string Meaning
)
{
    /// <summary>Default of a key or column that must be written.</summary>
    public const string Required = "required";

    /// <summary>Whether it must be written.</summary>
    public bool IsRequired => string.Equals(Default, Required, StringComparison.Ordinal);

    /// <summary>The description of a field.</summary>
    internal static FieldDescription Of(Field field) =>
        new(field.Section, field.Name, field.Kind.What, field.Kind.Unit, field.Default, field.Why, field.Help);
}
