using System.Collections.Immutable;
using BenchSim.Answers.Print;
using BenchSim.Report.Morning;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;

namespace BenchSim.Workbench.Showing;

/// <summary>A job of the next days, with how likely it is and when.</summary>
internal sealed record ComingJobDocument(
    string Job,
    string Batch,
    string Code,
    string Crop,
    string Grower,
    string Pieces,
    string Way,
    string Word,
    string When
);

/// <summary>What the next days bring beside what is due, and what the words mean; a note where it cannot be told.</summary>
internal sealed record ComingDocument(string? Note, string Words, ImmutableArray<ComingJobDocument> Jobs)
{
    /// <summary>The jobs of the next days cannot be told.</summary>
    /// <param name="note">Why; null where the benches say it already.</param>
    public static ComingDocument Nothing(string? note = null) => new(note, "", []);

    /// <summary>The jobs, without those of what is due.</summary>
    public static ComingDocument Of(ComingAnswer coming)
    {
        var plan = coming.Opened.Opened.Plan;
        var codes = ShortCodes.Of(plan);
        return new ComingDocument(
            null,
            SheetWords.Likelihoods(coming.Days.Seasons),
            [
                .. coming
                    .Jobs.Where(each => each.Due.IsEmpty)
                    .Select(each => each.Coming!)
                    .Select(job => new ComingJobDocument(
                        TaskWords.Job(job.Kind),
                        plan.Batches[job.Batch].Order.Id,
                        codes.Full(plan.Batches[job.Batch]),
                        plan.Batches[job.Batch].CropAndVariety,
                        plan.Batches[job.Batch].Order.Grower,
                        TaskWords.Pieces(job.Pieces, job.AreFlats),
                        SheetWords.PlainWay(plan, job),
                        SheetWords.Of(job.Likelihood),
                        job.IsToday ? "today" : SheetWords.Days(job.First, job.Last)
                    )),
            ]
        );
    }
}
