using System.Globalization;
using BenchSim.Folder.Text;
using BenchSim.Season.Values;
using CsCheck;

namespace BenchSim.Folder.Tests.Text;

public class QuantityTests
{
    // Expected values: definitions of the units. 0 C = 32 F, 100 C = 212 F; 1 in = 25.4 mm, 1 ft = 12 in (international agreement of 1959).
    [Theory]
    [InlineData("32 F", nameof(QuantityKind.Temperature), 0)]
    [InlineData("212F", nameof(QuantityKind.Temperature), 100)]
    [InlineData("-40 °F", nameof(QuantityKind.Temperature), -40)]
    [InlineData("15.5 C", nameof(QuantityKind.Temperature), 15.5)]
    [InlineData("15.5 °c", nameof(QuantityKind.Temperature), 15.5)]
    [InlineData("9 F", nameof(QuantityKind.Difference), 5)]
    [InlineData("-2 K", nameof(QuantityKind.Difference), -2)]
    [InlineData("20 ft", nameof(QuantityKind.Length), 6.096)]
    [InlineData("20'", nameof(QuantityKind.Length), 6.096)]
    [InlineData("18 in", nameof(QuantityKind.Length), 0.4572)]
    [InlineData("279 mm", nameof(QuantityKind.Length), 0.279)]
    [InlineData("61 cm", nameof(QuantityKind.Length), 0.61)]
    [InlineData("0.5 in", nameof(QuantityKind.Rain), 12.7)]
    [InlineData("2 cm", nameof(QuantityKind.Rain), 20)]
    [InlineData("85 %", nameof(QuantityKind.Fraction), 0.85)]
    [InlineData("85%", nameof(QuantityKind.Fraction), 0.85)]
    [InlineData("0.85", nameof(QuantityKind.Fraction), 0.85)]
    public void Units_are_turned_into_those_used_inside(string text, string kind, double expected)
    {
        Assert.True(Quantity.TryRead(text, Enum.Parse<QuantityKind>(kind), UnitSystem.Metric, out var value, out _));
        Assert.Equal(expected, value, 1e-12);
    }

    [Theory]
    [InlineData(nameof(QuantityKind.Temperature), UnitSystem.Metric, 50)]
    [InlineData(nameof(QuantityKind.Temperature), UnitSystem.Imperial, 10)]
    [InlineData(nameof(QuantityKind.Difference), UnitSystem.Imperial, 27.77777777777778)] // 50 x 5/9
    [InlineData(nameof(QuantityKind.Length), UnitSystem.Metric, 50)]
    [InlineData(nameof(QuantityKind.Length), UnitSystem.Imperial, 15.24)]
    [InlineData(nameof(QuantityKind.Rain), UnitSystem.Imperial, 1270)]
    public void A_bare_number_is_in_the_units_of_the_site(string kind, UnitSystem units, double expected)
    {
        Assert.True(Quantity.TryRead("50", Enum.Parse<QuantityKind>(kind), units, out var value, out _));
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
                "C" => (QuantityKind.Temperature, inside),
                "F" => (QuantityKind.Temperature, (inside * 1.8) + 32),
                "K" => (QuantityKind.Difference, inside),
                "m" => (QuantityKind.Length, inside),
                "ft" => (QuantityKind.Length, inside * 1000 / 304.8),
                "in" => (QuantityKind.Length, inside * 1000 / 25.4),
                "mm" => (QuantityKind.Length, inside * 1000),
                "cm" => (QuantityKind.Length, inside * 100),
                _ => (QuantityKind.Fraction, inside * 100),
            };
            var text = written.ToString("0.###############", CultureInfo.InvariantCulture) + " " + unit;
            return Quantity.TryRead(text, kind, UnitSystem.Metric, out var value, out _) && Math.Abs(value - inside) < 1e-9;
        });

    [Theory]
    [InlineData("60 R", nameof(QuantityKind.Temperature))]
    [InlineData("60 ft", nameof(QuantityKind.Temperature))]
    [InlineData("warm", nameof(QuantityKind.Temperature))]
    [InlineData("C", nameof(QuantityKind.Temperature))]
    [InlineData("1.2.3 C", nameof(QuantityKind.Temperature))]
    [InlineData("--3 C", nameof(QuantityKind.Temperature))]
    [InlineData("1e3 m", nameof(QuantityKind.Length))]
    [InlineData("∞", nameof(QuantityKind.Length))]
    [InlineData("NaN", nameof(QuantityKind.Length))]
    [InlineData("3.5\0", nameof(QuantityKind.Length))]
    [InlineData("85 C", nameof(QuantityKind.Fraction))]
    public void Other_text_is_refused(string text, string kind)
    {
        Assert.False(Quantity.TryRead(text, Enum.Parse<QuantityKind>(kind), UnitSystem.Metric, out _, out var problem));
        Assert.NotNull(problem);
    }

    [Fact]
    public void Lines_in_a_number_are_not_repeated_as_they_are()
    {
        Assert.False(Quantity.TryRead("1,5\n2,5\n3,5", QuantityKind.Rain, UnitSystem.Metric, out _, out var problem));
        Assert.Equal("write one number with a decimal point and without commas", problem!.Instead);
    }
}
