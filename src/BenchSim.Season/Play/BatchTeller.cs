using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Watches one batch through a season and writes its story.</summary>
internal sealed class BatchTeller(SeasonPlan plan, int season, int index) : ISeasonWitness
{
    // The holders of a full space are named up to this many; the rest are counted.
    private const int MostHolders = 5;

    private readonly ImmutableArray<string>.Builder lines = ImmutableArray.CreateBuilder<string>();
    private readonly BatchPlan batch = plan.Batches[index];
    private string lastWait = "";
    private int waitSince;

    public void Begins(SeasonCore core)
    {
        var state = core.Batches[index];
        var order = batch.Order;
        lines.Add($"Season {season + 1}, batch {order.Id}: {order.Plants} plants of {batch.Crop.Name} for {order.Grower}, {Sowings()}.");
        lines.Add($"Planned: sow {Iso(batch.SowOn)}, {PotUpWords()}table {Iso(batch.TableOn)}, set out {Iso(batch.SetOutOn)}.");
        lines.Add(
            "Luck drawn: emergence takes " + Factor(state.EmergeNeed, batch.Crop.EmergeHeat)
            + " times its usual heat, growth " + Factor(state.GrowthNeed, state.GrowthDegreeDays)
            + $" times; the packet germinates {Percent(state.PacketGermination)} at its best (stated {Percent(order.Germination)}).");
    }

    public void Moved(BatchState moved, bool flat, int first, int count, int from, int to, double hour)
    {
        if (moved.Index != index)
        {
            return;
        }

        EndWait(hour);
        var what = Trays(flat, first, count);
        lines.Add(from < 0 ? $"{Day(hour)}: {what} sown on {SpaceName(to)}."
            : $"{Day(hour)}: {what} moved from {SpaceName(from)} to {SpaceName(to)}.");
    }

    public void WentOut(BatchState moved, Lot lot, int plants, double hour)
    {
        if (moved.Index != index)
        {
            return;
        }

        EndWait(hour);
        lines.Add($"{Day(hour)}: {Trays(flat: false, lot.First, lot.Count)} set out from {SpaceName(lot.Space)} with {plants} plants, {Lateness(hour)}"
            + (lot.HoldDays > 0 ? $"; the weather alone held {(lot.Count == 1 ? "it" : "them")} {lot.HoldDays} {(lot.HoldDays == 1 ? "day" : "days")}." : "."));
    }

    public void Potted(BatchState moved, int flat, int seedlings, int firstTray, int trays, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            lines.Add(trays == 0
                ? $"{Day(hour)}: flat {flat + 1} gave {seedlings} seedlings, too few for a tray; they are passed on."
                : $"{Day(hour)}: flat {flat + 1} gave {seedlings} seedlings, potted up into {Trays(flat: false, firstTray, trays)}.");
        }
    }

    public void Discarded(BatchState moved, Lot lot, DiscardReason reason, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            lines.Add($"{Day(hour)}: {Trays(lot.IsFlat, lot.First, lot.Count)} thrown out: {Words(reason)}.");
        }
    }

    public void GaveUp(BatchState moved, int count, double hour)
    {
        if (moved.Index == index)
        {
            EndWait(hour);
            lines.Add($"{Day(hour)}: {count} {Noun(batch.Flat is not null, count)} given up unsown after {plan.Scenario.Rules.SowGiveUpDays} days without a place.");
        }
    }

    public void DayEnds(SeasonCore core, int day)
    {
        var state = core.Batches[index];
        var wait = Waits(core, state);
        if (string.Equals(wait, lastWait, StringComparison.Ordinal))
        {
            return;
        }

        EndWait(day * 24.0);
        lastWait = wait;
        waitSince = day;
        if (wait.Length > 0)
        {
            lines.Add($"{Iso(day)}: {wait}.");
        }
    }

    public ImmutableArray<string> Close(SeasonResult result)
    {
        var outcome = result.Batches[index];
        var wanted = batch.Order.Plants;
        lines.Add($"In the end {outcome.PlantsOut} plants went out, {outcome.PlantsInTime} of the {wanted} wanted in time"
            + (outcome.PlantsShort > 0 ? $"; {outcome.PlantsShort} never went out." : "."));
        if (outcome.TraysStanding + outcome.FlatsStanding > 0)
        {
            lines.Add($"Still standing on the last day: {outcome.TraysStanding} trays, {outcome.FlatsStanding} flats.");
        }

        return lines.ToImmutable();
    }

    private string Waits(SeasonCore core, BatchState state)
    {
        var parts = new List<string>();
        if (state.SowWaiting > 0)
        {
            parts.Add($"{state.SowWaiting} {Noun(state.IsPotUp, state.SowWaiting)} unsown, waiting for {Room(core, state.SowWaitingAt)}");
        }

        AddWaits(core, parts, state.OnMat, state.Benches);
        AddWaits(core, parts, [.. state.OnBench.Where(lot => lot.IsFlat)], state.Benches);
        AddWaits(core, parts, [.. state.OnBench.Where(lot => !lot.IsFlat)], state.Tables);
        AddWaits(core, parts, state.OnTable, state.Tables);
        return string.Join("; ", parts);
    }

    private void AddWaits(SeasonCore core, List<string> parts, List<Lot> lots, int[] group)
    {
        var blocked = lots.Where(lot => lot.Hindrance == Hindrance.Place).Sum(lot => lot.Count);
        if (blocked > 0)
        {
            var first = lots.First(lot => lot.Hindrance == Hindrance.Place);
            parts.Add($"{blocked} {Noun(first.IsFlat, blocked)} on {SpaceName(first.Space)} ready, waiting for {Room(core, group[0])}");
        }

        var holding = lots.Where(lot => lot.Hindrance == Hindrance.Hold).Sum(lot => lot.Count);
        if (holding > 0)
        {
            parts.Add($"{holding} {Noun(flat: false, holding)} on {SpaceName(lots.First(lot => lot.Hindrance == Hindrance.Hold).Space)} held by the weather");
        }
    }

    // The space that was full, and who stands in it.
    private string Room(SeasonCore core, int space)
    {
        var holders = core.Batches
            .Select(state => (state.Plan.Order.Id, Places: PlacesIn(state, space)))
            .Where(holder => holder.Places > 0)
            .OrderByDescending(holder => holder.Places).ThenBy(holder => holder.Id, IdOrder.Instance)
            .ToList();
        var named = string.Join(", ", holders.Take(MostHolders).Select(holder => $"{holder.Id} {holder.Places}"));
        var rest = holders.Skip(MostHolders).Sum(holder => holder.Places);
        return $"room on {SpaceName(space)} ({core.HeldIn(space)} of {core.PlacesOf(space)} places held"
            + (named.Length > 0 ? $" by {named}" + (rest > 0 ? $", others {rest}" : "") : "") + ")";
    }

    private static int PlacesIn(BatchState state, int space) =>
        state.OnMat.Concat(state.OnBench).Concat(state.OnTable).Where(lot => lot.Space == space).Sum(lot => lot.Count * state.PlacesEach(lot.IsFlat));

    private void EndWait(double hour)
    {
        var days = (int)(hour / 24) - waitSince;
        if (lastWait.Length > 0 && days > 0)
        {
            lines.Add($"{Day(hour)}: that wait has lasted {days} {(days == 1 ? "day" : "days")}.");
        }

        lastWait = "";
        waitSince = (int)(hour / 24);
    }

    private string Sowings() => batch.Flat is null
        ? $"{batch.Trays} {Noun(flat: false, batch.Trays)} sown directly"
        : $"{batch.Flats} {Noun(flat: true, batch.Flats)} sown dense for {batch.Trays} {Noun(flat: false, batch.Trays)}";

    private string PotUpWords() => batch.PotUpOn is { } date ? $"pot up {Iso(date)}, " : "";

    private string Lateness(double hour)
    {
        var late = (int)(hour / 24) - (batch.SetOutOn.DayNumber - plan.FirstDay.DayNumber);
        return late > 0 ? $"{late} {(late == 1 ? "day" : "days")} after the planned date" : "on time";
    }

    private static string Trays(bool flat, int first, int count) => count == 1
        ? $"{(flat ? "flat" : "tray")} {first + 1}"
        : $"{(flat ? "flats" : "trays")} {first + 1} to {first + count}";

    private static string Noun(bool flat, int count) => (flat, count) switch
    {
        (true, 1) => "flat",
        (true, _) => "flats",
        (false, 1) => "tray",
        (false, _) => "trays",
    };

    private static string Words(DiscardReason reason) => reason switch
    {
        DiscardReason.OverHeld => "too long past due",
        DiscardReason.FlatOverHeld => "too long past the pot-up stage",
        DiscardReason.NeverCameUp => "never came up",
        _ => "left over when all planned trays were filled",
    };

    private string SpaceName(int space) => plan.Scenario.Spaces[space].Name;

    private string Day(double hour) => Iso((int)(hour / 24));

    private string Iso(int day) => Iso(plan.FirstDay.AddDays(day));

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    private static string Factor(long units, double usual) =>
        usual > 0 ? (units / HeatTable.UnitsADegreeDay / usual).ToString("0.00", CultureInfo.InvariantCulture) : "1.00";
}
