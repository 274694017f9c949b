using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Text;

/// <summary>Reads what somebody typed into a form as the same text would be read in a file.</summary>
/// <param name="units">Units of a number that says none.</param>
public sealed class TypedReader(UnitSystem units)
{
    private readonly CellReader _cells = new(new FaultList()) { TakesDateOrder = false };

    /// <summary>What is wrong with what was read so far.</summary>
    public ImmutableArray<Fault> Faults => _cells.Faults.Faults;

    /// <summary>A temperature, degrees Celsius; null for nothing typed, and with a fault.</summary>
    /// <param name="name">What it is, as a fault names it.</param>
    /// <param name="typed">The text.</param>
    public double? Temperature(string name, string typed) => _cells.Temperature(Cell(name, typed));

    /// <summary>A date; null for nothing typed, and with a fault.</summary>
    /// <param name="name">What it is, as a fault names it.</param>
    /// <param name="typed">The text.</param>
    public DateOnly? Date(string name, string typed) => _cells.Date(Cell(name, typed));

    private Cell Cell(string name, string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        return new Cell(typed.Trim(), default, name, units);
    }
}
