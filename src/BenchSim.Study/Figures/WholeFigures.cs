using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>What one season tells of itself as a whole.</summary>
public sealed class WholeSeason : OwnerSeason
{
    private readonly long _wanted;
    private readonly long[] _struck;

    // A share like 0.95 is not a binary fraction: in decimal, 0.95 x 60 is 57 and nothing more.
    private readonly decimal _goal;

    internal WholeSeason(PlanShape shape)
    {
        Reliefs = shape.Plan.Scenario.Rules.Reliefs.Length;
        _struck = new long[shape.Plan.Scenario.Mishaps.Length];
        _wanted = shape.PlantsWanted;
        _goal = (decimal)shape.Plan.Scenario.Rules.ServiceGoal * shape.PlantsWanted;
    }

    internal int Reliefs { get; }

    internal int Mishaps => _struck.Length;

    // 1 for each mishap that struck a tray or flat, else 0.
    internal long[] Struck => _struck;

    internal SeasonResult Season { get; private set; } = new();

    internal Cause? Cause { get; private set; }

    internal long LatePlantDays { get; private set; }

    internal int OverHeld { get; private set; }

    internal int Discarded { get; private set; }

    internal int Standing { get; private set; }

    internal long PlantsShort => _wanted - Season.PlantsOut;

    internal bool IsTooFewInTime => Season.PlantsInTime < _goal;

    internal override void Read(SeasonResult season, RoomySeason roomy)
    {
        Season = season;
        Cause = season.FitsWeatherCounted ? null : CauseOf(season, roomy);
        (LatePlantDays, OverHeld, Discarded, Standing) = (0, 0, 0, 0);
        for (var mishap = 0; mishap < _struck.Length; mishap++)
        {
            _struck[mishap] = season.MishapTrays[mishap] > 0 ? 1 : 0;
        }

        foreach (var batch in season.Batches)
        {
            LatePlantDays += batch.LatePlantDays;
            OverHeld += batch.OverHeld;
            Standing += batch.TraysStanding + batch.FlatsStanding;
            foreach (var trays in batch.Discarded)
            {
                Discarded += trays;
            }
        }
    }

    // The first that holds, in the order of docs/model.md section 9.
    private Cause CauseOf(SeasonResult season, RoomySeason roomy) =>
        season.Fits ? Figures.Cause.Hold
        : roomy.Fits ? Figures.Cause.Place
        : roomy.PlantsOut >= _goal ? Figures.Cause.SlowGrowth
        : roomy.IsShortForThrownOut ? Figures.Cause.ThrownOut
        : Figures.Cause.Germination;
}

/// <summary>The figures of the season as a whole.</summary>
public static class WholeFigures
{
    /// <summary>All of them.</summary>
    public static FigureList<WholeSeason> All { get; } = new();

    /// <summary>Chance that a season fits, days of weather hold excepted.</summary>
    public static ChanceFigure<WholeSeason> Fits { get; } = All.Chance("fits", "fits", whole => whole.Season.Fits);

    /// <summary>Chance that a season fits, every late day counted, weather or not.</summary>
    public static ChanceFigure<WholeSeason> FitsWeatherCounted { get; } =
        All.Chance("fits_weather_counted", "fits, every late day counted", whole => whole.Season.FitsWeatherCounted);

    /// <summary>
    /// Chance that in a season some batch is sown too late or not in full: the first of the three conditions of a fit is not met.
    /// </summary>
    public static ChanceFigure<WholeSeason> SownTooLate { get; } =
        All.Chance("sown_too_late", "sown too late", whole => !whole.Season.SownInTime);

    /// <summary>Chance that in a season some tray is over-held for lack of a place: the second condition is not met.</summary>
    public static ChanceFigure<WholeSeason> OverHeldForPlace { get; } =
        All.Chance("over_held_for_place", "over-held for lack of a place", whole => !whole.Season.NoneOverHeldForPlace);

    /// <summary>
    /// Chance that in a season fewer wanted plants than the service goal are in time, holds excepted: the third condition is not met.
    /// </summary>
    public static ChanceFigure<WholeSeason> TooFewInTime { get; } =
        All.Chance("too_few_in_time", "too few plants in time", whole => whole.IsTooFewInTime);

    /// <summary>Seasons that do not fit with every late day counted, by <see cref="Cause"/>.</summary>
    public static ChoiceFigure<WholeSeason> Causes { get; } =
        All.Joined(new ChoiceFigure<WholeSeason>("causes", "cause", Enum.GetValues<Cause>().Length, whole => (int?)whole.Cause ?? -1));

    /// <summary>Wanted plants out in time, all batches.</summary>
    public static AmountFigure<WholeSeason> PlantsInTime { get; } =
        All.Amount("plants_in_time", "plants out in time", "plants", whole => whole.Season.PlantsInTime);

    /// <summary>Wanted plants out, but late.</summary>
    public static AmountFigure<WholeSeason> PlantsLate { get; } =
        All.Amount("plants_late", "plants out late", "plants", whole => whole.Season.PlantsOut - whole.Season.PlantsInTime);

    /// <summary>Wanted plants that never go out.</summary>
    public static AmountFigure<WholeSeason> PlantsShort { get; } =
        All.Amount("plants_short", "plants never out", "plants", whole => whole.PlantsShort);

    /// <summary>Late plant-days, all batches.</summary>
    public static AmountFigure<WholeSeason> LatePlantDays { get; } =
        All.Wide("late_plant_days", "late plant-days", "plant-days", whole => whole.LatePlantDays);

    /// <summary>Trays over-held.</summary>
    public static AmountFigure<WholeSeason> OverHeld { get; } =
        All.Amount("over_held", "trays over-held", "trays", whole => whole.OverHeld);

    /// <summary>Trays and flats thrown out.</summary>
    public static AmountFigure<WholeSeason> Discarded { get; } =
        All.Amount("discarded", "trays and flats thrown out", "trays or flats", whole => whole.Discarded);

    /// <summary>Trays and flats still standing on the last day.</summary>
    public static AmountFigure<WholeSeason> StillStanding { get; } =
        All.Amount("still_standing", "trays and flats still standing on the last day", "trays or flats", whole => whole.Standing);

    /// <summary>Uses of each relief, in the order of the site's list: trays moved, or tray-days in the aisle.</summary>
    public static RowFigure<WholeSeason> ReliefUses { get; } =
        All.Joined(
            new RowFigure<WholeSeason>(
                "uses",
                "relief",
                "uses of each relief",
                "uses",
                whole => whole.Reliefs,
                whole => whole.Season.ReliefUses
            )
            {
                IsWide = true,
            }
        );

    /// <summary>
    /// Whether each mishap struck a tray or flat, 1 or 0, in the order of the site's list: the mean is its share of seasons.
    /// </summary>
    public static RowFigure<WholeSeason> MishapStrikes { get; } =
        All.Joined(
            new RowFigure<WholeSeason>(
                "mishap_strikes",
                "mishap",
                "seasons struck by each mishap",
                "seasons",
                whole => whole.Mishaps,
                whole => whole.Struck
            )
        );

    /// <summary>Trays and flats that each mishap struck, in the order of the site's list.</summary>
    public static RowFigure<WholeSeason> MishapTrays { get; } =
        All.Joined(
            new RowFigure<WholeSeason>(
                "mishap_trays",
                "mishap",
                "trays and flats struck by each mishap",
                "trays or flats",
                whole => whole.Mishaps,
                whole => whole.Season.MishapTrays
            )
            {
                IsWide = true,
            }
        );

    /// <summary>Plants by which mishaps lessened those of the trays that went to the field.</summary>
    public static AmountFigure<WholeSeason> PlantsLostToMishaps { get; } =
        All.Amount("plants_lost_to_mishaps", "plants lost to mishaps in trays that went out", "plants", whole =>
            whole.Season.PlantsLostToMishaps
        );
}
