using System.Collections.Immutable;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Variants;

/// <summary>Reads [invest] of a variant.</summary>
internal sealed class InvestReader(CellReader cells)
{
    private const double MostMoney = 1_000_000_000;
    private const int LongestLife = 60;

    private readonly ImmutableSortedDictionary<string, InvestRange>.Builder _ranges = ImmutableSortedDictionary.CreateBuilder<
        string,
        InvestRange
    >(StringComparer.Ordinal);

    /// <summary>The terms; null when a key that must be there is missing or wrong, and then a fault was added.</summary>
    public InvestTerms? Read(Section section)
    {
        var capital = Money(section.Required("capital", "12000"));
        var life = cells.Whole(section.Required("life_years", "15"), 1, LongestLife);
        var rate = cells.Fraction(section.Required("discount_rate", "\"6 %\""));
        var plant = Money(section.Scalar("plant_on_time"));
        var share = cells.Fraction(section.Scalar("bought_in_share"));
        var price = Money(section.Scalar("bought_in_price"));
        var upkeep = Money(section.Scalar("upkeep"));
        var residual = Money(section.Scalar("residual"));
        section.RefuseHalf("bought_in_share", "\"50 %\"", "bought_in_price", "0.60");
        ReadRange(section, "capital", capital, Money);
        ReadRange(section, "life_years", life, cell => cells.Whole(cell, 1, LongestLife));
        ReadRange(section, "discount_rate", rate, cell => cells.Fraction(cell));
        ReadRange(section, "plant_on_time", plant ?? 0, Money);
        ReadRange(section, "bought_in_share", share ?? 0, cell => cells.Fraction(cell));
        ReadRange(section, "bought_in_price", price ?? 0, Money);
        ReadRange(section, "upkeep", upkeep ?? 0, Money);
        ReadRange(section, "residual", residual ?? 0, Money);
        if (capital is null || life is null || rate is null)
        {
            return null;
        }

        return new InvestTerms
        {
            Capital = capital.Value,
            LifeYears = life.Value,
            DiscountRate = rate.Value,
            PlantOnTime = plant ?? 0,
            BoughtInShare = share ?? 0,
            BoughtInPrice = price ?? 0,
            Upkeep = upkeep ?? 0,
            Residual = residual ?? 0,
            Basis = section.Scalar("basis", mayBeEmpty: true).Text ?? "",
            Ranges = _ranges.ToImmutable(),
        };
    }

    private double? Money(Cell cell) => cells.Number(cell, 0, MostMoney);

    private void ReadRange(Section section, string key, double? value, Func<Cell, double?> read)
    {
        var name = key + "_range";
        var before = cells.Faults.Count;
        var ends = section.List(name, $"a list such as {name} = [least, greatest]");
        if (!section.Has(name) || cells.Faults.Count > before)
        {
            return;
        }

        var values = ends.Select(read).ToArray();
        if (cells.Faults.Count > before)
        {
            return;
        }

        if (values is not [{ } low, { } high])
        {
            cells.Faults.Add(section.PlaceOf(name), $"{name} does not hold two values", "write two: the least and the greatest");
        }
        else if (low > high)
        {
            cells.Faults.Add(ends[0].Place, $"{name} begins with {ends[0].Text}, above its end {ends[1].Text}", "write the least first");
        }
        else if (value < low || value > high)
        {
            cells.Faults.Add(
                section.PlaceOf(name),
                $"{name} is {ends[0].Text} to {ends[1].Text}, and {key} lies outside it",
                $"widen it, or change {key}"
            );
        }
        else
        {
            _ranges[key] = new InvestRange(low, high);
        }
    }
}
