using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>How a batch is raised.</summary>
public enum Method
{
    /// <summary>Sown in the tray it goes to the field in.</summary>
    Direct,

    /// <summary>Sown dense in open flats and potted up later.</summary>
    PotUp,
}

/// <summary>One sowing of the plan, after successions are expanded: what the grower asked for.</summary>
public sealed record BatchOrder
{
    /// <summary>Id, unique in the plan, in Unicode normal form C.</summary>
    public required string Id { get; init; }

    /// <summary>Crop id.</summary>
    public required string CropId { get; init; }

    /// <summary>Variety, for people to read: it plans nothing; may be empty.</summary>
    public string Variety { get; init; } = "";

    /// <summary>Grower whose batch it is.</summary>
    public required string Grower { get; init; }

    /// <summary>Plants wanted in the field, 1 or more.</summary>
    public required int Plants { get; init; }

    /// <summary>Sow date; null when <see cref="SetOut"/> is to decide.</summary>
    public DateOnly? Sow { get; init; }

    /// <summary>Date the field wants it; null when <see cref="Sow"/> is to decide.</summary>
    public DateOnly? SetOut { get; init; }

    /// <summary>Days by which levelling may sow it earlier than planned, 0 or more. It plans nothing by itself.</summary>
    public int EarlierDays { get; init; }

    /// <summary>Days by which levelling may sow it later than planned, 0 or more. It plans nothing by itself.</summary>
    public int LaterDays { get; init; }

    /// <summary>Direct or pot-up.</summary>
    public Method Method { get; init; }

    /// <summary>Tray type it goes to the field in.</summary>
    public required string TrayId { get; init; }

    /// <summary>Open flat it is sown in; null for <see cref="Method.Direct"/>.</summary>
    public string? FlatId { get; init; }

    /// <summary>Benches on which its trays finish, in order of preference, by space id; empty for those of the crop.</summary>
    public ImmutableArray<string> Finish { get; init; } = [];

    /// <summary>Share of growth from which they may go there; null for the crop's.</summary>
    public double? FinishAt { get; init; }

    /// <summary>
    /// Days after potting up, or after they are up where sown directly, from which they may go there; null for the crop's.
    /// </summary>
    public int? FinishAfterDays { get; init; }

    /// <summary>Trays, where the grower fixed them; null to work them out.</summary>
    public int? Trays { get; init; }

    /// <summary>Flats, where the grower fixed them; null to work them out.</summary>
    public int? Flats { get; init; }

    /// <summary>Seeds a cell (direct), 1 or more.</summary>
    public required int SeedsPerCell { get; init; }

    /// <summary>Seeds a flat (pot-up), 1 or more; 0 for direct.</summary>
    public int SeedsPerFlat { get; init; }

    /// <summary>Packet germination, fraction 0 to 1.</summary>
    public required double Germination { get; init; }

    /// <summary>Whether the plan gives no packet value, so that it is the crop's.</summary>
    public bool TakesCropGermination { get; init; }

    /// <summary>Date of the germination test; null when unknown.</summary>
    public DateOnly? TestedOn { get; init; }

    /// <summary>Packet id: batches sown from one packet share its luck; null for a packet of its own.</summary>
    public string? PacketId { get; init; }

    /// <summary>Price of a thousand seeds, in the user's money; null to take the site's.</summary>
    public double? ThousandSeeds { get; init; }

    /// <summary>What it stands under in the field.</summary>
    public FieldCover FieldCover { get; init; }

    /// <summary>Free note of the grower; may hold anything.</summary>
    public string Note { get; init; } = "";

    /// <summary>The line of the plan it came from.</summary>
    public SourcePlace Place { get; init; }
}
