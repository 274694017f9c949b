using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts the trays that wait in one space, or unsown, for another.</summary>
/// <param name="wait">Who waits for whom.</param>
/// <param name="weeks">Weeks of the play.</param>
internal sealed class WaitTally(WaitPair wait, int weeks)
{
    private readonly DayTally _byWeek = new(weeks);
    private readonly WideTally _trayDays = new();
    private int _happens;

    /// <summary>Counts one season.</summary>
    /// <param name="refused">As in <see cref="SeasonResult.Refused"/>.</param>
    public void Add(int[][] refused)
    {
        var row = refused[wait.Row];
        long sum = 0;
        foreach (var week in row)
        {
            sum += week;
        }

        _happens += sum > 0 ? 1 : 0;
        _trayDays.Add(sum);
        _byWeek.Add(row);
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(WaitTally other)
    {
        _byWeek.Merge(other._byWeek);
        _trayDays.Merge(other._trayDays);
        _happens += other._happens;
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        exchange.Every(_byWeek);
        exchange.Every(_trayDays);
        exchange.Seasons(ref _happens);
    }

    /// <summary>What was counted.</summary>
    public WaitResult ToResult(Scenario scenario, int seasons, StudentFactors student) =>
        new()
        {
            From = wait.From < scenario.Spaces.Length ? scenario.Spaces[wait.From] : null,
            By = scenario.Spaces[wait.By],
            ByWeek = _byWeek.ToSpreads(),
            TrayDays = _trayDays.ToEstimate(student),
            Happens = Chances.Of(_happens, seasons),
        };
}
