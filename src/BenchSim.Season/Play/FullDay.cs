using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>
/// One space on the day on which most is refused there: who holds its places, and what waits that asks for a place there first.
/// </summary>
public sealed record FullDay
{
    /// <summary>The day, 0 the first.</summary>
    public required int Day { get; init; }

    /// <summary>Places held.</summary>
    public required int Held { get; init; }

    /// <summary>Places there are.</summary>
    public required int Places { get; init; }

    /// <summary>Those who hold them, most places first.</summary>
    public required ImmutableArray<PlaceHolder> Holders { get; init; }

    /// <summary>What waits, in the order of the plan.</summary>
    public required ImmutableArray<WaitingTrays> Waiting { get; init; }

    /// <summary>
    /// Plays a season again and looks at a space on the days from one to another: at the first of those on which most is refused.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="seed">Seed of all luck.</param>
    /// <param name="season">Number of the season, from 0.</param>
    /// <param name="space">Position of the space in the scenario.</param>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day.</param>
    public static FullDay Find(SeasonPlan plan, ulong seed, int season, int space, int first, int last)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        ArgumentOutOfRangeException.ThrowIfLessThan(last, first);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(first, plan.Days);
        var looker = new Looker(space, first, last);
        new SeasonPlayer(plan, seed).Play(season, PlaceLimits.AsGiven, new SeasonResult(), looker);
        return looker.Found!;
    }

    private sealed class Looker(int space, int first, int last) : ISeasonWitness
    {
        // Places refused; of days on which as many are, places held.
        private (int Refused, int Held) _most = (-1, 0);

        public FullDay? Found { get; private set; }

        public void DayEnds(SeasonView season)
        {
            if (season.Day < first || season.Day > last)
            {
                return;
            }

            ImmutableArray<WaitingTrays> waiting = [.. season.State.Batches.SelectMany(Waits)];
            var full = (waiting.Sum(each => each.Places), season.HeldIn(space));
            if (full.CompareTo(_most) <= 0)
            {
                return;
            }

            _most = full;
            Found = new FullDay
            {
                Day = season.Day,
                Held = season.HeldIn(space),
                Places = season.PlacesOf(space),
                Holders = PlaceHolder.Of(season, space),
                Waiting = waiting,
            };
        }

        // What is charged to the space: the first of the group that is asked (docs/model.md section 3).
        private IEnumerable<WaitingTrays> Waits(BatchState batch)
        {
            if (batch.SowWaiting > 0 && batch.SowWaitingAt == space)
            {
                yield return new WaitingTrays(
                    batch.Plan.Order.Id,
                    batch.SowWaiting,
                    batch.IsPotUp,
                    null,
                    batch.SowWaiting * batch.PlacesEach(batch.IsPotUp)
                );
            }

            var lots = Asking(batch.OnMat, batch.Benches)
                .Concat(Asking(batch.OnBench.Where(lot => lot.IsFlat), batch.Benches))
                .Concat(Asking(batch.OnBench.Where(lot => !lot.IsFlat), batch.Tables));
            foreach (var group in lots.GroupBy(lot => (lot.Space, lot.IsFlat)))
            {
                yield return new WaitingTrays(
                    batch.Plan.Order.Id,
                    group.Sum(lot => lot.Count),
                    group.Key.IsFlat,
                    group.Key.Space,
                    group.Sum(lot => lot.Count * lot.PlacesRefused)
                );
            }
        }

        private IEnumerable<Lot> Asking(IEnumerable<Lot> lots, int[] group) =>
            group.Length > 0 && group[0] == space ? lots.Where(lot => lot.Hindrance == Hindrance.Place) : [];
    }
}

/// <summary>A batch that holds places in a space.</summary>
/// <param name="Batch">Its id.</param>
/// <param name="Places">Places.</param>
public sealed record PlaceHolder(string Batch, int Places)
{
    /// <summary>Those who hold places in a space, most places first, equals in order of id.</summary>
    internal static ImmutableArray<PlaceHolder> Of(SeasonView season, int space) =>
        [
            .. season
                .State.Batches.Select(state => new PlaceHolder(state.Plan.Order.Id, PlacesIn(state, space)))
                .Where(holder => holder.Places > 0)
                .OrderByDescending(holder => holder.Places)
                .ThenBy(holder => holder.Batch, IdOrder.Instance),
        ];

    private static int PlacesIn(BatchState state, int space) =>
        state
            .OnMat.Concat(state.OnBench)
            .Concat(state.OnTable)
            .Where(lot => lot.Space == space)
            .Sum(lot => lot.Count * state.PlacesEach(lot.IsFlat));
}

/// <summary>Trays or flats of a batch that wait for a place.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Count">How many.</param>
/// <param name="IsFlat">Whether they are flats.</param>
/// <param name="From">Position of the space in which they stand; null where they are not sown yet.</param>
/// <param name="Places">Places they are refused.</param>
public sealed record WaitingTrays(string Batch, int Count, bool IsFlat, int? From, int Places);
