using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>
/// What the log says of the benches: what stands where, and what became of the rest. It follows from the rows alone; no season is played
/// for it.
/// </summary>
public sealed record BenchLedger
{
    /// <summary>The batches, in the order of the scenario.</summary>
    public required ImmutableArray<BatchLedger> Batches { get; init; }

    /// <summary>What counts did not find as the rows before them say, in order of date.</summary>
    public required ImmutableArray<CountedOtherwise> Differences { get; init; }

    /// <summary>What counts found in another space than the rows say, in order of date.</summary>
    public required ImmutableArray<CountedElsewhere> Elsewhere { get; init; }

    /// <summary>What is wrong with the rows; all else holds where there is nothing.</summary>
    public required ImmutableArray<LedgerFault> Faults { get; init; }

    /// <summary>Keeps the ledger: rows in order of date, those of one day in the order of the log.</summary>
    /// <param name="scenario">Scenario whose batches and spaces the rows name.</param>
    /// <param name="entries">Rows.</param>
    /// <param name="until">The last day that counts; null for every row.</param>
    public static BenchLedger Of(Scenario scenario, IReadOnlyList<LogEntry> entries, DateOnly? until = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(entries);
        return new LedgerKeeper(scenario, entries).Keep(until ?? DateOnly.MaxValue);
    }
}

/// <summary>What the log says of a batch.</summary>
public sealed record BatchLedger
{
    /// <summary>The batch.</summary>
    public required BatchOrder Order { get; init; }

    /// <summary>Its sowings, in order of date: trays, or flats where it is to be potted up.</summary>
    public ImmutableArray<(DateOnly On, int Count)> Sowings { get; init; } = [];

    /// <summary>
    /// The day of its first count, where nothing says when it was sown: what was counted that day stands there, sown as planned. Else null.
    /// </summary>
    public DateOnly? BegunOn { get; init; }

    /// <summary>What stands, in order of space and entry.</summary>
    public ImmutableArray<Pile> Piles { get; init; } = [];

    /// <summary>Flats that stood there then.</summary>
    public int BegunFlats { get; init; }

    /// <summary>Trays that stood there then.</summary>
    public int BegunTrays { get; init; }

    /// <summary>Trays filled by potting up.</summary>
    public int Filled { get; init; }

    /// <summary>Flats used up by potting up.</summary>
    public int FlatsUsed { get; init; }

    /// <summary>Trays set out, by day; with the plants where they were counted.</summary>
    public ImmutableArray<(DateOnly On, int Trays, int? Plants)> Out { get; init; } = [];

    /// <summary>Trays handed over to their grower, by day.</summary>
    public ImmutableArray<(DateOnly On, int Trays)> HandedOver { get; init; } = [];

    /// <summary>Trays thrown out.</summary>
    public int TraysThrownOut { get; init; }

    /// <summary>Flats thrown out.</summary>
    public int FlatsThrownOut { get; init; }

    /// <summary>What was seen of it, in order: seedlings and plants counted, and trays judged.</summary>
    public ImmutableArray<SeenOfBatch> Seen { get; init; } = [];

    /// <summary>What stood once and went, in order.</summary>
    public ImmutableArray<GonePile> Gone { get; init; } = [];

    /// <summary>Trays or flats sown.</summary>
    public int Sown => Sowings.Sum(sowing => sowing.Count);

    /// <summary>Whether anything of it has been sown, or has been counted.</summary>
    public bool IsBegun => !Sowings.IsEmpty || BegunOn is not null;

    /// <summary>Trays or flats that stand.</summary>
    /// <param name="areFlats">Whether flats are asked for.</param>
    /// <param name="space">Position of a space; null for all.</param>
    public int Standing(bool areFlats, int? space = null) =>
        Piles.Where(pile => pile.AreFlats == areFlats && (space ?? pile.Space) == pile.Space).Sum(pile => pile.Count);
}

/// <summary>What was seen of a batch.</summary>
/// <param name="On">Day.</param>
/// <param name="What">
/// <see cref="LogKind.Up"/>, <see cref="LogKind.Good"/>, <see cref="LogKind.Ready"/> or <see cref="LogKind.NotReady"/>.
/// </param>
/// <param name="Space">Position of the space in which it was looked at; null where the row names none.</param>
/// <param name="Count">Seedlings up, or cells with a plant; 0 where trays were judged.</param>
/// <param name="Of">Seeds or cells looked at; 0 where trays were judged.</param>
/// <param name="IsPicked">Whether what was counted was picked by lot and not by its looks.</param>
/// <param name="Word">The word that stands in the place of the count; <see cref="CountWord.None"/> for none.</param>
public sealed record SeenOfBatch(
    DateOnly On,
    LogKind What,
    int? Space,
    int Count,
    int Of,
    bool IsPicked = false,
    CountWord Word = CountWord.None
);

/// <summary>Trays or flats of a batch that share their past, as the log has it.</summary>
public sealed record Pile
{
    /// <summary>Whether they are flats.</summary>
    public required bool AreFlats { get; init; }

    /// <summary>Lowest index, from 0.</summary>
    public required int First { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Day of sowing, for trays filled by potting up that of the flat which filled them; null where nothing says so.</summary>
    public DateOnly? SownOn { get; init; }

    /// <summary>Day of potting up; null for flats, for trays sown directly, and where nothing says so.</summary>
    public DateOnly? PottedOn { get; init; }

    /// <summary>Where they have stood, the last of them now; those of the flat first for trays filled by potting up.</summary>
    public required ImmutableArray<Stay> Path { get; init; }

    /// <summary>
    /// Leading stays that are not their own: of the flat that filled them, or, where a count found them, of others of their batch.
    /// </summary>
    public int Borrowed { get; init; }

    /// <summary>Position of the space in which they stand.</summary>
    public int Space => Path[^1].Space;

    /// <summary>The day since which they stand there.</summary>
    public DateOnly Since => Path[^1].From;

    /// <summary>The count that found them and did not expect them; null for others.</summary>
    internal Difference? FoundBy { get; init; }
}

/// <summary>Trays or flats that stand no more.</summary>
/// <param name="Pile">What they were.</param>
/// <param name="End">What became of them.</param>
/// <param name="On">The day on which they went.</param>
/// <param name="Plants">Plants set out, where they were counted; else null.</param>
public sealed record GonePile(Pile Pile, TrayEnd End, DateOnly On, int? Plants = null);

/// <summary>A stay in a space.</summary>
/// <param name="Space">Position of the space.</param>
/// <param name="From">Day of the round in which it begins.</param>
public readonly record struct Stay(int Space, DateOnly From);

/// <summary>A count that is not what the rows before it say.</summary>
/// <param name="On">Day.</param>
/// <param name="Batch">Position of the batch.</param>
/// <param name="AreFlats">Whether flats were counted.</param>
/// <param name="Space">Position of the space.</param>
/// <param name="Expected">What the rows say.</param>
/// <param name="Counted">What was counted; 0 where a walk found none.</param>
/// <param name="Unexplained">Those of the difference that no count elsewhere explains: above 0 for found, below for missing.</param>
/// <param name="IsWalked">Whether nobody wrote the count down: the walk says that there are none.</param>
public sealed record CountedOtherwise(
    DateOnly On,
    int Batch,
    bool AreFlats,
    int Space,
    int Expected,
    int Counted,
    int Unexplained,
    bool IsWalked
);

/// <summary>Trays or flats that one count misses and another finds: they were moved, and nobody wrote it down.</summary>
/// <param name="On">Day of the later of the two.</param>
/// <param name="Batch">Position of the batch.</param>
/// <param name="AreFlats">Whether they are flats.</param>
/// <param name="From">Position of the space in which they are missing.</param>
/// <param name="To">Position of the space in which they were found.</param>
/// <param name="Count">How many.</param>
public sealed record CountedElsewhere(DateOnly On, int Batch, bool AreFlats, int From, int To, int Count);

/// <summary>Something wrong with a row.</summary>
/// <param name="Entry">Position of the row.</param>
/// <param name="Column">Column of the log.</param>
/// <param name="What">What is wrong, to follow the name of the column.</param>
/// <param name="Instead">What would be right.</param>
public sealed record LedgerFault(int Entry, string Column, string What, string Instead);
