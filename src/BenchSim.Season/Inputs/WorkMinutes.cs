using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>Work minutes a tray of each job.</summary>
public sealed record WorkMinutes
{
    /// <summary>Filling and sowing one tray or flat, minutes.</summary>
    public double Sow { get; init; } = 4;

    /// <summary>Potting up one tray from a flat, minutes.</summary>
    public double PotUp { get; init; } = 12;

    /// <summary>Moving one tray or flat between spaces, minutes.</summary>
    public double Move { get; init; } = 0.5;

    /// <summary>Loading one tray for the field, minutes.</summary>
    public double SetOut { get; init; } = 0.5;

    /// <summary>Carrying one tray in for a cold night and out again, minutes.</summary>
    public double CarryIn { get; init; } = 1;
}

/// <summary>The keys of [work_minutes].</summary>
public static class WorkMinuteFields
{
    private static readonly NumberKind Minutes = new(0, 1000, "minutes a tray", "minute");

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<WorkMinutes> Table { get; } =
        FieldTable
            .Of("work_minutes", "[work_minutes]", new WorkMinutes())
            .Key("sow", Minutes, each => each.Sow, (each, minutes) => each with { Sow = minutes })
            .Means("Filling and sowing one tray or flat.", Why.Assumed)
            .Key("pot_up", Minutes, each => each.PotUp, (each, minutes) => each with { PotUp = minutes })
            .Means("Potting up one tray from a flat.", Why.Assumed)
            .Key("move", Minutes, each => each.Move, (each, minutes) => each with { Move = minutes })
            .Means("Moving one tray or flat between spaces.", Why.Assumed)
            .Key("set_out", Minutes, each => each.SetOut, (each, minutes) => each with { SetOut = minutes })
            .Means("Loading one tray for the field.", Why.Assumed)
            .Key("carry_in", Minutes, each => each.CarryIn, (each, minutes) => each with { CarryIn = minutes })
            .Means("Carrying one tray in for a cold night and out again.", Why.Assumed)
            .Table();
}
