using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Counting;
using BenchSim.Study.Figures;
using BenchSim.Study.Results;

namespace BenchSim.Study.Tests;

/// <summary>
/// Fuel by hand: a gallon of propane holds 96.4870 MJ = 26,801.944 Wh (tests/Published/data/fuels.csv); at 80 % it gives 21,441.556 Wh.
/// </summary>
public class FuelTests
{
    private const long GallonWattHours = 21_442;

    private static readonly SeasonPlan s_plan = Heated(Plans.Small(days: 40));

    [Fact]
    public void Fuel_is_heat_over_content_and_efficiency_month_by_month()
    {
        // Day 0 is 1 March: days 0 to 30 are March, day 31 is 1 April. Season one burns 2 gallons in March and 1 in April, season two 4 and
        // 1.
        var result = Play(Season(2, 1), Season(4, 1));
        var main = result.Houses[0];
        Assert.Equal(4, main.Fuel!.Value.Mean, 1e-3);
        Assert.Equal(3, main.Fuel.Value.P10, 1e-3);
        Assert.Equal(5, main.Fuel.Value.P90, 1e-3);
        Assert.Equal([new DateOnly(2027, 3, 1), new DateOnly(2027, 4, 1)], main.Months.Select(month => month.Month));
        Assert.Equal(3, main.Months[0].Fuel.Mean, 1e-3);
        Assert.Equal(1, main.Months[1].Fuel.Mean, 1e-3);
        Assert.Equal(40, main.DaysOpen.Mean);
    }

    [Fact]
    public void A_house_without_a_heater_has_no_fuel()
    {
        var annex = Play(Season(2, 1)).Houses[1];
        Assert.Null(annex.Fuel);
        Assert.Empty(annex.Months);
    }

    [Fact]
    public void Mats_use_their_watts_on_the_days_they_hold_trays()
    {
        // 12 days x 24 h x 500 W x 0.5 = 72 kWh.
        var result = Play(Season(0, 0));
        Assert.Equal(72, Assert.Single(result.MatPower).KilowattHours.Mean, 1e-9);
    }

    [Fact]
    public void Fuel_is_shared_by_place_days_in_the_house_that_burnt_it()
    {
        // In the main house (spaces 0 and 1) Zinta holds 30 of 40 place-days; what Ada holds in the annex and on the table burns nothing.
        var result = Shared();
        Assert.Equal(0.75, result.Growers.Single(grower => grower.Grower == "Zinta").FuelShare, 1e-12);
        Assert.Equal(0.25, result.Growers.Single(grower => grower.Grower == "Ada").FuelShare, 1e-12);
        Assert.All(Play(Season(0, 0)).Growers, grower => Assert.Equal(double.NaN, grower.FuelShare));
    }

    [Fact]
    public void Cost_is_shared_by_place_days_in_each_house_and_on_each_mat()
    {
        // As above, the main house burns 3 gallons: at 2.40 each 7.20, of which Zinta bears 3/4 and Ada 1/4. The mats (space 0) draw 72
        // kWh: at 0.25 each 18.00, all Zinta's, who alone has trays on them. Zinta: 5.40 + 18.00 = 23.40; Ada: 1.80; together 25.20.
        var result = Shared();
        GrowerCost[] costs = [.. GrowerCost.Of(Priced(result, 2.40, 0.25))];
        var zinta = result.Growers.Select(grower => grower.Grower).ToList().IndexOf("Zinta");
        Assert.Equal(23.40, costs[zinta].Amount, 1e-3);
        Assert.Equal(1.80, costs[1 - zinta].Amount, 1e-3);
        Assert.Equal(23.40 / 25.20, costs[zinta].Share, 1e-4);
        Assert.Equal(1.80 / 25.20, costs[1 - zinta].Share, 1e-4);
    }

    [Theory]
    [InlineData(null, 0.25)]
    [InlineData(2.40, null)]
    public void Without_a_price_there_is_no_share_of_the_cost(double? gallon, double? kilowattHour) =>
        Assert.All(GrowerCost.Of(Priced(Shared(), gallon, kilowattHour)), cost => Assert.True(double.IsNaN(cost.Share)));

    private static StudyResult Shared()
    {
        var season = Season(2, 1);
        (season.TrayDays[0][0], season.TrayDays[0][1]) = (10, 20);
        (season.TrayDays[1][1], season.TrayDays[1][2], season.TrayDays[1][3]) = (10, 500, 500);
        return Play(season);
    }

    private static StudyResult Priced(StudyResult result, double? gallon, double? kilowattHour) =>
        result with
        {
            Houses =
            [
                .. result.Houses.Select(house =>
                    house.House.Heat is null
                        ? house
                        : house with
                        {
                            House = house.House with { Heat = house.House.Heat with { Price = gallon } },
                        }
                ),
            ],
            MatPower =
            [
                .. result.MatPower.Select(mats =>
                    mats with
                    {
                        Space = mats.Space with { Power = mats.Space.Power! with { Price = kilowattHour } },
                    }
                ),
            ],
        };

    private static SeasonPlan Heated(SeasonPlan plan) =>
        plan with
        {
            Scenario = plan.Scenario with
            {
                Houses = [plan.Scenario.Houses[0] with { Body = Body, Heat = Heat }, .. plan.Scenario.Houses.Skip(1)],
                Spaces =
                [
                    plan.Scenario.Spaces[0] with
                    {
                        Power = new MatPower(500, 0.5, null, null, null),
                    },
                    .. plan.Scenario.Spaces.Skip(1),
                ],
            },
        };

    private static HouseBody Body =>
        new()
        {
            Shell = HouseShell.Hoop(6, 14),
            Covering = "double polyethylene",
            UValue = 4.5,
            AirChanges = 1,
            Transmission = 0.6,
        };

    private static HouseHeat Heat => new() { Fuel = Fuels.Propane, Efficiency = 0.8 };

    private static SeasonResult Season(int march, int april)
    {
        var season = Seasons.Quiet(s_plan);
        season.HeatWattHours[0][30] = march * GallonWattHours;
        season.HeatWattHours[0][31] = april * GallonWattHours;
        season.DaysOpen[0] = 40;
        season.MatDays[0] = 12;
        return season;
    }

    private static StudyResult Play(params SeasonResult[] seasons)
    {
        SeasonTally tally = new(new PlanShape(s_plan));
        foreach (var season in seasons)
        {
            tally.Add(season, season);
        }

        return tally.ToResult(1);
    }
}
