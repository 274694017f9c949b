using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Today;

/// <summary>What is due and what was counted, in words.</summary>
internal sealed class TodayWords(SeasonPlan plan)
{
    private const int LongestName = 24;

    private readonly Dates _dates = new(plan);

    /// <summary>Shortened name of a batch.</summary>
    public string Batch(int batch) => PlainText.Short(plan.Batches[batch].Order.Id, LongestName);

    /// <summary>Shortened name of a space.</summary>
    public string Space(int space) => PlainText.Short(plan.Scenario.Spaces[space].Name, LongestName);

    /// <summary>5 April.</summary>
    public string Date(DateOnly date) => _dates.Plain(date);

    /// <summary>3 trays, 1 flat.</summary>
    public static string Pieces(int count, bool areFlats) => TaskWords.Pieces(count, areFlats);

    /// <summary>A job on a batch: "sow 4 trays of kale (1 March)".</summary>
    public string Job(DueJob job)
    {
        var what = $"{Pieces(job.Count, job.AreFlats)} of {Batch(job.Batch)}";
        var words = job.Kind switch
        {
            WorkKind.Sow => $"sow {what}",
            WorkKind.OffMat => $"{what} off {Space(job.Space!.Value)}",
            WorkKind.PotUp => $"pot up {what}",
            WorkKind.Finish => $"{what} to finish",
            WorkKind.ToTable => $"{what} to the table",
            WorkKind.SetOut => $"set out {what}",
            _ => throw new ArgumentOutOfRangeException(nameof(job)),
        };
        return $"{words} ({Date(job.On)})";
    }

    /// <summary>A count that differs: "2 trays of kale fewer on the bench than the log has".</summary>
    public string Difference(CountedOtherwise each) =>
        $"{Pieces(Math.Abs(each.Unexplained), each.AreFlats)} of {Batch(each.Batch)} "
        + $"{(each.Unexplained < 0 ? "missing from" : "more than written in")} {Space(each.Space)} ({Date(each.On)})";

    /// <summary>What was moved and not written down: "7 trays of kale from the mats to the bench".</summary>
    public string Elsewhere(CountedElsewhere each) =>
        $"{Pieces(each.Count, each.AreFlats)} of {Batch(each.Batch)} from {Space(each.From)} to {Space(each.To)} ({Date(each.On)})";
}
