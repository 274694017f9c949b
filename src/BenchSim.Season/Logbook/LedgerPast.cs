using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Logbook;

/// <summary>The days of a season that are over, as the log has them (docs/model.md section 10).</summary>
public static class LedgerPast
{
    /// <summary>The past up to a day.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="ledger">Ledger of the log up to the day.</param>
    /// <param name="today">The day.</param>
    public static SeasonPast Of(SeasonPlan plan, BenchLedger ledger, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(ledger);
        return new SeasonPast
        {
            Today = DayOf(plan, today),
            TellsOfLuck = true,
            Batches = [.. plan.Batches.Select((batch, index) => Of(plan, batch, ledger.Batches[index]))],
        };
    }

    private static BatchPast Of(SeasonPlan plan, BatchPlan batch, BatchLedger book)
    {
        if (book.Sowings.IsEmpty && book.BegunOn is null)
        {
            return BatchPast.NotBegun;
        }

        ImmutableArray<TrayPast> trays =
        [
            .. book.Piles.Select(pile => Of(plan, batch, pile)),
            .. book.Gone.Select(gone =>
                Of(plan, batch, gone.Pile) with
                {
                    End = gone.End,
                    EndDay = DayOf(plan, gone.On),
                    Plants = gone.Plants,
                }
            ),
        ];
        var inFlats = batch.Flat is not null;
        return new BatchPast
        {
            Unsown = DueWork.Unsown(batch, book),
            NextSown = Next(trays, inFlats),
            LastSown = book.Sowings.IsEmpty ? DayOf(plan, batch.SowOn) : book.Sowings.Max(sowing => DayOf(plan, sowing.On)),
            Filled = inFlats ? Math.Min(batch.Trays, Next(trays, areFlats: false)) : 0,
            Trays = trays,
            Sightings =
            [
                .. book.Seen.Select(seen => new Sighting(
                    seen.What,
                    DayOf(plan, seen.On),
                    seen.Space,
                    seen.Count,
                    seen.Of,
                    seen.IsPicked,
                    seen.Word
                )),
            ],
        };
    }

    private static int Next(ImmutableArray<TrayPast> trays, bool areFlats) =>
        trays.Where(each => each.AreFlats == areFlats).Select(each => each.First + each.Count).DefaultIfEmpty(0).Max();

    private static TrayPast Of(SeasonPlan plan, BatchPlan batch, Pile pile)
    {
        var (path, borrowed) = (pile.Path, pile.Borrowed);
        var isPotted = batch.Flat is not null && !pile.AreFlats;
        var sown = pile.SownOn ?? Earlier(batch.SowOn, path[0].From);
        DateOnly? potted = isPotted ? pile.PottedOn ?? Earlier(batch.PotUpOn ?? path[^1].From, path[^1].From) : null;

        // Where nothing says how it came where it stands, it came there as planned.
        if (path[0].From > sown)
        {
            ImmutableArray<Stay> before = [.. Planned(batch, sown, potted, pile.AreFlats).Where(stay => stay.From < path[0].From)];
            (path, borrowed) = ([.. before, .. path], borrowed + before.Length);
        }

        return new TrayPast
        {
            AreFlats = pile.AreFlats,
            First = pile.First,
            Count = pile.Count,
            SowDay = DayOf(plan, sown),
            PottedDay = potted is { } day ? DayOf(plan, day) : null,
            Path = [.. path.Select(stay => (stay.Space, DayOf(plan, stay.From)))],
            Borrowed = borrowed,
        };
    }

    // Mat and bench by the plan, as much later as it was sown later.
    private static IEnumerable<Stay> Planned(BatchPlan batch, DateOnly sown, DateOnly? potted, bool areFlats)
    {
        var later = sown.DayNumber - batch.SowOn.DayNumber;
        var onMat = !batch.Mats.IsEmpty && batch.OffMatOn is not null;
        yield return new(onMat ? batch.Mats[0] : batch.Benches[0], sown);
        if (onMat)
        {
            yield return new(batch.Benches[0], batch.OffMatOn!.Value.AddDays(later));
        }

        if (potted is { } filled)
        {
            yield return new(batch.Benches[0], filled);
        }

        if (!areFlats && !batch.Tables.IsEmpty)
        {
            yield return new(batch.Tables[0], batch.TableOn.AddDays(later));
        }
    }

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;

    private static int DayOf(SeasonPlan plan, DateOnly date) => date.DayNumber - plan.FirstDay.DayNumber;
}
