using BenchSim.Folder.Library;

namespace BenchSim.Folder.Tests.Library;

public class LibrarySourceFileTests
{
    private static readonly string[] s_trustWords = ["seen", "derived", "borrowed", "common practice", "memory", "assumption"];

    public static TheoryData<string, string> Files => new() { { "crops.csv", "crop_sources.csv" }, { "trays.csv", "tray_sources.csv" } };

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_source_row_belongs_to_a_value_and_uses_a_known_word(string values, string sources)
    {
        var rows = values == "crops.csv" ? BuiltInLibrary.Crops : BuiltInLibrary.Trays;
        var header = Lines(values).First().Split(',');
        var cited = Lines(sources).Skip(1).Select(line => line.Split(',', 4)).ToList();
        Assert.Equal(cited.Count, cited.Select(row => (row[0], row[1])).Distinct().Count());
        foreach (var row in cited)
        {
            Assert.Contains(row[1], header, StringComparer.Ordinal);
            Assert.Contains(row[2], s_trustWords, StringComparer.Ordinal);
            if (row[0] == "*")
            {
                // A general source that every row overrides would never be shown.
                Assert.Contains(rows, crop => crop.Cells[row[1]].Length > 0 && !cited.Exists(own => own[0] == crop.Id && own[1] == row[1]));
            }
            else
            {
                Assert.Contains(rows, crop => crop.Id == row[0] && crop.Cells[row[1]].Length > 0);
            }
        }
    }

    // Id, column and trust hold no comma or quote, so the first three cells of a source row split plainly.
    private static IEnumerable<string> Lines(string file)
    {
        using var stream = typeof(BuiltInLibrary).Assembly.GetManifestResourceStream($"BenchSim.Folder.Library.{file}")!;
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            yield return line;
        }
    }
}
