using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Folder.Files;
using BenchSim.Folder.Plan;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Study.Compare;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Level;

/// <summary>The file a levelled plan goes to: whole or not at all, and never over anything but an earlier levelled plan.</summary>
/// <param name="path">Path, as the user wrote it.</param>
/// <param name="plan">Bytes of the plan it is made from.</param>
internal sealed class LevelledPlanFile(string path, ImmutableArray<byte> plan)
{
    /// <summary>Its name when none is given.</summary>
    public const string UsualName = "plan-levelled.csv";

    /// <summary>The path, as the user wrote it.</summary>
    public string Shown => path;

    /// <summary>Refuses a place where something stands that is no levelled form of the plan.</summary>
    public void Check()
    {
        if (Directory.Exists(path))
        {
            throw new RefusedException($"{PlainText.Quote(path)} is a folder. Name a file for the levelled plan with --out.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(path));
        if (folder is null || !Directory.Exists(folder))
        {
            throw new RefusedException($"There is no folder for {PlainText.Quote(path)}. Make it first, or name another file with --out.");
        }

        if (!File.Exists(path))
        {
            return;
        }

        if (FileNames.IsPlan(Path.GetFileName(path).ToLowerInvariant()))
        {
            throw new RefusedException($"{PlainText.Quote(path)} is a plan in use and stays as it is. Name another file with --out.");
        }

        var file = new FileInfo(path);
        if (
            file.LinkTarget is not null
            || !Folder.PlainFile.IsRegular(path)
            || file.Length > 2L * plan.Length + 1_000_000
            || !MovedPlan.IsFormOf(plan, [.. File.ReadAllBytes(path)])
        )
        {
            throw new RefusedException(
                $"{PlainText.Quote(path)} is not a levelled form of this plan and stays as it is. Take it away, "
                    + "or name another file with --out."
            );
        }
    }

    /// <summary>Writes the plan with its moves.</summary>
    public void Write(ImmutableArray<MovedSowing> moves, CancellationToken cancel)
    {
        var bytes = MovedPlan.Write(plan, moves.ToDictionary(move => move.Batch, move => move.To, StringComparer.Ordinal));
        try
        {
            TargetFile.Write(path, bytes.AsSpan(), Check, cancel);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"The levelled plan could not be written to {PlainText.Quote(path)}: {failure.Message}");
        }
    }
}
