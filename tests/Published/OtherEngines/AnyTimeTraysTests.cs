using System.Globalization;
using System.Text;
using BenchSim.Published.Season;
using BenchSim.Season.Play;

namespace BenchSim.Published.OtherEngines;

/// <summary>
/// The season's own steps under "any time" rounds, fed the same comings and stays as SimPy 3.0.11 was
/// (tests/Published/other-engines/any_time.py): every tray is sown, moves to the bench and the table and goes out at the same hour, to all
/// ten decimals printed.
/// </summary>
public sealed class AnyTimeTraysTests
{
    [Fact]
    public void Every_tray_moves_when_SimPy_moves_it()
    {
        var numbers = Array.ConvertAll(OtherEngineFolder.Rows("any-time-numbers.csv"), row =>
            Array.ConvertAll(row, text => double.Parse(text, CultureInfo.InvariantCulture))
        );
        var site = new QueueSite(
            Array.ConvertAll(numbers, row => row[1]),
            Array.ConvertAll(numbers, row => row[2..]),
            [5, 10, 3],
            giveUpDays: 1_000_000,
            days: 1500
        );
        var moves = new Moves(numbers.Length);
        site.Play(moves);

        var found = new StringBuilder("tray,sown,bench,table,out\n");
        for (var tray = 0; tray < numbers.Length; tray++)
        {
            found.Append(
                CultureInfo.InvariantCulture,
                $"{tray},{string.Join(',', moves.Hours[tray].Select(hour => hour.ToString("F10", CultureInfo.InvariantCulture)))}\n"
            );
        }

        Assert.Equal(OtherEngineFolder.Stored("any-time.csv"), found.ToString());
    }

    private sealed class Moves(int trays) : ISeasonWitness
    {
        public double[][] Hours { get; } = [.. Enumerable.Range(0, trays).Select(_ => new double[4])];

        public void Moved(TrayMove move) => Hours[move.Batch][move.To] = move.Hour;

        public void WentOut(TraysOut trays) => Hours[trays.Batch][3] = trays.Hour;
    }
}
