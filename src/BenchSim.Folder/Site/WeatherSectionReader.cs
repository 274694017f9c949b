using BenchSim.Folder.Faults;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads [weather].</summary>
internal sealed class WeatherSectionReader(CellReader cells)
{
    private static readonly (string Word, WeatherKind Value)[] Kinds =
    [
        ("constant", WeatherKind.Constant),
        ("record", WeatherKind.Record),
        ("generated", WeatherKind.Generated),
        ("normals", WeatherKind.Normals),
    ];

    private static readonly string[] OtherFiles =
    [
        FolderReference.SiteFile,
        FolderReference.PlanFile,
        FolderReference.CropFile,
        FolderReference.TrayFile,
    ];

    private static readonly (string Word, UnitSystem Value)[] TemperatureWords = [("C", UnitSystem.Metric), ("F", UnitSystem.Imperial)];
    private static readonly (string Word, UnitSystem Value)[] RainWords = [("mm", UnitSystem.Metric), ("in", UnitSystem.Imperial)];

    // In the order of Kinds: a key of another kind is said to belong to the first that has it.
    private static readonly string[][] KeysOfKind =
    [
        ["low", "high", "rain"],
        ["file", "year", "temperature_unit", "rain_unit"],
        ["file", "temperature_unit", "rain_unit"],
        ["low", "high", "rain_days", "rain", "low_sd", "high_sd", "temperature_unit", "rain_unit"],
    ];

    private enum WeatherKind
    {
        Constant,
        Record,
        Generated,
        Normals,
    }

    /// <summary>Reads the section; null when the kind or its values had a fault.</summary>
    public WeatherDraft? Read(Section section, UnitSystem units)
    {
        var kindCell = section.Required("kind", "\"constant\"");
        if (cells.Choice(kindCell, Kinds) is not { } kind)
        {
            return null;
        }

        RefuseOtherKeys(section, kind);
        if (kind == WeatherKind.Constant)
        {
            return ReadConstant(section);
        }

        var temperatureUnits = cells.Choice(section.Scalar("temperature_unit"), TemperatureWords) ?? units;
        var rainUnits = cells.Choice(section.Scalar("rain_unit"), RainWords) ?? units;
        return kind == WeatherKind.Normals
            ? new NormalsReader(cells, section).Read(temperatureUnits, rainUnits)
            : ReadRecord(section, kind == WeatherKind.Generated, temperatureUnits, rainUnits);
    }

    private void RefuseOtherKeys(Section section, WeatherKind kind)
    {
        foreach (
            var key in KeysOfKind
                .SelectMany(keys => keys)
                .Distinct(StringComparer.Ordinal)
                .Except(KeysOfKind[(int)kind], StringComparer.Ordinal)
                .Where(section.Has)
        )
        {
            cells.Faults.Add(
                section.PlaceOf(key),
                $"{key} is not for kind = \"{Kinds[(int)kind].Word}\"",
                $"take it out, or write kind = \"{Kinds[Array.FindIndex(KeysOfKind, keys => keys.Contains(key, StringComparer.Ordinal))].Word}\""
            );
        }
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
                $"is {Words.Temperature(high.Value, highCell.Units)}, below low, which is {Words.Temperature(low.Value, highCell.Units)}",
                "write the lowest temperature in low and the highest in high"
            );
            return null;
        }

        return low is null || high is null ? null : WeatherDraft.Of(new ConstantWeather(low.Value, high.Value, rain ?? 0));
    }

    private WeatherDraft? ReadRecord(Section section, bool isGenerated, UnitSystem temperatureUnits, UnitSystem rainUnits)
    {
        var file = section.Required("file", "\"weather.csv\"");
        var yearCell = isGenerated ? default : section.Scalar("year");
        var year = isGenerated ? null : cells.Whole(yearCell, 1900, 2199);
        if (file.IsBlank)
        {
            return null;
        }

        // A report carries the inputs it ran, under their names.
        if (!PlainNames.IsPlain(file.Text))
        {
            cells.Refuse(
                file,
                $"is {Words.Quote(file.Text)}, which is no plain name of a file inside the scenario folder",
                "put the file into the folder and write its name, such as \"weather.csv\", without any of \\ : * ? \" < > |"
            );
            return null;
        }

        // Names that differ in case alone are one file on some systems, and in a report.
        if (OtherFiles.FirstOrDefault(name => string.Equals(name, file.Text, StringComparison.OrdinalIgnoreCase)) is { } taken)
        {
            cells.Refuse(
                file,
                $"is {Words.Quote(file.Text)}, and {taken} is another file of the scenario",
                "give the weather record a name of its own, such as \"weather.csv\""
            );
            return null;
        }

        return new WeatherDraft(null, file, isGenerated, year, yearCell, temperatureUnits, rainUnits);
    }
}
