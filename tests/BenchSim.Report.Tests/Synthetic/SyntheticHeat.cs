using System.Collections.Immutable;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Season.Weather;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>Fuel, electricity and weather for the toy.</summary>
internal static class SyntheticHeat
{
    private static readonly double[] s_gallons = [200, 180, 130, 60, 12, 1, 0, 0, 4, 40, 110, 180];

    /// <summary>A shell of 100 square metres at 4 W/m2K without leaks: 400 W a kelvin.</summary>
    public static HouseBody Body() =>
        new()
        {
            Shell = new HouseShell(60, 20, 20, 50, 100, 10),
            Covering = "double polyethylene, inflated",
            UValue = 4,
            AirChanges = 0,
            Transmission = 0.6,
            Sources = SyntheticPlan.Sources(
                ("u_value", Trust.Seen, "table of coverings"),
                ("air_changes", Trust.Memory, "recalled, a tight house"),
                ("fuel_price", Trust.User, "")
            ),
        };

    /// <summary>A burner of propane.</summary>
    public static HouseHeat House() =>
        new()
        {
            Fuel = Fuels.Propane,
            Efficiency = 0.8,
            Price = 2.5,
            DesignOutdoorC = -14.5,
        };

    /// <summary>Mats of 15 W a place on a circuit of 120 V and 15 A.</summary>
    public static MatPower Mats(int places) => new(15 * places, 0.6, 120, 15, 0.2);

    /// <summary>The houses of a plan; one with a heater burns what the month says, a fifth more or less.</summary>
    public static ImmutableArray<HouseResult> Houses(SeasonPlan plan, int seasons)
    {
        DateOnly[] months =
        [
            .. Enumerable
                .Range(0, plan.Days)
                .Select(day => plan.FirstDay.AddDays(day))
                .Where(date => date.Day == 1 || date == plan.FirstDay),
        ];
        double Gallons(int season, DateOnly month) =>
            s_gallons[month.Month - 1] * (0.8 + ((((season * 37) + (month.Month * 11)) % 61) / 150.0));
        Estimate Over(Func<int, double> figure) => Figures.Estimate([.. Enumerable.Range(0, seasons).Select(figure)]);
        return
        [
            .. plan.Scenario.Houses.Select(house => new HouseResult
            {
                House = house,
                DaysOpen = Over(season => house.Opening == HouseOpening.WhenNeeded ? season % 20 : plan.Days),
                Fuel = house.Heat is null ? null : Over(season => months.Sum(month => Gallons(season, month))),
                Months = house.Heat is null
                    ? []
                    : [.. months.Select(month => new MonthFuel(month, Over(season => Gallons(season, month))))],
            }),
        ];
    }

    /// <summary>Mats of a plan, on for 60 days, more or less ten.</summary>
    public static ImmutableArray<MatPowerResult> Mats(SeasonPlan plan, int seasons) =>
        [
            .. plan
                .Scenario.Spaces.Where(space => space.Power is not null)
                .Select(space => new MatPowerResult(
                    space,
                    Figures.Estimate([
                        .. Enumerable
                            .Range(0, seasons)
                            .Select(season =>
                                MatElectricity.KilowattHours(space.Power!.Watts, 24 * (50 + (season * 7 % 21)), space.Power.Duty)
                            ),
                    ])
                )),
        ];

    /// <summary>Weather as from a generator fitted to a record; the numbers of the model are nobody's.</summary>
    public static GeneratedWeather Weather(string source, double years, params string[] assumptions) =>
        Fitted(
            Model(source, []),
            new WeatherFitReport
            {
                Months =
                [
                    .. Enumerable.Range(1, 12).Select(month => new MonthFit(month, Month(10), Month(month == 7 ? 10.2 : 10), 4, 400)),
                ],
                First = new DateOnly(2012, 1, 1),
                Last = new DateOnly(2015, 12, 31),
                Years = years,
                MissingDays = 0,
                GeneratedYears = 400,
                TminLag1 = (0.69, 0.7),
                TmaxLag1 = (0.67, 0.68),
                Springs = [],
                Assumptions = [.. assumptions],
            }
        );

    /// <summary>Weather as from monthly normals.</summary>
    public static GeneratedWeather Normals(string source, params string[] assumptions) => new(Model(source, [.. assumptions]), null);

    // A month of ten days, all dry.
    private static MonthStatistics Month(double tminC) =>
        new()
        {
            Days = 10,
            TminMeanC = tminC,
            TmaxMeanC = 20,
            TminSdC = 1,
            TmaxSdC = 1,
            WetDays = 0,
            AfterDry = 9,
            WetAfterDry = 0,
            AfterWet = 0,
            WetAfterWet = 0,
            RainMm = 0,
            ColdNights = 0,
            FrostNights = 0,
        };

    private static GeneratedWeather Fitted(WeatherModel model, WeatherFitReport report) => new(model, new FittedWeather(model, report));

    private static WeatherModel Model(string source, ImmutableArray<string> assumptions) =>
        new()
        {
            Months = [],
            Residuals = ResidualModel.UnitedStatesAverage,
            LeastRangeC = 0.5,
            Source = source,
            Assumptions = assumptions,
        };
}
