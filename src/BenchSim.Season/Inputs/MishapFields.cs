using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [[mishap]].</summary>
public static class MishapFields
{
    /// <summary>A mishap of which nothing is said.</summary>
    public static Mishap Nothing { get; } =
        new()
        {
            Id = "",
            Name = "",
            From = DateOnly.MinValue,
            To = DateOnly.MaxValue,
        };

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<Mishap> Table { get; } =
        FieldTable
            .Of("mishap", "[[mishap]]", Nothing)
            .Key("id", Kinds.Name, mishap => mishap.Id, (mishap, id) => mishap with { Id = id })
            .Means("Short name, unique among mishaps; what is drawn for it depends on the name.")
            .Required("\"heater\"")
            .Fixed("it chooses the mishap")
            .Key("name", Kinds.Title, mishap => mishap.Name, (mishap, name) => mishap with { Name = name })
            .Means("Name shown to people, such as \"A night without heat\".", leftOut: "the id")
            .Key("chance", new ShareKind(aboveNone: true), mishap => mishap.Chance, (mishap, chance) => mishap with { Chance = chance })
            .Means("Chance that it happens in a season; once at most.")
            .Required("\"10 %\"")
            .Key("from", Kinds.Date, mishap => mishap.From, (mishap, date) => mishap with { From = date })
            .Means("First day on which it may strike, within the season.")
            .Required("2027-03-01")
            .Key("to", Kinds.Date, mishap => mishap.To, (mishap, date) => mishap with { To = date })
            .Means("Last day on which it may strike; each day is as likely.")
            .Required("2027-04-15")
            .Key(
                "house",
                new TextKind("house id").OrNothing("every house, and outdoors"),
                mishap => mishap.HouseId,
                (mishap, id) => mishap with { HouseId = id }
            )
            .Means("The house it strikes.", leftOut: "every house, and outdoors")
            .Key(
                "space",
                new TextKind("space id").OrNothing("every space"),
                mishap => mishap.SpaceId,
                (mishap, id) => mishap with { SpaceId = id }
            )
            .Means("The space it strikes.", leftOut: "every space")
            .Key(
                "crop",
                new TextKind("crop id").OrNothing("every crop"),
                mishap => mishap.CropId,
                (mishap, id) => mishap with { CropId = id }
            )
            .Means("The crop it strikes. Of house, space and crop all that are named must hold.", leftOut: "every crop")
            .Key("loss", new ShareKind(aboveNone: true), mishap => mishap.Loss, (mishap, loss) => mishap with { Loss = loss })
            .Means("Share of the plants that is lost in each tray or flat that stands there that day. The trays keep their places.")
            .Required("\"30 %\"")
            .Table();
}
