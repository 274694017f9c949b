using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Site;

/// <summary>Reads [weather].</summary>
internal sealed class WeatherSectionReader(CellReader cells)
{
    private static readonly string[] s_otherFiles = [FileNames.Site, .. FileNames.Tables, .. FileNames.Tables.Select(FileNames.WorkbookOf)];

    /// <summary>Reads the section; null when the kind or its values had a fault.</summary>
    public WeatherDraft? Read(Section section, UnitSystem units) =>
        ReadKind(section, units) is not { } draft
            ? null
            : draft with
            {
                Observed = SeenFile(section.Scalar("observed"), draft),
                Forecast = SeenFile(section.Scalar("forecast"), draft),
            };

    private WeatherDraft? ReadKind(Section section, UnitSystem units)
    {
        var keys = section.Read(WeatherFields.Table, new WeatherKeys(), cells);
        if (keys.Kind is not { } kind)
        {
            return null;
        }

        RefuseOtherKeys(section, kind);
        if (kind == WeatherKind.Constant)
        {
            return ReadConstant(section, keys);
        }

        var draft = new WeatherDraft(keys, null, default, section.Scalar("year"), keys.TemperatureUnit ?? units, keys.RainUnit ?? units);
        return kind == WeatherKind.Normals ? new NormalsReader(cells, section).Read(draft) : ReadRecord(section, draft);
    }

    private void RefuseOtherKeys(Section section, WeatherKind kind)
    {
        foreach (var key in WeatherFields.Table.Names.Where(section.Has))
        {
            var kinds = WeatherFields.KindsOf(key);
            if (!kinds.Contains(kind))
            {
                cells.Faults.Add(
                    section.PlaceOf(key),
                    $"{key} is not for kind = \"{WeatherFields.Kind[kind]}\"",
                    $"take it out, or write kind = \"{WeatherFields.Kind[kinds[0]]}\""
                );
            }
        }
    }

    private WeatherDraft? ReadConstant(Section section, WeatherKeys keys)
    {
        var low = cells.Temperature(section.Required("low", "\"45 F\""));
        var highCell = section.Required("high", "\"65 F\"");
        var high = cells.Temperature(highCell);
        var rain = Kinds.Rain.TryRead(new WrittenCell(cells, section.Scalar("rain")), out var depth) ? depth : 0;
        if (high < low)
        {
            cells.Refuse(
                highCell,
                $"is {Words.Temperature(high.Value, highCell.Units)}, below low, which is {Words.Temperature(low.Value, highCell.Units)}",
                "write the lowest temperature in low and the highest in high"
            );
            return null;
        }

        return low is null || high is null
            ? null
            : WeatherDraft.Of(
                new ConstantWeather(low.Value, high.Value, rain)
                {
                    Written = keys with { LowC = [low.Value], HighC = [high.Value], RainMm = [rain] },
                }
            );
    }

    private WeatherDraft? ReadRecord(Section section, WeatherDraft draft)
    {
        var file = section.Required("file", "\"weather.csv\"");
        if (file.IsBlank)
        {
            return null;
        }

        return IsFree(file) ? draft with { File = file } : null;
    }

    private Cell? SeenFile(Cell file, WeatherDraft draft)
    {
        if (file.IsBlank || !IsFree(file))
        {
            return null;
        }

        if (string.Equals(file.Text, draft.Keys.File, StringComparison.OrdinalIgnoreCase))
        {
            cells.Refuse(file, $"is {Words.Quote(file.Text)}, and file too", "name a file of this season's days, with a name of its own");
            return null;
        }

        return file;
    }

    private bool IsFree(Cell file)
    {
        // A report carries the inputs it ran, under their names.
        if (!PlainNames.IsPlain(file.Text))
        {
            cells.Refuse(
                file,
                $"is {Words.Quote(file.Text)}, which is no plain name of a file inside the scenario folder",
                "put the file into the folder and write its name, such as \"weather.csv\", without any of \\ : * ? \" < > |"
            );
            return false;
        }

        // Names that differ in case alone are one file on some systems, and in a report.
        if (s_otherFiles.FirstOrDefault(name => string.Equals(name, file.Text, StringComparison.OrdinalIgnoreCase)) is { } taken)
        {
            cells.Refuse(
                file,
                $"is {Words.Quote(file.Text)}, and {taken} is another file of the scenario",
                "give the weather record a name of its own, such as \"weather.csv\""
            );
            return false;
        }

        return true;
    }
}
