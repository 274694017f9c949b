using System.Xml;
using BenchSim.Folder.Faults;
using BenchSim.Season.Values;

namespace BenchSim.Folder.Sheets;

/// <summary>Reads the table of a workbook: the first sheet that is not hidden, cell by cell, as a spreadsheet keeps it.</summary>
internal static class WorkbookFile
{
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Folder = "xl/";
    private const string SaveAnew = "open it in the spreadsheet and save it anew as .xlsx, or save the sheet as \"CSV UTF-8\"";

    // The signature of the compound file in which spreadsheets keep a protected workbook.
    private static readonly byte[] s_olderFile = [0xD0, 0xCF, 0x11, 0xE0];

    /// <summary>Whether a file is a workbook by its name.</summary>
    public static bool Is(string name) => name.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase);

    /// <summary>The rows of the table, blank ones left out; null with a fault.</summary>
    /// <param name="name">Name of the file.</param>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="faults">Takes the fault.</param>
    public static List<SheetRow>? Read(string name, byte[] bytes, FaultList faults)
    {
        try
        {
            if (bytes.AsSpan().StartsWith(s_olderFile))
            {
                throw new UnreadableWorkbookException(
                    "this workbook is protected by a password, or is of an older kind",
                    "save it as .xlsx without a password"
                );
            }

            using var parts = new WorkbookParts(bytes);
            var (sheet, isFrom1904) = FirstSheet(parts);
            return new SheetReader(parts, isFrom1904).Read(sheet);
        }
        catch (UnreadableWorkbookException problem)
        {
            faults.Add(new SourcePlace(name, 0, 0), problem.Message, problem.Instead);
        }
        catch (Exception failure)
            when (failure is InvalidDataException or XmlException or FormatException or OverflowException or NotSupportedException)
        {
            faults.Add(new SourcePlace(name, 0, 0), "the workbook cannot be read", SaveAnew);
        }

        return null;
    }

    private static (string Part, bool IsFrom1904) FirstSheet(WorkbookParts parts)
    {
        var (id, isFrom1904) = (default(string), false);
        using (var book = parts.Open(Folder + "workbook.xml"))
        {
            while (book.Read())
            {
                if (book.NodeType != XmlNodeType.Element)
                {
                    continue;
                }

                isFrom1904 |= book.LocalName is "workbookPr" && (book.GetAttribute("date1904") ?? "0") is ("1" or "true");
                if (id is null && book.LocalName is "sheet" && (book.GetAttribute("state") ?? "visible") is "visible")
                {
                    id = book.GetAttribute("id", Relations) ?? book.GetAttribute("r:id");
                }
            }
        }

        return id is null
            ? throw new UnreadableWorkbookException("the workbook has no sheet to read", "put the table on its first sheet")
            : (Target(parts, id), isFrom1904);
    }

    private static string Target(WorkbookParts parts, string id)
    {
        using var relations = parts.Open(Folder + "_rels/workbook.xml.rels");
        while (relations.Read())
        {
            if (relations.NodeType == XmlNodeType.Element && string.Equals(relations.GetAttribute("Id"), id, StringComparison.Ordinal))
            {
                var target = relations.GetAttribute("Target") ?? "";
                var isSheet = relations.GetAttribute("Type")?.EndsWith("/worksheet", StringComparison.Ordinal) != false;
                return isSheet
                    ? target.StartsWith('/')
                        ? target[1..]
                        : Folder + target
                    : throw new UnreadableWorkbookException(
                        "the first sheet of the workbook is a chart",
                        "put the table on its first sheet"
                    );
            }
        }

        throw new InvalidDataException("a sheet without a part");
    }
}
