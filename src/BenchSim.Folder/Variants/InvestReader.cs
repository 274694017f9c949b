using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Variants;

/// <summary>Reads [invest] of a variant.</summary>
internal sealed class InvestReader(CellReader cells)
{
    /// <summary>The terms; null when a key that must be there is missing or wrong, and then a fault was added.</summary>
    public InvestTerms? Read(Section section)
    {
        var terms = section.Read(InvestFields.Table, InvestFields.Nothing, cells);
        section.RefuseHalf("bought_in_share", "\"50 %\"", "bought_in_price", "0.60");
        terms = section.Read(InvestFields.Ranges, terms, cells);
        foreach (var field in InvestFields.Ranges.Fields)
        {
            CheckRange(section, field.Name, (RangeKind)field.Kind, terms);
        }

        return double.IsNaN(terms.Capital) || terms.LifeYears == 0 || double.IsNaN(terms.DiscountRate) ? null : terms;
    }

    private void CheckRange(Section section, string name, RangeKind kind, InvestTerms terms)
    {
        var value = kind.ValueOf(terms);
        if (terms.Ranges.TryGetValue(kind.Key, out var range) && (value < range.Low || value > range.High))
        {
            var ends = section.List(name);
            cells.Faults.Add(
                section.PlaceOf(name),
                $"{name} is {ends[0].Text} to {ends[1].Text}, and {kind.Key} lies outside it",
                $"widen it, or change {kind.Key}"
            );
        }
    }
}
