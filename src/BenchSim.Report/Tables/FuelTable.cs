using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tables;

/// <summary>The CSV table of fuel and electricity: a row a month and one for the season of each house, one for the season of each bank of mats.</summary>
internal static class FuelTable
{
    /// <summary>What stands in the column of months for the whole season.</summary>
    public const string WholeSeason = "season";

    public static byte[] Write(StudyResult result)
    {
        var table = new CsvTable([
            "place",
            "kind",
            "month",
            "fuel",
            "unit",
            "price",
            .. FigureColumns.Estimates("amount"),
            .. FigureColumns.Estimates("cost"),
            "seasons",
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

        return table.ToBytes();
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
