using BenchSim.Season.Fields;

namespace BenchSim.Folder.Reference;

/// <summary>The keys of a sweep file.</summary>
public static class SweepFields
{
    /// <summary>Name of the key that lists folders.</summary>
    internal const string Folders = "folders";

    /// <summary>Name of the key that lists variants.</summary>
    internal const string Variants = "variants";

    /// <summary>The word for the plan of a folder itself, among the names of variants.</summary>
    public const string AsPlanned = "as planned";

    /// <summary>The word for the plan and every variant of a folder.</summary>
    public const string All = "all";

    private const int MostValueSets = 4_096;

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<SweepSettings> Table { get; } =
        FieldTable
            .Of("sweep", "a sweep file", new SweepSettings())
            .Key("name", Kinds.Title, sweep => sweep.Name, (sweep, name) => sweep with { Name = name })
            .Means("Name of the sweep.", leftOut: "the name of the file")
            .Key(Folders, new TextKind("list of folders"))
            .Means(
                "Scenario folders, from where this file stands; `*` as the last part of one stands for every scenario folder in there, "
                    + "in order of name."
            )
            .Required("[\"north\", \"south/*\"]")
            .Key(Variants, new TextKind("list of names, or \"all\""))
            .Means(
                "What is played of each folder: the plan itself, \"as planned\", and variants by their names. \"all\" is the plan and "
                    + "every variant that the folder has.",
                leftOut: "the plan itself"
            )
            .Key("replan", Kinds.YesNo, sweep => sweep.IsPlannedAnew, (sweep, isAnew) => sweep with { IsPlannedAnew = isAnew })
            .Means(
                "Whether the sow dates of all variants are worked out anew, as compare --replan does; without it those of a variant that "
                    + "says so itself."
            )
            .Key(
                "seasons",
                new WholeKind(1, WholeKind.Many, "season"),
                sweep => sweep.Seasons,
                (sweep, seasons) => sweep with { Seasons = seasons }
            )
            .Means("Seasons to play of each plan, the same number for all folders, at most 1,000,000.", Why.Ours)
            .Key(
                "seasons_per_task",
                new WholeKind(1, WholeKind.Many, "season"),
                sweep => sweep.SeasonsPerTask,
                (sweep, seasons) => sweep with { SeasonsPerTask = seasons }
            )
            .Means("Seasons that are played at a time: fewer make more tasks, each done sooner.", Why.Ours)
            .Key("seed", new SeedKind().OrNone("that of each folder"), sweep => sweep.Seed, (sweep, seed) => sweep with { Seed = seed })
            .Means("Seed number of all draws: the same number gives the same answer.")
            .Key(
                "value_sets",
                new WholeKind(0, MostValueSets, "set"),
                sweep => sweep.ValueSets,
                (sweep, sets) => sweep with { ValueSets = sets }
            )
            .Means(
                "Sets of values to play besides the values given, where those may be wrong, as trust does; 0 for none, a power of 2 is "
                    + "best.",
                Why.Ours
            )
            .Key("goal", new ShareKind(aboveNone: true), sweep => sweep.Goal, (sweep, goal) => sweep with { Goal = goal })
            .Means("Share of seasons that a plan must fit in, to count among those that fit.", Why.Ours)
            .Table();
}

/// <summary>The values of a sweep file that are one value each.</summary>
public sealed record SweepSettings
{
    /// <summary>Name of the sweep; empty for that of its file.</summary>
    public string Name { get; init; } = "";

    /// <summary>Whether variants are planned anew.</summary>
    public bool IsPlannedAnew { get; init; }

    /// <summary>Seasons of each plan and set of values.</summary>
    public int Seasons { get; init; } = 1000;

    /// <summary>Seasons of a task.</summary>
    public int SeasonsPerTask { get; init; } = 1000;

    /// <summary>Seed of all luck; null for that of each folder.</summary>
    public ulong? Seed { get; init; }

    /// <summary>Sets of values beside the values as given.</summary>
    public int ValueSets { get; init; }

    /// <summary>Share of seasons that a plan must fit in.</summary>
    public double Goal { get; init; } = 0.9;
}
