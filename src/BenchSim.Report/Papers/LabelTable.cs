using BenchSim.Report.Labels;
using BenchSim.Report.Tables;

namespace BenchSim.Report.Papers;

/// <summary>What stands on the labels as CSV, for those who print labels with a program of their own.</summary>
internal static class LabelTable
{
    /// <summary>One line a label.</summary>
    public static byte[] Write(PaperContent content)
    {
        var table = new CsvTable("batch", "crop", "grower", "kind", "number", "of", "filled", "sow", "pot_up", "set_out", "code");
        foreach (var label in content.Labels)
        {
            table
                .Text(label.Batch.Order.Id)
                .Text(label.Batch.Crop.Name)
                .Text(label.Batch.Order.Grower)
                .Text(label.What)
                .Number(label.Number)
                .Number(label.Of)
                .Date(label.FilledOn)
                .Date(label.Batch.SowOn)
                .Date(label.Batch.PotUpOn)
                .Date(label.Batch.SetOutOn)
                .Text(label.Code);
        }

        return table.ToBytes();
    }
}
