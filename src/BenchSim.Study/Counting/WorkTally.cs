using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Results;
using BenchSim.Study.Shards;
using BenchSim.Study.Statistics;

namespace BenchSim.Study.Counting;

/// <summary>Counts the work. Times are whole thousandths of a minute.</summary>
internal sealed class WorkTally
{
    private const double PartsAnHour = 60.0 * PlanShape.PartsAMinute;

    private readonly long _sowParts;
    private readonly long _potUpParts;
    private readonly long _moveParts;
    private readonly long _setOutParts;
    private readonly long _carryInParts;
    private readonly ExactTally _sown = new();
    private readonly ExactTally _potted = new();
    private readonly ExactTally _moved = new();
    private readonly ExactTally _setOut = new();
    private readonly ExactTally _carriedIn = new();
    private readonly WideTally _parts = new();
    private readonly WideTally[] _partsByWeek;

    /// <summary>An empty count.</summary>
    /// <param name="minutes">Minutes of each job; rounded to thousandths.</param>
    /// <param name="days">Days played.</param>
    public WorkTally(WorkMinutes minutes, int days)
    {
        _sowParts = Parts(minutes.Sow);
        _potUpParts = Parts(minutes.PotUp);
        _moveParts = Parts(minutes.Move);
        _setOutParts = Parts(minutes.SetOut);
        _carryInParts = Parts(minutes.CarryIn);
        _partsByWeek = TallyArrays.Make<WideTally>((days + 6) / 7);
    }

    /// <summary>Work of one season, in thousandths of a minute.</summary>
    public static long PartsOf(SeasonResult season, WorkMinutes minutes) =>
        (Sum(season.Sown) * Parts(minutes.Sow))
        + (Sum(season.Potted) * Parts(minutes.PotUp))
        + (Sum(season.Moved) * Parts(minutes.Move))
        + (Sum(season.SetOut) * Parts(minutes.SetOut))
        + (Sum(season.CarriedIn) * Parts(minutes.CarryIn));

    /// <summary>Counts one season.</summary>
    public void Add(SeasonResult season)
    {
        var days = season.Sown.Length;
        long parts = 0;
        for (var week = 0; week < _partsByWeek.Length; week++)
        {
            long weeks = 0;
            for (var day = week * 7; day < Math.Min(days, (week + 1) * 7); day++)
            {
                weeks +=
                    (season.Sown[day] * _sowParts)
                    + (season.Potted[day] * _potUpParts)
                    + (season.Moved[day] * _moveParts)
                    + (season.SetOut[day] * _setOutParts)
                    + (season.CarriedIn[day] * _carryInParts);
            }

            _partsByWeek[week].Add(weeks);
            parts += weeks;
        }

        _parts.Add(parts);
        _sown.Add(Sum(season.Sown));
        _potted.Add(Sum(season.Potted));
        _moved.Add(Sum(season.Moved));
        _setOut.Add(Sum(season.SetOut));
        _carriedIn.Add(Sum(season.CarriedIn));
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(WorkTally other)
    {
        _sown.Merge(other._sown);
        _potted.Merge(other._potted);
        _moved.Merge(other._moved);
        _setOut.Merge(other._setOut);
        _carriedIn.Merge(other._carriedIn);
        _parts.Merge(other._parts);
        _partsByWeek.Merge(other._partsByWeek);
    }

    /// <summary>Names every count.</summary>
    public void Exchange(ITallyExchange exchange)
    {
        foreach (var trays in new[] { _sown, _potted, _moved, _setOut, _carriedIn })
        {
            exchange.Every(trays);
        }

        exchange.Every(_parts);
        exchange.Every(_partsByWeek);
    }

    /// <summary>What was counted.</summary>
    public WorkResult ToResult(StudentFactors student) =>
        new()
        {
            Sown = _sown.ToEstimate(student),
            Potted = _potted.ToEstimate(student),
            Moved = _moved.ToEstimate(student),
            SetOut = _setOut.ToEstimate(student),
            CarriedIn = _carriedIn.ToEstimate(student),
            Hours = _parts.ToEstimate(student, PartsAnHour),
            HoursByWeek = [.. _partsByWeek.Select(week => week.ToEstimate(student, PartsAnHour).Mean)],
            HoursByWeekP90 = [.. _partsByWeek.Select(week => week.ToEstimate(student, PartsAnHour).P90)],
        };

    private static long Parts(double each) => (long)Math.Round(each * PlanShape.PartsAMinute, MidpointRounding.AwayFromZero);

    private static int Sum(int[] byDay)
    {
        var sum = 0;
        foreach (var each in byDay)
        {
            sum += each;
        }

        return sum;
    }
}
