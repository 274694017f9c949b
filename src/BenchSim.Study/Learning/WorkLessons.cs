using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Learning;

/// <summary>Work minutes a tray of a job, and what rows with minutes teach of it.</summary>
/// <param name="Key">Key of [work_minutes] in site.toml.</param>
/// <param name="Value">What they teach.</param>
/// <param name="Trays">Trays or flats behind it.</param>
public sealed record LearnedWork(string Key, Learned Value, int Trays);

/// <summary>What the rows of logs that say how long a job took teach of its minutes a tray (docs/model.md section 11).</summary>
public static class WorkLessons
{
    // How far the minutes a tray of one row are from those of the next; an assumption.
    private const double RowCv = 0.5;

    /// <summary>The jobs of which rows with minutes say something.</summary>
    /// <param name="inForce">The minutes in force.</param>
    /// <param name="log">Rows of the logs.</param>
    /// <param name="deviations">How far off values may be: one that is not the usual one counts as your own from memory.</param>
    public static ImmutableArray<LearnedWork> Of(WorkMinutes inForce, IEnumerable<LogEntry> log, Deviations deviations)
    {
        ArgumentNullException.ThrowIfNull(inForce);
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(deviations);
        LogEntry[] rows = [.. log.Where(row => row.Minutes > 0 && Pieces(row) > 0)];
        var usual = new WorkMinutes();
        (LogKind What, string Key, double InForce, double Usual)[] jobs =
        [
            (LogKind.Sown, "sow", inForce.Sow, usual.Sow),
            (LogKind.PottedUp, "pot_up", inForce.PotUp, usual.PotUp),
            (LogKind.Moved, "move", inForce.Move, usual.Move),
            (LogKind.SetOut, "set_out", inForce.SetOut, usual.SetOut),
        ];
        var learned = ImmutableArray.CreateBuilder<LearnedWork>();
        foreach (var (what, key, value, usually) in jobs.Where(job => job.InForce > 0))
        {
            LogEntry[] ofJob = [.. rows.Where(row => row.What == what)];
            if (ofJob.Length == 0)
            {
                continue;
            }

            var lesson = new MeanLesson(value, value.Equals(usually) ? deviations.Assumed : deviations.Remembered, RowCv);
            foreach (var row in ofJob)
            {
                var minutes = row.Minutes!.Value / Pieces(row);
                lesson.See(new BatchValue(minutes, minutes));
            }

            learned.Add(new LearnedWork(key, lesson.Lesson(), ofJob.Sum(Pieces)));
        }

        return learned.ToImmutable();
    }

    // What is potted up is counted by the trays that are filled.
    private static int Pieces(LogEntry row) => row.What == LogKind.PottedUp ? row.Trays ?? 0 : row.Trays ?? row.Flats ?? 0;
}
