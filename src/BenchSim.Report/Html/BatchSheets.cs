using BenchSim.Report.Charts;

namespace BenchSim.Report.Html;

/// <summary>Cuts the chart of the batches into pieces that fit a sheet of paper with letters that can be read.</summary>
internal static class BatchSheets
{
    /// <summary>Most rows of one piece: a grower's name counts as one.</summary>
    public const int Rows = 40;

    /// <summary>The pieces in order. A grower stays whole where there is room for that.</summary>
    public static (string Grower, BatchBar[] Bars)[][] Of(IReadOnlyList<(string Grower, BatchBar[] Bars)> growers)
    {
        var sheets = new List<(string, BatchBar[])[]>();
        var sheet = new List<(string, BatchBar[])>();
        var free = Rows;
        foreach ((var grower, var bars) in growers)
        {
            if (bars.Length + 1 > free)
            {
                Turn();
            }

            foreach (var part in bars.Chunk(Rows - 1))
            {
                if (part.Length + 1 > free)
                {
                    Turn();
                }

                sheet.Add((grower, part));
                free -= part.Length + 1;
            }
        }

        if (sheet.Count > 0 || sheets.Count == 0)
        {
            sheets.Add([.. sheet]);
        }

        return [.. sheets];

        void Turn()
        {
            if (sheet.Count > 0)
            {
                sheets.Add([.. sheet]);
            }

            sheet.Clear();
            free = Rows;
        }
    }
}
