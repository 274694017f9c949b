using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Case;
using BenchSim.Folder;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Study.Sweeps;

namespace BenchSim.Answers.Sweep;

/// <summary>The folder of the results of a sweep's tasks: a file each, a thousand to a folder, whole or absent.</summary>
/// <param name="results">The folder of the sweep's results, as the user wrote it.</param>
internal sealed class TaskFolder(string results)
{
    private const int TasksAFolder = 1000;

    // A site of many spaces has some kilobytes.
    private const long LargestTask = 50_000_000;

    /// <summary>Takes away what killed calls left between the results.</summary>
    public void TidyUp()
    {
        if (!Directory.Exists(Tasks))
        {
            return;
        }

        foreach (var folder in Directory.EnumerateDirectories(Tasks))
        {
            TargetFile.TidyUp(folder);
        }
    }

    /// <summary>Makes the folder of a task ready.</summary>
    /// <exception cref="RefusedException">It cannot be made.</exception>
    public void Prepare(int number)
    {
        var folder = Path.GetDirectoryName(PathOf(number))!;
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException(
                $"No result was written: the folder {PlainText.Quote(folder)} cannot be made. {failure.Message.TrimEnd('.')}. "
                    + "Name another folder with --out."
            );
        }
    }

    /// <summary>Reads the result of a task.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="key">What it is to be made of.</param>
    /// <param name="state">How it stands with it.</param>
    /// <returns>What it counted; null unless <paramref name="state"/> says that it is good.</returns>
    public SweepCounts? Read(int number, string key, out TaskState state)
    {
        var path = PathOf(number);
        if (!Path.Exists(path))
        {
            state = TaskState.Missing;
            return null;
        }

        var file = PlainFile.Read(path, LargestTask, out _) is { } bytes ? TaskFile.Read(bytes) : null;
        state =
            file is null || file.Number != number ? TaskState.Damaged
            : !string.Equals(file.Build, BuildMark.Text, StringComparison.Ordinal) ? TaskState.OtherBuild
            : !string.Equals(file.Key, key, StringComparison.Ordinal) ? TaskState.OtherFiles
            : TaskState.Good;
        return state == TaskState.Good ? file!.Counts : null;
    }

    /// <summary>Writes the result of a task, in the place of one that stands there.</summary>
    /// <exception cref="RefusedException">It cannot be written, or something else stands there.</exception>
    public void Write(int number, string key, SweepCounts counts, CancellationToken cancel)
    {
        var path = PathOf(number);
        try
        {
            var bytes = new TaskFile(number, key, BuildMark.Text, counts).ToBytes();
            TargetFile.Write(path, bytes, () => RefuseOther(path), cancel, isSealed: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException(
                $"The result of task {Numbers.Whole(number)} was not written to {PlainText.Quote(path)}: {failure.Message.TrimEnd('.')}."
            );
        }
    }

    private string Tasks => Path.Combine(results, "tasks");

    /// <summary>The file of a task, as the user wrote the folder.</summary>
    public string PathOf(int number) =>
        Path.Combine(
            Tasks,
            ((number - 1) / TasksAFolder).ToString("00000", CultureInfo.InvariantCulture),
            number.ToString("00000000", CultureInfo.InvariantCulture) + ".task"
        );

    private static void RefuseOther(string path)
    {
        if (Directory.Exists(path) || (File.Exists(path) && !IsOwn(path)))
        {
            throw new RefusedException(
                $"{PlainText.Quote(path)} is no result of a task, and stays as it is. Move it away, or name another folder with --out."
            );
        }
    }

    private static bool IsOwn(string path)
    {
        if (new FileInfo(path).LinkTarget is not null || !PlainFile.IsRegular(path))
        {
            return false;
        }

        var begin = new byte[TaskFile.Mark.Length];
        using var stream = File.OpenRead(path);
        return TaskFile.IsOne(begin.AsSpan(0, stream.ReadAtLeast(begin, begin.Length, throwOnEndOfStream: false)));
    }
}

/// <summary>How it stands with the result of a task.</summary>
internal enum TaskState
{
    /// <summary>It is there, and of the files and settings as they are now.</summary>
    Good,

    /// <summary>There is none.</summary>
    Missing,

    /// <summary>It was cut short or changed, or is of another task.</summary>
    Damaged,

    /// <summary>Another build played it.</summary>
    OtherBuild,

    /// <summary>It is of other files or settings.</summary>
    OtherFiles,
}
