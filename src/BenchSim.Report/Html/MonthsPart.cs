using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Html;

/// <summary>The fuel of one house by month: a chart and its table.</summary>
internal static class MonthsPart
{
    private const double Slot = 58;
    private const double Bar = 40;
    private const double Top = 6;
    private const double Plot = 110;

    public static void Write(HtmlText html, HouseResult house, StudyResult result, Dates dates)
    {
        var heat = house.House.Heat!;
        var measure = new FuelMeasure(heat.Fuel, result.Plan.Scenario.Units);
        (string Label, MonthFuel Month, Estimate Fuel)[] months =
        [
            .. house.Months.Select(month => (Label(month, dates), month, measure.Of(month.Fuel))),
        ];
        html.Add($"<figure><figcaption><p>{Reading(months, measure)}</p></figcaption>\n");
        html.Add(
            $"<p class=\"key\"><span><i class=\"sw work\"></i>{heat.Fuel.Name}, {measure.Plural}, mean</span><span><i class=\"sw high\">"
        );
        html.Add($"</i>what nine seasons in ten do not exceed</span></p>\n");
        Chart(html, house, months, measure);
        Table(html, house, months, measure, result);
        html.Add($"</figure>\n");
    }

    private static string Reading((string Label, MonthFuel Month, Estimate Fuel)[] months, FuelMeasure measure)
    {
        var most = months.MaxBy(month => month.Fuel.Mean);
        return most.Fuel.Mean > 0
            ? $"By month, most in {Dates.Month(most.Month.Month)}: {Spreads.Mean(most.Fuel, Numbers.Fine, " " + measure.Plural)}."
            : "By month: none in any.";
    }

    // A play begins and ends on any day: a month of which it has only a part says which.
    private static string Label(MonthFuel month, Dates dates)
    {
        var first = month.Month;
        var end = dates.Day(dates.Days - 1);
        var days = DateTime.DaysInMonth(first.Year, first.Month);
        var last = (end.Year, end.Month) == (first.Year, first.Month) ? end.Day : days;
        var name = $"{Dates.Month(first)} {first.Year}";
        if (first.Day == 1 && last == days)
        {
            return name;
        }

        return first.Day == last ? $"{last} {name}" : $"{first.Day} to {last} {name}";
    }

    private static void Chart(
        HtmlText html,
        HouseResult house,
        (string Label, MonthFuel Month, Estimate Fuel)[] months,
        FuelMeasure measure
    )
    {
        var largest = Math.Max(1e-9, months.Max(month => Math.Max(month.Fuel.Mean, month.Fuel.P90)));
        var width = Slot * months.Length;
        const double bottom = Top + Plot;
        const double height = bottom + 40;
        var label = $"{house.House.Heat!.Fuel.Name} by month, {measure.Plural}: {PlainText.Short(house.House.Name, 60)}";
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"{label}\"><svg class=\"chart months\" role=\"img\" ");
        html.Add($"aria-label=\"{label}\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">\n");
        var x = (Slot - Bar) / 2;
        foreach ((var _, var month, var fuel) in months)
        {
            var top = bottom - (fuel.Mean / largest * Plot);
            var high = bottom - (fuel.P90 / largest * Plot);
            var middle = x + (Bar / 2);
            html.Add($"<rect class=\"work\" x=\"{x}\" y=\"{top}\" width=\"{Bar}\" height=\"{bottom - top}\"/>");
            html.Add($"<line class=\"high\" x1=\"{x}\" y1=\"{high}\" x2=\"{x + Bar}\" y2=\"{high}\"/>");
            html.Add($"<text class=\"middle faint\" x=\"{middle}\" y=\"{bottom + 17}\">{Dates.ShortMonth(month.Month)}</text>");
            html.Add($"<text class=\"middle\" x=\"{middle}\" y=\"{bottom + 34}\">{Numbers.Fine(fuel.Mean)}</text>\n");
            x += Slot;
        }

        html.Add($"<line class=\"axis\" x1=\"0\" y1=\"{bottom}\" x2=\"{width}\" y2=\"{bottom}\"/></svg></div>\n");
    }

    private static void Table(
        HtmlText html,
        HouseResult house,
        (string Label, MonthFuel Month, Estimate Fuel)[] months,
        FuelMeasure measure,
        StudyResult result
    )
    {
        var heat = house.House.Heat!;
        html.Add($"<details><summary>Table by month: {HtmlText.Name(house.House.Name, 40)}</summary>");
        html.Add(
            $"<p>In {measure.Plural} of {heat.Fuel.Name}, of {Numbers.Count(result.Seasons, "season", "seasons")}. Cold months differ "
        );
        html.Add($"from season to season, so only the means add up to the season.</p>");
        html.Add($"<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Fuel by month\"><table><thead><tr>");
        html.Add($"<th scope=\"col\">Month</th><th scope=\"col\">Mean</th><th scope=\"col\">95 % interval of the mean</th>");
        html.Add($"<th scope=\"col\">Eight seasons of ten</th>");
        if (heat.Price is not null)
        {
            html.Add($"<th scope=\"col\">Cost, mean</th>");
        }

        html.Add($"</tr></thead><tbody>\n");
        var money = new Money(result.Plan.Scenario.Rules.Prices.Currency);
        foreach ((var label, var month, var fuel) in months)
        {
            Row(html, label, month.Fuel, fuel, heat.Price, money);
        }

        Row(html, "Whole season", house.Fuel!.Value, measure.Of(house.Fuel.Value), heat.Price, money);
        html.Add($"</tbody></table></div></details>\n");
    }

    private static void Row(HtmlText html, string label, Estimate bought, Estimate fuel, double? price, Money money)
    {
        html.Add($"<tr><th scope=\"row\">{label}</th><td>{Numbers.Fine(fuel.Mean)}</td><td>{Spreads.MeanRange(fuel, Numbers.Fine)}</td>");
        html.Add($"<td>{Numbers.Fine(fuel.P10)} to {Numbers.Fine(fuel.P90)}</td>");
        if (price is { } each)
        {
            html.Add($"<td>{money.Amount(bought.Mean * each)}</td>");
        }

        html.Add($"</tr>\n");
    }
}
