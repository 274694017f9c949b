using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [[space]] that are not of its electricity, and those of its changes.</summary>
public static class SpaceFields
{
    /// <summary>Most spaces of a site: every batch is counted in each of them, and each has a chart.</summary>
    public const int Most = 500;

    /// <summary>Most places of one space: a bench of a hectare holds about 60,000 trays.</summary>
    public const int MostPlaces = 100_000;

    private static readonly WholeKind s_places = new(0, MostPlaces, "place");
    private static readonly OptionalKind<double> s_side = Kinds.Length(0, 1000).OrNone("not given");

    /// <summary>The kinds of space as they are written.</summary>
    public static ChoiceKind<SpaceKind> Word { get; } =
        new([("mat", SpaceKind.Mat), ("bench", SpaceKind.Bench), ("table", SpaceKind.Table)]);

    private static readonly ChoiceKind<(SpaceKind Kind, bool IsChamber)> s_kind = new([
        ("mat", (SpaceKind.Mat, false)),
        ("bench", (SpaceKind.Bench, false)),
        ("table", (SpaceKind.Table, false)),
        ("chamber", (SpaceKind.Mat, true)),
    ]);

    /// <summary>A space of which nothing is said: its kind is none there is, its places are less than none.</summary>
    public static Space Nothing { get; } =
        new()
        {
            Id = "",
            Name = "",
            Kind = (SpaceKind)(-1),
            Places = -1,
        };

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<Space> Table { get; } =
        FieldTable
            .Of("space", "[[space]]", Nothing)
            .Key("id", Kinds.Name, space => space.Id, (space, id) => space with { Id = id })
            .Means("Short name, unique among houses and spaces.")
            .Required("\"mats\"")
            .Fixed("it chooses the space")
            .Key("name", Kinds.Title, space => space.Name, (space, name) => space with { Name = name })
            .Means("Name shown to people.", leftOut: "the id")
            .Key(
                "kind",
                s_kind,
                space => (space.Kind, space.IsChamber),
                (space, kind) => space with { Kind = kind.Kind, IsChamber = kind.IsChamber }
            )
            .Means(
                "Heat mat, bench, hardening table, or germination chamber: closed and dark, at a temperature of its own. It does what a "
                    + "mat does, stands in no house, and nothing grows in it, so trays must leave it as they come up."
            )
            .Required("\"bench\"")
            .Key(
                "house",
                new TextKind("id of a house"),
                space => space.HouseId ?? "outdoors",
                (space, house) => space with { HouseId = house }
            )
            .Means("The house it stands in.")
            .Key(
                "places",
                new WholeKind(0, MostPlaces, "place", "places of one 1020 tray"),
                space => space.Places,
                (space, places) => space with { Places = places }
            )
            .Means("Whole tray places.", leftOut: "from length and width")
            .InsteadOf("length", "width", "usable")
            .Key(
                "length",
                s_side,
                space => space.Size.LengthM,
                (space, length) => space with { Size = space.Size with { LengthM = length } }
            )
            .Means(
                "Length, instead of places. The outline of a tray is 279 x 539 mm; trays lie all one way, whichever way holds more. "
                    + "On a mat "
                    + "they may hang over by 32 mm each way.",
                leftOut: ""
            )
            .InsteadOf("places")
            .Key("width", s_side, space => space.Size.WidthM, (space, width) => space with { Size = space.Size with { WidthM = width } })
            .Means("Width, together with length.", leftOut: "")
            .InsteadOf("places")
            .Key(
                "usable",
                new ShareKind(aboveNone: true),
                space => space.Size.Usable,
                (space, usable) => space with { Size = space.Size with { Usable = usable } }
            )
            .Means("Share of the places by length and width that is really used; the rest is room to work. Not for a mat.", Why.Assumed)
            .InsteadOf("places")
            .Key("temperature", Kinds.Temperature.OrNone("none"), space => space.MatC, (space, celsius) => space with { MatC = celsius })
            .Means("Set temperature of the medium on a mat; only for a mat.", leftOut: "required for a mat")
            .Key("aisle_places", s_places, space => space.AislePlaces, (space, places) => space with { AislePlaces = places })
            .Means("Further places in the aisle, used only by the relief \"aisle\".", Why.Ours)
            .Key(
                "unit_places",
                new WholeKind(1, MostPlaces, "place").OrNone("a tenth of the space's places, rounded up"),
                space => space.UnitPlaces,
                (space, places) => space with { UnitPlaces = places }
            )
            .Means("Places of one mat, bench or table: the step by which the space could grow, used by bottlenecks.", Why.Ours)
            .Key("changes", new ChangesKind(), space => space.Changes)
            .Means("Later numbers of places, such as benches given up to crops in the ground.")
            .Table();

    /// <summary>The keys of one of the changes.</summary>
    public static FieldTable<PlacesFrom> Change { get; } =
        FieldTable
            .Of("space.changes", "changes of [[space]]", new PlacesFrom(DateOnly.MinValue, -1))
            .Key("from", Kinds.Date, change => change.From, (change, date) => change with { From = date })
            .Means("First day on which the number holds.")
            .Required("2027-05-01")
            .Key("places", s_places, change => change.Places, (change, places) => change with { Places = places })
            .Means("Places from that day on.")
            .Required("40")
            .Table();

    /// <summary>Numbers of places with their dates: read as tables of their own.</summary>
    private sealed class ChangesKind() : Kind<ImmutableArray<PlacesFrom>>("list of { from, places }")
    {
        public override bool IsList => true;

        public override bool TryRead(IWritten written, out ImmutableArray<PlacesFrom> value)
        {
            value = [];
            return false;
        }

        public override string Show(ImmutableArray<PlacesFrom> value, UnitSystem units) =>
            value.IsEmpty
                ? "none"
                : string.Join(", ", value.Select(each => FormattableString.Invariant($"{each.From:yyyy-MM-dd}: {each.Places:#,##0}")));

        public override bool IsSame(ImmutableArray<PlacesFrom> one, ImmutableArray<PlacesFrom> other) => one.SequenceEqual(other);
    }
}

/// <summary>The keys of [[space]] that say what electricity its mats take.</summary>
public static class PowerFields
{
    private const string NoPower = "no electricity is worked out";
    private const string NotChecked = "the circuit is not checked";
    private const string NotGiven = "not given";

    /// <summary>Mats of which nothing is said: their watts are no number.</summary>
    public static MatPower Nothing { get; } = new(double.NaN, Heat.MatElectricity.DefaultDuty, null, null, null);

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<MatPower> Table { get; } =
        FieldTable
            .Of("space", "[[space]]", Nothing)
            .Key(
                "watts",
                new NumberKind(0, 100_000, "W", "W", "W").OrNone(NotGiven),
                power => power.WattsEachPlace is null && !double.IsNaN(power.Watts) ? power.Watts : null,
                (power, watts) => power with { Watts = watts ?? double.NaN }
            )
            .Means("Watts of all mats of the space together; only for a mat.", leftOut: NoPower)
            .InsteadOf("watts_each_place")
            .Key(
                "watts_each_place",
                new NumberKind(0, 500, "W", "W", "W").OrNone(NotGiven),
                power => power.WattsEachPlace,
                (power, watts) => power with { WattsEachPlace = watts }
            )
            .Means(
                "Watts of the mat under one place, instead of watts; times the most places the space ever has. A rule from memory is 19.5, "
                    + "from 12 W a square foot and the 1.62 square feet of a tray.",
                leftOut: NoPower
            )
            .InsteadOf("watts")
            .Key("duty", Kinds.Share, power => power.Duty, (power, share) => power with { Duty = share })
            .Means("Share of the time the thermostat keeps the mats on; only for a mat.", "an upper bound")
            .Key(
                "circuit_volts",
                new NumberKind(1, 1000, "V", "V", "V").OrNone(NotGiven),
                power => power.Volts,
                (power, volts) => power with { Volts = volts }
            )
            .Means("Volts of the circuit the mats are on; together with circuit_amps.", leftOut: NotChecked)
            .Key(
                "circuit_amps",
                new NumberKind(1, 1000, "A", "A", "A").OrNone(NotGiven),
                power => power.BreakerAmps,
                (power, amps) => power with { BreakerAmps = amps }
            )
            .Means("Amperes of its breaker. A load above 80 % of what it may carry is a warning (NEC 210.20(A)).", leftOut: NotChecked)
            .Key(
                "power_price",
                Kinds.MoneyFor("money a kWh").OrNone(NotGiven),
                power => power.Price,
                (power, price) => power with { Price = price }
            )
            .Means("Price of a kilowatt-hour; only for a mat.", leftOut: "its cost is not worked out")
            .Table();
}
