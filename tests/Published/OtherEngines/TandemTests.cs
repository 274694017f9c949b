using System.Globalization;
using System.Text;
using BenchSim.Engine;

namespace BenchSim.Published.OtherEngines;

/// <summary>
/// Four stations in a row with blocking after service, fed the same comings, places and stays as SimPy 3.0.11 was
/// (tests/Published/other-engines/tandem.py): every unit gets every station's places at the same instant, to all ten decimals printed.
/// </summary>
public sealed class TandemTests
{
    private readonly Simulation _simulation = new();

    [Fact]
    public void Every_unit_moves_when_SimPy_moves_it()
    {
        var found = new StringBuilder("capacities,unit,stage1,stage2,stage3,stage4,leaves\n");
        foreach (var capacities in new[] { new[] { 8, 60, 30, 40 }, [12, 24, 24, 12] })
        {
            Play(capacities, found);
        }

        Assert.Equal(OtherEngineFolder.Stored("tandem.csv"), found.ToString());
    }

    private void Play(int[] capacities, StringBuilder found)
    {
        var stations = Array.ConvertAll(capacities, capacity => new Places(_simulation, "station", capacity));
        var numbers = Array.ConvertAll(OtherEngineFolder.Rows("tandem-numbers.csv"), row => Array.ConvertAll(row, Number));
        var days = Array.ConvertAll(numbers, _ => new double[5]);
        _simulation.Reset();
        for (var unit = 0; unit < numbers.Length; unit++)
        {
            _simulation.Start(Pass(stations, numbers[unit], days[unit]), "unit", unit, numbers[unit][1]);
        }

        _simulation.Run();

        for (var unit = 0; unit < numbers.Length; unit++)
        {
            var row = string.Join(',', days[unit].Select(day => day.ToString("F10", CultureInfo.InvariantCulture)));
            found.Append(CultureInfo.InvariantCulture, $"{string.Join('|', capacities)},{unit},{row}\n");
        }
    }

    private async Process Pass(Places[] stations, double[] numbers, double[] days)
    {
        var held = 0;
        for (var i = 0; i < stations.Length; i++)
        {
            var wanted = Math.Min((int)numbers[2], stations[i].Capacity);
            await stations[i].Take(wanted);
            if (i > 0)
            {
                stations[i - 1].Leave(held);
            }

            held = wanted;
            days[i] = _simulation.Now;
            await _simulation.Delay(numbers[3 + i]);
        }

        stations[^1].Leave(held);
        days[^1] = _simulation.Now;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
