using BenchSim.Folder.Sheets;

namespace BenchSim.Folder.Files;

/// <summary>A file that has been read and decoded.</summary>
/// <param name="Name">Name relative to the folder.</param>
/// <param name="Text">Its text, without the byte order mark.</param>
internal sealed record FileText(string Name, string Text)
{
    /// <summary>The rows of a workbook, which has no text; null for a file of text.</summary>
    public List<SheetRow>? Rows { get; init; }
}
