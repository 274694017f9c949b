using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Site;

/// <summary>Reads [weather].</summary>
internal sealed class WeatherSectionReader(CellReader cells)
{
    private static readonly (string Word, bool IsRecord)[] Kinds = [("constant", false), ("record", true)];
    private static readonly (string Word, UnitSystem Value)[] TemperatureWords = [("C", UnitSystem.Metric), ("F", UnitSystem.Imperial)];
    private static readonly (string Word, UnitSystem Value)[] RainWords = [("mm", UnitSystem.Metric), ("in", UnitSystem.Imperial)];
    private static readonly string[] ConstantKeys = ["low", "high", "rain"];
    private static readonly string[] RecordKeys = ["file", "year", "temperature_unit", "rain_unit"];

    /// <summary>Reads the section; null when the kind or its values had a fault.</summary>
    public WeatherDraft? Read(Section section, UnitSystem units)
    {
        var kindCell = section.Required("kind", "\"constant\"");
        if (cells.Choice(kindCell, Kinds) is not { } isRecord)
        {
            return null;
        }

        foreach (var key in (isRecord ? ConstantKeys : RecordKeys).Where(section.Has))
        {
            cells.Faults.Add(
                section.PlaceOf(key),
                $"{key} is not for kind = \"{kindCell.Text}\"",
                $"take it out, or write kind = \"{(isRecord ? "constant" : "record")}\"");
        }

        return isRecord ? ReadRecord(section, units) : ReadConstant(section);
    }

    private WeatherDraft? ReadConstant(Section section)
    {
        var low = cells.Temperature(section.Required("low", "\"45 F\""));
        var highCell = section.Required("high", "\"65 F\"");
        var high = cells.Temperature(highCell);
        var rain = cells.Rain(section.Scalar("rain"));
        if (high < low)
        {
            cells.Refuse(
                highCell,
                $"is {Words.Number(high.Value)} C, below low, which is {Words.Number(low.Value)} C",
                "write the lowest temperature in low and the highest in high");
            return null;
        }

        return low is null || high is null
            ? null
            : new WeatherDraft(new ConstantWeather(low.Value, high.Value, rain ?? 0), default, null, default, default, default);
    }

    private WeatherDraft? ReadRecord(Section section, UnitSystem units)
    {
        var file = section.Required("file", "\"weather.csv\"");
        var yearCell = section.Scalar("year");
        var year = cells.Whole(yearCell, 1900, 2199);
        var temperatureUnits = cells.Choice(section.Scalar("temperature_unit"), TemperatureWords) ?? units;
        var rainUnits = cells.Choice(section.Scalar("rain_unit"), RainWords) ?? units;
        if (file.IsBlank)
        {
            return null;
        }

        if (!IsInside(file.Text))
        {
            cells.Refuse(
                file,
                $"is {Words.Quote(file.Text)}, which is not inside the scenario folder",
                "put the file into the folder and write its name, such as \"weather.csv\"");
            return null;
        }

        return new WeatherDraft(null, file, year, yearCell, temperatureUnits, rainUnits);
    }

    // A report carries the inputs it ran, so all of them lie inside the folder. Backslashes and colons mean another disk on some systems.
    private static bool IsInside(string name) =>
        !Words.HasControlCharacter(name)
        && !name.Contains('\\', StringComparison.Ordinal) && !name.Contains(':', StringComparison.Ordinal)
        && name.Split('/').All(part => part is not ("" or "." or ".."));
}
