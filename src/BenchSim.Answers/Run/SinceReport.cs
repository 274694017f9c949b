using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Json;
using BenchSim.Answers.Opening;
using BenchSim.Folder.Files;
using BenchSim.Study.Results;

namespace BenchSim.Answers.Run;

/// <summary>What has changed since an earlier report.</summary>
/// <param name="Then">The earlier report.</param>
/// <param name="Now">The new answer.</param>
/// <param name="Inputs">The files of the new answer.</param>
internal sealed record SinceReport(EarlierReport Then, StudyResult Now, ImmutableArray<InputFile> Inputs)
{
    // Half a plant in a season is no plant.
    private const double Noticed = 0.5;

    /// <summary>Files that are not as they were.</summary>
    public ImmutableArray<string> Changed { get; } =
    [
        .. Names(Inputs, file =>
            Then.Files.TryGetValue(file.Name, out var hash) && !string.Equals(hash, WrittenAnswer.HashOf(file), StringComparison.Ordinal)
        ),
    ];

    /// <summary>Files that were not there.</summary>
    public ImmutableArray<string> New { get; } = [.. Names(Inputs, file => !Then.Files.ContainsKey(file.Name))];

    /// <summary>Files that are there no more.</summary>
    public ImmutableArray<string> Gone { get; } =
    [.. Then.Files.Keys.Except(Names(Inputs, _ => true), StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>Plants that miss their date, late or never out, mean of a season.</summary>
    public double Late => LateOf(Now.PlantsWanted, Now.PlantsInTime);

    /// <summary>Batches of which more or fewer plants miss their date than then, the largest change first.</summary>
    public ImmutableArray<(string Batch, double Then, double Now)> Batches =>
        [
            .. Now
                .Batches.Select(batch => (batch.Plan.Order.Id, Now: LateOf(batch.Plan.Order.Plants, batch.PlantsInTime)))
                .Join(Then.Batches, now => now.Id, then => then.Batch, (now, then) => (now.Id, then.Late, now.Now), StringComparer.Ordinal)
                .Where(each => Math.Abs(each.Now - each.Late) >= Noticed)
                .OrderByDescending(each => Math.Abs(each.Now - each.Late)),
        ];

    /// <summary>Whether the files, the day, the variant and the play are those of then, so that the answer is too.</summary>
    public bool IsNothing =>
        Changed.IsEmpty
        && New.IsEmpty
        && Gone.IsEmpty
        && Then.Today == Now.Plan.Today
        && string.Equals(Then.Variant, Now.Variant, StringComparison.Ordinal)
        && IsSamePlay
        && Batches.IsEmpty;

    /// <summary>Whether as many seasons were played with the same seed.</summary>
    public bool IsSamePlay =>
        Then.Seasons == Now.Seasons && string.Equals(Then.Seed, Now.Seed.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);

    /// <summary>The same for machines.</summary>
    public JsonSince Document =>
        new(
            Today: Then.Today,
            Seasons: Then.Seasons,
            Seed: Then.Seed,
            Nothing: IsNothing,
            FilesChanged: Changed,
            FilesNew: New,
            FilesGone: Gone,
            FitsThen: Then.Fits,
            FitsNow: Now.Fits.Share,
            PlantsLateThen: Then.Late,
            PlantsLateNow: Late,
            Batches: [.. Batches.Select(each => new JsonSinceBatch(each.Batch, each.Then, each.Now))]
        );

    private static IEnumerable<string> Names(ImmutableArray<InputFile> files, Func<InputFile, bool> which) =>
        files.Where(which).Select(file => file.Name).Order(StringComparer.Ordinal);

    private static double LateOf(int wanted, Estimate inTime) => wanted - inTime.Mean;
}
