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

    /// <summary>Watering what stands on a hundred places for a day, minutes; 0 where watering is not counted.</summary>
    public double Water { get; init; }

    /// <summary>Watering one place for a day, minutes.</summary>
    public double WaterAPlace => Water / 100;
}

/// <summary>The keys of [work_minutes].</summary>
public static class WorkMinuteFields
{
    private static readonly NumberKind s_minutes = new(0, 1000, "minutes a tray", "minute");

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<WorkMinutes> Table { get; } =
        FieldTable
            .Of("work_minutes", "[work_minutes]", new WorkMinutes())
            .Key("sow", s_minutes, each => each.Sow, (each, minutes) => each with { Sow = minutes })
            .Means("Filling and sowing one tray or flat.", Why.Assumed)
            .Key("pot_up", s_minutes, each => each.PotUp, (each, minutes) => each with { PotUp = minutes })
            .Means("Potting up one tray from a flat.", Why.Assumed)
            .Key("move", s_minutes, each => each.Move, (each, minutes) => each with { Move = minutes })
            .Means("Moving one tray or flat between spaces.", Why.Assumed)
            .Key("set_out", s_minutes, each => each.SetOut, (each, minutes) => each with { SetOut = minutes })
            .Means("Loading one tray for the field.", Why.Assumed)
            .Key("carry_in", s_minutes, each => each.CarryIn, (each, minutes) => each with { CarryIn = minutes })
            .Means("Carrying one tray in for a cold night and out again.", Why.Assumed)
            .Key(
                "water",
                new NumberKind(0, 10_000, "minutes a hundred places a day"),
                each => each.Water,
                (each, minutes) => each with { Water = minutes },
                (each, _) => each.Water > 0 ? FormattableString.Invariant($"{each.Water:0.###} minutes") : WorkSecondFields.NotCounted
            )
            .Means("Watering what stands on a hundred places, for a day, worked or not.", Why.Ours, WorkSecondFields.NotCounted)
            .Table();
}
