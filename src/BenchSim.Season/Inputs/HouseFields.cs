using System.Collections.Immutable;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [[house]] that are not of its heat.</summary>
public static class HouseFields
{
    /// <summary>Most houses of a site: each has a climate of its own, hour by hour.</summary>
    public const int Most = 500;

    private static readonly OptionalKind<double> s_setPoint = Kinds.Temperature.OrNone("unheated");

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
            .Key("night", s_setPoint, house => house.NightC, (house, night) => house with { NightC = night })
            .Means("Heating set-point from 18:00 to 06:00; leave it out for an unheated house.")
            .Key("day", s_setPoint, house => house.DayC, (house, day) => house with { DayC = day })
            .Means("Heating set-point from 06:00 to 18:00.", Why.Ours, "as night")
            .Key("vent", Kinds.Temperature, house => house.VentC, (house, vent) => house with { VentC = vent })
            .Means("Vent set-point: the air is not let rise above it unless it is hotter outdoors.", Why.Assumed)
            .Key("vented_rise", Kinds.Difference(0, 15), house => house.VentedRiseK, (house, rise) => house with { VentedRiseK = rise })
            .Means(
                "How much warmer than outdoors the house is in full sun with its vents open, where the sun is worked out from its size.",
                "an extension fact sheet: 7 to 10 F with fans that change the air once a minute"
            )
            .Key(
                "day_lift",
                Kinds.Difference(0, 30).OrNone("worked out from the size of the house and the latitude"),
                house => house.DayLiftK,
                (house, lift) => house with { DayLiftK = lift }
            )
            .Means("Greatest warming by the sun, at noon, where you have measured it.", leftOut: "8 C (14.4 F) without size or latitude")
            .Key(
                "open",
                new OpeningKind(),
                house => (house.Opening, house.OpensOn),
                (house, open) => house with { Opening = open.Opening, OpensOn = open.OpensOn }
            )
            .Means(
                "When the house is open: all season, and heated from two days before its first planned tray; from a date on, and heated "
                    + "from that day; or \"when needed\": last in every crop's preference, heated only while it holds trays and the day "
                    + "before.",
                Why.Ours
            )
            .Table();

    /// <summary>When a house is open, and from which date on.</summary>
    private sealed class OpeningKind() : Kind<(HouseOpening Opening, DateOnly? OpensOn)>("all season, when needed or a date")
    {
        private static readonly ImmutableArray<(string Word, HouseOpening Value)> s_words =
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

            var isRead = written.TryChoose(s_words, "\"all season\", \"when needed\" or a date", out var opening);
            value = (opening, null);
            return isRead;
        }

        public override string Show((HouseOpening Opening, DateOnly? OpensOn) value, UnitSystem units) =>
            value.OpensOn is { } date
                ? FormattableString.Invariant($"{date:yyyy-MM-dd}")
                : s_words.First(each => each.Value == value.Opening).Word;
    }
}
