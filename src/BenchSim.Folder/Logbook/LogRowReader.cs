using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Site;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Logbook;

/// <summary>Reads a row of log.csv: what stands in its cells, and whether it has what rows of its kind need.</summary>
internal sealed class LogRowReader(CellReader cells, SiteDraft site, LogNames names)
{
    private const int MostFuel = 100_000_000;

    private readonly LogPieces _pieces = new(cells, names);

    /// <summary>Reads a row.</summary>
    public LogRow Read(CsvRow row)
    {
        var before = cells.Faults.Count;
        var entry = row.Read(LogFields.Table, LogFields.Nothing, cells);
        var line = new LogRow(row, entry);
        if (entry.BatchId is { } batch)
        {
            entry = entry with { BatchId = names.Batch(row["batch"], batch) };
        }

        entry = Counted(row, Places(row, entry));
        Dates(row, entry);
        if (entry.What != LogKind.Unsaid)
        {
            var needs = LogNeeds.For(entry.What);
            Needed(line, needs, entry.What);
            _pieces.Check(line, entry, needs);
            Stages(row, entry);
        }

        return line with
        {
            Entry = entry with { Place = line.At("date").Place },
            IsGood = cells.Faults.Count == before,
            Batch = entry.BatchId is { } id ? (names.BatchOf(id) is null ? names.NearBatch(id) : id) : null,
        };
    }

    private LogEntry Places(CsvRow row, LogEntry entry)
    {
        var mayBeHouse = LogNeeds.MayBeHouse(entry.What);
        var from = entry.From is { } one ? names.Space(row["from"], one, mayBeHouse: false) : null;
        var space = entry.Space is { } other ? names.Space(row["space"], other, mayBeHouse) : null;
        if (LogNeeds.IsSpaceFrom(entry.What) && space is not null)
        {
            if (from is not null && !string.Equals(from, space, StringComparison.Ordinal))
            {
                cells.Refuse(
                    row["space"],
                    $"is {Words.Quote(space)}, and from is {Words.Quote(from)}",
                    "write where they stood, and leave the other empty"
                );
            }

            (from, space) = (space, null);
        }
        else if (entry.What == LogKind.Moved && from is not null && string.Equals(from, space, StringComparison.Ordinal))
        {
            cells.Refuse(row["space"], $"is {Words.Quote(from)}, and so is from", "write where they went, or delete the row");
        }

        return entry with
        {
            From = from,
            Space = space,
        };
    }

    private LogEntry Counted(CsvRow row, LogEntry entry)
    {
        var cell = row["count"];
        if (entry.What is LogKind.Up or LogKind.Good && cell.Text.Any(char.IsLetter))
        {
            return entry with { Word = Word(cell, entry.Of) };
        }

        var count = entry.What switch
        {
            LogKind.Low => cells.Temperature(cell),
            LogKind.Fuel or LogKind.Unsaid => cells.Number(cell, 0, MostFuel),
            _ => cells.Whole(cell, 0, LogFields.MostCounted),
        };
        if (entry.What is LogKind.Up or LogKind.Good && count > entry.Of)
        {
            cells.Refuse(
                cell,
                $"is {Words.Number(count.Value)}, and of is {Words.Number(entry.Of.Value)}",
                "write in of how many were looked at, and in count how many of them were there"
            );
        }

        return entry with
        {
            Count = count,
        };
    }

    private CountWord Word(Cell cell, int? of)
    {
        if (!cells.TryChoose(cell, CountWords.All, "how many, or few, half, most or all", out var word))
        {
            return CountWord.None;
        }

        if (of < CountWords.Fewest)
        {
            cells.Refuse(
                cell,
                $"is {Words.Quote(cell.Text)}, and of is {Words.Number(of.Value)}",
                $"write how many: a word is read of {CountWords.Fewest} or more"
            );
        }

        return word;
    }

    private void Dates(CsvRow row, LogEntry entry)
    {
        if (entry.Date != default && entry.Date < site.Window?.Opens)
        {
            cells.Refuse(
                row["date"],
                $"is {Words.Date(entry.Date)}, before the season opens on {Words.Date(site.Window.Opens)}",
                "mend the date, or opens of [season] in site.toml"
            );
        }

        if (entry.Date != default && entry.Entered < entry.Date)
        {
            cells.Refuse(
                row["entered"],
                $"is {Words.Date(entry.Entered.Value)}, before the day it tells of, {Words.Date(entry.Date)}",
                "mend one of the two dates"
            );
        }
    }

    private void Needed(LogRow line, LogNeeds needs, LogKind what)
    {
        var word = LogFields.What[what];
        Needed(line, word, "batch", needs.Batch, "name the batch");
        Needed(line, word, "space", needs.Space, what == LogKind.Low ? "write outdoors, or the house" : "name the space");
        Needed(line, word, "from", needs.From, "");
        Needed(line, word, "count", needs.Count, what == LogKind.Low ? "write the temperature" : "write how many, or how much");
        Needed(line, word, "of", needs.Of, "write how many seeds or cells were looked at");
        Needed(line, word, "note", needs.Note, what == LogKind.Fuel ? "write the unit, such as gallons" : "write what happened");
        if (what is LogKind.Covered or LogKind.CarriedIn && line.Row["batch"].IsBlank && line.Row["space"].IsBlank)
        {
            cells.Refuse(line.At("space"), "is empty, and batch too", $"name the space or the batch that was {word}");
        }
    }

    private void Needed(LogRow line, string word, string column, Need need, string instead)
    {
        var cell = line.At(column);
        if (need == Need.Must && cell.IsBlank)
        {
            cells.Refuse(cell, $"is empty, and a row {Words.Quote(word)} needs it", instead);
        }
        else if (need == Need.None)
        {
            cells.RefuseWhereGiven(
                cell,
                $"is {Words.Quote(cell.Text)}, and a row {Words.Quote(word)} says nothing of it",
                "leave it empty, or mend what was done"
            );
        }
    }

    // Seed is sown on mats and benches, flats stand there, and nothing grows in a chamber.
    private void Stages(CsvRow row, LogEntry entry)
    {
        if (
            names.SpaceOf(entry.Space) is not { } space
            || entry.What is not (LogKind.Sown or LogKind.Moved or LogKind.Counted or LogKind.PottedUp)
        )
        {
            return;
        }

        var areFlats = entry.What != LogKind.PottedUp && entry.Flats is not null;
        if (space.Kind == SpaceKind.Table && (entry.What == LogKind.Sown || areFlats) && entry is not { Flats: 0 })
        {
            cells.Refuse(
                row["space"],
                $"is {Words.Quote(space.Id)}, a hardening table, where {(areFlats ? "no flats stand" : "nothing is sown")}",
                "name the mat or the bench"
            );
        }

        var isPotted = entry.What != LogKind.Sown && !areFlats && names.BatchOf(entry.BatchId)?.Method == Method.PotUp;
        if (space.IsChamber && isPotted && entry.Trays > 0)
        {
            cells.Refuse(row["space"], $"is {Words.Quote(space.Id)}, a chamber, where no potted trays stand", "name the bench");
        }
    }
}
