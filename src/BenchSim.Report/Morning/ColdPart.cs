using System.Collections.Immutable;
using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Values;

namespace BenchSim.Report.Morning;

/// <summary>The card for cold nights, and what to do on a hot day.</summary>
internal static class ColdPart
{
    private const string Alarm = "This is no alarm: have one that works without mains or internet, and two people who answer it.";

    public static void Write(HtmlText html, TodaySheet sheet)
    {
        html.Add($"<section class=\"sheet\" aria-labelledby=\"cold\"><h2 id=\"cold\">Cold night: cover, carry in</h2>\n");
        html.Add($"<p><b>{Alarm}</b></p>\n");
        Forecast(html, sheet);
        Boxes(html, sheet);
        Nights(html, sheet);
        Tomorrow(html, sheet);
        html.Add($"</section>\n");
    }

    private static void Forecast(HtmlText html, TodaySheet sheet)
    {
        var (cold, seen) = (sheet.Cold, sheet.Plan.Scenario.Seen);
        html.Add($"<p>");
        if (seen.ForecastFile is not { } file)
        {
            html.Add($"No forecast is in the folder. ");
        }
        else if (cold.Forecast.IsEmpty)
        {
            html.Add($"The forecast of {HtmlText.Name(file, SheetWords.LongestName)} is over. ");
        }
        else
        {
            var old = sheet.Today.DayNumber - seen.Forecast.Min(day => day.Date).DayNumber;
            html.Add($"Forecast: {HtmlText.Name(file, SheetWords.LongestName)}, to {SheetWords.Day(cold.Forecast[^1].Date)}");
            html.Add($"{(old > 0 ? $", begun {Numbers.Count(old, "day", "days")} ago" : "")}. ");
        }

        html.Add($"Look again in the afternoon, and write down the lows and when you looked: ______________</p>\n");
        if (cold.Own.Nights > 0)
        {
            Own(html, sheet);
        }
    }

    private static void Own(HtmlText html, TodaySheet sheet)
    {
        var own = sheet.Cold.Own;
        var units = sheet.Plan.Scenario.Units;
        html.Add($"<p class=\"small\">Your own thermometer, over {Numbers.Count(own.Nights, "night", "nights")}: ");
        html.Add($"{Difference(Math.Abs(own.MeanK), units)} {(own.MeanK < 0 ? "colder" : "warmer")} than the weather observed. ");
        html.Add($"{Corrects(own)}</p>\n");
    }

    private static string Corrects(OwnThermometer own) =>
        own.CorrectionK < 0 ? "The advice takes that off the forecast."
        : own.MeanK < 0 ? $"The advice takes it off the forecast from {OwnThermometer.EnoughNights} nights on."
        : "The advice leaves that out.";

    private static void Boxes(HtmlText html, TodaySheet sheet)
    {
        html.Add($"<table class=\"boxes\"><caption>Forecast lows, {Unit(sheet)}: the night after the evening of</caption><thead><tr>");
        for (var day = 0; day < ColdCard.Boxes; day++)
        {
            html.Add($"<th scope=\"col\">{SheetWords.Day(sheet.Today.AddDays(day))}</th>");
        }

        html.Add($"</tr></thead><tbody><tr>");
        foreach (var low in sheet.Cold.Lows)
        {
            html.Add($"<td>{(low is { } known ? Degrees(sheet, known) : "")}</td>");
        }

        html.Add($"</tr></tbody></table>\n");
    }

    private static void Nights(HtmlText html, TodaySheet sheet)
    {
        var (cold, rules) = (sheet.Cold, sheet.Plan.Scenario.Rules);
        if (cold.Nights.IsEmpty)
        {
            html.Add($"<p>By the log no tray stands on a hardening table.</p>\n");
            return;
        }

        var inHand = Difference(ColdNight.InHandK, sheet.Plan.Scenario.Units);
        html.Add(
            $"<p class=\"small\">For the trays on the table by the log; what goes out today comes on top. The advice keeps {inHand} in "
        );
        html.Add($"hand. Each line adds to the one above it; take the next colder line where you are not sure. ");
        html.Add($"{Cover(rules.CoverGainK, sheet.Plan.Scenario.Units)} ");
        html.Add($"Free on the benches indoors by the log: {Numbers.Count(cold.RoomIndoors, "place", "places")}.</p>\n");
        html.Add($"<table class=\"cold\"><thead><tr><th scope=\"col\" class=\"low\">Low, {Unit(sheet)}</th><th scope=\"col\">Cover</th>");
        html.Add($"<th scope=\"col\">Carry in</th><th scope=\"col\" class=\"number sum\">Minutes</th></tr></thead><tbody>\n");
        for (var index = 0; index < cold.Nights.Length; index++)
        {
            Night(html, sheet, index);
        }

        html.Add($"</tbody></table>\n");
    }

    private static string Cover(double gainK, UnitSystem units) =>
        gainK > 0
            ? $"The cover is taken to add {Difference(gainK, units)}."
            : "The rules of the site name no warmth of a cover (cover_gain).";

    private static void Night(HtmlText html, TodaySheet sheet, int index)
    {
        var (cold, night) = (sheet.Cold, sheet.Cold.Nights[index]);
        var above = index == 0 ? null : cold.Nights[index - 1];
        html.Add($"<tr{new Markup(cold.Tonight == index ? " class=\"tonight\"" : "")}><th scope=\"row\" class=\"low\"><b>");
        html.Add($"{Degrees(sheet, night.LowC)}</b>{(cold.Tonight == index ? " tonight" : "")}</th>");
        html.Add($"<td>{More(sheet, night.Cover, above?.Cover)}</td>");
        html.Add($"<td>{More(sheet, night.CarryIn, above?.CarryIn)}");
        if (night.Places > cold.RoomIndoors)
        {
            html.Add($" <b>{Numbers.Count(night.Places - cold.RoomIndoors, "place", "places")} too few on the benches</b>");
        }

        html.Add($"</td><td class=\"number sum\">{(night.Minutes > 0 ? Numbers.Whole(Math.Ceiling(night.Minutes)) : "")}</td></tr>\n");
    }

    // What the line above has not.
    private static Markup More(TodaySheet sheet, ImmutableArray<ColdTrays> all, ImmutableArray<ColdTrays>? above)
    {
        if (all.IsEmpty)
        {
            return new("none");
        }

        var sum = $"<b>{HtmlText.Escape(TaskWords.Pieces(all.Sum(trays => trays.Count), areFlats: false))}</b>";
        ColdTrays[] more = [.. all.Where(trays => above?.Contains(trays) != true)];
        if (more.Length == 0)
        {
            return new(all.Length == above?.Length ? "as above" : $"{sum}, the others");
        }

        var isMore = above is { IsEmpty: false } && more.Length < all.Length;
        return new($"{sum}: {(isMore ? "also " : "")}{string.Join(", ", more.Select(trays => Trays(sheet, trays)))}");
    }

    private static string Trays(TodaySheet sheet, ColdTrays trays) =>
        $"{HtmlText.Name(sheet.Plan.Batches[trays.Batch].Order.Id, SheetWords.LongestName).Html} ({trays.Count})";

    private static void Tomorrow(HtmlText html, TodaySheet sheet)
    {
        var hot = Temperatures.Words(ColdCard.HotC, sheet.Plan.Scenario.Units);
        var todo = "open the vents early, and water a second time after noon";
        html.Add($"<p><b>Tomorrow.</b> ");
        if (sheet.Cold.Tomorrow is not { } day)
        {
            html.Add($"No forecast is known. If it says {hot} or more and dry: {todo}.");
        }
        else
        {
            html.Add($"Up to {Temperatures.Words(day.TmaxC, sheet.Plan.Scenario.Units)}");
            html.Add($"{(sheet.Cold.IsHotTomorrow == true ? " and dry by the forecast:" : $" by the forecast. From {hot} on, and dry:")} ");
            html.Add($"{todo}.");
        }

        html.Add($"</p>\n");
    }

    private static string Unit(TodaySheet sheet) => sheet.Plan.Scenario.Units == UnitSystem.Imperial ? "°F" : "°C";

    private static string Degrees(TodaySheet sheet, double celsius) => Numbers.Whole(UnitWords.Degrees(celsius, sheet.Plan.Scenario.Units));

    // "3 °F", "1.7 °C".
    private static string Difference(double kelvin, UnitSystem units) =>
        units == UnitSystem.Imperial ? $"{Numbers.Short(kelvin * 1.8)} °F" : $"{Numbers.Short(kelvin)} °C";
}
