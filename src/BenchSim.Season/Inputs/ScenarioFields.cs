using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [site], [season] and [play].</summary>
public static class ScenarioFields
{
    private static readonly ChoiceKind<UnitSystem> s_units = new([("metric", UnitSystem.Metric), ("imperial", UnitSystem.Imperial)]);

    private static readonly ChoiceKind<DateOrder> s_dateOrder = new([
        ("ymd", DateOrder.YearFirst),
        ("mdy", DateOrder.MonthFirst),
        ("dmy", DateOrder.DayFirst),
    ]);

    private static readonly OptionalKind<double> s_latitude = new NumberKind(-66, 66, "degrees", "degrees", "degrees").OrNone("not given");

    /// <summary>A scenario of which nothing is said.</summary>
    public static Scenario Nothing { get; } =
        new()
        {
            Name = "",
            Window = new SeasonWindow(DateOnly.MinValue, DateOnly.MaxValue),
            Houses = [],
            Spaces = [],
            TrayTypes = [],
            Crops = [],
            Batches = [],
            Rules = new SiteRules(),
            Weather = new ConstantWeather(0, 0, 0),
            Play = new PlaySettings(),
        };

    /// <summary>The keys of [site], in the order of the reference.</summary>
    public static FieldTable<Scenario> Site { get; } =
        FieldTable
            .Of("site", "[site]", Nothing)
            .Key("name", Kinds.Title, scenario => scenario.Name, (scenario, name) => scenario with { Name = name })
            .Means("Name of the site or of the case.")
            .Required("\"Our farm\"")
            .Key("question", Kinds.Text, scenario => scenario.Question, (scenario, question) => scenario with { Question = question })
            .Means("The question the folder is to answer, in your words; printed above the answer.", leftOut: "empty")
            .Key("units", s_units, scenario => scenario.Units, (scenario, units) => scenario with { Units = units })
            .Means("Units of numbers that say none, and of reports: C, m, mm or F, ft, in.", Why.Ours)
            .Fixed("numbers without a unit are read alike in site.toml and in its variants")
            .Key("date_order", s_dateOrder, set: (scenario, order) => scenario with { DateOrder = order })
            .Means(
                "How dates such as 3/4/2027 are written in the tables: year, month and day in this order.",
                leftOut: "told apart in each column by a day above 12"
            )
            .Fixed("dates are read alike in the tables and in the variants")
            .Key("latitude", s_latitude, scenario => scenario.Latitude, (scenario, latitude) => scenario with { Latitude = latitude })
            .Means(
                "Latitude of the site, north positive, to the degree: the sun in a house is worked out from it.",
                leftOut: "the sun is day_lift"
            )
            .Fixed("every variant stands on the same ground")
            .Key(
                "sun_coefficient",
                new NumberKind(0.1, 0.25, "", "", ""),
                scenario => scenario.SunCoefficient,
                (scenario, coefficient) => scenario with { SunCoefficient = coefficient }
            )
            .Means(
                "How much sun a day's range of temperature stands for: 0.16 inland, 0.19 within some 20 km of a coast.",
                "FAO-56, eq. 50 (Allen, Pereira, Raes and Smith 1998)"
            )
            .Fixed("every variant stands under the same sky")
            .Table();

    /// <summary>The keys of [season], in the order of the reference.</summary>
    public static FieldTable<SeasonWindow> Season { get; } =
        FieldTable
            .Of("season", "[season]", Nothing.Window)
            .Key("opens", Kinds.Date, window => window.Opens, (window, date) => window with { Opens = date })
            .Means("First day on which anything may be sown.")
            .Required("2027-01-18")
            .Fixed("every variant is played from the same first day")
            .Key("closes", Kinds.Date, window => window.Closes, (window, date) => window with { Closes = date })
            .Means("Last day for which a batch may be wanted in the field.")
            .Required("2027-06-30")
            .Table();

    /// <summary>The keys of [play], in the order of the reference.</summary>
    public static FieldTable<PlaySettings> Play { get; } =
        FieldTable
            .Of("play", "[play]", new PlaySettings())
            .Key(
                "seasons",
                new WholeKind(1, WholeKind.Many, "season"),
                play => play.Seasons,
                (play, seasons) => play with { Seasons = seasons }
            )
            .Means("Seasons to play, at most 1,000,000.", Why.Ours)
            .Fixed("every variant is played through the same seasons")
            .Key("seed", new SeedKind(), play => play.Seed, (play, seed) => play with { Seed = seed })
            .Means("Seed number of all draws: the same number gives the same answer.", Why.Ours)
            .Fixed("every variant is played in the same seasons")
            .Table();
}
