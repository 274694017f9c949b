using System.Collections.Immutable;

namespace BenchSim.Season.Inputs;

/// <summary>A batch with its dates and numbers worked out: what is meant to happen.</summary>
public sealed record BatchPlan
{
    /// <summary>What the grower asked for.</summary>
    public required BatchOrder Order { get; init; }

    /// <summary>Crop.</summary>
    public required Crop Crop { get; init; }

    /// <summary>Crop and variety as people read them: "Tomato", "Tomato ‘Early red’".</summary>
    public string CropAndVariety => Order.Variety.Length == 0 ? Crop.Name : $"{Crop.Name} ‘{Order.Variety}’";

    /// <summary>Seedlings kept together in a cell and set out as one plant: 1 where each plant stands alone.</summary>
    public int ClusterOf => Flat is null ? Math.Min(Order.SeedsPerCell, Crop.KeepPerCell) : 1;

    /// <summary>Whether more seeds are sown in a cell than seedlings are kept, so that its trays are thinned.</summary>
    public bool IsThinned => Flat is null && Order.SeedsPerCell > Crop.KeepPerCell;

    /// <summary>Tray it goes to the field in.</summary>
    public required TrayType Tray { get; init; }

    /// <summary>Open flat it is sown in; null for direct.</summary>
    public TrayType? Flat { get; init; }

    /// <summary>Planned sow date, a work day.</summary>
    public required DateOnly SowOn { get; init; }

    /// <summary>Date on which half the coming seedlings are up, in normal weather and with room.</summary>
    public required DateOnly EmergeOn { get; init; }

    /// <summary>Date of leaving the mat; null where none is used.</summary>
    public DateOnly? OffMatOn { get; init; }

    /// <summary>Date of potting up; null for direct.</summary>
    public DateOnly? PotUpOn { get; init; }

    /// <summary>Date of going to the benches on which it finishes; null where there are none or it goes straight to the table.</summary>
    public DateOnly? FinishOn { get; init; }

    /// <summary>Date of going to the hardening table.</summary>
    public required DateOnly TableOn { get; init; }

    /// <summary>First date on which it would be ready for the field in normal weather and with room, a work day.</summary>
    public required DateOnly ReadyOn { get; init; }

    /// <summary>
    /// Planned set-out date, a work day: the wanted one where given, else the first that leaves the slack after <see cref="ReadyOn"/>.
    /// </summary>
    public required DateOnly SetOutOn { get; init; }

    /// <summary>
    /// Days in hand: from the first day on which it would be ready for the field, in normal weather and with room, to the planned set-out
    /// date. Below 0 where it is wanted before it can be ready.
    /// </summary>
    public int DaysInHand => SetOutOn.DayNumber - ReadyOn.DayNumber;

    /// <summary>Trays planned to go to the field, 1 or more.</summary>
    public required int Trays { get; init; }

    /// <summary>Flats sown; 0 for direct.</summary>
    public required int Flats { get; init; }

    /// <summary>Seeds sown in all.</summary>
    public required long Seeds { get; init; }

    /// <summary>
    /// Germination of the packet at sowing, fraction 0 to 1: the packet value, aged where the storage and the crop's constants are known.
    /// </summary>
    public required double Germination { get; init; }

    /// <summary>Germination at the planned temperature relative to the crop's best, 0 to 1.</summary>
    public double RelativeGermination { get; init; } = 1;

    /// <summary>Chance that the trays bring the wanted plants.</summary>
    public required double StandChance { get; init; }

    /// <summary>
    /// Mats it may stand on, in order of preference, by position in <see cref="Scenario.Spaces"/>; empty when it wants no bottom heat.
    /// </summary>
    public required ImmutableArray<int> Mats { get; init; }

    /// <summary>Benches it may stand on, in order of preference, by position in <see cref="Scenario.Spaces"/>.</summary>
    public required ImmutableArray<int> Benches { get; init; }

    /// <summary>
    /// Benches on which its trays finish, in order of preference, by position in <see cref="Scenario.Spaces"/>; empty for none.
    /// </summary>
    public ImmutableArray<int> Finish { get; init; } = [];

    /// <summary>Share of growth from which trays may go there; null where <see cref="FinishAfterDays"/> says.</summary>
    public double? FinishAt { get; init; }

    /// <summary>Days after potting up, or after they are up where sown directly, from which trays may go there; null for a share.</summary>
    public int? FinishAfterDays { get; init; }

    /// <summary>Tables it may stand on, in order of preference, by position in <see cref="Scenario.Spaces"/>.</summary>
    public required ImmutableArray<int> Tables { get; init; }
}
