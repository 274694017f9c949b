namespace BenchSim.Cli.Tests;

/// <summary>Each folder with tables has columns.csv: every column of every table in it, in their order, and none more.</summary>
public sealed class ColumnDictionaryTests
{
    private const string Dictionary = "columns.csv";

    private const string Room = """
        [[space]]
        id = "mats"
        places = 20

        [invest]
        capital = 500
        life_years = 4
        discount_rate = "5 %"
        plant_on_time = 5
        """;

    [Theory]
    [InlineData(8, "run", "--bottlenecks", "--seasons", "5")]
    [InlineData(2, "size", "--space", "mats", "--seasons", "5")]
    [InlineData(5, "invest", "--with", "room", "--seasons", "5")]
    [InlineData(4, "dense", "--crop", "pepper", "--seasons", "5")]
    [InlineData(7, "weather")]
    [InlineData(6, "print")]
    public void It_has_every_column_of_every_table_of_the_folder_and_none_more(int tables, string command, params string[] options)
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Directory.CreateDirectory(Path.Combine(spring, "variants"));
        File.WriteAllText(Path.Combine(spring, "variants", "room.toml"), Room);
        File.WriteAllText(Path.Combine(spring, "supplies.csv"), "item,pack\nbroccoli,500\n");
        var what = command is "weather" ? Repository.File("scenarios/two-house-spring/weather.csv") : spring;
        string[] units = command is "weather" ? ["--temperature-unit", "C", "--rain-unit", "mm"] : [];
        var call = Call.Run([command, what, .. options, .. units, "--out", folder.In("out")]);
        Assert.True(call.Code == 0, call.Error);

        string[] files =
        [
            .. Directory
                .EnumerateFiles(folder.In("out"), "*.csv", SearchOption.AllDirectories)
                .Select(file => Path.GetRelativePath(folder.In("out"), file).Replace('\\', '/'))
                .Where(file => !file.StartsWith("inputs/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(tables, files.Length);
        var rows = CsvRows.In(folder.In("out/" + Dictionary));
        Assert.Equal(["file", "column", "unit", "meaning"], rows[0]);
        Assert.Equal(
            files,
            rows.Skip(1).Select(row => row[0]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
        foreach (var file in files)
        {
            var own = rows.Skip(1).Where(row => string.Equals(row[0], file, StringComparison.Ordinal)).ToArray();
            Assert.Equal(CsvRows.In(folder.In("out/" + file))[0], own.Select(row => row[1]), StringComparer.Ordinal);
            Assert.All(own, row => Assert.True(row[2].Length > 0 && row[3].Length > 0, $"{row[0]} {row[1]}"));
        }
    }
}
