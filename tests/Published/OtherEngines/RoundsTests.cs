using System.Globalization;
using System.Text;
using BenchSim.Season.Play;

namespace BenchSim.Published.OtherEngines;

/// <summary>
/// A season of work rounds without luck, played by BenchSim and by SimPy 3.0.11 (tests/Published/other-engines/rounds.py): each of the 494
/// trays goes to the same spaces on the same days. Covered: the order of the steps and within a step, places of mats, two benches and a
/// table, blocking after service, sowings that wait, start on a bench and are given up, heat on and off the mat, the date for the table
/// with its early way when the benches are full, hardening nights, days off. Not covered: flats, weather holds, luck, labour, reliefs,
/// trays thrown out.
/// </summary>
public sealed class RoundsTests
{
    [Fact]
    public void Every_tray_goes_where_SimPy_puts_it_on_the_same_day()
    {
        var plan = RoundsSite.Plan(OtherEngineFolder.Rows("rounds-batches.csv"));
        var moves = new Moves();
        new SeasonPlayer(plan, 1).Play(0, PlaceLimits.AsGiven, new SeasonResult(), moves);

        var found = new StringBuilder("batch,tray,moves\n");
        foreach (var (batch, index) in plan.Batches.Select((batch, index) => (batch, index)))
        {
            for (var tray = 0; tray < batch.Trays; tray++)
            {
                found.Append(CultureInfo.InvariantCulture, $"{batch.Order.Id},{tray + 1},{moves.Of(index, tray)}\n");
            }
        }

        Assert.Equal(OtherEngineFolder.Stored("rounds.csv"), found.ToString());
    }

    private sealed class Moves : ISeasonWitness
    {
        private readonly Dictionary<(int Batch, int Tray), List<string>> _moves = [];

        public string Of(int batch, int tray) => _moves.TryGetValue((batch, tray), out var moves) ? string.Join(' ', moves) : "given up";

        public void Moved(TrayMove move) => Note(move.Batch, move.First, move.Count, RoundsSite.NameOf(move.To), move.Hour);

        public void WentOut(TraysOut trays) => Note(trays.Batch, trays.First, trays.Count, "field", trays.Hour);

        private void Note(int batch, int first, int count, string where, double hour)
        {
            for (var tray = first; tray < first + count; tray++)
            {
                if (!_moves.TryGetValue((batch, tray), out var moves))
                {
                    _moves[(batch, tray)] = moves = [];
                }

                moves.Add(string.Create(CultureInfo.InvariantCulture, $"{where}:{(int)(hour / 24)}"));
            }
        }
    }
}
