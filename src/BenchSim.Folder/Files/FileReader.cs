using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Sheets;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Files;

/// <summary>Reads the files of a folder: size first, then bytes, then UTF-8.</summary>
internal sealed class FileReader(IFolderFiles files, FaultList faults)
{
    /// <summary>Largest file that is read, bytes. A plan of 10,000 batches is about 1 MB; a century of daily weather about 1 MB.</summary>
    public const long LargestFile = 50_000_000;

    private static readonly string[] s_otherSheets = [".xls", ".xlsm", ".xlsb", ".ods", ".numbers"];
    private static readonly byte[] s_utf8Mark = [0xEF, 0xBB, 0xBF];
    private static readonly byte[] s_utf16Little = [0xFF, 0xFE];
    private static readonly byte[] s_utf16Big = [0xFE, 0xFF];

    private readonly SortedDictionary<string, InputFile> _read = new(StringComparer.Ordinal);

    /// <summary>Files read so far, in order of name.</summary>
    public ImmutableArray<InputFile> Inputs => [.. _read.Values];

    public bool Exists(string name) => files.IsFile(name) || files.IsFolder(name);

    /// <summary>Whether a table is there, as CSV or as a workbook.</summary>
    public bool HasTable(string name) => Exists(name) || Exists(FileNames.WorkbookOf(name));

    /// <summary>Reads a table: the CSV file of the name, or the workbook in its place.</summary>
    /// <param name="name">Name of the CSV file, or of a workbook.</param>
    /// <param name="asker">Where the file is asked for.</param>
    public FileText? ReadTable(string name, SourcePlace asker)
    {
        var workbook = FileNames.WorkbookOf(name);
        if (string.Equals(name, workbook, StringComparison.Ordinal) || !Exists(workbook))
        {
            return Read(name, asker);
        }

        if (!Exists(name))
        {
            return Read(workbook, asker);
        }

        faults.Add(
            new SourcePlace(name, 0, 0),
            $"there is {workbook} as well, and one of the two may be old",
            "keep the one that is meant"
        );
        return null;
    }

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
        catch (FileNotFoundException)
        {
            faults.Add(whole, "this is a link to a file that is not there", $"put a file named {Path.GetFileName(name)} in its place");
            return null;
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
        if (WorkbookFile.Is(name))
        {
            return WorkbookFile.Read(name, bytes, faults) is { } rows ? new FileText(name, "") { Rows = rows } : null;
        }

        if (bytes.AsSpan().StartsWith("PK\u0003\u0004"u8))
        {
            faults.Add(
                new SourcePlace(name, 0, 0),
                "this is a workbook or an archive, not a text file",
                name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)
                    ? $"name a workbook {Path.GetFileName(FileNames.WorkbookOf(name))}, or save the sheet as \"CSV UTF-8\""
                    : "save it as text in UTF-8"
            );
            return null;
        }

        if (bytes.AsSpan().StartsWith(s_utf16Little) || bytes.AsSpan().StartsWith(s_utf16Big) || LooksLikeUtf16(bytes))
        {
            faults.Add(
                new SourcePlace(name, 1, 1),
                "the text is in the UTF-16 encoding",
                "save it as UTF-8 (in a spreadsheet: \"CSV UTF-8\")"
            );
            return null;
        }

        var start = bytes.AsSpan().StartsWith(s_utf8Mark) ? 3 : 0;
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

    // Without its mark: Latin letters have a zero byte each, all on one side.
    private static bool LooksLikeUtf16(ReadOnlySpan<byte> bytes)
    {
        var looked = bytes[..Math.Min(bytes.Length & ~1, 1000)];
        Span<int> zeros = [0, 0];
        for (var at = 0; at < looked.Length; at++)
        {
            zeros[at & 1] += looked[at] == 0 ? 1 : 0;
        }

        return looked.Length > 0 && Math.Max(zeros[0], zeros[1]) * 4 > looked.Length && Math.Min(zeros[0], zeros[1]) * 20 < looked.Length;
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
        if (Path.GetFileName(name) is not { Length: > 0 } || name.Contains('/'))
        {
            return $"add {name}, or check its name";
        }

        // A sheet of another kind is not read under another name either.
        var (names, workbook) = (NamesIn(""), FileNames.WorkbookOf(name));
        var other = names.FirstOrDefault(each =>
            s_otherSheets.Contains(Path.GetExtension(each), StringComparer.OrdinalIgnoreCase)
            && Spelling.IsSame(Path.GetFileNameWithoutExtension(each), Path.GetFileNameWithoutExtension(name))
        );
        var near = other ?? Spelling.Nearest(name, names) ?? Spelling.Nearest(workbook, names);
        return near is null ? $"add {name}, or check its name"
            : other is not null ? $"save the sheet of {Words.Quote(near)} as {FileNames.WorkbookOf(name)} or {name}"
            : WorkbookFile.Is(near) ? $"name {Words.Quote(near)} {FileNames.WorkbookOf(name)}"
            : $"did you mean {Words.Quote(near)}";
    }

    /// <inheritdoc cref="IFolderFiles.IsHidden"/>
    public bool IsHidden(string name) => files.IsHidden(name);

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
