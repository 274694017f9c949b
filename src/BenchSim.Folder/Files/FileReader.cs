using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Folder.Faults;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Files;

/// <summary>Reads the files of a folder: size first, then bytes, then UTF-8.</summary>
internal sealed class FileReader(IFolderFiles files, FaultList faults)
{
    /// <summary>Largest file that is read, bytes. A plan of 10,000 batches is about 1 MB; a century of daily weather about 1 MB.</summary>
    public const long LargestFile = 50_000_000;

    private static readonly byte[] Utf8Mark = [0xEF, 0xBB, 0xBF];
    private static readonly byte[] Utf16Little = [0xFF, 0xFE];
    private static readonly byte[] Utf16Big = [0xFE, 0xFF];

    private readonly SortedDictionary<string, InputFile> _read = new(StringComparer.Ordinal);

    /// <summary>Files read so far, in order of name.</summary>
    public ImmutableArray<InputFile> Inputs => [.. _read.Values];

    public bool Exists(string name) => files.IsFile(name) || files.IsFolder(name);

    /// <summary>Reads a text file.</summary>
    /// <param name="name">Name relative to the folder.</param>
    /// <param name="asker">Where the file is asked for: a fault that says it is missing stands there.</param>
    /// <returns>The text; null when there was a fault.</returns>
    public FileText? Read(string name, SourcePlace asker)
    {
        var whole = new SourcePlace(name, 0, 0);
        if (files.IsFolder(name))
        {
            faults.Add(whole, "this is a folder, not a file", $"put a file named {name} in its place");
            return null;
        }

        if (!files.IsFile(name))
        {
            faults.Add(asker, $"there is no file {Words.Quote(name)} in the folder", Hint(name));
            return null;
        }

        if (!files.IsRegular(name))
        {
            faults.Add(
                whole,
                "this is not a regular file",
                $"put a file named {Path.GetFileName(name)} in its place, not a pipe, a device or a socket"
            );
            return null;
        }

        try
        {
            return ReadBytes(name) is { } bytes ? Decode(name, bytes) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            faults.Add(whole, "the file cannot be read", "check that you may read it and that no other program holds it");
            return null;
        }
    }

    private byte[]? ReadBytes(string name)
    {
        using var stream = files.Open(name);
        if (stream.CanSeek && stream.Length > LargestFile)
        {
            var size = (stream.Length / 1_000_000).ToString(CultureInfo.InvariantCulture);
            faults.Add(
                new SourcePlace(name, 0, 0),
                $"the file is {size} MB and was not read",
                "a scenario file may be up to 50 MB: check that it is the right file"
            );
            return null;
        }

        // A device may claim no length and never end, so the limit holds for what is read too.
        using var kept = new MemoryStream();
        var buffer = new byte[81_920];
        for (var count = stream.Read(buffer); count > 0; count = stream.Read(buffer))
        {
            kept.Write(buffer, 0, count);
            if (kept.Length > LargestFile)
            {
                faults.Add(
                    new SourcePlace(name, 0, 0),
                    "the file is larger than 50 MB",
                    "a scenario file may be up to 50 MB: check that it is the right file"
                );
                return null;
            }
        }

        return kept.ToArray();
    }

    private FileText? Decode(string name, byte[] bytes)
    {
        _read[name] = new InputFile(name, ImmutableArray.Create(bytes));
        if (bytes.AsSpan().StartsWith("PK\u0003\u0004"u8))
        {
            faults.Add(
                new SourcePlace(name, 0, 0),
                "this is a workbook or an archive, not a text file",
                "save it from the spreadsheet as \"CSV UTF-8\""
            );
            return null;
        }

        if (bytes.AsSpan().StartsWith(Utf16Little) || bytes.AsSpan().StartsWith(Utf16Big))
        {
            faults.Add(
                new SourcePlace(name, 1, 1),
                "the text is in the UTF-16 encoding",
                "save it as UTF-8 (in a spreadsheet: \"CSV UTF-8\")"
            );
            return null;
        }

        var start = bytes.AsSpan().StartsWith(Utf8Mark) ? 3 : 0;
        try
        {
            return new FileText(name, new UTF8Encoding(false, true).GetString(bytes, start, bytes.Length - start));
        }
        catch (DecoderFallbackException)
        {
            faults.Add(
                FirstBadByte(name, bytes.AsSpan(start)),
                "a character here is not UTF-8 text",
                "save the file as UTF-8 (in a spreadsheet: \"CSV UTF-8\")"
            );
            return null;
        }
    }

    private static SourcePlace FirstBadByte(string name, ReadOnlySpan<byte> bytes)
    {
        var (line, column) = (1, 1);
        while (Rune.DecodeFromUtf8(bytes, out var rune, out var length) == System.Buffers.OperationStatus.Done)
        {
            (line, column) = rune.Value == '\n' ? (line + 1, 1) : (line, column + 1);
            bytes = bytes[length..];
        }

        return new SourcePlace(name, line, column);
    }

    private string Hint(string name)
    {
        var near = Path.GetFileName(name) is { Length: > 0 } && !name.Contains('/') ? Spelling.Nearest(name, NamesIn("")) : null;
        return near is null ? $"add {name}, or check its name" : $"did you mean {Words.Quote(near)}";
    }

    /// <summary>
    /// Names of the files in a folder, in order, that of the scenario for the empty name; none when they cannot be listed.
    /// </summary>
    public IReadOnlyList<string> NamesIn(string folder)
    {
        try
        {
            return [.. files.NamesIn(folder).Order(StringComparer.Ordinal)];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
