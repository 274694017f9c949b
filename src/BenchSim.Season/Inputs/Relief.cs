using BenchSim.Season.Fields;

namespace BenchSim.Season.Inputs;

/// <summary>A way to make room when trays are waiting for a place.</summary>
public enum Relief
{
    /// <summary>Stand trays in the aisle, up to <see cref="Space.AislePlaces"/>.</summary>
    Aisle,

    /// <summary>Take trays off the mat before the crop's fraction is up.</summary>
    OffMatEarly,

    /// <summary>Take trays to the table before field size.</summary>
    TableEarly,
}

/// <summary>The keys of [relief], and the words of the reliefs.</summary>
public static class ReliefFields
{
    /// <summary>The reliefs as they are written.</summary>
    public static ChoiceKind<Relief> Word { get; } =
        new([("aisle", Relief.Aisle), ("off mat early", Relief.OffMatEarly), ("table early", Relief.TableEarly)]);

    /// <summary>What a relief does, to follow "ways of making room".</summary>
    public static string Deed(Relief relief) =>
        relief switch
        {
            Relief.Aisle => "stand trays in the aisle",
            Relief.OffMatEarly => "take trays off the mat early",
            Relief.TableEarly => "take trays to the table early",
            _ => throw new ArgumentOutOfRangeException(nameof(relief)),
        };

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<SiteRules> Table { get; } =
        FieldTable
            .Of("relief", "[relief]", new SiteRules())
            .Key(
                "order",
                new ListKind<Relief>(Word, "list of reliefs", reliefs => reliefs, once: "list each relief once"),
                rules => rules.Reliefs,
                (rules, order) => rules with { Reliefs = order }
            )
            .Means(
                "Ways to make room, in the order they are tried: \"aisle\", \"off mat early\", \"table early\". "
                    + "None is used unless it is listed.",
                Why.Ours
            )
            .Key(
                "early_off_mat_at",
                new ShareKind(aboveNone: true, belowAll: true),
                rules => rules.EarlyOffMatAt,
                (rules, share) => rules with { EarlyOffMatAt = share }
            )
            .Means("Share of the seedlings up at which \"off mat early\" may move a tray.", Why.Assumed)
            .Key(
                "early_table_at",
                new ShareKind(aboveNone: true),
                rules => rules.EarlyTableAt,
                (rules, share) => rules with { EarlyTableAt = share }
            )
            .Means("Share of growth at which \"table early\" may move a tray.", Why.Assumed)
            .Table();
}
