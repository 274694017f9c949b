using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV tables of a report. Every column is described in docs/report.md.</summary>
internal static class TableFiles
{
    /// <summary>Places by date and space.</summary>
    public static byte[] Daily(StudyResult result)
    {
        DailyFigure<SpaceSeason>[] figures = [.. SpaceFigures.All.OfType<DailyFigure<SpaceSeason>>()];
        var table = new CsvTable(["date", "space", "places", .. figures.SelectMany(figure => FigureColumns.Days(figure.Id))]);
        for (var day = 0; day < result.Plan.Days; day++)
        {
            foreach (var space in result.Spaces)
            {
                table.Date(result.Plan.FirstDay.AddDays(day)).Text(space.Space.Id).Number(space.Places[day]);
                foreach (var figure in figures)
                {
                    FigureColumns.Write(table, space[figure][day]);
                }
            }
        }

        return table.ToBytes();
    }

    /// <summary>One row a space.</summary>
    public static byte[] Spaces(StudyResult result)
    {
        string[] header =
        [
            "space",
            "name",
            "kind",
            "house",
            "places_first_day",
            "places_most",
            .. FigureColumns.Names(SpaceFigures.All, result.Spaces.Length),
            "seasons",
        ];
        var table = new CsvTable(header);
        foreach (var space in result.Spaces)
        {
            table.Text(space.Space.Id).Text(space.Space.Name).Text(Trade.Code(space.Space.Kind)).Text(space.Space.HouseId ?? "");
            table.Number(space.Space.Places).Number(space.Places.DefaultIfEmpty(0).Max());
            FigureColumns.Write(table, SpaceFigures.All, space);
            table.Number(result.Seasons);
        }

        return table.ToBytes();
    }

    /// <summary>One row a grower.</summary>
    public static byte[] Growers(StudyResult result)
    {
        string[] header =
        [
            "grower",
            "batches",
            "share",
            "fuel_share",
            "cost_mean",
            "cost_share",
            .. FigureColumns.Names(GrowerFigures.All, result.Spaces.Length),
            "seasons",
        ];
        var table = new CsvTable(header);
        foreach ((var grower, var cost) in result.Growers.Zip(GrowerCost.Of(result)))
        {
            table
                .Text(grower.Grower)
                .Number(grower.Batches)
                .Number(grower.Share)
                .Number(grower.FuelShare)
                .Number(cost.Amount)
                .Number(cost.Share);
            FigureColumns.Write(table, GrowerFigures.All, grower);
            table.Number(result.Seasons);
        }

        return table.ToBytes();
    }
}
