using System.Collections.Immutable;
using BenchSim.Report.Words;
using BenchSim.Study.Trust;

namespace BenchSim.Report.Tables;

/// <summary>The tables of what hangs on values that may be wrong. Shares from 0 to 1; blank where there is no figure.</summary>
internal static class TrustTables
{
    private static readonly ImmutableArray<Column> s_values =
    [
        new("what", "text", "key or column of the value, as ranges.csv names it"),
        new("of", "text", "ids of the crops or houses, as ranges.csv names them; blank for the site"),
        new("given", "text", "the value in force"),
        new("from", "text", "one in twenty lies below"),
        new("to", "text", "one in twenty lies above"),
        new("fits_given", "share", "seasons that fit at the values given"),
        new("fits_from", "share", "seasons that fit where this value alone is at \"from\""),
        new("fits_to", "share", "seasons that fit where it alone is at \"to\""),
        new("late_from", "plant-days", "late plant-days where it alone is at \"from\""),
        new("late_to", "plant-days", "late plant-days where it alone is at \"to\""),
        new("own_share", "share", "its own part of how far the seasons that fit differ between sets of values"),
        new("own_share_low", "share", "low end of the 90 % interval"),
        new("own_share_high", "share", "high end"),
    ];

    private static readonly ImmutableArray<Column> s_figures =
    [
        new("measure", "text", "what is read off a season"),
        new("given", "see measure", "mean at the values given"),
        new("low", "see measure", "5 % of the sets of values lie below"),
        new("middle", "see measure", "half of them lie below"),
        new("high", "see measure", "5 % of them lie above"),
        new("by_the_values", "share", "part of the variance of a season that the values make"),
    ];

    /// <summary>The values, those that move most first.</summary>
    public static CsvTable Values(TrustResult result)
    {
        var table = new CsvTable(s_values);
        foreach (var value in result.InOrder)
        {
            var own = value.Shares[0];
            table
                .Text(value.Value.Column.Field.Name)
                .Text(string.Join('|', value.Value.Parts.Select(part => part.OwnerId).Where(id => id.Length > 0)))
                .Text(value.Value.Now)
                .Text(value.Value.At(0.05))
                .Text(value.Value.At(0.95))
                .Number(value.Given[0])
                .Number(value.AtLow[0])
                .Number(value.AtHigh[0])
                .Number(value.AtLow[1])
                .Number(value.AtHigh[1])
                .Number(own?.Share ?? double.NaN)
                .Number(own?.Low ?? double.NaN)
                .Number(own?.High ?? double.NaN);
        }

        return table;
    }

    /// <summary>The figures over the ranges of the values.</summary>
    public static CsvTable Figures(TrustResult result)
    {
        var table = new CsvTable(s_figures);
        foreach (var range in result.Ranges)
        {
            table
                .Text(range.Measure.Name)
                .Number(range.AsGiven)
                .Number(range.Low)
                .Number(range.Middle)
                .Number(range.High)
                .Number(range.Widths.ShareOfValues);
        }

        return table;
    }
}
