using BenchSim.Report.Tables;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Tables;

public class FuelTableTests
{
    private static readonly Estimate s_fuel = new(400, 8, 340, 398, 460, 470, 300, 500, 40);

    [Fact]
    public void A_house_has_a_row_a_month_and_one_for_the_season()
    {
        // At 2.50 a gallon: 400 gal cost 1,000, half the width 8 gal is 20.
        var rows = Rows(With(house => house));

        Assert.Equal("house,house,2027-03,propane,gal,2.5,400,8,340,398,460,470,500,1000,20,850,995,1150,1175,1250,40", rows[1]);
        Assert.Equal("house,house,season,propane,gal,2.5,400,8,340,398,460,470,500,1000,20,850,995,1150,1175,1250,40", rows[2]);
        Assert.Equal(3, rows.Length);
    }

    [Fact]
    public void Without_a_price_cost_is_blank() =>
        Assert.Equal(
            "house,house,season,propane,gal,,400,8,340,398,460,470,500,,,,,,,,40",
            Rows(With(house => house with { Heat = house.Heat! with { Price = null } }))[2]
        );

    [Fact]
    public void A_house_without_fuel_has_no_row()
    {
        var result = With(house => house);

        Assert.Single(Rows(result with { Houses = [result.Houses[0] with { Fuel = null, Months = [] }] }));
    }

    private static StudyResult With(Func<House, House> change)
    {
        var result = SyntheticStudy.Tiny();
        var house = new HouseResult
        {
            House = change(result.Plan.Scenario.Houses[0]),
            DaysOpen = s_fuel,
            Fuel = s_fuel,
            Months = [new MonthFuel(new DateOnly(2027, 3, 1), s_fuel)],
        };
        return result with { Houses = [house], MatPower = [] };
    }

    private static string[] Rows(StudyResult result) => [.. CsvRows.Of(FuelTable.Write(result)).Select(row => string.Join(',', row))];
}
