using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>The columns of log.csv.</summary>
public static class LogFields
{
    /// <summary>Name of the file.</summary>
    public const string File = "log.csv";

    /// <summary>What stands for no house and no space: the open air.</summary>
    public const string Outdoors = "outdoors";

    /// <summary>Most trays or flats of a row.</summary>
    public const int MostTrays = 100_000;

    /// <summary>Most seeds, cells or plants that are counted.</summary>
    public const int MostCounted = 10_000_000;

    private const int MostMinutes = 100_000;
    private const string WhereNeeded = "none; some kinds of line need it";

    /// <summary>What was done or seen, as it is written.</summary>
    public static ChoiceKind<LogKind> What { get; } =
        new(
            [
                ("sown", LogKind.Sown),
                ("up", LogKind.Up),
                ("potted up", LogKind.PottedUp),
                ("moved", LogKind.Moved),
                ("ready", LogKind.Ready),
                ("not ready", LogKind.NotReady),
                ("good", LogKind.Good),
                ("set out", LogKind.SetOut),
                ("thrown out", LogKind.ThrownOut),
                ("counted", LogKind.Counted),
                ("walked", LogKind.Walked),
                ("handed over", LogKind.HandedOver),
                ("covered", LogKind.Covered),
                ("carried in", LogKind.CarriedIn),
                ("low", LogKind.Low),
                ("mishap", LogKind.Mishap),
                ("fuel", LogKind.Fuel),
                ("sow", LogKind.Sown),
                ("sowed", LogKind.Sown),
                ("came up", LogKind.Up),
                ("pot up", LogKind.PottedUp),
                ("potted", LogKind.PottedUp),
                ("move", LogKind.Moved),
                ("planted", LogKind.SetOut),
                ("planted out", LogKind.SetOut),
                ("discarded", LogKind.ThrownOut),
                ("count", LogKind.Counted),
                ("cover", LogKind.Covered),
            ],
            named: 17
        );

    /// <summary>A row of which nothing is said.</summary>
    public static LogEntry Nothing { get; } = new();

    /// <summary>The columns, in the order of the reference. What a count is depends on the row, so it is read by that.</summary>
    public static FieldTable<LogEntry> Table { get; } =
        FieldTable
            .Of(File, File, Nothing)
            .Key("date", Kinds.Date, entry => entry.Date, (entry, date) => entry with { Date = date })
            .Means("The day on which it was done or seen.")
            .Required("write the day")
            .Key("batch", new TextKind("batch id"), entry => entry.BatchId ?? "none", (entry, id) => entry with { BatchId = id })
            .Means("Batch of plan.csv; of a run of successions the one that is meant, such as x-2.", leftOut: WhereNeeded)
            .Key("what", What, entry => entry.What, (entry, what) => entry with { What = what })
            .Means("What was done or seen.")
            .Required("write what was done or seen, such as sown, moved or counted")
            .Key(
                "trays",
                new WholeKind(0, MostTrays, "tray").OrNone("none"),
                entry => entry.Trays,
                (entry, trays) => entry with { Trays = trays }
            )
            .Means("Trays that were sown, filled, moved, counted, or went.", leftOut: WhereNeeded)
            .Key(
                "flats",
                new WholeKind(0, MostTrays, "flat").OrNone("none"),
                entry => entry.Flats,
                (entry, flats) => entry with { Flats = flats }
            )
            .Means("Open flats that were sown, used up, moved, counted, or went.", leftOut: WhereNeeded)
            .Key("from", new TextKind("space id"), entry => entry.From ?? "none", (entry, id) => entry with { From = id })
            .Means("Space they stood in before.", leftOut: "the only one in which they can have stood")
            .Key("space", new TextKind("space id"), entry => entry.Space ?? "none", (entry, id) => entry with { Space = id })
            .Means("Space they were put to or stand in; for low and fuel a house, or outdoors.", leftOut: WhereNeeded)
            .Key("count", new TextKind("number, word, or temperature"))
            .Means(
                "Seedlings up, cells with a plant, or plants set out; for up and good also few, half, most or all of what was looked at; "
                    + "for low the temperature, for fuel the amount.",
                leftOut: WhereNeeded
            )
            .Key("of", new WholeKind(1, MostCounted, "seed").OrNone("none"), entry => entry.Of, (entry, seeds) => entry with { Of = seeds })
            .Means("Seeds, or cells, in the cells looked at; for up and good.", leftOut: WhereNeeded)
            .Key(
                "minutes",
                new NumberKind(0, MostMinutes, "minutes").OrNone("not timed"),
                entry => entry.Minutes,
                (entry, minutes) => entry with { Minutes = minutes }
            )
            .Means("Work it took, of all hands together.", leftOut: "not timed")
            .Key("by", Kinds.Title, entry => entry.By, (entry, name) => entry with { By = name })
            .Means("Who did it.", leftOut: "not said")
            .Key("entered", Kinds.Date.OrNone("the same day"), entry => entry.Entered, (entry, date) => entry with { Entered = date })
            .Means("When it was written down; not before date.", leftOut: "the same day")
            .Key("note", Kinds.Text, entry => entry.Note, (entry, note) => entry with { Note = note })
            .Means(
                "Anything; for fuel the unit, for mishap what happened; beginning with \"picked\" where the trays counted were picked by "
                    + "lot.",
                leftOut: "empty"
            )
            .Table();
}
