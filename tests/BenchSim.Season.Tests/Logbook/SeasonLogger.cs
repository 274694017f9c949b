using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>Writes a row for everything that is done.</summary>
internal sealed class SeasonLogger(SeasonPlan plan) : ISeasonWitness
{
    private readonly HashSet<int> _unclear = [];
    private readonly List<FlatPotted> _potted = [];
    private readonly List<(int Batch, int Index, DateOnly On)> _out = [];
    private int _day;

    public List<LogEntry> Rows { get; } = [];

    public Dictionary<int, SeasonStart> Starts { get; } = [];

    /// <summary>
    /// Whether all shows in the rows: no seedlings passed on, no tray part full, no sowing that waited, was given up, or was surplus.
    /// </summary>
    public bool Shows(int today) => !_unclear.Contains(today);

    public void Moved(TrayMove move) =>
        Add(move.From < 0 ? LogKind.Sown : LogKind.Moved, move.Batch, move.IsFlat, move.Count, move.From, move.To);

    public void Potted(FlatPotted potted) => _potted.Add(potted);

    /// <summary>Trays that were out before a day.</summary>
    public HashSet<(int Batch, int Index, DateOnly On)> Out(DateOnly before) => [.. _out.Where(each => each.On < before)];

    public void WentOut(TraysOut trays)
    {
        _out.AddRange(Enumerable.Range(trays.First, trays.Count).Select(index => (trays.Batch, index, plan.FirstDay.AddDays(_day))));
        Add(LogKind.SetOut, trays.Batch, false, trays.Count, trays.From, -1, IsPart(trays) ? trays.Plants : null);
    }

    public void Discarded(TraysDiscarded trays) => Add(LogKind.ThrownOut, trays.Batch, trays.IsFlat, trays.Count, trays.From, -1);

    public void DayEnds(SeasonView season)
    {
        var next = season.Capture();
        foreach (var flat in _potted)
        {
            // Trays that found their places on several benches take a row for each.
            var stand = season
                .Standing(flat.Batch)
                .Where(lot => !lot.IsFlat)
                .Select(lot => (lot.Space, Trays: In(flat, lot)))
                .Where(each => each.Trays > 0)
                .DefaultIfEmpty((Space: plan.Batches[flat.Batch].Benches[0], Trays: 0));
            foreach (var (at, (space, trays)) in stand.Index())
            {
                Rows.Add(
                    Row(LogKind.PottedUp, flat.Batch) with
                    {
                        Flats = at == 0 ? 1 : 0,
                        Trays = trays,
                        Space = IdOf(space),
                        From = IdOf(SpaceOf(flat)),
                    }
                );
            }
        }

        _potted.Clear();
        _day = season.Day + 1;
        Starts[_day] = next;
        if (!next.Batches.Zip(plan.Batches).All(pair => Shows(pair.First, pair.Second)))
        {
            _ = _unclear.Add(_day);
        }
    }

    private bool Shows(BatchStart start, BatchPlan batch) =>
        start.Carry == 0
        && start.Lots.All(lot => lot.PottedPlants == 0)
        && (start.Unsown == 0 ? start.Sown == DueWork.Planned(batch) : batch.SowOn.DayNumber - plan.FirstDay.DayNumber >= _day);

    // Where the flat stood at dawn: what moves is not potted up on the same day.
    private int SpaceOf(FlatPotted flat) =>
        Starts[_day].Batches[flat.Batch].Lots.First(lot => lot.IsFlat && lot.First <= flat.Flat && flat.Flat < lot.First + lot.Count).Space;

    private static int In(FlatPotted flat, StandingTrays lot) =>
        Math.Max(0, Math.Min(flat.FirstTray + flat.Trays, lot.First + lot.Count) - Math.Max(flat.FirstTray, lot.First));

    private bool IsPart(TraysOut trays) => plan.Batches[trays.Batch].Flat is not null && trays.Count == 1;

    private void Add(LogKind what, int batch, bool isFlat, int count, int from, int to, int? plants = null) =>
        Rows.Add(
            Row(what, batch) with
            {
                Trays = isFlat ? null : count,
                Flats = isFlat ? count : null,
                From = from < 0 ? null : IdOf(from),
                Space = to < 0 ? null : IdOf(to),
                Count = plants,
            }
        );

    private LogEntry Row(LogKind what, int batch) =>
        new()
        {
            Date = plan.FirstDay.AddDays(_day),
            What = what,
            BatchId = plan.Batches[batch].Order.Id,
        };

    private string IdOf(int space) => plan.Scenario.Spaces[space].Id;
}
