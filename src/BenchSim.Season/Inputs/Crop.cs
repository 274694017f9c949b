using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>How a crop stands cold.</summary>
public enum Hardiness
{
    /// <summary>Stands frost.</summary>
    Hardy,

    /// <summary>Stands light frost.</summary>
    HalfHardy,

    /// <summary>Killed by frost.</summary>
    Tender,

    /// <summary>Hurt by cool nights above freezing.</summary>
    VeryTender,
}

/// <summary>
/// Culture data of a crop, after conversion to the model's units. Every value has its source in <see cref="Sources"/>,
/// under the column name of crops.csv (the property's name in snake case, without the unit).
/// </summary>
public sealed record Crop
{
    /// <summary>Id, as written in the plan.</summary>
    public required string Id { get; init; }

    /// <summary>Name shown to people.</summary>
    public required string Name { get; init; }

    /// <summary>How it stands cold.</summary>
    public required Hardiness Hardiness { get; init; }

    // Emergence (docs/model.md section 4)

    /// <summary>Base temperature of emergence b, degrees Celsius.</summary>
    public required double EmergeBaseC { get; init; }

    /// <summary>Optimum temperature of emergence o, the coolest of the fastest, degrees Celsius; above the base.</summary>
    public required double EmergeOptimumC { get; init; }

    /// <summary>
    /// Warmest temperature p up to which emergence is as fast as at the optimum, as it is written, degrees Celsius; the optimum or above.
    /// Null where none is written: the optimum itself.
    /// </summary>
    public double? WrittenEmergePlateauC { get; init; }

    /// <summary>Warmest temperature p up to which emergence is as fast as at the optimum, degrees Celsius.</summary>
    public double EmergePlateauC => WrittenEmergePlateauC ?? EmergeOptimumC;

    /// <summary>Ceiling temperature of emergence c, degrees Celsius; above the plateau.</summary>
    public required double EmergeCeilingC { get; init; }

    /// <summary>Heat sum to emergence of half the seedlings, degree-days Celsius above the base.</summary>
    public required double EmergeHeat { get; init; }

    /// <summary>Spread of emergence within a batch: standard deviation of the natural logarithm of the heat sum, 0 or more.</summary>
    public required double EmergeSigma { get; init; }

    /// <summary>Coefficient of variation of the batch's own factor on the heat sum, 0 or more.</summary>
    public required double EmergeCv { get; init; }

    /// <summary>Percent normal seedlings against temperature, in order of temperature; empty means no effect.</summary>
    public ImmutableArray<GerminationPoint> GerminationCurve { get; init; } = [];

    /// <summary>
    /// Medium temperature at which the published weeks count their emergence, degrees Celsius; used to convert days from sowing.
    /// </summary>
    public required double GerminateAtC { get; init; }

    /// <summary>True when it wants bottom heat.</summary>
    public required bool BottomHeat { get; init; }

    /// <summary>Hottest mat it may stand on, degrees Celsius; null for any.</summary>
    public double? MaxMatC { get; init; }

    /// <summary>Fraction of the coming seedlings that must be up before a tray leaves the mat, between 0 and 1.</summary>
    public required double LeaveMatAt { get; init; }

    /// <summary>Days from sowing after which a tray that never came up is thrown out.</summary>
    public required int EmergeGiveUpDays { get; init; }

    // Seed

    /// <summary>Germination when the plan gives no packet value, fraction 0 to 1.</summary>
    public required double Germination { get; init; }

    /// <summary>Seeds a cell when the plan does not say, 1 or more.</summary>
    public required int SeedsPerCell { get; init; }

    /// <summary>Seedlings kept a cell after thinning, 1 or more.</summary>
    public required int KeepPerCell { get; init; }

    /// <summary>Mean fraction of plants lost between emergence and the field.</summary>
    public required double StandLoss { get; init; }

    /// <summary>The largest <see cref="StandLossCorrelation"/>; at it the beta law of the losses has a sample size of one.</summary>
    public const double MostStandLossCorrelation = 0.5;

    /// <summary>The <see cref="StandLossCorrelation"/> of a new crop that says none; docs/sources.md.</summary>
    public const double UsualStandLossCorrelation = 0.1;

    /// <summary>Correlation of the loss of two plants of a batch, 0 to 0.5: how far losses come in lumps.</summary>
    public double StandLossCorrelation { get; init; }

    // Growth (section 5)

    /// <summary>Base temperature of growth, degrees Celsius.</summary>
    public required double GrowthBaseC { get; init; }

    /// <summary>Temperature above which growth is no faster, degrees Celsius.</summary>
    public required double GrowthCapC { get; init; }

    /// <summary>Air temperature at which <see cref="GrowthDays"/> holds, degrees Celsius; above the base.</summary>
    public required double ReferenceC { get; init; }

    /// <summary>Days from emergence to field size at the reference temperature, hardening not included (converted on reading).</summary>
    public required double GrowthDays { get; init; }

    /// <summary>Days that the written days to field size count before it is up and while it hardens; 0 where they count neither.</summary>
    public double DaysOutsideGrowth => (DaysToReady?.Days ?? GrowthDays) - GrowthDays;

    /// <summary>What <see cref="GrowthDays"/> was worked out from; null where it was not read from a table.</summary>
    public WrittenDays? DaysToReady { get; init; }

    /// <summary>
    /// Fewest weeks to field size that growers publish, counted as <see cref="DaysToReady"/> is; null where none is known.
    /// </summary>
    public double? WeeksMin { get; init; }

    /// <summary>Most weeks to field size that growers publish, counted as <see cref="DaysToReady"/> is; null where none is known.</summary>
    public double? WeeksMax { get; init; }

    /// <summary>Coefficient of variation of the batch's own factor on growth, 0 or more.</summary>
    public required double GrowthCv { get; init; }

    /// <summary>Days from emergence to the pot-up stage at the reference temperature.</summary>
    public required double PotUpDays { get; init; }

    /// <summary>Days of growth lost to a pot-up at the reference temperature.</summary>
    public required double PotUpCheckDays { get; init; }

    /// <summary>Fraction of seedlings lost in potting up.</summary>
    public required double PotUpLoss { get; init; }

    // Where it may stand

    /// <summary>Coldest night set-point it may stand in, degrees Celsius; null for any house.</summary>
    public double? MinNightC { get; init; }

    /// <summary>Benches it may use, in order of preference, by space id; empty to work it out from <see cref="MinNightC"/>.</summary>
    public ImmutableArray<string> Benches { get; init; } = [];

    /// <summary>Mats it may use, in order of preference, by space id; empty to work it out from <see cref="MaxMatC"/>.</summary>
    public ImmutableArray<string> Mats { get; init; } = [];

    /// <summary>Benches on which its trays finish, in order of preference, by space id; empty for none (section 2).</summary>
    public ImmutableArray<string> Finish { get; init; } = [];

    /// <summary>Share of growth from which they may go there; null where <see cref="FinishAfterDays"/> says.</summary>
    public double? FinishAt { get; init; }

    /// <summary>Days after potting up, or after they are up where sown directly, from which they may go there; null for none.</summary>
    public int? FinishAfterDays { get; init; }

    // Hardening and holds (section 7)

    /// <summary>Nights on the table that must count, 0 or more.</summary>
    public required int HardeningNights { get; init; }

    /// <summary>
    /// Trays go to the table when every forecast night there, under the row cover where there is one, is at or above this; the cover goes
    /// on below it. Degrees Celsius.
    /// </summary>
    public required double TableAboveC { get; init; }

    /// <summary>
    /// Below this night temperature, under the cover, trays on the table are carried in and the night does not count, degrees Celsius.
    /// </summary>
    public required double DamageBelowC { get; init; }

    /// <summary>
    /// Trays go to the field when every forecast night, under the cover of the field, is at or above this, degrees Celsius.
    /// </summary>
    public required double FieldAboveC { get; init; }

    /// <summary>Days past due at which a tray is over-held.</summary>
    public required int HoldDays { get; init; }

    /// <summary>Days past due at which a tray is thrown out; above <see cref="HoldDays"/>.</summary>
    public required int DiscardAfterDays { get; init; }

    /// <summary>Days past the pot-up stage at which a flat is thrown out.</summary>
    public required int FlatDiscardDays { get; init; }

    /// <summary>
    /// Days from setting out to the first day of harvest, 0 or more; null where it is not given. Nothing but a trial of successions uses
    /// it.
    /// </summary>
    public int? HarvestAfterDays { get; init; }

    /// <summary>Days on which it is harvested, 1 or more; null where it is not given. Nothing but a trial of successions uses it.</summary>
    public int? HarvestDays { get; init; }

    /// <summary>Tray type used when the plan does not say.</summary>
    public required string TrayId { get; init; }

    /// <summary>Where each value comes from, by column name of crops.csv.</summary>
    public ImmutableSortedDictionary<string, Provenance> Sources { get; init; } = ImmutableSortedDictionary<string, Provenance>.Empty;
}

/// <summary>One point of the germination curve: percent normal seedlings at a medium temperature.</summary>
/// <param name="TemperatureC">Medium temperature, degrees Celsius.</param>
/// <param name="Percent">Percent normal seedlings, 0 to 100.</param>
public readonly record struct GerminationPoint(double TemperatureC, double Percent);
