using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Tests.Site;

/// <summary>The heat keys of [[house]]. In the good site the house is on lines 6 to 8 and has a night of 60 F.</summary>
public class HouseHeatTests
{
    private const string Night = "night = \"60 F\"";

    // Measured, so that the site need not say where it lies.
    private const string Lift = "day_lift = \"8 C\"";
    private const string Hoop = "shape = \"hoop\"\nlength = \"48 ft\"\nwidth = \"20 ft\"\ncovering = \"double-poly\"\nfuel = \"propane\"";

    // tests/Published/data/heat_examples.csv, C1: half-circle hoop of 20 x 48 ft, U = 0.7 Btu/h ft2 F, one air change an hour, 60 F inside
    // and 0 F outdoors: area 1822.1237 ft2, volume 7539.8224 ft3, 84672.2052 Btu/h in all. Its 0.018 Btu and our 0.33 Wh agree to 0.5 %.
    [Fact]
    public void A_house_in_feet_loses_the_published_heat()
    {
        var (body, heat) = Read(
            "shape = \"hoop\"\nlength = \"48 ft\"\nwidth = \"20 ft\"\nu_value = \"0.7 Btu/h ft2 F\"\nair_changes = 1\nfuel = "
                + "\"propane\"\ndesign_low = \"0 F\""
        );
        Assert.Equal(1822.1237, body.Shell.CoverM2 / (0.3048 * 0.3048), 4);
        Assert.Equal(7539.8224, body.Shell.VolumeM3 / (0.3048 * 0.3048 * 0.3048), 4);
        var load = DesignLoad.Of(body.Loss, (60 - 32) / 1.8, heat.DesignOutdoorC!.Value).BtuPerHour;
        Assert.InRange(load, 84672.2052 * 0.995, 84672.2052 * 1.005);
    }

    // tests/Published/data/ucover.csv: inflated double polyethylene 4.543 W/m2K (seen); new double film 0.5 to 1 air changes an hour (from
    // memory), middle 0.75. fuels.csv: propane 80 %.
    [Fact]
    public void What_is_left_out_comes_from_the_tables_and_says_so()
    {
        var (body, heat) = Read(Hoop);
        Assert.Equal((4.543, 0.75, 0.8), (body.UValue, body.AirChanges, heat.Efficiency));
        Assert.Equal("double polyethylene, inflated", body.Covering);
        Assert.Equal((null, null), (heat.Price, heat.DesignOutdoorC));
        Assert.Equal(
            ["air_changes", "covering", "efficiency", "fuel", "length", "shape", "sun_share", "transmission", "u_value", "width"],
            body.Sources.Keys.ToArray()
        );
        Assert.Equal(Provenance.User, body.Sources["covering"]);
        Assert.Equal(Coverings.All.Single(covering => covering.Id == "double-poly").Source, body.Sources["u_value"]);
        Assert.Equal(Fuels.Propane.EfficiencySource, body.Sources["efficiency"]);
        Assert.Equal(Trust.Memory, body.Sources["air_changes"].Trust);
        Assert.StartsWith(
            "middle of 0.5 to 1 an hour for a house that is new, double plastic film: ",
            body.Sources["air_changes"].Source,
            StringComparison.Ordinal
        );
    }

    // The table has rows for new double film and for new glass or rigid sheets, 0.75 to 1.5, middle 1.125; a single film has none.
    [Theory]
    [InlineData("covering = \"polycarbonate\"", Trust.Memory)]
    [InlineData("covering = \"single-poly\"", Trust.Assumption)]
    [InlineData("u_value = 5", Trust.Assumption)]
    public void A_covering_without_a_row_of_its_own_is_assumed_to_leak_like_a_rigid_one(string covering, Trust trust)
    {
        var (body, heat) = Read(Hoop.Replace("covering = \"double-poly\"", covering, StringComparison.Ordinal));
        Assert.Equal(1.125, body.AirChanges);
        Assert.Equal(trust, body.Sources["air_changes"].Trust);
    }

    // A gable of 10 x 20 m, eave 2 m, ridge 4 m: slope sqrt(25 + 4) = 5.3852 m; roof 215.41, sides 80, ends 60 m2; volume 600 m3.
    [Fact]
    public void A_gable_has_an_eave_and_a_ridge()
    {
        var (body, heat) = Read(
            "shape = \"gable\"\nlength = \"20 m\"\nwidth = \"10 m\"\neave = \"2 m\"\nridge = \"4 m\"\ncovering = \"glass\"\nfuel = "
                + "\"gas\"\nefficiency = \"95 %\"\nfuel_price = 1.40"
        );
        Assert.Equal(355.4066, body.Shell.CoverM2, 4);
        Assert.Equal(600, body.Shell.VolumeM3, 9);
        Assert.Equal(0.95, heat.Efficiency);
        Assert.Equal(Provenance.User, body.Sources["efficiency"]);
    }

    // A gallon is 3.785411784 litres, a therm 105.5056 MJ, which is 29.3071 kWh, a cord 3.624556 stacked cubic metres: 128 cubic feet.
    [Theory]
    [InlineData("metric", "propane", 3.785411784)]
    [InlineData("metric", "gas", 29.307111)]
    [InlineData("metric", "electricity", 1)]
    [InlineData("metric", "wood", 3.624556)]
    [InlineData("imperial", "propane", 1)]
    [InlineData("imperial", "gas", 1)]
    [InlineData("imperial", "wood", 1)]
    public void A_price_is_that_of_the_unit_in_which_the_site_counts_its_fuel(string units, string fuel, double metricInOne)
    {
        var site = TestFolder
            .Site(Night, $"{Night}\n{Hoop}\nfuel_price = 0.95\n{Lift}")
            .Replace("name = \"Test farm\"", $"name = \"Test farm\"\nunits = \"{units}\"", StringComparison.Ordinal);
        using var folder = new TestFolder(
            System.Text.RegularExpressions.Regex.Replace(
                site,
                "fuel = \"[a-z]+\"",
                $"fuel = \"{fuel}\"",
                System.Text.RegularExpressions.RegexOptions.None,
                TimeSpan.FromSeconds(1)
            )
        );
        Assert.Equal(0.95 * metricInOne, folder.Read().Scenario!.Houses[0].Heat!.Price!.Value, 5);
    }

    // 80,000 Btu of 1055.05585262 J an hour are 23,445.7 W.
    [Theory]
    [InlineData("\"80000 Btu/h\"", 23445.6856)]
    [InlineData("\"25 kW\"", 25000)]
    [InlineData("\"900 W\"", 900)]
    [InlineData("25", 25000)]
    public void The_output_of_a_heater_has_a_unit(string written, double watts)
    {
        var (_, heat) = Read($"{Hoop}\nheater_output = {written}");
        Assert.Equal(watts, heat.OutputW!.Value, 3);
        Assert.Equal("site.toml:14:1", heat.OutputPlace.ToString());
    }

    [Fact]
    public void A_bare_output_is_in_the_units_of_the_site()
    {
        using var folder = new TestFolder(
            TestFolder
                .Site(Night, $"{Night}\n{Hoop}\nheater_output = 80000\n{Lift}")
                .Replace("name = \"Test farm\"", "name = \"Test farm\"\nunits = \"imperial\"", StringComparison.Ordinal)
        );
        Assert.Equal(23445.6856, folder.Read().Scenario!.Houses[0].Heat!.OutputW!.Value, 3);
    }

    // Sides of 1.5 m on a hoop of 6 x 10 m: 9 pi = 28.274 m2 of ends and 30 pi = 94.248 m2 of roof, and 2 x 1.5 x (10 + 6) = 48 m2 of wall.
    [Fact]
    public void A_hoop_may_stand_on_side_walls()
    {
        var (body, heat) = Read("shape = \"hoop\"\nlength = 10\nwidth = 6\nside_wall = 1.5\ncovering = \"glass\"\nfuel = \"oil\"");
        Assert.Equal(170.5221, body.Shell.CoverM2, 4);
    }

    [Fact]
    public void A_heat_pump_gives_more_heat_than_it_takes_current()
    {
        Assert.Equal(3.2, Read(Hoop.Replace("propane", "electricity", StringComparison.Ordinal) + "\nefficiency = 3.2").Heat.Efficiency);
        Assert.Equal(
            "site.toml:14:14: efficiency is 3.2, which is more than all; write 3.2 % or 0.032",
            Assert.Single(Faults(Hoop + "\nefficiency = 3.2"))
        );
    }

    [Fact]
    public void A_house_without_these_keys_has_no_heat()
    {
        using var folder = new TestFolder();
        Assert.Null(folder.Read().Scenario!.Houses[0].Heat);
        Assert.Null(folder.Read().Scenario!.Houses[0].Body);
    }

    [Fact]
    public void The_sun_in_a_house_of_a_size_needs_the_latitude() =>
        Assert.Equal(
            "site.toml:9:1: the size of this house is given, but not where the site lies, so the sun in it cannot be worked out; "
                + "add a line such as latitude = 42 to [site], or the day_lift you have measured to this house",
            Assert.Single(TestFolder.Faults(TestFolder.Site(Night, $"{Night}\n{Hoop}")))
        );

    [Fact]
    public void A_latitude_that_cannot_be_read_is_one_fault() =>
        Assert.Equal(
            "site.toml:3:12: latitude is \"95\"; write a value from -66 to 66",
            Assert.Single(
                TestFolder.Faults(
                    TestFolder
                        .Site(Night, $"{Night}\n{Hoop}")
                        .Replace("name = \"Test farm\"", "name = \"Test farm\"\nlatitude = 95", StringComparison.Ordinal)
                )
            )
        );

    // Its size is there for the sun alone. Two layers of film let 76 % through, frame and dust leave 75 % of it.
    [Fact]
    public void A_size_and_a_latitude_make_the_sun_of_a_house_without_fuel()
    {
        var size = Hoop.Replace("\nfuel = \"propane\"", "", StringComparison.Ordinal);
        using var folder = new TestFolder(
            TestFolder
                .Site(Night, $"{Night}\n{size}")
                .Replace("name = \"Test farm\"", "name = \"Test farm\"\nlatitude = 42", StringComparison.Ordinal)
        );
        var reading = folder.Read();
        Assert.Empty(reading.Faults.Select(fault => fault.ToString()));
        var house = reading.Scenario!.Houses[0];
        Assert.Equal((42, null), (reading.Scenario.Latitude, house.Heat));
        Assert.True(house.HasSunAt(reading.Scenario.Latitude));
        Assert.Equal(0.76 * 0.75, house.Body!.Transmission, 1e-12);
        Assert.Equal(Trust.Memory, house.Body.Sources["transmission"].Trust);
    }

    // 0.7 on a site in Fahrenheit and feet is 0.7 Btu: 3.975 W/m2K in ucover.csv.
    [Fact]
    public void A_bare_heat_loss_is_in_the_units_of_the_site()
    {
        using var folder = new TestFolder(
            TestFolder
                .Site(Night, $"{Night}\n{Hoop.Replace("covering = \"double-poly\"", "u_value = 0.7", StringComparison.Ordinal)}\n{Lift}")
                .Replace("name = \"Test farm\"", "name = \"Test farm\"\nunits = \"imperial\"", StringComparison.Ordinal)
        );
        Assert.Equal(3.975, folder.Read().Scenario!.Houses[0].Body!.UValue, 3);
    }

    [Theory]
    [InlineData(
        "fuel = \"propane\"",
        "site.toml:9:1: the size of this house is given in part: shape, length, width and covering (or u_value) are missing; add "
            + "them, or leave out fuel"
    )]
    [InlineData(
        "shape = \"hoop\"\nlength = 10\nwidth = 6\ncovering = \"glass\"\nefficiency = 0.8",
        "site.toml:9:1: the size of this house is given in part: fuel is missing; add it, or leave out shape, length, width, covering and "
            + "efficiency"
    )]
    [InlineData(
        "shape = \"gable\"\nlength = 10\nwidth = 6\neave = 2\ncovering = \"glass\"\nfuel = \"gas\"",
        "site.toml:9:1: the size of this house is given in part: ridge is missing; add it, or leave out shape, length, width, eave, "
            + "covering and fuel"
    )]
    [InlineData(Hoop + "\nu_value = 4", "site.toml:14:11: u_value is given together with covering; write covering, or u_value, not both")]
    [InlineData(Hoop + "\nridge = 3", "site.toml:14:9: ridge is only for a gable house; take it out, or write shape = \"gable\"")]
    [InlineData(
        "shape = \"gable\"\nlength = 10\nwidth = 6\neave = 2\nridge = 2\ncovering = \"glass\"\nfuel = \"gas\"",
        "site.toml:13:9: ridge is \"2\", not above the eave; write the height of the ridge above the ground, higher than eave"
    )]
    [InlineData(
        Hoop + "\ndesign_low = \"60 F\"",
        "site.toml:14:14: design_low is \"60 F\", not below the night set-point of 15.5556 C; write the outdoor temperature of the "
            + "coldest night the heater must stand up to"
    )]
    [InlineData(
        Hoop + "\nheater_output = \"80000 BTU\"",
        "site.toml:14:17: heater_output is \"80000 BTU\", and \"BTU\" is not a unit of heater output; write kW, Btu/h or W, for example "
            + "80000 Btu/h or 25 kW"
    )]
    [InlineData(Hoop + "\nheater_output = 0", "site.toml:14:17: heater_output is \"0\"; write a value 0.1 kW or more")]
    [InlineData(Hoop + "\nair_changes = -1", "site.toml:14:15: air_changes is \"-1\"; write a value from 0 to 20")]
    [InlineData(
        Hoop + "\nfuel_price = \"2 or so\"",
        "site.toml:14:14: fuel_price is \"2 or so\", which is not a number; write a number, 0 or more"
    )]
    public void Heat_that_is_not_whole_or_cannot_be(string lines, string message) => Assert.Equal(message, Assert.Single(Faults(lines)));

    [Theory]
    [InlineData("\"hoop\"", "\"hop\"", "site.toml:9:9: shape is \"hop\"; did you mean \"hoop\"")]
    [InlineData("double-poly", "double-pohly", "site.toml:12:12: covering is \"double-pohly\"; did you mean \"double-poly\"")]
    [InlineData("propane", "coal", "site.toml:13:8: fuel is \"coal\"; write \"electricity\", \"gas\", \"oil\", \"propane\" or \"wood\"")]
    [InlineData("\"20 ft\"", "0", "site.toml:11:9: width is \"0\"; write a value from 0.1 m to 1000 m")]
    [InlineData(
        "covering = \"double-poly\"",
        "u_value = \"0.7 Btu\"",
        "site.toml:12:11: u_value is \"0.7 Btu\", and \"Btu\" is not a unit of heat loss; write W/m2K or Btu/h ft2 F, for example "
            + "4.5 W/m2K or 0.8 Btu/h ft2 F"
    )]
    [InlineData(
        "covering = \"double-poly\"",
        "u_value = 0.01",
        "site.toml:12:11: u_value is \"0.01\"; write a value from 0.1 W/m2K to 15 W/m2K"
    )]
    public void A_heat_key_that_cannot_be_read(string old, string replacement, string message) =>
        Assert.Equal(message, Assert.Single(Faults(Hoop.Replace(old, replacement, StringComparison.Ordinal))));

    [Fact]
    public void A_fuel_in_an_unheated_house() =>
        Assert.Equal(
            "site.toml:12:1: fuel is given but the house is not heated: it has no night; add a line such as night = \"16 C\", or "
                + "leave out fuel",
            Assert.Single(TestFolder.Faults(TestFolder.Site(Night, $"{Hoop}\n{Lift}")))
        );

    private static (HouseBody Body, HouseHeat Heat) Read(string lines)
    {
        using var folder = new TestFolder(TestFolder.Site(Night, $"{Night}\n{lines}\n{Lift}"));
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        return (reading.Scenario!.Houses[0].Body!, reading.Scenario.Houses[0].Heat!);
    }

    private static string[] Faults(string lines) => TestFolder.Faults(TestFolder.Site(Night, $"{Night}\n{lines}\n{Lift}"));
}
