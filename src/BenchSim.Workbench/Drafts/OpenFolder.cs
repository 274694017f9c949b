using System.Collections.Immutable;
using System.Text;
using BenchSim.Answers.Agreed;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Folder;
using BenchSim.Folder.Editing;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;

namespace BenchSim.Workbench.Drafts;

/// <summary>The scenario folder that was opened. Nothing outside it is read or written: no link in it is followed.</summary>
internal sealed class OpenFolder
{
    private const long LargestText = 10_000_000;
    private const long LargestRecord = 50_000_000;

    // Keys of [weather] that name a file.
    private static readonly string[] s_weatherFiles = ["file", "observed", "forecast"];

    private static readonly UTF8Encoding s_strict = new(false, true);

    private readonly BesideFiles _beside;

    /// <summary>Opens a folder.</summary>
    /// <param name="directory">Its path.</param>
    /// <exception cref="RefusedException">There is no such folder, or no site.toml in it.</exception>
    public OpenFolder(string directory)
    {
        Directory = Path.TrimEndingDirectorySeparator(Path.GetFullPath(directory));
        if (!System.IO.Directory.Exists(Directory))
        {
            throw new RefusedException(
                $"There is no folder {PlainText.Quote(directory)}. Check the name, or leave it out to lay a new one down."
            );
        }

        if (!File.Exists(Path.Combine(Directory, FileNames.Site)))
        {
            throw new RefusedException(
                $"There is no {FileNames.Site} in {PlainText.Quote(directory)}, so it holds no plan that could be opened. "
                    + "Check the name; or leave it out, and the page asks ten questions and lays a new folder down."
            );
        }

        _beside = new BesideFiles(PathOf);
    }

    /// <summary>Its full path.</summary>
    public string Directory { get; }

    /// <summary>Its own name.</summary>
    public string Name => Path.GetFileName(Directory) is { Length: > 0 } name ? name : Directory;

    /// <summary>The path of something in the folder.</summary>
    /// <param name="name">Name relative to the folder, with forward slashes.</param>
    /// <exception cref="IOException">The name leads out of the folder, or over a link.</exception>
    public string PathOf(string name)
    {
        if (!PlainNames.IsPlain(name))
        {
            throw new IOException($"{PlainText.Quote(name)} is no plain name of a file in the folder");
        }

        var path = Directory;
        foreach (var part in name.Split('/'))
        {
            path = Path.Combine(path, part);
            if (new FileInfo(path).LinkTarget is not null)
            {
                throw new IOException($"{PlainText.Quote(name)} is a link, and links are not followed here");
            }
        }

        return path;
    }

    /// <summary>
    /// The texts that may be changed. A file that is no text, or cannot be read, is left out: reading the scenario tells why.
    /// </summary>
    public ImmutableSortedDictionary<string, string> ReadTexts()
    {
        var texts = Texts.None.ToBuilder();
        foreach (var name in Texts.Names)
        {
            if (TextOf(name) is { } text)
            {
                texts[name] = text;
            }
        }

        return texts.ToImmutable();
    }

    /// <summary>The files that a scenario is read from: texts, and beside them what no page changes.</summary>
    /// <param name="texts">The texts.</param>
    public ImmutableArray<InputFile> Files(ImmutableSortedDictionary<string, string> texts)
    {
        var files = ImmutableArray.CreateBuilder<InputFile>();
        files.AddRange(texts.Select(text => InputFile.Of(text.Key, text.Value)));
        string[] others = [.. Texts.Names.Where(name => !texts.ContainsKey(name)), FileNames.Log];
        foreach (var name in others.Concat(FileNames.Tables.Select(FileNames.WorkbookOf)))
        {
            Add(name, LargestText);
        }

        foreach (var key in texts.Of(FileNames.Site) is null ? [] : s_weatherFiles)
        {
            if (TomlEdit.Value(texts[FileNames.Site], "weather", 0, key) is { } written)
            {
                var record = TomlEdit.Plain(written);
                Add(record, LargestRecord);
                Add(FileNames.WorkbookOf(record), LargestRecord);
            }
        }

        return files.ToImmutable();

        void Add(string name, long largest)
        {
            if (!files.Any(file => string.Equals(file.Name, name, StringComparison.Ordinal)) && _beside.Read(name, largest) is { } file)
            {
                files.Add(file);
            }
        }
    }

    /// <summary>The scenario that texts make.</summary>
    /// <param name="texts">The texts.</param>
    /// <param name="kept">Keeps what does not change from one opening to the next; null to keep nothing.</param>
    public ScenarioSource Source(ImmutableSortedDictionary<string, string> texts, KeptOpenings? kept = null) =>
        ScenarioSource.Files(Files(texts), Names(), kept);

    /// <summary>The scenario that texts make, with what is kept of it in the folder: the plans that were agreed.</summary>
    /// <param name="texts">The texts.</param>
    /// <exception cref="RefusedException">A link stands among what is kept.</exception>
    public ScenarioSource SourceHere(ImmutableSortedDictionary<string, string> texts)
    {
        try
        {
            RefuseLinks(PathOf(Agreement.FolderName));
        }
        catch (IOException refused)
        {
            throw new RefusedException($"What was agreed is not read: {refused.Message}.");
        }

        return ScenarioSource.Files(Files(texts), Names(), directory: Directory);
    }

    private static void RefuseLinks(string path)
    {
        var folder = new DirectoryInfo(path);
        if (
            folder.Exists
            && folder.EnumerateFileSystemInfos("*", SearchOption.AllDirectories).FirstOrDefault(each => each.LinkTarget is not null)
                is { } link
        )
        {
            throw new IOException($"{PlainText.Quote(link.Name)} is a link, and links are not followed here");
        }
    }

    /// <summary>Names of all that stands in the folder, read or not: a name that is nearly right is told.</summary>
    public ImmutableArray<string> Names()
    {
        try
        {
            return [.. System.IO.Directory.EnumerateFiles(Directory).Select(path => Path.GetFileName(path))];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Names of the variants in the folder, in order.</summary>
    public ImmutableArray<string> Variants()
    {
        try
        {
            var folder = new DirectoryInfo(PathOf(FileNames.VariantFolder));
            return folder.Exists
                ? [.. folder.EnumerateFiles().Select(file => FileNames.VariantOf(file.Name)).OfType<string>().Order(StringComparer.Ordinal)]
                : [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>The workbook that a table stands in; null where it stands in a text, or is not there.</summary>
    /// <param name="table">Name of the table as a CSV file.</param>
    public CsvOutline? WorkbookOf(string table) => _beside.Table(FileNames.WorkbookOf(table), LargestText);

    /// <summary>How often a file that no page changes was found to be another than before.</summary>
    public long ChangesBeside() => _beside.Changes();

    /// <summary>Writes a file whole or not at all.</summary>
    /// <param name="name">Name relative to the folder.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <exception cref="IOException">It could not be written, and is as it was.</exception>
    public void Write(string name, ReadOnlySpan<byte> bytes) => TargetFile.Write(PathOf(name), bytes, () => { }, CancellationToken.None);

    /// <summary>Writes a text whole or not at all.</summary>
    public void Write(string name, string text) => Write(name, Encoding.UTF8.GetBytes(text));

    /// <summary>The text of a file; null where it is not there, cannot be read or is no text.</summary>
    public string? TextOf(string name)
    {
        try
        {
            return BytesOf(name, LargestText) is { } bytes ? s_strict.GetString(bytes) : null;
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private byte[]? BytesOf(string name, long largest)
    {
        try
        {
            return PlainFile.Read(PathOf(name), largest, out _);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
