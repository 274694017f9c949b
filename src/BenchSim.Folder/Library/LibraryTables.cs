using System.Collections.Immutable;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Library;

/// <summary>Reads a table of values and its table of sources from the resources of this assembly.</summary>
internal static class LibraryTables
{
    /// <summary>Id in a table of sources that stands for every row without a source of its own for that column.</summary>
    internal const string EveryRow = "*";

    /// <summary>Reads the rows of one table with their sources.</summary>
    /// <param name="valuesFile">Name of the table of values.</param>
    /// <param name="sourcesFile">Name of the table of sources: id, column, trust, source.</param>
    /// <exception cref="InvalidDataException">A table is broken, which is a fault of the program and not of a user.</exception>
    internal static ImmutableArray<LibraryRow> Read(string valuesFile, string sourcesFile)
    {
        var sources = ReadSources(sourcesFile);
        var lines = ReadLines(valuesFile);
        var header = lines[0];
        return [.. lines.Skip(1).Select(cells => ToRow(header, cells, sources))];
    }

    /// <summary>Reads one table as lines of cells; the first line is the header.</summary>
    internal static List<string[]> ReadLines(string file)
    {
        using var stream = typeof(LibraryTables).Assembly.GetManifestResourceStream($"BenchSim.Folder.Library.{file}")
            ?? throw new InvalidDataException($"The built-in table {file} is missing.");
        using var reader = new StreamReader(stream);
        List<string[]> lines = [];
        while (reader.ReadLine() is { } line)
        {
            var cells = SplitLine(line);
            if (lines.Count > 0 && cells.Length != lines[0].Length)
            {
                throw new InvalidDataException(
                    $"The built-in table {file} has {cells.Length} cells on line {lines.Count + 1}, not {lines[0].Length}."
                );
            }

            lines.Add(cells);
        }

        return lines;
    }

    // The built-in tables are ours: no cell holds a line break, so a full CSV reader (and its start-up cost) is not needed.
    private static string[] SplitLine(string line)
    {
        List<string> cells = [];
        var cell = new System.Text.StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (c == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        cells.Add(cell.ToString());
        return [.. cells];
    }

    private static Dictionary<(string Id, string Column), Provenance> ReadSources(string file)
    {
        Dictionary<(string Id, string Column), Provenance> sources = [];
        foreach (var cells in ReadLines(file).Skip(1))
        {
            if (!sources.TryAdd((cells[0], cells[1]), new Provenance(ToTrust(cells[2]), cells[3])))
            {
                throw new InvalidDataException($"The built-in table {file} names the source of {cells[0]} {cells[1]} twice.");
            }
        }

        return sources;
    }

    private static Trust ToTrust(string word) =>
        word switch
        {
            "seen" => Trust.Seen,
            "derived" => Trust.Derived,
            "borrowed" => Trust.Borrowed,
            "common practice" => Trust.CommonPractice,
            "memory" => Trust.Memory,
            "assumption" => Trust.Assumption,
            _ => throw new InvalidDataException($"A built-in table says \"{word}\" where it should say how far a value may be trusted."),
        };

    private static LibraryRow ToRow(string[] header, string[] cells, Dictionary<(string Id, string Column), Provenance> sources)
    {
        var values = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var origins = ImmutableSortedDictionary.CreateBuilder<string, Provenance>(StringComparer.Ordinal);
        var id = cells[0];
        for (var i = 0; i < header.Length; i++)
        {
            var column = header[i];
            values.Add(column, cells[i]);
            if (cells[i].Length > 0 && column is not ("id" or "name"))
            {
                origins.Add(column, SourceOf(id, column, sources));
            }
        }

        return new LibraryRow(id, values.ToImmutable(), origins.ToImmutable());
    }

    private static Provenance SourceOf(string id, string column, Dictionary<(string Id, string Column), Provenance> sources) =>
        sources.GetValueOrDefault((id, column))
        ?? sources.GetValueOrDefault((EveryRow, column))
        ?? throw new InvalidDataException($"The built-in library does not say where {column} of {id} comes from.");
}
