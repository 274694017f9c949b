using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Folder;
using BenchSim.Report.Writing;
using BenchSim.Study.Shards;

namespace BenchSim.Answers.Parts;

/// <summary>The file a part goes to: whole or absent, and never at the cost of a file that is no part.</summary>
/// <param name="path">The file, as the user wrote it.</param>
internal sealed class PartPlace(string path)
{
    /// <summary>Bytes that common file systems allow a name.</summary>
    private const int LongestName = 255;

    /// <summary>
    /// Refuses a place that cannot be written, or where something stands that is no part; to be asked before a long play.
    /// </summary>
    /// <exception cref="RefusedException">It cannot be used.</exception>
    public void Check()
    {
        CheckWhatStands();
        if (Encoding.UTF8.GetByteCount(Path.GetFileName(path)) > LongestName)
        {
            throw Refused("its name is too long; name a shorter one");
        }

        if (!Directory.Exists(Folder()))
        {
            throw Refused("the folder it would stand in is not there; make it first, or name another place");
        }

        try
        {
            TargetFile.CheckCanBeWritten(path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw Refused("a file cannot be made there; name a place where you may write");
        }
    }

    /// <summary>Writes the file beside its place and moves it there when it is whole.</summary>
    /// <param name="bytes">What to write.</param>
    /// <param name="cancel">Stops it; nothing is left behind.</param>
    /// <exception cref="RefusedException">It cannot be written.</exception>
    public void Write(byte[] bytes, CancellationToken cancel)
    {
        try
        {
            TargetFile.Write(path, bytes, CheckWhatStands, cancel);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw Refused(failure.Message);
        }
    }

    private string Folder() => Path.GetDirectoryName(Path.GetFullPath(path)) ?? "";

    private void CheckWhatStands()
    {
        if (Directory.Exists(path))
        {
            throw Refused("a folder stands there; name a file");
        }

        if (!File.Exists(path))
        {
            return;
        }

        var begin = new byte[RunPart.Mark.Length];
        var read = 0;
        if (new FileInfo(path).LinkTarget is null && PlainFile.IsRegular(path))
        {
            using var stream = File.OpenRead(path);
            read = stream.ReadAtLeast(begin, begin.Length, throwOnEndOfStream: false);
        }

        if (!RunPart.IsPart(begin.AsSpan(0, read)))
        {
            throw Refused("a file stands there that is no part of a run; name another place, or remove it yourself");
        }
    }

    private RefusedException Refused(string why) => new($"No part was written to '{path}': {why.TrimEnd('.')}.");
}
