using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Logbook;

/// <summary>Whether a row needs a cell.</summary>
internal enum Need
{
    /// <summary>It must be left empty.</summary>
    None,

    /// <summary>It may be filled.</summary>
    May,

    /// <summary>It must be filled.</summary>
    Must,
}

/// <summary>Which trays and flats a row names.</summary>
internal enum PiecesNeed
{
    /// <summary>None.</summary>
    None,

    /// <summary>Trays, where it says so.</summary>
    MayTrays,

    /// <summary>Trays.</summary>
    Trays,

    /// <summary>Trays or flats, not both.</summary>
    Either,

    /// <summary>Trays and flats.</summary>
    Both,
}

/// <summary>What the rows of a kind need beside the date.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Pieces">Trays and flats.</param>
/// <param name="Space">The space.</param>
/// <param name="From">Where they stood.</param>
/// <param name="Count">The count.</param>
/// <param name="Of">What was looked at.</param>
/// <param name="Note">The note.</param>
/// <param name="Verb">What was done to trays, to follow "how many trays".</param>
internal sealed record LogNeeds(
    Need Batch,
    PiecesNeed Pieces,
    Need Space,
    Need From = Need.None,
    Need Count = Need.None,
    Need Of = Need.None,
    Need Note = Need.May,
    string Verb = ""
)
{
    /// <summary>What a row of a kind needs.</summary>
    public static LogNeeds For(LogKind what) =>
        what switch
        {
            LogKind.Sown => new(Need.Must, PiecesNeed.Either, Need.Must, Verb: "were sown"),
            LogKind.Up or LogKind.Good => new(Need.Must, PiecesNeed.None, Need.May, Count: Need.Must, Of: Need.Must),
            LogKind.PottedUp => new(Need.Must, PiecesNeed.Both, Need.Must, Need.May),
            LogKind.Moved => new(Need.Must, PiecesNeed.Either, Need.Must, Need.May, Verb: "were moved"),
            LogKind.Ready or LogKind.NotReady => new(Need.Must, PiecesNeed.None, Need.May),
            LogKind.SetOut => new(Need.Must, PiecesNeed.Trays, Need.May, Need.May, Need.May, Verb: "were set out"),
            LogKind.ThrownOut => new(Need.Must, PiecesNeed.Either, Need.May, Need.May, Verb: "were thrown out"),
            LogKind.Counted => new(Need.Must, PiecesNeed.Either, Need.Must, Verb: "stand there, 0 for none"),
            LogKind.Walked => new(Need.None, PiecesNeed.None, Need.Must),
            LogKind.HandedOver => new(Need.Must, PiecesNeed.Trays, Need.May, Need.May, Verb: "were handed over"),
            LogKind.Covered or LogKind.CarriedIn => new(Need.May, PiecesNeed.MayTrays, Need.May),
            LogKind.Low => new(Need.None, PiecesNeed.None, Need.Must, Count: Need.Must),
            LogKind.Mishap => new(Need.May, PiecesNeed.MayTrays, Need.May, Note: Need.Must),
            LogKind.Fuel => new(Need.None, PiecesNeed.None, Need.May, Count: Need.Must, Note: Need.Must),
            _ => throw new ArgumentOutOfRangeException(nameof(what)),
        };

    /// <summary>Whether the space of a row is where its trays stood, because they went to none.</summary>
    public static bool IsSpaceFrom(LogKind what) => what is LogKind.SetOut or LogKind.ThrownOut or LogKind.HandedOver;

    /// <summary>Whether a row may name a house, or outdoors.</summary>
    public static bool MayBeHouse(LogKind what) => what is LogKind.Low or LogKind.Fuel or LogKind.Mishap or LogKind.Covered;
}
