namespace BenchSim.Season.Logbook;

/// <summary>A count that is not what the rows before it say, while the ledger is kept.</summary>
internal sealed class Difference
{
    public required DateOnly On { get; init; }

    public required bool AreFlats { get; init; }

    public required int Space { get; init; }

    public required int Expected { get; init; }

    public required int Counted { get; init; }

    public required bool IsWalked { get; init; }

    /// <summary>Those that no count elsewhere explains, above 0 for found, below for missing.</summary>
    public int Open { get; set; }

    /// <summary>What is missing, with its past.</summary>
    public List<Pile> Missing { get; } = [];
}
