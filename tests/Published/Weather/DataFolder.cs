using System.Globalization;
using System.Text;
using System.Text.Json;
using BenchSim.Season.Weather;

namespace Published.Weather;

/// <summary>Reads the published values committed under tests/Published/data.</summary>
internal static class DataFolder
{
    private static readonly Lazy<ILookup<string, DailyWeather>> s_record = new(() =>
        Rows("daily_weather_two_cities.csv")
            .ToLookup(
                row => row["place"],
                row => new DailyWeather(
                    DateOnly.ParseExact(row["date"], "yyyy-MM-dd", CultureInfo.InvariantCulture),
                    Number(row["tmin_c"]),
                    Number(row["tmax_c"]),
                    Number(row["rain_mm"])
                ),
                StringComparer.Ordinal
            )
    );

    private static string Folder
    {
        get
        {
            for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            {
                var data = Path.Combine(folder.FullName, "tests", "Published", "data");
                if (Directory.Exists(data))
                {
                    return data;
                }
            }

            throw new DirectoryNotFoundException("tests/Published/data was not found above the test's own folder.");
        }
    }

    public static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Rows of a CSV file as name to text.</summary>
    public static List<Dictionary<string, string>> Rows(string file)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder, file));
        var names = Fields(lines[0]);
        return
        [
            .. lines
                .Skip(1)
                .Where(line => line.Length > 0)
                .Select(line =>
                {
                    var fields = Fields(line);
                    return Enumerable.Range(0, names.Count).ToDictionary(i => names[i], i => fields[i], StringComparer.Ordinal);
                }),
        ];
    }

    public static JsonElement Json(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, file)));
        return document.RootElement.Clone();
    }

    public static DailyWeather[] Days(string place) => [.. s_record.Value[place]];

    private static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append(line[i++]);
            }
            else if (line[i] == '"')
            {
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
            {
                Take();
            }
            else
            {
                field.Append(line[i]);
            }
        }

        Take();
        return fields;

        void Take()
        {
            fields.Add(field.ToString());
            field.Clear();
        }
    }
}
