using BenchSim.Season.Values;
using BenchSim.Season.Weather;

namespace BenchSim.Season.Tests.Weather;

public class WeatherRecordCheckTests
{
    [Fact]
    public void A_good_record_passes_unchanged()
    {
        var findings = WeatherRecordCheck.Check(Rows("2023-12-30", 4), "weather.csv");
        Assert.True(findings.IsUsable);
        Assert.Empty(findings.Repairs);
        Assert.Equal(4, findings.Days.Length);
    }

    [Fact]
    public void A_swapped_row_is_a_fault_of_its_line()
    {
        var rows = Rows("2024-03-01", 10);
        rows[4] = rows[4] with { TminC = 12, TmaxC = 3, TminColumn = 12 };
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Lines.Equal(
            [
                "weather.csv:6:12: the lowest temperature 12 C is above the highest 3 C; the lowest first; exchange the two if "
                    + "they are swapped",
            ],
            findings.Faults.Select(fault => fault.ToString())
        );
        Assert.Empty(findings.Repairs);
    }

    [Fact]
    public void Exchanged_columns_are_one_fault()
    {
        var rows = Rows("2024-03-01", 10).Select(row => row with { TminC = row.TmaxC, TmaxC = row.TminC }).ToList();
        Lines.Equal(
            [
                "weather.csv:2:0: the lowest temperature is above the highest in 10 of 10 rows; the two columns are exchanged: "
                    + "name the lower one tmin and the higher one tmax",
            ],
            WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.ToString())
        );
    }

    [Theory]
    [InlineData(45, 68)]
    [InlineData(25, 60)]
    public void Fahrenheit_is_one_fault(double tmin, double tmax)
    {
        var rows = Rows("2024-04-01", 30).Select(row => row with { TminC = tmin, TmaxC = tmax }).ToList();
        Lines.Equal(
            [
                "weather.csv:2:0: the temperatures are too high for degrees Celsius and look like Fahrenheit; degrees Celsius, "
                    + "or the unit F stated in the column's name",
            ],
            WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.ToString())
        );
    }

    [Fact]
    public void A_mild_place_in_Fahrenheit_is_known_by_its_mean()
    {
        // 30 to 40 and 50 to 56 by turns: never above 57, but no place has a mean of 44 C.
        var rows = Rows("2024-01-01", 30)
            .Select((row, index) => index % 2 == 0 ? row with { TminC = 30, TmaxC = 40 } : row with { TminC = 50, TmaxC = 56 })
            .ToList();
        Assert.Contains(
            "look like Fahrenheit",
            Assert.Single(WeatherRecordCheck.Check(rows, "weather.csv").Faults).What,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Numbers_that_stand_for_missing_days_are_faults_of_their_lines()
    {
        // Two days in 20 of 99.9 and one of -99.9: no unit makes weather of them.
        var rows = Rows("2024-04-01", 20);
        rows[3] = rows[3] with { TmaxC = 99.9 };
        rows[7] = rows[7] with { TmaxC = 99.9 };
        rows[9] = rows[9] with { TminC = -99.9 };
        Assert.Equal([5, 9, 11], WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.Place.Line));
    }

    [Fact]
    public void Days_of_one_temperature_are_not_crossed()
    {
        var rows = Rows("2024-04-01", 20).Select(row => row with { TminC = 7, TmaxC = 7 }).ToList();
        Assert.Empty(WeatherRecordCheck.Check(rows, "weather.csv").Faults);
    }

    [Fact]
    public void One_impossible_value_is_a_fault_of_its_line()
    {
        var rows = Rows("2024-04-01", 40);
        rows[1] = rows[1] with { TmaxC = 151, RainMm = -1 };
        Lines.Equal(
            [
                "weather.csv:3:0: a highest temperature of 151 C has never been measured on earth; between -90 C and 57 C",
                "weather.csv:3:0: a day's rain of -1 mm is not possible; 0 or more, at most 1825 mm",
            ],
            WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.ToString())
        );
    }

    // 11.1 C above 5 C, and 1,830 mm: 51.98 F, 41 F and 72.05 inches. A day of 57.1 C is 134.78 F, a little above what has been measured,
    // and no reason to think of another unit.
    [Fact]
    public void Faults_are_told_in_the_units_of_the_file()
    {
        var rows = Rows("2024-04-01", 40);
        rows[1] = rows[1] with { TminC = 11.1, TmaxC = 5, RainMm = 1830 };
        for (var row = 2; row < 10; row++)
        {
            rows[row] = rows[row] with { TmaxC = 57.1 };
        }

        var faults = WeatherRecordCheck
            .Check(rows, "weather.csv", temperature: UnitSystem.Imperial, rain: UnitSystem.Imperial)
            .Faults.Select(fault => fault.ToString())
            .ToArray();
        Lines.Equal(
            [
                "weather.csv:3:0: the lowest temperature 51.98 F is above the highest 41 F; the lowest first; exchange the two "
                    + "if they are swapped",
                "weather.csv:3:0: a day's rain of 72.05 in is not possible; 0 or more, at most 71.85 in",
                "weather.csv:4:0: a highest temperature of 134.78 F has never been measured on earth; between -130 F and 134.6 F",
            ],
            faults[..3]
        );
        Assert.Equal(10, faults.Length);
    }

    [Fact]
    public void Not_a_number_is_a_fault()
    {
        var rows = Rows("2024-04-01", 40);
        rows[1] = rows[1] with { TminC = double.NaN };
        Assert.False(WeatherRecordCheck.Check(rows, "weather.csv").IsUsable);
    }

    [Fact]
    public void Rows_out_of_order_are_sorted_and_said()
    {
        var rows = Rows("2024-03-01", 3);
        (rows[1], rows[2]) = (rows[2] with { Line = 3 }, rows[1] with { Line = 4 });
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Assert.True(findings.IsUsable);
        Lines.Equal(
            ["weather.csv:4:0: 2024-03-02 comes after 2024-03-03 in the file; the rows were put in order of date"],
            findings.Repairs.Select(repair => repair.ToString())
        );
        Assert.Equal([1, 2, 3], findings.Days.Select(day => day.Date.Day));
    }

    [Fact]
    public void The_same_row_twice_is_dropped_and_said_and_another_row_of_the_date_is_a_fault()
    {
        var rows = Rows("2024-03-01", 3);
        rows.Add(rows[1] with { Line = 5 });
        rows.Add(rows[2] with { Line = 6, TminC = -1 });
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Lines.Contain(
            "weather.csv:5:0: 2024-03-02 is in line 3 too, with the same values; the second row was left out",
            findings.Repairs.Select(repair => repair.ToString())
        );
        Lines.Equal(
            ["weather.csv:6:0: 2024-03-03 is in line 4 too, with other values; one row a date"],
            findings.Faults.Select(fault => fault.ToString())
        );
    }

    [Fact]
    public void A_missing_leap_day_is_filled_and_said()
    {
        var rows = Rows("2024-02-28", 3);
        rows[2] = rows[2] with { TminC = 6, TmaxC = 14, RainMm = 4 };
        rows.RemoveAt(1);
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Lines.Equal(
            ["weather.csv:4:0: 2024-02-29 is missing; filled on a straight line between the days before and after"],
            findings.Repairs.Select(repair => repair.ToString())
        );

        // Half way between 2, 10, 0 on 28 February and 6, 14, 4 on 1 March.
        Assert.Equal((4.0, 12.0, 2.0), (findings.Days[1].TminC, findings.Days[1].TmaxC, findings.Days[1].RainMm));
        Assert.Equal(new DateOnly(2024, 2, 29), findings.Days[1].Date);
    }

    [Fact]
    public void A_common_year_misses_no_leap_day()
    {
        var rows = Rows("2023-02-27", 4);
        Assert.Equal([27, 28, 1, 2], rows.Select(row => row.Date.Day));
        Assert.Empty(WeatherRecordCheck.Check(rows, "weather.csv").Repairs);
    }

    [Fact]
    public void A_long_gap_is_a_fault()
    {
        var rows = Rows("2024-03-01", 10);
        rows.RemoveRange(3, 4);
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Lines.Equal(
            ["weather.csv:9:0: 4 days are missing, 2024-03-04 to 2024-03-07; a row for each day; gaps of up to 3 days are filled"],
            findings.Faults.Select(fault => fault.ToString())
        );
    }

    [Fact]
    public void Three_days_are_filled_in_even_steps()
    {
        // 2 and 10 C and 4 mm on 1 March, 6 and 18 C and 8 mm on the 5th: a quarter, a half and three quarters of the way.
        var rows = Rows("2024-03-01", 6);
        rows[0] = rows[0] with { RainMm = 4 };
        rows[4] = rows[4] with { TminC = 6, TmaxC = 18, RainMm = 8 };
        rows.RemoveRange(1, 3);
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Lines.Equal(
            ["weather.csv:6:0: 3 days are missing, 2024-03-02 to 2024-03-04; filled on a straight line between the days before and after"],
            findings.Repairs.Select(repair => repair.ToString())
        );
        Assert.Equal(
            [(1, 2, 10, 4), (2, 3, 12, 5), (3, 4, 14, 6), (4, 5, 16, 7), (5, 6, 18, 8), (6, 2, 10, 0)],
            findings.Days.Select(day => (day.Date.Day, day.TminC, day.TmaxC, day.RainMm))
        );
    }

    // The hottest, coldest and wettest days on record, rounded outward, are taken; a hair more is not.
    [Theory]
    [InlineData(2, 57, 0, true)]
    [InlineData(2, 57.01, 0, false)]
    [InlineData(-90, 10, 0, true)]
    [InlineData(-90.01, 10, 0, false)]
    [InlineData(2, 10, 1825, true)]
    [InlineData(2, 10, 1825.01, false)]
    [InlineData(2, 10, -0.01, false)]
    [InlineData(2, 2, 0, true)]
    [InlineData(2, 1.99, 0, false)]
    [InlineData(2, 10, double.NaN, false)]
    public void A_day_is_taken_up_to_what_has_been_measured(double tmin, double tmax, double rain, bool isTaken)
    {
        var rows = Rows("2024-04-01", 40);
        rows[7] = rows[7] with { TminC = tmin, TmaxC = tmax, RainMm = rain };
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Assert.Equal(isTaken, findings.IsUsable);
        Assert.Equal(isTaken ? [] : [9], findings.Faults.Select(fault => fault.Place.Line));
        Assert.Empty(findings.Repairs);
    }

    // Of 40 rows two above 57 are one in twenty; of 41 they are fewer.
    [Theory]
    [InlineData(40, 2, true)]
    [InlineData(41, 2, false)]
    [InlineData(40, 1, false)]
    public void One_row_in_twenty_too_hot_is_a_wrong_unit(int count, int hot, bool isUnit)
    {
        var rows = Rows("2024-04-01", count);
        for (var row = 0; row < hot; row++)
        {
            rows[row] = rows[row] with { TmaxC = 60 };
        }

        var faults = WeatherRecordCheck.Check(rows, "weather.csv").Faults;
        Assert.Equal(isUnit ? 1 : hot, faults.Length);
        Assert.Equal(isUnit, faults[0].What.Contains("Fahrenheit", StringComparison.Ordinal));
    }

    // Days of 30 and 50.1 average 40.05 C: no place is that hot. At 40 C it might be one very hot month.
    [Theory]
    [InlineData(50.1, true)]
    [InlineData(50, false)]
    public void A_mean_that_no_place_has_is_a_wrong_unit(double tmax, bool isUnit) =>
        Assert.Equal(
            !isUnit,
            WeatherRecordCheck
                .Check([.. Rows("2024-04-01", 30).Select(row => row with { TminC = 30, TmaxC = tmax })], "weather.csv")
                .IsUsable
        );

    // Six of ten rows with the lowest above the highest are exchanged columns, five are five faults.
    [Theory]
    [InlineData(6, 1)]
    [InlineData(5, 5)]
    public void More_than_half_the_rows_make_exchanged_columns(int crossed, int faults)
    {
        var rows = Rows("2024-03-01", 10);
        for (var row = 0; row < crossed; row++)
        {
            rows[row] = rows[row] with { TminC = 12, TmaxC = 3 };
        }

        Assert.Equal(faults, WeatherRecordCheck.Check(rows, "weather.csv").Faults.Length);
    }

    [Fact]
    public void Days_whose_rows_were_refused_are_not_missing_too()
    {
        // Four rows with impossible rain are four faults and no gap; with another day beside them missing, the gap is told as well.
        var rows = Rows("2024-03-01", 20);
        for (var row = 5; row < 9; row++)
        {
            rows[row] = rows[row] with { RainMm = -1 };
        }

        Assert.Equal([7, 8, 9, 10], WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.Place.Line));
        rows.RemoveAt(9);
        Assert.Equal([7, 8, 9, 10, 12], WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.Place.Line));
    }

    [Fact]
    public void Faults_of_a_line_come_in_the_order_of_its_columns()
    {
        var rows = Rows("2024-03-01", 40);
        rows[3] = rows[3] with { TminC = -95, TmaxC = 60, RainMm = -1, RainColumn = 11, TmaxColumn = 20, TminColumn = 30 };
        Assert.Equal([11, 20, 30], WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.Place.Column));
    }

    [Fact]
    public void Only_rows_before_the_latest_so_far_are_out_of_order()
    {
        // The 5th stands first: the 1st to the 4th come after it, the 6th does not.
        var rows = Rows("2024-03-01", 6);
        rows = [rows[4], rows[0], rows[1], rows[2], rows[3], rows[5]];
        var findings = WeatherRecordCheck.Check(rows, "weather.csv");
        Assert.Equal(4, findings.Repairs.Length);
        Assert.Equal([1, 2, 3, 4, 5, 6], findings.Days.Select(day => day.Date.Day));
    }

    [Fact]
    public void An_empty_file_is_a_fault() => Assert.False(WeatherRecordCheck.Check([], "weather.csv").IsUsable);

    [Fact]
    public void All_faults_come_in_one_pass_in_order_of_line()
    {
        var rows = Rows("2024-03-01", 60);
        rows[50] = rows[50] with { TminC = 20, TmaxC = 3 };
        rows[20] = rows[20] with { RainMm = 9999 };
        rows.RemoveRange(30, 5);
        Assert.Equal([22, 37, 52], WeatherRecordCheck.Check(rows, "weather.csv").Faults.Select(fault => fault.Place.Line));
    }

    private static List<WeatherRow> Rows(string first, int count) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(day => new WeatherRow(day + 2, DateOnly.ParseExact(first, "yyyy-MM-dd").AddDays(day), 2, 10, 0)),
        ];
}
