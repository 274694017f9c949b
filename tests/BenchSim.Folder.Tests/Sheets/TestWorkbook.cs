using System.IO.Compression;
using System.Text;

namespace BenchSim.Folder.Tests.Sheets;

/// <summary>A workbook written by hand, part by part, so that it may hold what no spreadsheet writes.</summary>
internal sealed class TestWorkbook
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006/relationships";

    private readonly Dictionary<string, byte[]> _parts = new(StringComparer.Ordinal);

    /// <summary>Makes a workbook of one sheet, with styles 1 (a date), 2 (a date of the user's form) and 3 (percent).</summary>
    /// <param name="rows">XML of the rows.</param>
    /// <param name="behind">XML behind them.</param>
    public TestWorkbook(string rows, string behind = "")
    {
        Put(
            "xl/workbook.xml",
            $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><sheets>"
                + "<sheet name=\"Plan\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>"
        );
        Put(
            "xl/_rels/workbook.xml.rels",
            $"<Relationships xmlns=\"{Package}\">"
                + $"<Relationship Id=\"rId1\" Type=\"{Office}/worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>"
        );
        Put(
            "xl/styles.xml",
            $"<styleSheet xmlns=\"{Main}\"><numFmts><numFmt numFmtId=\"164\" formatCode=\"d\\ mmm\\ yyyy\"/></numFmts>"
                + "<cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs>"
                + "<cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/><xf numFmtId=\"164\"/><xf numFmtId=\"9\"/></cellXfs></styleSheet>"
        );
        Put("xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{Main}\"><sheetData>{rows}</sheetData>{behind}</worksheet>");
    }

    /// <summary>A cell of text.</summary>
    public static string Text(string address, string text) => $"<c r=\"{address}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";

    /// <summary>A cell with a number.</summary>
    public static string Number(string address, string number, int style = 0) => $"<c r=\"{address}\" s=\"{style}\"><v>{number}</v></c>";

    /// <summary>The four column names of the smallest plan in the first row.</summary>
    public static string Head => $"<row r=\"1\">{Text("A1", "id")}{Text("B1", "crop")}{Text("C1", "plants")}{Text("D1", "sow")}</row>";

    /// <summary>Puts a part in, or another in its place.</summary>
    public TestWorkbook Put(string name, string text) => Put(name, Encoding.UTF8.GetBytes(text));

    public TestWorkbook Put(string name, byte[] bytes)
    {
        _parts[name] = bytes;
        return this;
    }

    /// <summary>Its bytes.</summary>
    public byte[] ToBytes()
    {
        var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in _parts)
            {
                using var part = archive.CreateEntry(name, CompressionLevel.Fastest).Open();
                part.Write(bytes);
            }
        }

        return stream.ToArray();
    }
}
