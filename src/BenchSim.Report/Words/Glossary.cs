using System.Collections.Immutable;

namespace BenchSim.Report.Words;

/// <summary>
/// The words that the program uses in a sense of its own, as docs/glossary.md and the foot of the report explain them. What stands between
/// backquotes is a key or an id.
/// </summary>
internal static class Glossary
{
    /// <summary>The words, in order.</summary>
    public static ImmutableArray<GlossaryWord> Words { get; } =
    [
        new(
            "batch",
            "One sowing: one crop, one grower, one sow date. A line of plan.csv that is sown several times (`times`) becomes "
                + "several batches, `lettuce-1`, `lettuce-2` and so on."
        ),
        new(
            "blocked",
            "A space is blocked when its trays are ready to move on but the next space is full. More places in it would not "
                + "help; more places behind it would."
        ),
        new(
            "chance of enough plants",
            "The chance that the trays sown bring at least the plants you want, with seed that does not come up and plants "
                + "lost on the way allowed for. BenchSim sows enough trays to bring it to 90 % unless you ask for something else "
                + "(`stand_assurance`)."
        ),
        new(
            "days in hand",
            "Days from the first day on which a batch could go out, in normal weather and with room, to its set-out date. They take "
                + "up a slow spring. `slack_days` plans some."
        ),
        new(
            "fits",
            "A season fits when every batch is sown in time, no tray stands too long for lack of a place, and enough plants "
                + "are out in time (95 % of them unless you say otherwise, `service_goal`). \"The plan fits in 90 % of seasons\" "
                + "means that it went well in nine of ten springs played."
        ),
        new(
            "hardening night",
            "A night on the hardening table that counts towards hardening. A night for which the trays are carried in does " + "not count."
        ),
        new("held by the weather", "Ready to move to the table or the field, but the forecast is too cold or the soil too wet."),
        new(
            "in time, late",
            "A plant is in time when it goes out no later than `late_days` after its date (3 days unless you say otherwise). "
                + "Days on which only the weather held it back do not count as late."
        ),
        new(
            "interval",
            "How far the true figure may lie from the one shown, because only so many seasons were played. A 95 % interval "
                + "holds the true figure in 95 cases of 100. It says nothing about wrong values in your files. Play more seasons "
                + "and it narrows."
        ),
        new("late plant-days", "Plants times days late, added up. 100 plants that are 3 days late make 300."),
        new("over-held", "Standing past its best: more days past due than the crop takes well (`hold_days` in crops.csv)."),
        new("place", "Room for one tray of the size of a 1020, 10 x 20 inches. A larger tray may take two."),
        new("pot up", "To move seedlings from an open flat, where they were sown dense, into the trays in which they go to the field."),
        new(
            "relief",
            "A way of making room that growers use when trays have nowhere to go: standing some in the aisle, taking them off "
                + "the mats early, moving them to the table early. Off unless your site lists it (`order` in `[relief]`)."
        ),
        new(
            "same seasons",
            "When BenchSim compares two plans it plays both in the same seasons: the same weather, and the same seed and "
                + "growth for each sowing. What differs then comes from the change and not from chance."
        ),
        new("season", "One spring played from the first sowing to the last set-out, with weather, seed and growth of its own."),
        new("space", "A heat mat, a bench or a hardening table: somewhere trays stand."),
        new("tray-day", "One place taken, or lacking, for one day."),
        new(
            "variant",
            "A small file that says what would change: more mats, a second house, another date. BenchSim compares it with the "
                + "plan as it is."
        ),
        new(
            "waits",
            "Ready to move, or due to be sown, but there is no place. A shortage is something else: how many more places the plan would "
                + "take on a day if no space had a limit. What waits is late, and so asks for its next place later."
        ),
    ];
}

/// <summary>A word of the glossary.</summary>
/// <param name="Word">The word.</param>
/// <param name="Meaning">What it means, in a sentence or a few.</param>
internal sealed record GlossaryWord(string Word, string Meaning);
