using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>
/// The CSV table of fuel and electricity: a row a month and one for the season of each house, one for the season of each bank of mats.
/// </summary>
internal static class FuelTable
{
    /// <summary>What stands in the column of months for the whole season.</summary>
    public const string WholeSeason = "season";

    public static CsvTable Write(StudyResult result)
    {
        var table = new CsvTable([
            new("place", "text", "house id, or space id of the mats"),
            new("kind", "text", "`house` or `mat`"),
            new("month", "year-month", "month of the play, as `2027-04`; `season` for the whole"),
            new("fuel", "text", "fuel id: `propane`, `oil`, `gas`, `electricity` or `wood`"),
            new("unit", "text", "unit of the amounts"),
            new("price", "money", "price of a unit; blank when not given"),
            FigureColumns.Estimate("amount", "units", "fuel or electricity used"),
            FigureColumns.Estimate("cost", "money", "what it costs; blank when no price is given"),
            FigureColumns.Seasons,
        ]);
        foreach (var house in result.Houses)
        {
            if (house is not { Fuel: { } season, House.Heat: { } heat })
            {
                continue;
            }

            var measure = new FuelMeasure(heat.Fuel, result.Plan.Scenario.Units);
            void Row(string month, Estimate bought)
            {
                table
                    .Text(house.House.Id)
                    .Text("house")
                    .Text(month)
                    .Text(heat.Fuel.Id)
                    .Text(measure.Unit)
                    .Number(heat.Price is { } price ? measure.Price(price) : double.NaN);
                Amounts(table, measure.Of(bought), Spreads.Times(bought, heat.Price ?? double.NaN), result.Seasons);
            }

            foreach (var month in house.Months)
            {
                Row(MonthOf(month), month.Fuel);
            }

            Row(WholeSeason, season);
        }

        foreach (var mats in result.MatPower)
        {
            var price = mats.Space.Power?.Price ?? double.NaN;
            table.Text(mats.Space.Id).Text("mat").Text(WholeSeason).Text("electricity").Text("kWh").Number(price);
            Amounts(table, mats.KilowattHours, Spreads.Times(mats.KilowattHours, price), result.Seasons);
        }

        return table;
    }

    /// <summary>A month as year and month: 2027-04.</summary>
    internal static string MonthOf(MonthFuel month) => month.Month.ToString("yyyy-MM", null);

    private static void Amounts(CsvTable table, Estimate amount, Estimate cost, int seasons)
    {
        FigureColumns.Write(table, amount);
        FigureColumns.Write(table, cost);
        table.Number(seasons);
    }
}
