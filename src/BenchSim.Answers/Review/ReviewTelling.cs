using BenchSim.Answers.Words;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Review;

namespace BenchSim.Answers.Review;

/// <summary>Tells all of a review: every figure and where it comes from, batch by batch, week by week.</summary>
internal static class ReviewTelling
{
    public static void Tell(Passages words, ReviewAnswer answer)
    {
        var review = answer.Result;
        TellFigures(words, review);
        TellBatches(words, review);
        TellWeeks(words, review);
        TellWork(words, review);
        TellFuel(words, review);
        if (answer.Purchase is { } purchase)
        {
            TellPurchase(words, purchase);
            return;
        }

        words.Gap();
        words.Sentence(
            "Whether a purchase would have helped: write it as a variant, and --with NAME sets it on top of what would have cost nothing."
        );
    }

    private static void TellPurchase(Passages words, PurchaseJudged purchase)
    {
        words.Heading($"What {PurchaseSentences.Name(purchase)} would have changed");
        words.Sentence(PurchaseSentences.Judgement(purchase), 2);
        PurchaseSentences.Fill(words.Table(PurchaseSentences.Columns, longestCell: 60), purchase);
        var deeds = new MendWords(purchase.Sought.Plan);
        words.Sentence(PurchaseSentences.Free(purchase.Sought), 2);
        foreach (var step in purchase.Sought.Steps)
        {
            words.Point(deeds.Deed(step.Change, step.Plan));
        }

        words.Sentence(PurchaseSentences.Alone(purchase), 2);
        words.Sentence(PurchaseSentences.Method(purchase), 2);
    }

    private static void TellFigures(Passages words, SeasonReview review)
    {
        words.Heading("Figures, and where each comes from");
        var table = words.Table(["figure", "of", ">value", ">eight seasons of ten", "unit", "from"], longestCell: 60);
        foreach (var figure in ReviewFigure.All(review))
        {
            table.Add(
                figure.Words,
                figure.Of,
                Numbers.Fine(figure.Value),
                figure.Low is { } low && figure.High is { } high ? $"{Numbers.Fine(low)} to {Numbers.Fine(high)}" : "",
                figure.Unit,
                figure.Basis switch
                {
                    Basis.Counted => "counted",
                    Basis.Played => "played",
                    _ => "assumed",
                }
            );
        }

        words.Sentence(
            "Counted: by lines of the log. Played: by seasons of the program, with the values of the crops and the site. Assumed: by "
                + "minutes of the site that nobody measured this season.",
            2
        );
    }

    private static void TellBatches(Passages words, SeasonReview review)
    {
        words.Heading("Batch by batch");
        var table = words.Table(["batch", "grower", "job", "agreed", "done", ">days late", ">agreed", ">done", ""]);
        foreach (var batch in review.Batches)
        {
            foreach (var job in batch.Jobs)
            {
                table.Add(
                    batch.Order.Id,
                    batch.Order.Grower,
                    TaskWords.Job(job.Kind),
                    Dates.IsoOrDash(job.Planned),
                    Dates.IsoOrDash(job.Done),
                    job.DaysLate is { } late ? Numbers.Whole(late) : "-",
                    batch.Agreed is null ? "-" : Numbers.Whole(job.PiecesPlanned),
                    Numbers.Whole(job.PiecesDone),
                    Note(batch, job)
                );
            }
        }

        words.Sentence(
            "Done: the day by which half of the pieces with a line were done. Pieces are trays, or flats where a batch is sown in flats "
                + "and taken off the mats; for potting up the trays filled.",
            2
        );
    }

    private static string Note(ReviewedBatch batch, ReviewedJob job) =>
        batch.Now is null ? "no longer planned"
        : batch.Agreed is null ? "not agreed"
        : job.AreFlats ? "flats"
        : "";

    private static void TellWeeks(Passages words, SeasonReview review)
    {
        words.Heading("What was forecast each Monday, and what came");
        if (review.Weeks.IsEmpty)
        {
            words.Sentence("No batch went out after the first week of the log, so there is nothing to compare.", 2);
            return;
        }

        var table = words.Table(["Monday", ">batches", ">in the range", ">earlier", ">later", ">middle days later than forecast"]);
        foreach (var week in review.Weeks)
        {
            table.Add(
                Dates.Iso(week.Day),
                Numbers.Whole(week.Cases.Length),
                Numbers.Whole(week.InRange),
                Numbers.Whole(week.Earlier),
                Numbers.Whole(week.Later),
                week.MiddleOff is { } off ? Numbers.Whole(off) : "-"
            );
        }

        words.Sentence(
            "Of the batches that had still to go out that morning and did: whether the day by which half of their trays had gone lay "
                + "between those of the first and the ninth season of ten, played on from what had been written down by then. Forecasts of "
                + "the weather are not kept, so none is used. The batches of a season share its weather: many cases are not many seasons.",
            2
        );
    }

    private static void TellWork(Passages words, SeasonReview review)
    {
        words.Heading("Work that was timed");
        if (review.Minutes.IsEmpty)
        {
            words.Sentence("No line of the log has minutes.", 2);
            return;
        }

        var table = words.Table(["what", ">lines", ">with minutes", ">minutes counted", ">by the site's minutes"]);
        foreach (var each in review.Minutes)
        {
            table.Add(
                LogFields.What[each.What],
                Numbers.Whole(each.Rows),
                Numbers.Whole(each.Timed),
                Numbers.Whole(each.Minutes),
                each.ByTheRules is { } rules ? Numbers.Whole(rules) : "-"
            );
        }
    }

    private static void TellFuel(Passages words, SeasonReview review)
    {
        words.Heading("Fuel");
        if (review.Fuel.IsEmpty)
        {
            words.Sentence("No house has fuel: shell or heater is not given.", 2);
        }

        foreach (var fuel in review.Fuel)
        {
            words.Point($"{ReviewSentences.Fuel(review, fuel)} ({Numbers.Count(fuel.Rows, "line", "lines")})");
        }

        if (review.FuelRowsUnread > 0)
        {
            words.Sentence(
                $"{Numbers.Count(review.FuelRowsUnread, "line", "lines")} of fuel not used: no house that burns any, or no unit of its "
                    + "fuel in the note, such as gallons or litres.",
                2
            );
        }

        if (review.DaysLacking > 0)
        {
            words.Sentence(
                $"{Numbers.Count(review.DaysLacking, "day", "days")} up to the last line without observed weather taken as normal.",
                2
            );
        }
    }
}
