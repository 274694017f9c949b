namespace BenchSim.Season.Heat;

/// <summary>What must stand beside a result that could hurt someone who acted on it alone.</summary>
public static class HeatCautions
{
    /// <summary>Beside fuel used.</summary>
    public const string Fuel =
        "This is an estimate for planning. Burners need fresh air, a flue and a carbon monoxide alarm; fuel storage, piping and "
        + "heaters fall under local codes and are work for licensed people.";

    /// <summary>Beside a design-day load.</summary>
    public const string DesignLoad =
        "This is heat lost on one cold night by a simple rule, without wind, snow or a margin. Have the heater chosen and fitted "
        + "by licensed people under local codes, and have an alarm for the night it stops.";

    /// <summary>Beside a check of a circuit.</summary>
    public const string Circuit =
        "This compares watts with the 80 % rule for loads of three hours and more (NEC 210.20(A)). It does not check wires, connections or anything else on "
        + "the circuit. Wet places need ground-fault protection; have a licensed electrician look, under local codes.";

    /// <summary>Beside electricity used by mats.</summary>
    public const string Mats =
        "This is electricity for planning. Use heat mats made for wet places, one layer, as their maker says, on a circuit with "
        + "ground-fault protection.";

    /// <summary>Beside anything that rests on the shape or covering of a house.</summary>
    public const string Structure =
        "Dimensions here serve to reckon heat and room. They say nothing of wind or snow load; building and changing a house "
        + "fall under local codes.";
}
