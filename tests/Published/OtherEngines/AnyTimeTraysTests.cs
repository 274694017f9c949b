using System.Globalization;
using System.Text;
using BenchSim.Published.Season;
using BenchSim.Season.Inputs;

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
        var site = new QueueSite(new SitePlaces(5, 10, 3), Enumerable.Repeat(1, numbers.Length), giveUpDays: 1_000_000, hours: 36_000);
        var journal = site.Play(Array.ConvertAll(numbers, row => row[1]), (tray, kind) => numbers[tray][2 + (int)kind]);

        var found = new StringBuilder("tray,sown,bench,table,out\n");
        for (var tray = 0; tray < numbers.Length; tray++)
        {
            double[] hours =
            [
                journal.Entered(tray, SpaceKind.Mat),
                journal.Entered(tray, SpaceKind.Bench),
                journal.Entered(tray, SpaceKind.Table),
                journal.Left(tray, SpaceKind.Table),
            ];
            found.Append(
                CultureInfo.InvariantCulture,
                $"{tray},{string.Join(',', hours.Select(hour => hour.ToString("F10", CultureInfo.InvariantCulture)))}\n"
            );
        }

        Assert.Equal(OtherEngineFolder.Stored("any-time.csv"), found.ToString());
    }
}
