using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace BenchSim.Report.Labels;

/// <summary>The sheets of labels known by name, and those given in millimetres.</summary>
public static partial class LabelSheets
{
    private const double LeastWidthMm = 20;
    private const double LeastHeightMm = 10;
    private const double EdgeMm = 5;

    /// <summary>Sheets sold widely, by size alone, and two for plain paper to be cut into stakes; the first of
    /// each paper goes with its units.</summary>
    public static readonly ImmutableArray<LabelSheet> Known =
    [
        new()
        {
            Name = "a4-21",
            WidthMm = 63.5,
            HeightMm = 38.1,
            Columns = 3,
            Rows = 7,
            GapXMm = 2.5,
        },
        new()
        {
            Name = "a4-24",
            WidthMm = 64,
            HeightMm = 33.9,
            Columns = 3,
            Rows = 8,
            GapXMm = 2.5,
        },
        new()
        {
            Name = "a4-65",
            WidthMm = 38.1,
            HeightMm = 21.2,
            Columns = 5,
            Rows = 13,
            GapXMm = 2.5,
        },
        new()
        {
            Name = "a4-stakes",
            WidthMm = 95,
            HeightMm = 17.5,
            Columns = 2,
            Rows = 16,
            IsCut = true,
        },
        new()
        {
            Name = "letter-30",
            IsLetter = true,
            WidthMm = 66.675,
            HeightMm = 25.4,
            Columns = 3,
            Rows = 10,
            GapXMm = 3.175,
        },
        new()
        {
            Name = "letter-20",
            IsLetter = true,
            WidthMm = 101.6,
            HeightMm = 25.4,
            Columns = 2,
            Rows = 10,
            GapXMm = 4.7625,
        },
        new()
        {
            Name = "letter-10",
            IsLetter = true,
            WidthMm = 101.6,
            HeightMm = 50.8,
            Columns = 2,
            Rows = 5,
            GapXMm = 4.7625,
        },
        new()
        {
            Name = "letter-stakes",
            IsLetter = true,
            WidthMm = 95,
            HeightMm = 17.5,
            Columns = 2,
            Rows = 15,
            IsCut = true,
        },
    ];

    /// <summary>The sheet for A4, or for Letter.</summary>
    /// <param name="letter">True for Letter.</param>
    public static LabelSheet Usual(bool letter) => Known.First(sheet => sheet.IsLetter == letter);

    /// <summary>
    /// The sheet a text asks for: a known name, or <c>WIDTHxHEIGHT</c> in millimetres (as many as the paper holds, cut out by hand), or
    /// <c>WIDTHxHEIGHT/COLUMNSxROWS</c> with <c>/GAPxGAP</c> behind where labels do not touch. The paper comes first: <c>letter:70x30</c>;
    /// A4 when none is said.
    /// </summary>
    /// <param name="text">Text.</param>
    /// <param name="why">What is wrong and what would be right; empty when nothing is.</param>
    /// <returns>The sheet; null when the text asks for none that can be printed.</returns>
    public static LabelSheet? Parse(string text, out string why)
    {
        ArgumentNullException.ThrowIfNull(text);
        why = "";
        var name = text.Trim().ToLowerInvariant();
        if (Known.FirstOrDefault(sheet => sheet.Name == name) is { } known)
        {
            return known;
        }

        var match = Own().Match(name);
        if (!match.Success)
        {
            why =
                $"write one of {string.Join(", ", Known.Select(sheet => sheet.Name))}, or a size in millimetres such as 70x30, "
                + "70x30/2x8 or letter:66.7x25.4/3x10/3.2x0";
            return null;
        }

        var sheet = Make(match, name);
        why = Fault(sheet);
        return why.Length == 0 ? sheet : null;
    }

    private static LabelSheet Make(Match match, string name)
    {
        double Number(string group) =>
            double.Parse(match.Groups[group].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        var sheet = new LabelSheet
        {
            Name = name,
            IsLetter = match.Groups["paper"].Value == "letter",
            WidthMm = Number("width"),
            HeightMm = Number("height"),
            Columns = 1,
            Rows = 1,
            IsCut = !match.Groups["columns"].Success,
        };
        if (!sheet.IsCut)
        {
            sheet = sheet with { Columns = (int)Number("columns"), Rows = (int)Number("rows") };
            return match.Groups["gapx"].Success ? sheet with { GapXMm = Number("gapx"), GapYMm = Number("gapy") } : sheet;
        }

        return sheet.WidthMm < LeastWidthMm || sheet.HeightMm < LeastHeightMm
            ? sheet
            : sheet with
            {
                Columns = Math.Max(1, (int)((sheet.Paper.WidthMm - (2 * EdgeMm)) / sheet.WidthMm)),
                Rows = Math.Max(1, (int)((sheet.Paper.HeightMm - (2 * EdgeMm)) / sheet.HeightMm)),
            };
    }

    private static string Fault(LabelSheet sheet)
    {
        if (sheet.WidthMm < LeastWidthMm || sheet.HeightMm < LeastHeightMm)
        {
            return $"a label is at least {LeastWidthMm} mm wide and {LeastHeightMm} mm high";
        }

        if (sheet.Columns < 1 || sheet.Rows < 1)
        {
            return "a sheet has at least one column and one row of labels";
        }

        return sheet.UsedWidthMm > sheet.Paper.WidthMm || sheet.UsedHeightMm > sheet.Paper.HeightMm
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"the labels take {sheet.UsedWidthMm:0.#} x {sheet.UsedHeightMm:0.#} mm, and {sheet.Paper.Name} is "
                    + $"{sheet.Paper.WidthMm:0.#} x {sheet.Paper.HeightMm:0.#} mm"
            )
            : "";
    }

    [GeneratedRegex(
        @"^((?<paper>a4|letter):)?(?<width>\d{1,3}(\.\d{1,3})?)x(?<height>\d{1,3}(\.\d{1,3})?)"
            + @"(/(?<columns>\d{1,2})x(?<rows>\d{1,2})(/(?<gapx>\d{1,2}(\.\d{1,4})?)x(?<gapy>\d{1,2}(\.\d{1,4})?))?)?\z",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Own();
}
