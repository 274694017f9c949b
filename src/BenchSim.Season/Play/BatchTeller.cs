using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Play;

/// <summary>Watches one batch through a season and writes its story.</summary>
internal sealed class BatchTeller(SeasonPlan plan, int number, int index) : ISeasonWitness
{
    private readonly ImmutableArray<string>.Builder _lines = ImmutableArray.CreateBuilder<string>();
    private readonly BatchPlan _batch = plan.Batches[index];
    private readonly DayLines _today = new();
    private BatchState _state = null!;
    private string _lastWait = "";
    private int _waitSince;

    public void Begins(SeasonView season)
    {
        _state = season.State.Batches[index];
        var (state, order) = (_state, _batch.Order);
        _lines.Add(
            $"Season {number + 1}, batch {order.Id}: {order.Plants} plants of {_batch.CropAndVariety} for {order.Grower}, {Sowings()}."
        );
        _lines.Add($"Planned: sow {Iso(_batch.SowOn)}, {PotUpWords()}table {Iso(_batch.TableOn)}, set out {Iso(_batch.SetOutOn)}.");
        _lines.Add(
            "Drawn for it: emergence takes "
                + Factor(state.EmergeNeed, _batch.Crop.EmergeHeat)
                + " times its usual heat, growth "
                + Factor(state.GrowthNeed, state.GrowthDegreeDays)
                + $" times; the packet germinates {Percent(state.PacketGermination)} at its best (stated {Percent(order.Germination)})"
                + (
                    _batch.Crop.StandLoss > 0
                        ? $"; {Percent(state.StandLoss)} of its plants are lost once up (usually {Percent(_batch.Crop.StandLoss)})."
                        : "."
                )
        );
    }

    public void Moved(TrayMove move)
    {
        if (move.Batch == index)
        {
            EndWait(move.Hour);
            _today.Add($"move {move.From} {move.To}", move.IsFlat, move.First, move.Count, 0, (trays, _) =>
                move.From < 0
                    ? $"{Day(move.Hour)}: {trays} sown on {SpaceName(move.To)}."
                    : $"{Day(move.Hour)}: {trays} moved from {SpaceName(move.From)} to {SpaceName(move.To)}."
            );
        }
    }

    public void WentOut(TraysOut trays)
    {
        if (trays.Batch == index)
        {
            EndWait(trays.Hour);
            var held = trays.HoldDays > 0 ? $"; held {Days(trays.HoldDays)} by the weather alone." : ".";
            _today.Add($"out {trays.From} {trays.HoldDays}", flat: false, trays.First, trays.Count, trays.Plants, (named, all) =>
                $"{Day(trays.Hour)}: {named} set out from {SpaceName(trays.From)} with {all} plants, {Lateness(trays.Hour)}{held}"
            );
        }
    }

    public void Potted(FlatPotted potted)
    {
        if (potted.Batch == index)
        {
            EndWait(potted.Hour);
            var flat = $"{Day(potted.Hour)}: flat {potted.Flat + 1} gave";
            if (potted.Trays == 0)
            {
                _today.Add($"{flat} {potted.Seedlings} seedlings, too few for a tray; they are passed on.");
                return;
            }

            // Its trays are given their places after this is said, so the benches are looked up when the day is told.
            _today.Add($"pot {potted.Flat}", flat: false, potted.FirstTray, potted.Trays, potted.Seedlings, (trays, all) =>
                $"{flat} {all} seedlings, potted up into {trays}{Standing(potted.FirstTray, potted.Trays)}."
            );
        }
    }

    public void Discarded(TraysDiscarded trays)
    {
        if (trays.Batch == index)
        {
            EndWait(trays.Hour);
            var wasReady = trays.Reason is DiscardReason.OverHeld or DiscardReason.FlatOverHeld;
            var days = wasReady ? (int)(trays.Hour / 24) - RoundAtOrAfter(trays.ReadyHour) : 0;
            _today.Add($"thrown out {trays.Reason} {days}", trays.IsFlat, trays.First, trays.Count, 0, (named, _) =>
                $"{Day(trays.Hour)}: {named} thrown out{Why(trays.Reason, days, named.Count == 1)}."
            );
        }
    }

    public void Struck(TraysStruck trays)
    {
        if (trays.Batch == index)
        {
            var mishap = plan.Scenario.Mishaps[trays.Mishap];
            var spaces = $"{Day(trays.Hour)}: {mishap.Name}: {Percent(mishap.Loss)} of the plants";
            _today.Add($"struck {trays.Mishap} {trays.Space}", trays.IsFlat, trays.First, trays.Count, 0, (named, _) =>
                $"{spaces} lost of {named} on {SpaceName(trays.Space)}."
            );
        }
    }

    public void GaveUp(SowingsGivenUp sowings)
    {
        if (sowings.Batch == index)
        {
            EndWait(sowings.Hour);
            _today.Add(
                $"{Day(sowings.Hour)}: {sowings.Count} {TrayRuns.Noun(_batch.Flat is not null, sowings.Count)} given up unsown, "
                    + $"more than {Days(plan.Scenario.Rules.SowGiveUpDays)} after the planned date."
            );
        }
    }

    public void DayEnds(SeasonView season)
    {
        var day = season.Day;
        _today.TellInto(_lines);
        var rules = plan.Scenario.Rules;
        if (rules.Rounds == RoundKind.WorkRound && !rules.IsWorkDay(plan.FirstDay.AddDays(day)))
        {
            // Nobody asks for a place today: the last round's waits go on, whatever places the day adds.
            return;
        }

        var wait = Waits(season, _state);
        if (string.Equals(wait, _lastWait, StringComparison.Ordinal))
        {
            return;
        }

        EndWait(day * 24.0);
        _lastWait = wait;
        _waitSince = day;
        if (wait.Length > 0)
        {
            _lines.Add($"{Iso(day)}: {wait}.");
        }
    }

    public ImmutableArray<string> Close(SeasonResult result)
    {
        _today.TellInto(_lines);
        var outcome = result.Batches[index];
        var wanted = _batch.Order.Plants;
        _lines.Add(
            $"In the end {outcome.PlantsOut} plants went out, {outcome.PlantsInTime} of the {wanted} wanted in time"
                + (outcome.PlantsShort > 0 ? $"; {outcome.PlantsShort} never went out." : ".")
        );
        if (outcome.TraysStanding + outcome.FlatsStanding > 0)
        {
            _lines.Add(
                $"Still standing on the last day: {outcome.TraysStanding} {TrayRuns.Noun(flat: false, outcome.TraysStanding)}, "
                    + $"{outcome.FlatsStanding} {TrayRuns.Noun(flat: true, outcome.FlatsStanding)}."
            );
        }

        return _lines.ToImmutable();
    }

    private string Waits(SeasonView season, BatchState state)
    {
        var parts = new List<string>();
        if (state.SowWaiting > 0)
        {
            var group = state.Mats.Contains(state.SowWaitingAt) ? state.Mats : state.Benches;
            var room = new RoomWords(season, plan, group);
            parts.Add(
                $"{state.SowWaiting} {TrayRuns.Noun(state.IsPotUp, state.SowWaiting)} unsown, "
                    + $"waiting for {room.Of(state.SowWaitingAt, state.PlacesEach(state.IsPotUp))}"
            );
        }

        AddWaits(season, parts, state.OnMat, state.Benches);
        AddWaits(season, parts, [.. state.OnBench.Where(lot => lot.IsFlat)], state.Benches);
        AddWaits(season, parts, [.. state.OnBench.Where(lot => !lot.IsFlat)], state.Tables);
        AddWaits(season, parts, state.OnTable, state.Tables);
        return string.Join("; ", parts);
    }

    private void AddWaits(SeasonView season, List<string> parts, List<Lot> lots, int[] group)
    {
        var blocked = lots.Where(lot => lot.Hindrance == Hindrance.Place).Sum(lot => lot.Count);
        if (blocked > 0)
        {
            var first = lots.First(lot => lot.Hindrance == Hindrance.Place);
            var isPotUp = first.IsFlat && plan.Scenario.Spaces[first.Space].Kind == SpaceKind.Bench;
            var room = new RoomWords(season, plan, group);
            parts.Add(
                $"{blocked} {TrayRuns.Noun(first.IsFlat, blocked)} on {SpaceName(first.Space)} ready, waiting for "
                    + (isPotUp ? room.ForTheTraysOf(first, group[0]) : room.Of(group[0], first.PlacesRefused))
            );
        }

        var holding = lots.Where(lot => lot.Hindrance == Hindrance.Hold).Sum(lot => lot.Count);
        if (holding > 0)
        {
            parts.Add(
                $"{holding} {TrayRuns.Noun(flat: false, holding)} on "
                    + $"{SpaceName(lots.First(lot => lot.Hindrance == Hindrance.Hold).Space)} held by the weather"
            );
        }
    }

    private void EndWait(double hour)
    {
        var days = (int)(hour / 24) - _waitSince;
        if (_lastWait.Length > 0 && days > 0)
        {
            _lines.Add($"{Day(hour)}: that wait has lasted {Days(days)}.");
        }

        _lastWait = "";
        _waitSince = (int)(hour / 24);
    }

    private string Sowings() =>
        _batch.Flat is null
            ? $"{_batch.Trays} {TrayRuns.Noun(flat: false, _batch.Trays)} sown directly"
            : $"{_batch.Flats} {TrayRuns.Noun(flat: true, _batch.Flats)} sown dense "
                + $"for {_batch.Trays} {TrayRuns.Noun(flat: false, _batch.Trays)}";

    private string PotUpWords() => _batch.PotUpOn is { } date ? $"pot up {Iso(date)}, " : "";

    private string Lateness(double hour)
    {
        var late = (int)(hour / 24) - (_batch.SetOutOn.DayNumber - plan.FirstDay.DayNumber);
        return late > 0 ? $"{Days(late)} after the planned date" : "on time";
    }

    // Where potted trays stand: ": 2 on Main benches and 1 on Overflow benches".
    private string Standing(int firstTray, int trays)
    {
        var bySpace = _state
            .OnBench.Where(lot => !lot.IsFlat)
            .Select(lot => (lot.Space, Count: Math.Min(lot.First + lot.Count, firstTray + trays) - Math.Max(lot.First, firstTray)))
            .Where(part => part.Count > 0)
            .GroupBy(part => part.Space, part => part.Count)
            .Select(space => (Name: SpaceName(space.Key), Count: space.Sum()))
            .ToList();
        return bySpace.Count switch
        {
            0 => "",
            1 => $" on {bySpace[0].Name}",
            _ => ": " + string.Join(" and ", bySpace.Select(space => $"{space.Count} on {space.Name}")),
        };
    }

    private static string Why(DiscardReason reason, int days, bool isOne) =>
        reason switch
        {
            DiscardReason.OverHeld => $" {Days(days)} after {(isOne ? "it was" : "they were")} ready for the field",
            DiscardReason.FlatOverHeld => $" {Days(days)} after {(isOne ? "it was" : "they were")} ready to pot up",
            DiscardReason.NeverCameUp => ": never came up",
            _ => ": left over when all planned trays were filled",
        };

    // The first work day whose round is at or after an instant, as in docs/model.md section 2.
    private int RoundAtOrAfter(double hour)
    {
        var rules = plan.Scenario.Rules;
        var day = SiteTables.DayAtOrAfter(hour, rules.RoundAt.Hour + (rules.RoundAt.Minute / 60.0));
        return rules.WorkDayFrom(plan.FirstDay.AddDays(day)).DayNumber - plan.FirstDay.DayNumber;
    }

    private static string Days(int count) => count == 1 ? "1 day" : $"{count} days";

    private string SpaceName(int space) => plan.Scenario.Spaces[space].Name;

    private string Day(double hour) => Iso((int)(hour / 24));

    private string Iso(int day) => Iso(plan.FirstDay.AddDays(day));

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (100 * share).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    private static string Factor(long units, double usual) =>
        (units / HeatTable.UnitsADegreeDay / usual).ToString("0.00", CultureInfo.InvariantCulture);
}
