using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [[house]] that are not of its heat.</summary>
public static class HouseFields
{
    private static readonly OptionalKind<double> SetPoint = Kinds.Temperature.OrNone("unheated");

    /// <summary>A house of which nothing is said.</summary>
    public static House Nothing { get; } = new() { Id = "", Name = "" };

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<House> Table { get; } =
        FieldTable
            .Of("house", "[[house]]", Nothing)
            .Key("id", Kinds.Name, house => house.Id, (house, id) => house with { Id = id })
            .Means("Short name, unique among houses and spaces.")
            .Required("\"main\"")
            .Fixed("it chooses the house")
            .Key("name", Kinds.Title, house => house.Name, (house, name) => house with { Name = name })
            .Means("Name shown to people.", leftOut: "the id")
            .Key("night", SetPoint, house => house.NightC, (house, night) => house with { NightC = night })
            .Means("Heating set-point from 18:00 to 06:00; leave it out for an unheated house.")
            .Key("day", SetPoint, house => house.DayC, (house, day) => house with { DayC = day })
            .Means("Heating set-point from 06:00 to 18:00.", Why.Ours, "as night")
            .Key("vent", Kinds.Temperature, house => house.VentC, (house, vent) => house with { VentC = vent })
            .Means("Vent set-point: the air is not let rise above it unless it is hotter outdoors.", Why.Assumed)
            .Key("day_lift", Kinds.Difference(0, 30), house => house.DayLiftK, (house, lift) => house with { DayLiftK = lift })
            .Means("Greatest warming by the sun, at noon.", Why.Assumed)
            .Key(
                "open",
                new OpeningKind(),
                house => (house.Opening, house.OpensOn),
                (house, open) => house with { Opening = open.Opening, OpensOn = open.OpensOn }
            )
            .Means(
                "When the house is open: all season; from a date on; or \"when needed\": last in every crop's preference, heated "
                    + "only while "
                    + "it holds trays.",
                Why.Ours
            )
            .Table();

    /// <summary>When a house is open, and from which date on.</summary>
    private sealed class OpeningKind() : Kind<(HouseOpening Opening, DateOnly? OpensOn)>("all season, when needed or a date")
    {
        private static readonly ImmutableArray<(string Word, HouseOpening Value)> Words =
        [
            ("all season", HouseOpening.AllSeason),
            ("when needed", HouseOpening.WhenNeeded),
        ];

        public override bool TryRead(IWritten written, out (HouseOpening Opening, DateOnly? OpensOn) value)
        {
            if (written.Text.Length > 0 && char.IsAsciiDigit(written.Text[0]))
            {
                value = (HouseOpening.FromDate, written.Date());
                return value.OpensOn is not null;
            }

            var isRead = written.TryChoose(Words, "\"all season\", \"when needed\" or a date", out var opening);
            value = (opening, null);
            return isRead;
        }

        public override string Show((HouseOpening Opening, DateOnly? OpensOn) value, UnitSystem units) =>
            value.OpensOn is { } date
                ? FormattableString.Invariant($"{date:yyyy-MM-dd}")
                : Words.First(each => each.Value == value.Opening).Word;
    }
}
