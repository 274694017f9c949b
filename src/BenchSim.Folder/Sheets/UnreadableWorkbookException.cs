namespace BenchSim.Folder.Sheets;

/// <summary>A workbook that cannot be read, with what would be right.</summary>
/// <param name="what">What is wrong.</param>
/// <param name="instead">What would be right.</param>
internal sealed class UnreadableWorkbookException(string what, string instead) : Exception(what)
{
    /// <summary>What would be right.</summary>
    public string Instead { get; } = instead;
}
