using System.Globalization;
using BenchSim.Folder.Text;
using BenchSim.Season.Fields;
using BenchSim.Season.Values;
using CsCheck;

namespace BenchSim.Folder.Tests.Text;

public class QuantityTests
{
    // Expected values: definitions of the units. 0 C = 32 F, 100 C = 212 F; 1 in = 25.4 mm, 1 ft = 12 in (international agreement of 1959).
    [Theory]
    [InlineData("32 F", nameof(Quantity.Temperature), 0)]
    [InlineData("212F", nameof(Quantity.Temperature), 100)]
    [InlineData("-40 °F", nameof(Quantity.Temperature), -40)]
    [InlineData("15.5 C", nameof(Quantity.Temperature), 15.5)]
    [InlineData("15.5 °c", nameof(Quantity.Temperature), 15.5)]
    [InlineData("9 F", nameof(Quantity.Difference), 5)]
    [InlineData("-2 K", nameof(Quantity.Difference), -2)]
    [InlineData("20 ft", nameof(Quantity.Length), 6.096)]
    [InlineData("20'", nameof(Quantity.Length), 6.096)]
    [InlineData("18 in", nameof(Quantity.Length), 0.4572)]
    [InlineData("279 mm", nameof(Quantity.Length), 0.279)]
    [InlineData("61 cm", nameof(Quantity.Length), 0.61)]
    [InlineData("0.5 in", nameof(Quantity.Rain), 12.7)]
    [InlineData("2 cm", nameof(Quantity.Rain), 20)]
    [InlineData("85 %", nameof(Quantity.Fraction), 0.85)]
    [InlineData("85%", nameof(Quantity.Fraction), 0.85)]
    [InlineData("0.85", nameof(Quantity.Fraction), 0.85)]
    public void Units_are_turned_into_those_used_inside(string text, string kind, double expected)
    {
        Assert.True(QuantityText.TryRead(text, Of(kind), UnitSystem.Metric, out var value, out _));
        Assert.Equal(expected, value, 1e-12);
    }

    [Theory]
    [InlineData(nameof(Quantity.Temperature), UnitSystem.Metric, 50)]
    [InlineData(nameof(Quantity.Temperature), UnitSystem.Imperial, 10)]
    [InlineData(nameof(Quantity.Difference), UnitSystem.Imperial, 27.77777777777778)] // 50 x 5/9
    [InlineData(nameof(Quantity.Length), UnitSystem.Metric, 50)]
    [InlineData(nameof(Quantity.Length), UnitSystem.Imperial, 15.24)]
    [InlineData(nameof(Quantity.Rain), UnitSystem.Imperial, 1270)]
    public void A_bare_number_is_in_the_units_of_the_site(string kind, UnitSystem units, double expected)
    {
        Assert.True(QuantityText.TryRead("50", Of(kind), units, out var value, out _));
        Assert.Equal(expected, value, 1e-12);
    }

    /// <summary>A value written in a unit, by the inverse of its definition, is read back. No chance of a false alarm.</summary>
    [Fact]
    public void A_value_written_in_any_unit_is_read_back() =>
        FixedSample.Holds(Gen.Select(Gen.Double[-50, 50], Gen.OneOf("C", "F", "K", "m", "ft", "in", "mm", "cm", "%")), 2000, sample =>
        {
            var (inside, unit) = sample;
            var (kind, written) = unit switch
            {
                "C" => (Quantity.Temperature, inside),
                "F" => (Quantity.Temperature, (inside * 1.8) + 32),
                "K" => (Quantity.Difference, inside),
                "m" => (Quantity.Length, inside),
                "ft" => (Quantity.Length, inside * 1000 / 304.8),
                "in" => (Quantity.Length, inside * 1000 / 25.4),
                "mm" => (Quantity.Length, inside * 1000),
                "cm" => (Quantity.Length, inside * 100),
                _ => (Quantity.Fraction, inside * 100),
            };
            var text = written.ToString("0.###############", CultureInfo.InvariantCulture) + " " + unit;
            return QuantityText.TryRead(text, kind, UnitSystem.Metric, out var value, out _) && Math.Abs(value - inside) < 1e-9;
        });

    [Theory]
    [InlineData("60 R", nameof(Quantity.Temperature))]
    [InlineData("60 ft", nameof(Quantity.Temperature))]
    [InlineData("warm", nameof(Quantity.Temperature))]
    [InlineData("C", nameof(Quantity.Temperature))]
    [InlineData("1.2.3 C", nameof(Quantity.Temperature))]
    [InlineData("--3 C", nameof(Quantity.Temperature))]
    [InlineData("1e3 m", nameof(Quantity.Length))]
    [InlineData("∞", nameof(Quantity.Length))]
    [InlineData("NaN", nameof(Quantity.Length))]
    [InlineData("3.5\0", nameof(Quantity.Length))]
    [InlineData("85 C", nameof(Quantity.Fraction))]
    public void Other_text_is_refused(string text, string kind)
    {
        Assert.False(QuantityText.TryRead(text, Of(kind), UnitSystem.Metric, out _, out var problem));
        Assert.NotNull(problem);
    }

    [Fact]
    public void Lines_in_a_number_are_not_repeated_as_they_are()
    {
        Assert.False(QuantityText.TryRead("1,5\n2,5\n3,5", Quantity.Rain, UnitSystem.Metric, out _, out var problem));
        Assert.DoesNotContain('\n', problem!.What);
        Assert.Equal("write mm, in or cm, for example 25 mm or 1 in", problem.Instead);
    }

    private static Quantity Of(string name) =>
        name switch
        {
            nameof(Quantity.Temperature) => Quantity.Temperature,
            nameof(Quantity.Difference) => Quantity.Difference,
            nameof(Quantity.Length) => Quantity.Length,
            nameof(Quantity.Rain) => Quantity.Rain,
            _ => Quantity.Fraction,
        };
}
