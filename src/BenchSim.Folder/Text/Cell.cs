using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>One value as the user wrote it: a cell of a table, or the value of a key.</summary>
/// <param name="Text">Its text, without spaces around it.</param>
/// <param name="Place">Where it begins.</param>
/// <param name="Name">Column or key, as the user knows it.</param>
/// <param name="Units">Units of a number that says none.</param>
internal readonly record struct Cell(string Text, SourcePlace Place, string Name, UnitSystem Units)
{
    public bool IsBlank => Text.Length == 0;

    /// <summary>Whether a fault that holds for its whole column has been told, so that nothing more is said of it.</summary>
    public bool IsTold { get; init; }
}
