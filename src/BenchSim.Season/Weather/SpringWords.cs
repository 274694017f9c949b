using System.Globalization;
using BenchSim.Season.Values;

namespace BenchSim.Season.Weather;

/// <summary>The springs of a record beside generated ones, in words.</summary>
internal static class SpringWords
{
    /// <summary>A sentence for each figure.</summary>
    public static IEnumerable<string> Sentences(WeatherFitReport report, UnitSystem units)
    {
        if (report.Springs.IsEmpty)
        {
            return ["No spring of the record is whole from January to June: late frosts and cold nights are not compared."];
        }

        return report.Springs.Select(figure => Sentence(figure, units));
    }

    /// <summary>A sentence for each figure that lies further out than luck explains.</summary>
    public static IEnumerable<string> Warnings(WeatherFitReport report, UnitSystem units) =>
        report
            .Springs.Where(figure => figure.IsOutside)
            .Select(figure =>
                $"{NameOf(figure.Kind, units)}: record and generator lie further apart than chance explains "
                + $"in {Count(figure.Record.Springs, "spring", "springs")}. {Sentence(figure, units)} "
                + "If it matters to you, also play the record's own years: kind = \"record\" in [weather]."
            );

    private static string Sentence(SpringFigure figure, UnitSystem units)
    {
        var (record, generated) = (figure.Record, figure.Generated);
        var name = NameOf(figure.Kind, units);
        if (record.Mean is not { } mean)
        {
            return $"{name}: none of {Count(record.Springs, "spring", "springs")} of the record had one, and {Share(generated)} of the "
                + "generated springs had none.";
        }

        var told = generated.Mean is { } drawn
            ? $"{name}{Each(figure.Kind)}: {Value(figure.Kind, mean, units)} in the record, {Value(figure.Kind, drawn, units)} generated"
            : $"{name}{Each(figure.Kind)}: {Value(figure.Kind, mean, units)} in the record, never generated";
        if (record.StandardDeviation is { } spread && generated.StandardDeviation is { } drawnSpread)
        {
            var (seen, made) = (Spread(figure.Kind, spread, units), Spread(figure.Kind, drawnSpread, units));
            told += $"; years differ from it by {seen} and {made} (standard deviation)";
        }

        return record.Without > 0 || generated.Without * 200 >= generated.Springs
            ? $"{told}. {Of(record)} of the record, and {Share(generated)} of those generated, had none."
            : $"{told}.";
    }

    private static string NameOf(SpringKind kind, UnitSystem units) =>
        kind switch
        {
            SpringKind.LastFrost => $"Last night at or below {UnitWords.Temperature(WeatherStatistics.FrostC, units)}",
            SpringKind.LastHardFrost => $"Last night at or below {UnitWords.Temperature(WeatherStatistics.HardFrostC, units)}",
            SpringKind.ColdNightsOfApril => $"Nights below {UnitWords.Temperature(WeatherStatistics.HardeningNightC, units)} in April",
            SpringKind.ColdNightsOfMay => $"Nights below {UnitWords.Temperature(WeatherStatistics.HardeningNightC, units)} in May",
            SpringKind.MeanTemperature => "Mean temperature of March to May",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
        };

    private static string Each(SpringKind kind) =>
        kind switch
        {
            SpringKind.LastFrost or SpringKind.LastHardFrost => ", on average",
            SpringKind.MeanTemperature => "",
            _ => ", a year",
        };

    private static string Value(SpringKind kind, double value, UnitSystem units) =>
        kind switch
        {
            SpringKind.LastFrost or SpringKind.LastHardFrost => DayName(value),
            SpringKind.MeanTemperature => UnitWords.Temperature(value, units),
            _ => value.ToString("0.0", CultureInfo.InvariantCulture),
        };

    private static string Spread(SpringKind kind, double value, UnitSystem units) =>
        kind switch
        {
            SpringKind.LastFrost or SpringKind.LastHardFrost => $"{value.ToString("0", CultureInfo.InvariantCulture)} days",
            SpringKind.MeanTemperature => UnitWords.Difference(value, units),
            _ => value.ToString("0.0", CultureInfo.InvariantCulture),
        };

    private static string Of(SpringSide side) => $"{side.Without} of {Count(side.Springs, "spring", "springs")}";

    private static string Share(SpringSide side) =>
        (100.0 * side.Without / side.Springs).ToString("0", CultureInfo.InvariantCulture) + " %";

    private static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";

    private static string DayName(double dayOfYear)
    {
        var date = new DateOnly(2001, 1, 1).AddDays((int)Math.Round(dayOfYear) - 1);
        return $"{date.Day} {MonthNames.Of(date.Month - 1)}";
    }
}
