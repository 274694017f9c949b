using System.Text;
using BenchSim.Folder.Files;
using BenchSim.Folder.Plan;
using BenchSim.Season.Values;
using CsCheck;
using MiniExcelLibs;

namespace BenchSim.Folder.Tests.Sheets;

/// <summary>Workbooks in the place of CSV files. Days of a spreadsheet count from the end of 1899: 46447 is 1 March 2027.</summary>
public class WorkbookTests
{
    // 1 March 2027 is day 46447: 2027-01-01 is 46388 (365 x 127 + 31 leap days + 2), and 31 + 28 days follow.
    private const string March = "46447";

    [Fact]
    public void A_plan_as_a_spreadsheet_keeps_it()
    {
        using var folder = new TestFolder(plan: null);
        folder.Write(
            "plan.xlsx",
            new TestWorkbook(
                "<row r=\"2\">" // a blank row above, and a blank column inside
                    + TestWorkbook.Text("A2", "ID")
                    + TestWorkbook.Text("B2", " Crop ")
                    + TestWorkbook.Text("D2", "Plants")
                    + TestWorkbook.Text("E2", "sow")
                    + TestWorkbook.Text("F2", "set out")
                    + TestWorkbook.Text("G2", "germination")
                    + TestWorkbook.Text("H2", "tray")
                    + "</row><row r=\"4\">"
                    + TestWorkbook.Text("A4", "a")
                    + TestWorkbook.Text("B4", "Tomato")
                    + TestWorkbook.Number("D4", "1.2E3")
                    + TestWorkbook.Number("E4", March, 1)
                    + TestWorkbook.Number("F4", "46511.0", 2)
                    + TestWorkbook.Number("G4", "0.85", 3)
                    + TestWorkbook.Number("H4", "200")
                    + "</row>"
            ).ToBytes()
        );
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(["plan.xlsx", "site.toml"], reading.Inputs.Select(file => file.Name), StringComparer.Ordinal);
        var batch = Assert.Single(reading.Scenario!.Batches);
        Assert.Equal(
            ("a", "tomato", 1200, new DateOnly(2027, 3, 1), new DateOnly(2027, 5, 4), 0.85, "200-cell"),
            (batch.Id, batch.CropId, batch.Plants, batch.Sow, batch.SetOut, batch.Germination, batch.TrayId)
        );
    }

    // A writer that is not ours.
    [Fact]
    public void Workbooks_of_another_library()
    {
        using var folder = new TestFolder(plan: null);
        Write(
            "plan.xlsx",
            [
                new(StringComparer.Ordinal)
                {
                    ["id"] = "a",
                    ["crop"] = "mine",
                    ["plants"] = 100,
                    ["sow"] = new DateTime(2027, 3, 1),
                    ["note"] = "x, \"y\"",
                },
            ]
        );
        Write(
            "crops.xlsx",
            [
                new(StringComparer.Ordinal)
                {
                    ["id"] = "mine",
                    ["like"] = "tomato",
                    ["hold_days"] = 9,
                    ["germinate_at"] = "77 F",
                    ["bottom_heat"] = true,
                },
            ]
        );
        Write("trays.xlsx", [new(StringComparer.Ordinal) { ["id"] = "50-cell", ["cells"] = 55 }]);
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        var (batch, crop) = (reading.Scenario!.Batches[0], reading.Scenario.Crops[0]);
        Assert.Equal(("a", 100, new DateOnly(2027, 3, 1), "x, \"y\""), (batch.Id, batch.Plants, batch.Sow, batch.Note));
        Assert.Equal(("mine", 9, true), (crop.Id, crop.HoldDays, crop.BottomHeat));
        Assert.Equal(25, crop.GerminateAtC, 9);

        void Write(string name, Dictionary<string, object>[] rows)
        {
            using var stream = new MemoryStream();
            stream.SaveAs(rows);
            folder.Write(name, stream.ToArray());
        }
    }

    [Fact]
    public void A_weather_record_in_a_workbook()
    {
        using var stream = new MemoryStream();
        stream.SaveAs(
            Enumerable
                .Range(0, 365)
                .Select(day => new Dictionary<string, object>(StringComparer.Ordinal)
                {
                    ["date"] = new DateTime(2015, 1, 1).AddDays(day),
                    ["tmin"] = 1.5,
                    ["tmax"] = 9,
                    ["rain"] = 0,
                })
        );
        using var folder = new TestFolder(
            TestFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", "kind = \"record\"\nfile = \"weather.xlsx\"")
        );
        folder.Write("weather.xlsx", stream.ToArray());
        Assert.Empty(folder.Read().Faults);
    }

    [Fact]
    public void Faults_name_the_cell()
    {
        using var folder = new TestFolder(plan: null);
        folder.Write(
            "plan.xlsx",
            new TestWorkbook(
                TestWorkbook.Head
                    + "<row r=\"7\">"
                    + TestWorkbook.Text("A7", "a")
                    + TestWorkbook.Text("B7", "tomatto")
                    + TestWorkbook.Number("C7", "2.5")
                    + TestWorkbook.Text("D7", "3/4/2027")
                    + TestWorkbook.Text("AB7", "note to self")
                    + "</row>"
                    + "<row r=\"8\"><c r=\"A8\" t=\"str\"><f>X</f><v>b</v></c><c r=\"B8\" t=\"e\"><f>Y</f><v>#REF!</v></c>"
                    + TestWorkbook.Number("C8", "5")
                    + TestWorkbook.Number("D8", March, 2)
                    + "</row>"
            ).ToBytes()
        );
        FaultMessageTests.AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.xlsx:B7: there is no crop \"tomatto\"; did you mean \"tomato\"",
            "plan.xlsx:C7: plants is 2.5, which is not a whole number; write a whole number, 1 or more",
            "plan.xlsx:D7: sow is \"3/4/2027\" in row 7, column D, batch \"a\", which may be 3 April or 4 March; "
                + "write date_order = \"dmy\" or date_order = \"mdy\" under [site] of site.toml",
            "plan.xlsx:AB7: this cell is past the last column of the header: \"note to self\"; clear it; a text that holds the "
                + "separator goes in quotation marks",
            "plan.xlsx:B8: crop is \"#REF!\", the error of a formula; mend the formula, or write the value"
        );
    }

    [Fact]
    public void Merged_cells_are_told_where_a_value_is_missing()
    {
        using var folder = new TestFolder(plan: null);
        folder.Write(
            "plan.xlsx",
            new TestWorkbook(
                TestWorkbook.Head
                    + Row(2, "a", TestWorkbook.Text("B2", "tomato"))
                    + Row(3, "b", "")
                    + Row(4, "c", TestWorkbook.Text("B4", "pepper")),
                "<mergeCells count=\"2\"><mergeCell ref=\"B2:B3\"/><mergeCell ref=\"A9:Z1048576\"/></mergeCells>"
            ).ToBytes()
        );
        FaultMessageTests.AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.xlsx:B3: crop is merged with another cell, and only the first of them has the value; "
                + "unmerge the cells and fill each of them"
        );

        static string Row(int row, string id, string crop) =>
            $"<row r=\"{row}\">{TestWorkbook.Text($"A{row}", id)}{crop}"
            + $"{TestWorkbook.Number($"C{row}", "5")}{TestWorkbook.Number($"D{row}", March, 1)}</row>";
    }

    [Fact]
    public void Both_a_csv_and_a_workbook_are_one_fault()
    {
        using var folder = new TestFolder();
        folder.Write("plan.xlsx", Good());
        FaultMessageTests.AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.csv:0:0: there is plan.xlsx as well, and one of the two may be old; keep the one that is meant"
        );
    }

    [Theory]
    [InlineData("plan.xls", "save the sheet of \"plan.xls\" as plan.xlsx or plan.csv")]
    [InlineData("plan.ods", "save the sheet of \"plan.ods\" as plan.xlsx or plan.csv")]
    [InlineData("plans.xlsx", "name \"plans.xlsx\" plan.xlsx")]
    public void A_sheet_of_another_name_or_kind_is_told_what_to_be(string name, string instead)
    {
        using var folder = new TestFolder(plan: null);
        folder.Write(name, Good());
        Assert.Equal(
            $"plan.csv:0:0: there is no file \"plan.csv\" in the folder; {instead}",
            Assert.Single(folder.Read().Faults).ToString()
        );
    }

    [Fact]
    public void The_first_sheet_that_is_not_hidden_is_read_and_days_may_count_from_1904()
    {
        const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        var book = new TestWorkbook(
            Rows("44985")
        ) // 46447 less the 1462 days from 1900 to 1904
        .Put(
            "xl/workbook.xml",
            $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><workbookPr date1904=\"1\"/><sheets>"
                + "<sheet name=\"Lists\" sheetId=\"2\" state=\"hidden\" r:id=\"rId9\"/>"
                + "<sheet name=\"Plan\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>"
        );
        using var folder = new TestFolder(plan: null);
        folder.Write("plan.xlsx", book.ToBytes());
        Assert.Equal(new DateOnly(2027, 3, 1), Assert.Single(folder.Read().Scenario!.Batches).Sow);
    }

    [Fact]
    public void Workbooks_of_ill_will_are_one_fault_each()
    {
        const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        var bomb = new byte[250_000_000];
        Array.Fill(bomb, (byte)' ');
        Answer("the workbook unpacks to more than 200 MB and was not read", Book().Put("xl/worksheets/sheet1.xml", bomb));
        Answer("the workbook has no sheet to read", Book().Put("xl/workbook.xml", $"<workbook xmlns=\"{Main}\"><sheets/></workbook>"));
        Answer("the workbook cannot be read", Book().Put("xl/worksheets/sheet1.xml", "<worksheet><sheetData><row"));
        Answer("the workbook cannot be read", Book().Put("xl/worksheets/sheet1.xml", "<!DOCTYPE a [<!ENTITY b \"c\">]><a>&b;</a>"));
        Answer("the workbook cannot be read", new TestWorkbook("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>7</v></c></row>"));
        Answer("the workbook cannot be read", new TestWorkbook("<row r=\"1\"><c r=\"1A\"><v>7</v></c></row>"));
        Answer("the workbook cannot be read", new TestWorkbook("<row r=\"1\"><c r=\"A99999999999\"><v>7</v></c></row>"));
        Answer("the file is empty", new TestWorkbook(""));
        Answer("this workbook is protected by a password, or is of an older kind", [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1]);
        Answer("the workbook cannot be read", "PK\u0003\u0004 not really"u8.ToArray());
        Answer("the workbook cannot be read", "id,crop\n"u8.ToArray());
        Answer("the workbook cannot be read", []);
    }

    // The last cell of the largest sheet there can be: nothing between is filled in.
    [Fact]
    public void A_cell_far_out_is_only_that_cell()
    {
        using var folder = new TestFolder(plan: null);
        folder.Write(
            "plan.xlsx",
            new TestWorkbook(
                Rows(March) + "<row r=\"1048576\">" + TestWorkbook.Text("XFD1048576", "x") + "</row>",
                "<mergeCells count=\"1\"><mergeCell ref=\"F1:XFD1048576\"/></mergeCells>"
            ).ToBytes()
        );
        Assert.Contains(folder.Read().Faults, fault =>
            fault.ToString().StartsWith("plan.xlsx:XFD1048576: this cell is past the last column", StringComparison.Ordinal)
        );
    }

    /// <summary>
    /// Whatever the bytes of a workbook and of its parts, the answer is a scenario or faults. Samples come from a fixed seed.
    /// </summary>
    [Fact]
    public void Any_workbook_is_answered()
    {
        var good = Good();
        var changes = Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte).Array[1, 4];
        FixedSample.Holds(changes, 300, sample =>
        {
            var bytes = good.ToArray();
            foreach (var (at, value) in sample)
            {
                bytes[at] = value;
            }

            return IsAnswered(bytes);
        });
        const string Sheet =
            "<worksheet xmlns=\"x\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"s\" s=\"1\">"
            + "<is><t>id</t></is><v>1</v><f/></c></row></sheetData><mergeCell ref=\"A1:B2\"/></worksheet>";
        string[] pieces =
        [
            "<c",
            "/>",
            "\"",
            "r=",
            "A1",
            "9999999999",
            "-1",
            "1e400",
            "NaN",
            "</c>",
            "<v>",
            "</v>",
            "<row",
            ":",
            "XFD",
            "&lt;",
            "t=\"e\"",
            "",
        ];
        var edits = Gen.Select(Gen.Int[0, Sheet.Length - 1], Gen.Int[0, 12], Gen.Int[0, pieces.Length - 1]).Array[1, 3];
        FixedSample.Holds(edits, 500, sample =>
        {
            var text = Sheet;
            foreach (var (at, length, piece) in sample)
            {
                var start = Math.Min(at, text.Length);
                text = text[..start] + pieces[piece] + text[Math.Min(text.Length, start + length)..];
            }

            return IsAnswered(new TestWorkbook("").Put("xl/worksheets/sheet1.xml", text).ToBytes());
        });

        static bool IsAnswered(byte[] bytes)
        {
            using var folder = new TestFolder(plan: null);
            folder.Write("plan.xlsx", bytes);
            var reading = folder.Read();
            return reading.Scenario is not null || !reading.Faults.IsEmpty;
        }
    }

    [Fact]
    public void A_plan_of_a_workbook_is_levelled_as_csv()
    {
        var book = new TestWorkbook(
            TestWorkbook.Head
                + "<row r=\"2\">"
                + TestWorkbook.Text("A2", "a,1")
                + TestWorkbook.Text("B2", "tomato")
                + TestWorkbook.Number("C2", "5")
                + TestWorkbook.Number("D2", March, 1)
                + "</row>"
        );
        Assert.Equal(
            "id,crop,plants,sow\n\"a,1\",tomato,5,2027-03-01\n",
            Encoding.UTF8.GetString(PlanAsCsv.Of(new InputFile("plan.xlsx", [.. book.ToBytes()]), null).AsSpan())
        );
    }

    [Fact]
    public void A_place_in_a_workbook_is_a_cell()
    {
        Assert.Equal("plan.xlsx:C7", new SourcePlace("plan.xlsx", 7, 3).ToString());
        Assert.Equal("plan.xlsx:0:0", new SourcePlace("plan.xlsx", 0, 0).ToString());
        Assert.Equal("plan.csv:7:3", new SourcePlace("plan.csv", 7, 3).ToString());
        Assert.Equal(
            ["A", "Z", "AA", "AZ", "BA", "XFD"],
            new[] { 1, 26, 27, 52, 53, 16384 }.Select(SourcePlace.Letters),
            StringComparer.Ordinal
        );
    }

    private static TestWorkbook Book() => new(Rows(March));

    private static byte[] Good() => Book().ToBytes();

    private static string Rows(string sow) =>
        TestWorkbook.Head
        + "<row r=\"2\">"
        + TestWorkbook.Text("A2", "a")
        + TestWorkbook.Text("B2", "tomato")
        + TestWorkbook.Number("C2", "100")
        + TestWorkbook.Number("D2", sow, 1)
        + "</row>";

    private static void Answer(string what, TestWorkbook book) => Answer(what, book.ToBytes());

    private static void Answer(string what, byte[] bytes)
    {
        using var folder = new TestFolder(plan: null);
        folder.Write("plan.xlsx", bytes);
        Assert.Equal(what, Assert.Single(folder.Read().Faults).What);
    }
}
