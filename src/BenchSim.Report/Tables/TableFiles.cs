using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV tables of a report. Each column is described where it is written.</summary>
internal static class TableFiles
{
    /// <summary>Places by date and space.</summary>
    public static CsvTable Daily(StudyResult result)
    {
        DailyFigure<SpaceSeason>[] figures = [.. SpaceFigures.All.OfType<DailyFigure<SpaceSeason>>()];
        var table = new CsvTable([
            new("date", "date", "day of the play"),
            new("space", "text", "space id"),
            new("places", "places", "places there are on the day"),
            .. figures.Select(figure => FigureColumns.Spread(figure.Id, figure.Unit, figure.Meaning)),
        ]);
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

        return table;
    }

    /// <summary>One row a space.</summary>
    public static CsvTable Spaces(StudyResult result)
    {
        var table = new CsvTable([
            new("space", "text", "space id"),
            new("name", "text", "its name"),
            new("kind", "text", "`mat`, `chamber`, `bench` or `table`"),
            new("house", "text", "house it stands in; blank outdoors"),
            new("places_first_day", "places", "places on the first day"),
            new("places_most", "places", "most places on any day"),
            .. FigureColumns.Of(SpaceFigures.All, result.Spaces),
            FigureColumns.Seasons,
        ]);
        foreach (var space in result.Spaces)
        {
            table.Text(space.Space.Id).Text(space.Space.Name).Text(Trade.Code(space.Space)).Text(space.Space.HouseId ?? "");
            table.Number(space.Space.Places).Number(space.Places.DefaultIfEmpty(0).Max());
            FigureColumns.Write(table, SpaceFigures.All, space);
            table.Number(result.Seasons);
        }

        return table;
    }

    /// <summary>One row a grower.</summary>
    public static CsvTable Growers(StudyResult result)
    {
        var table = new CsvTable([
            new("grower", "text", "grower"),
            new("batches", "batches", "batches of the grower"),
            new("share", "0 to 1", "share of all tray-days (mean of the grower over mean of all)"),
            new("fuel_share", "0 to 1", "share of the fuel; blank where no house has fuel"),
            new(
                "cost_mean",
                "currency",
                "mean cost of fuel and of the mats' electricity that falls to the grower; blank where a price is missing"
            ),
            new("cost_share", "0 to 1", "share of that cost; blank where a price is missing or there is no cost"),
            .. FigureColumns.Of(GrowerFigures.All, result.Spaces),
            FigureColumns.Seasons,
        ]);
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

        return table;
    }
}
