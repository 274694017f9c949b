using System.Globalization;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Logbook;

/// <summary>Checks the trays and flats of a row: whether it names what it must, and whether its batch stands in such.</summary>
internal sealed class LogPieces(CellReader cells, LogNames names)
{
    private static readonly string[] s_pieces = ["flats", "trays"];

    /// <summary>Checks a row.</summary>
    public void Check(LogRow line, LogEntry entry, LogNeeds needs)
    {
        var (trays, flats) = (line.At("trays"), line.At("flats"));
        var word = LogFields.What[entry.What];
        var batch = names.BatchOf(entry.BatchId);
        switch (needs.Pieces)
        {
            case PiecesNeed.Both:
                PottedUp(line, entry, batch);
                return;
            case PiecesNeed.Either when !trays.IsBlank && !flats.IsBlank:
                cells.Refuse(
                    flats,
                    $"is {Words.Quote(flats.Text)}, and trays is {Words.Quote(trays.Text)} in the same row",
                    "write a row for the trays and one for the flats"
                );
                return;
            case PiecesNeed.Either when trays.IsBlank && flats.IsBlank:
                var areFlats = batch is { Method: Method.PotUp } && entry.What == LogKind.Sown;
                var (cell, both, pieces) = (areFlats, batch?.Method) switch
                {
                    (true, _) => (flats, "", "flats"),
                    (_, Method.Direct) => (trays, "", "trays"),
                    _ => (trays, ", and flats too", "trays or flats"),
                };
                cells.Refuse(cell, $"is empty{both}", $"write how many {pieces} {needs.Verb}");
                return;
            case PiecesNeed.Trays when trays.IsBlank:
                cells.Refuse(trays, "is empty", $"write how many trays {needs.Verb}");
                break;
            case PiecesNeed.None:
                RefuseGiven(trays, word);
                RefuseGiven(flats, word);
                return;
        }

        if (needs.Pieces is PiecesNeed.Trays or PiecesNeed.MayTrays)
        {
            RefuseGiven(flats, word);
        }

        RefuseZero(trays, entry.Trays, entry.What);
        RefuseZero(flats, entry.Flats, entry.What);
        Kind(line, entry, batch);
    }

    private void PottedUp(LogRow line, LogEntry entry, BatchOrder? batch)
    {
        if (batch is { Method: Method.Direct })
        {
            cells.Refuse(
                line.At("what"),
                $"is \"potted up\", and {Words.Quote(batch.Id)} is sown in the trays in which it goes to the field",
                "name another batch, or write moved"
            );
            return;
        }

        foreach (var column in s_pieces.Where(column => line.At(column).IsBlank))
        {
            cells.Refuse(
                line.At(column),
                "is empty",
                column == "flats" ? "write how many flats were used up, 0 for none" : "write how many trays were filled, 0 for none"
            );
        }

        if (entry is { Trays: 0, Flats: 0 })
        {
            cells.Refuse(line.At("trays"), "is 0, and flats too", "write how many trays were filled, or delete the row");
        }
    }

    // A batch that is to be potted up is sown in flats; any other never stands in them.
    private void Kind(LogRow line, LogEntry entry, BatchOrder? batch)
    {
        if (batch is { Method: Method.Direct } && entry.Flats is { } flats)
        {
            cells.Refuse(
                line.At("flats"),
                $"is {flats.ToString(CultureInfo.InvariantCulture)}, and {Words.Quote(batch.Id)} stands in trays",
                "write the number in trays"
            );
        }
        else if (batch is { Method: Method.PotUp } && entry is { What: LogKind.Sown, Trays: { } trays })
        {
            cells.Refuse(
                line.At("trays"),
                $"is {trays.ToString(CultureInfo.InvariantCulture)}, and {Words.Quote(batch.Id)} is sown in flats",
                "write the number in flats"
            );
        }
    }

    private void RefuseZero(Cell cell, int? count, LogKind what)
    {
        if (count == 0 && what != LogKind.Counted)
        {
            cells.Refuse(cell, "is 0", "write 1 or more, or delete the row; where none are left, write counted");
        }
    }

    private void RefuseGiven(Cell cell, string word) =>
        cells.RefuseWhereGiven(
            cell,
            $"is {Words.Quote(cell.Text)}, and a row {Words.Quote(word)} says nothing of it",
            "leave it empty, or mend what was done"
        );
}
