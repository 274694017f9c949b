using BenchSim.Folder.Editing;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Editing;

/// <summary>A cell of a table is changed, and nothing else.</summary>
public class CsvEditTests
{
    private const string Sample = "\uFEFFid;crop ; note\r\na;tomato;\"He said \"\"no\"\"; so\"\r\n\r\nb;pepper\r\n";

    public static TheoryData<string> Tables =>
        [
            .. Repository
                .Examples.SelectMany(folder => Directory.EnumerateFiles(folder, "*.csv"))
                .Select(path => Path.GetRelativePath(Repository.Root, path))
                .Order(StringComparer.Ordinal),
        ];

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_cell_set_to_itself_leaves_the_file_and_set_to_another_value_changes_that_cell_alone(string path)
    {
        var text = File.ReadAllText(Repository.File(path));
        var names = text.Split('\n')[0].Trim().Split(',');
        var rows = Math.Min(CsvEdit.Rows(text), 60);
        for (var row = 0; row < rows; row++)
        {
            foreach (var name in names)
            {
                var cell = CsvEdit.Cell(text, row, name)!;
                Assert.Equal(text, CsvEdit.Set(path, text, row, name, cell).Text);
                var edit = CsvEdit.Set(path, text, row, name, "new, \"one\"");
                Assert.Null(edit.Fault);
                Assert.Equal("new, \"one\"", CsvEdit.Cell(edit.Text, row, name));
                Assert.Equal(
                    text,
                    CsvEdit.Set(path, edit.Text, row, name, cell).Text.Replace($"\"{cell}\"", cell, StringComparison.Ordinal)
                );
            }
        }
    }

    [Fact]
    public void Mark_separator_line_ends_and_quotation_marks_stay()
    {
        Assert.Equal(2, CsvEdit.Rows(Sample));
        Assert.Equal("He said \"no\"; so", CsvEdit.Cell(Sample, 0, "note"));
        Assert.Equal(
            "\uFEFFid;crop ; note\r\na;tomato;\"fine\"\r\n\r\nb;pepper\r\n",
            CsvEdit.Set("plan.csv", Sample, 0, "note", "fine").Text
        );
        Assert.Equal(
            "\uFEFFid;crop ; note\r\na;tomato;\"He said \"\"no\"\"; so\"\r\n\r\nb;pepper;\"x;y\"\r\n",
            CsvEdit.Set("plan.csv", Sample, 1, "note", "x;y").Text
        );
        Assert.Equal(
            "\uFEFFid;crop ; note;sow\r\na;tomato;\"He said \"\"no\"\"; so\"\r\n\r\nb;pepper;;2027-03-01\r\n",
            CsvEdit.Set("plan.csv", Sample, 1, "sow", "2027-03-01").Text
        );
    }

    [Fact]
    public void Rows_are_put_in_and_taken_out()
    {
        var cells = new Dictionary<string, string>(StringComparer.Ordinal) { ["id"] = "c", ["note"] = "n" };
        var first = CsvEdit.Insert("plan.csv", "id,crop,note\na,tomato,\nb,pepper,\n", 0, cells).Text;
        Assert.Equal("id,crop,note\nc,,n\na,tomato,\nb,pepper,\n", first);
        Assert.Equal("id,crop,note\na,tomato,\nb,pepper,\n", CsvEdit.Remove("plan.csv", first, 0).Text);
        Assert.Equal("id,crop,note\na,tomato,\nc,,n", CsvEdit.Insert("plan.csv", "id,crop,note\na,tomato,", 1, cells).Text);
    }

    [Fact]
    public void A_row_is_copied_character_for_character()
    {
        Assert.Equal(
            "id;note\r\n\r\n a ;\"x;\r\ny\"\r\n a ;\"x;\r\ny\"\r\nb;",
            CsvEdit.Copy("plan.csv", "id;note\r\n\r\n a ;\"x;\r\ny\"\r\nb;", 0).Text
        );
        Assert.Equal("\uFEFFid,note\na,n\na,n", CsvEdit.Copy("plan.csv", "\uFEFFid,note\na,n", 0).Text);
        Assert.Equal("there is no row 2", CsvEdit.Copy("plan.csv", "id,note\na,n", 1).Fault!.What);
    }

    [Fact]
    public void What_cannot_be_done_is_a_fault_and_changes_nothing()
    {
        const string open = "id,note\na,\"never closed\n";
        var edit = CsvEdit.Set("plan.csv", open, 0, "id", "b");
        Assert.Equal((open, "plan.csv:2:3"), (edit.Text, edit.Fault!.Place.ToString()));
        Assert.Equal("there is no row 4", CsvEdit.Remove("plan.csv", Sample, 3).Fault!.What);
        Assert.Equal("the file is empty", CsvEdit.Set("plan.csv", "", 0, "id", "b").Fault!.What);
    }
}
