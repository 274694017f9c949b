using BenchSim.Folder.Csv;
using BenchSim.Folder.Faults;
using BenchSim.Folder.Files;
using CsCheck;

namespace BenchSim.Folder.Tests.Csv;

/// <summary>What spreadsheets really write.</summary>
public class CsvTests
{
    private const string Head = "id,crop,plants,sow\n";

    [Theory]
    [InlineData("\uFEFFid,crop,plants,sow\na,tomato,100,2027-03-01\n")] // byte order mark
    [InlineData("id;crop;plants;sow\r\na;tomato;100;2027-03-01\r\n")] // semicolons, CRLF
    [InlineData("id\tcrop\tplants\tsow\na\ttomato\t100\t2027-03-01")] // tabs, no line end
    [InlineData("sep=;\nid;crop;plants;sow\na;tomato;100;2027-03-01\n")] // the separator line of some spreadsheets
    [InlineData("\n,,,\nid,crop,plants,sow\n\na,tomato,100,2027-03-01\n,,,\n \n\n")] // blank rows before, inside and behind
    [InlineData("id,crop,plants,sow,,\na,tomato,100,2027-03-01,,,,\n")] // empty columns behind
    [InlineData("ID, Crop ,PLANTS,Sow\n a , tomato ,100, 2027-03-01\n")] // case and spaces
    [InlineData("\"id\",\"crop\",\"plants\",\"sow\"\n\"a\",\"tomato\",\"100\",\"2027-03-01\"\n")] // all quoted
    [InlineData("id,crop,plants,sow,note\na,tomato,100,2027-03-01\n")] // a short row
    [InlineData("sow,plants,crop,id\r2027-03-01,100,tomato,a\r")] // another order, lines ending in CR
    public void Many_ways_to_write_one_plan(string plan)
    {
        using var folder = new TestFolder(plan: plan);
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var batch = Assert.Single(reading.Scenario!.Batches);
        Assert.Equal(("a", "tomato", 100, new DateOnly(2027, 3, 1)), (batch.Id, batch.CropId, batch.Plants, batch.Sow));
    }

    [Fact]
    public void Quoted_cells_hold_separators_quotes_and_line_breaks_and_lines_are_still_counted()
    {
        using var folder = new TestFolder(
            plan: "id,crop,plants,sow,note\na,tomato,100,2027-03-01,\"one, \"\"two\"\"\nthree\"\nb,tomatto,1,2027-03-01,\n"
        );
        Assert.Equal("plan.csv:4:3", Assert.Single(folder.Read().Faults).Place.ToString());
        folder.Write("plan.csv", "id,crop,plants,sow,note\na,tomato,100,2027-03-01,\"one, \"\"two\"\"\nthree\"\n");
        Assert.Equal("one, \"two\"\nthree", Assert.Single(folder.Read().Scenario!.Batches).Note);
    }

    [Fact]
    public void Columns_count_characters_not_bytes_or_halves_of_characters() =>
        // "é🌱,": the crop begins at the fourth character.
        Assert.Equal(
            "plan.csv:2:4: there is no crop \"tomatto\"; did you mean \"tomato\"",
            Assert.Single(TestFolder.Faults(plan: Head + "é🌱,tomatto,1,2027-03-01\n"))
        );

    [Fact]
    public void A_filled_cell_past_the_header_is_a_fault() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(plan: "id,crop,plants,sow,\na,tomato,100,2027-03-01,x,y\n"),
            "plan.csv:2:25: this cell stands in a column without a name: \"x\"; clear it; a text that holds the separator goes in "
                + "quotation marks",
            "plan.csv:2:27: this cell is past the last column of the header: \"y\"; clear it; a text that holds the separator goes "
                + "in quotation marks"
        );

    [Fact]
    public void Unknown_and_doubled_columns() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(plan: "id,crop,plants,sow,set out,setout,crop,Colour\na,tomato,100,2027-03-01,,,,\n"),
            "plan.csv:1:28: there is no column \"setout\" in this file; did you mean \"set_out\"",
            "plan.csv:1:35: the column \"crop\" is here a second time; keep one of the two",
            "plan.csv:1:40: there is no column \"Colour\" in this file; the columns are id, crop, grower, plants, sow, set_out, "
                + "every_days, times, method, "
                + "tray, flat, trays, flats, seeds_per_cell, seeds_per_flat, germination, tested_on, variety, packet, thousand_seeds, "
                + "earlier, later, finish, finish_at, finish_after_days, field_cover and note"
        );

    [Fact]
    public void Broken_quotes_are_faults_and_reading_goes_on() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(plan: Head + "\"a\"b,tomato,1,2027-03-01\nc,tomatto,1,2027-03-01\n\"d,tomato,1,2027-03-01\n"),
            "plan.csv:2:4: there is text after the closing quotation mark: \"b\"; put it inside the quotation marks; "
                + "a quotation mark inside a quoted cell is written twice",
            "plan.csv:3:3: there is no crop \"tomatto\"; did you mean \"tomato\"",
            "plan.csv:4:1: this quotation mark is never closed; write \"d\""
        );

    /// <summary>
    /// Any fields, quoted as RFC 4180 says, come back as they were, whatever the separator and line end. No chance of a false alarm.
    /// </summary>
    [Fact]
    public void What_is_written_by_the_rules_is_read_back()
    {
        var field = Gen.String[Gen.Char["ab,;\t\"\n é"], 0, 6].Select(text => text.Trim());
        var tables = Gen.Select(field.Array[2, 4].Array[1, 5], Gen.Char[",;\t"], Gen.Bool);
        FixedSample.Holds(tables, 2000, sample =>
        {
            // The first record decides the separator, so it is made plain.
            var (records, separator, isWindows) = sample;
            string[][] all =
            [
                [.. records[0].Select(_ => "head")],
                .. records,
            ];
            var text = string.Concat(all.Select(record => string.Join(separator, record.Select(Quoted)) + (isWindows ? "\r\n" : "\n")));
            var faults = new FaultList();
            var read = CsvText.Split(new FileText("plan.csv", text), faults);
            return faults.Count == 0
                && read.Count == all.Length
                && all.Zip(read).All(pair => pair.First.SequenceEqual(pair.Second.Select(each => each.Text), StringComparer.Ordinal));
        });
    }

    private static string Quoted(string field) => $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
