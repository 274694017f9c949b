using BenchSim.Answers.Words;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Answers.Today;

/// <summary>Tells all of a day: what stands where, batch by batch, all that is due, and all that the counts put right.</summary>
internal static class TodayTelling
{
    public static void Tell(Passages words, TodayAnswer answer)
    {
        TellStanding(words, answer);
        TellDue(words, answer);
        TellCounts(words, answer);
        TellBatches(words, answer);
    }

    private static void TellStanding(Passages words, TodayAnswer answer)
    {
        words.Heading("What stands where");
        if (answer.Ledger.Batches.All(batch => batch.Piles.IsEmpty))
        {
            words.Sentence("Nothing.", 2);
            return;
        }

        var table = words.Table(["space", "batch", "grower", ">trays", ">flats", "since", "sown", "potted up"]);
        var piles = answer.Ledger.Batches.SelectMany(batch => batch.Piles, (batch, pile) => (batch.Order, Pile: pile));
        foreach (var (order, pile) in piles.OrderBy(each => each.Pile.Space))
        {
            table.Add(
                answer.Plan.Scenario.Spaces[pile.Space].Name,
                order.Id,
                order.Grower,
                pile.AreFlats ? "" : Numbers.Whole(pile.Count),
                pile.AreFlats ? Numbers.Whole(pile.Count) : "",
                Dates.Iso(pile.Since),
                Dates.IsoOrDash(pile.SownOn),
                Dates.IsoOrDash(pile.PottedOn)
            );
        }
    }

    private static void TellDue(Passages words, TodayAnswer answer)
    {
        words.Heading("Due by the plan, and without a line in the log");
        if (answer.Due.IsEmpty)
        {
            words.Sentence("Nothing.", 2);
            return;
        }

        var table = words.Table(["job", "batch", "grower", ">trays", ">flats", "stand in", "due", ">days since"]);
        foreach (var job in answer.Due)
        {
            var order = answer.Plan.Batches[job.Batch].Order;
            table.Add(
                TaskWords.Job(job.Kind),
                order.Id,
                order.Grower,
                job.AreFlats ? "" : Numbers.Whole(job.Count),
                job.AreFlats ? Numbers.Whole(job.Count) : "",
                job.Space is { } space ? answer.Plan.Scenario.Spaces[space].Name : "-",
                Dates.Iso(job.On),
                Numbers.Whole(answer.Today.DayNumber - job.On.DayNumber)
            );
        }

        words.Sentence(
            "By the dates of the plan; what was sown or potted up later than planned is due so much later. A job without a line counts as "
                + "not done.",
            2
        );
    }

    private static void TellCounts(Passages words, TodayAnswer answer)
    {
        var (ledger, spaces) = (answer.Ledger, answer.Plan.Scenario.Spaces);
        words.Heading("Put right by counts");
        if (ledger.Differences.IsEmpty && ledger.Elsewhere.IsEmpty)
        {
            words.Sentence("Nothing.", 2);
        }

        if (!ledger.Differences.IsEmpty)
        {
            var table = words.Table(["day", "batch", "space", "what", ">by the log", ">counted", ">not explained"]);
            foreach (var each in ledger.Differences)
            {
                table.Add(
                    Dates.Iso(each.On),
                    answer.Plan.Batches[each.Batch].Order.Id,
                    spaces[each.Space].Name,
                    each.AreFlats ? "flats" : "trays",
                    Numbers.Whole(each.Expected),
                    each.IsWalked ? "0 (walked)" : Numbers.Whole(each.Counted),
                    (each.Unexplained > 0 ? "+" : "") + Numbers.Whole(each.Unexplained)
                );
            }
        }

        if (!ledger.Elsewhere.IsEmpty)
        {
            words.Gap();
            var table = words.Table(["day", "batch", "moved, and not written down", "from", "to"]);
            foreach (var each in ledger.Elsewhere)
            {
                table.Add(
                    Dates.Iso(each.On),
                    answer.Plan.Batches[each.Batch].Order.Id,
                    TodayWords.Pieces(each.Count, each.AreFlats),
                    spaces[each.From].Name,
                    spaces[each.To].Name
                );
            }
        }
    }

    private static void TellBatches(Passages words, TodayAnswer answer)
    {
        words.Heading("What became of each batch");
        var table = words.Table([
            "batch",
            "sown in",
            ">planned",
            ">sown",
            ">filled",
            ">stand",
            ">set out",
            ">handed over",
            ">thrown out",
            ">missing",
        ]);
        foreach (var (index, batch) in answer.Plan.Batches.Index())
        {
            Add(table, answer.Ledger, index, batch);
        }

        words.Sentence(
            "Sown: trays, or flats where it is to be potted up; filled: trays filled from flats. Stand, thrown out and missing are trays "
                + "and flats together. \"begun\": the log begins with a count of it.",
            2
        );
    }

    private static void Add(Table table, BenchLedger ledger, int index, BatchPlan batch)
    {
        var book = ledger.Batches[index];
        var missing = -ledger.Differences.Where(each => each.Batch == index).Sum(each => each.Unexplained);
        table.Add(
            batch.Order.Id,
            batch.Flat is null ? "trays" : "flats",
            Numbers.Whole(DueWork.Planned(batch)),
            book.BegunOn is null ? Numbers.Whole(book.Sown) : "begun",
            batch.Flat is null ? "" : Numbers.Whole(book.Filled),
            Numbers.Whole(book.Piles.Sum(pile => pile.Count)),
            Numbers.Whole(book.Out.Sum(each => each.Trays)),
            Numbers.Whole(book.HandedOver.Sum(each => each.Trays)),
            Numbers.Whole(book.TraysThrownOut + book.FlatsThrownOut),
            Numbers.Whole(missing)
        );
    }
}
