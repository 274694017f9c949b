namespace BenchSim.Season.Play;

/// <summary>Trays or flats of a batch were sown or moved.</summary>
/// <param name="Batch">Position of the batch in the plan.</param>
/// <param name="IsFlat">Whether they are flats.</param>
/// <param name="First">Lowest index, from 0.</param>
/// <param name="Count">How many.</param>
/// <param name="From">Position of the space they stood in; -1 where they were sown.</param>
/// <param name="To">Position of the space they stand in now.</param>
/// <param name="Hour">Instant, hours from the midnight that opens day 0.</param>
public readonly record struct TrayMove(int Batch, bool IsFlat, int First, int Count, int From, int To, double Hour);

/// <summary>A mishap struck trays or flats of a batch.</summary>
/// <param name="Batch">Position of the batch in the plan.</param>
/// <param name="Mishap">Position of the mishap in the site's list.</param>
/// <param name="IsFlat">Whether they are flats.</param>
/// <param name="First">Lowest index, from 0.</param>
/// <param name="Count">How many.</param>
/// <param name="Space">Position of the space they stand in.</param>
/// <param name="Hour">Instant, hours from the midnight that opens day 0.</param>
public readonly record struct TraysStruck(int Batch, int Mishap, bool IsFlat, int First, int Count, int Space, double Hour);

/// <summary>Trays went to the field.</summary>
/// <param name="Batch">Position of the batch in the plan.</param>
/// <param name="First">Lowest index, from 0.</param>
/// <param name="Count">How many.</param>
/// <param name="From">Position of the space they stood in.</param>
/// <param name="Plants">Plants in them.</param>
/// <param name="HoldDays">Days on which the weather alone kept them.</param>
/// <param name="SownHour">Instant at which they, or their flats, were sown, hours from the midnight that opens day 0.</param>
/// <param name="UpHour">Instant at which half their seedlings were up, likewise.</param>
/// <param name="Hour">Instant at which they went, likewise.</param>
public readonly record struct TraysOut(
    int Batch,
    int First,
    int Count,
    int From,
    int Plants,
    int HoldDays,
    double SownHour,
    double UpHour,
    double Hour
);

/// <summary>A flat was emptied into trays.</summary>
/// <param name="Batch">Position of the batch in the plan.</param>
/// <param name="Flat">Index of the flat, from 0.</param>
/// <param name="Seedlings">Seedlings it gave.</param>
/// <param name="FirstTray">Index of the first tray filled, from 0.</param>
/// <param name="Trays">Trays filled.</param>
/// <param name="Hour">Instant, hours from the midnight that opens day 0.</param>
public readonly record struct FlatPotted(int Batch, int Flat, int Seedlings, int FirstTray, int Trays, double Hour);

/// <summary>Trays or flats were thrown out.</summary>
/// <param name="Batch">Position of the batch in the plan.</param>
/// <param name="IsFlat">Whether they are flats.</param>
/// <param name="First">Lowest index, from 0.</param>
/// <param name="Count">How many.</param>
/// <param name="From">Position of the space they stood in.</param>
/// <param name="Reason">Why.</param>
/// <param name="ReadyHour">Instant at which they were ready for the field, or to be potted up; infinite when they never were.</param>
/// <param name="Hour">Instant, hours from the midnight that opens day 0.</param>
public readonly record struct TraysDiscarded(
    int Batch,
    bool IsFlat,
    int First,
    int Count,
    int From,
    DiscardReason Reason,
    double ReadyHour,
    double Hour
);

/// <summary>Trays or flats that waited unsown for too long were given up.</summary>
/// <param name="Batch">Position of the batch in the plan.</param>
/// <param name="Count">How many.</param>
/// <param name="Hour">Instant, hours from the midnight that opens day 0.</param>
public readonly record struct SowingsGivenUp(int Batch, int Count, double Hour);

/// <summary>Trays or flats of a batch that stand in a space.</summary>
/// <param name="Space">Position of the space.</param>
/// <param name="IsFlat">Whether they are flats.</param>
/// <param name="First">Lowest index, from 0.</param>
/// <param name="Count">How many.</param>
/// <param name="Waits">Whether they lack nothing but a place to go to.</param>
public readonly record struct StandingTrays(int Space, bool IsFlat, int First, int Count, bool Waits);
