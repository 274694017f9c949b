using System.Collections.Immutable;
using BenchSim.Report.Labels;
using BenchSim.Report.Tables;

namespace BenchSim.Report.Papers;

/// <summary>What stands on the labels as CSV, for those who print labels with a program of their own.</summary>
internal static class LabelTable
{
    private static readonly ImmutableArray<Column> s_columns =
    [
        new("batch", "text", "batch id"),
        new("crop", "text", "crop"),
        new("variety", "text", "variety; blank where the plan names none"),
        new("grower", "text", "grower"),
        new("kind", "text", "tray, flat or potted tray"),
        new("number", "number", "which of the batch's it is, from 1"),
        new("of", "number", "how many there are"),
        new("filled", "date", "day on which it is filled"),
        new("sow", "date", "planned sow date"),
        new("pot_up", "date", "planned pot-up date; blank where none"),
        new("set_out", "date", "planned set-out date"),
        new("code", "text", "what the square code holds"),
        new("short_code", "text", "short code of the batch, and behind a stroke the mark of its grower where there are several"),
    ];

    /// <summary>One line a label.</summary>
    public static CsvTable Write(PaperContent content)
    {
        var table = new CsvTable(s_columns);
        foreach (var label in content.Labels)
        {
            table
                .Text(label.Batch.Order.Id)
                .Text(label.Batch.Crop.Name)
                .Text(label.Batch.Order.Variety)
                .Text(label.Batch.Order.Grower)
                .Text(label.What)
                .Number(label.Number)
                .Number(label.Of)
                .Date(label.FilledOn)
                .Date(label.Batch.SowOn)
                .Date(label.Batch.PotUpOn)
                .Date(label.Batch.SetOutOn)
                .Text(label.Code)
                .Text(label.Short);
        }

        return table;
    }
}
