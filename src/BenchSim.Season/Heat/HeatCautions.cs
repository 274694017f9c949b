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

    /// <summary>Beside fans, vents and the heater of a house.</summary>
    public const string Air =
        "These are sizes for planning. An exhaust fan can draw flue gas back out of a burner: each burner needs fresh air and a flue of "
        + "its own, and the house a carbon monoxide alarm. Fans need guards, and current near water ground-fault protection; wiring, gas "
        + "and openings in a house are work for licensed people under local codes.";

    /// <summary>What a check of a circuit leaves out, for the place right behind <see cref="Mats"/>.</summary>
    public const string CircuitLimits =
        "This compares watts with the 80 % rule for loads of three hours and more (NEC 210.20(A)). It does not check wires, "
        + "connections or anything else on the circuit.";

    /// <summary>Beside a check of a circuit by itself.</summary>
    public const string Circuit =
        CircuitLimits + " Wet places need ground-fault protection; have a licensed electrician look, under local codes.";

    /// <summary>Beside electricity used by mats.</summary>
    public const string Mats =
        "This is electricity for planning. Use heat mats made for wet places, one layer, as their maker says, on a circuit with "
        + "ground-fault protection; have a licensed electrician look, under local codes.";

    /// <summary>Beside anything that rests on the shape or covering of a house.</summary>
    public const string Structure =
        "Dimensions here serve to work out heat and room. They say nothing about wind or snow load; building and changing a house "
        + "fall under local codes.";
}
