namespace BenchSim.Folder.Text;

/// <summary>What a number with a unit measures.</summary>
internal enum QuantityKind
{
    /// <summary>A temperature; degrees Celsius inside.</summary>
    Temperature,

    /// <summary>A difference of two temperatures; kelvin inside.</summary>
    Difference,

    /// <summary>A length; metres inside.</summary>
    Length,

    /// <summary>A depth of rain; millimetres inside.</summary>
    Rain,

    /// <summary>A fraction, 0 to 1 inside.</summary>
    Fraction,

    /// <summary>Heat let through by a covering; watts a square metre and kelvin inside.</summary>
    UValue,
}
