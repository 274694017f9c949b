namespace BenchSim.Folder.Sheets;

/// <summary>A row of a table before its columns are known.</summary>
/// <param name="Fields">Its fields from the first column on.</param>
/// <param name="Number">Its number in a spreadsheet.</param>
internal readonly record struct SheetRow(List<SheetField> Fields, int Number)
{
    /// <summary>Whether no field holds anything.</summary>
    public bool IsBlank => Fields.TrueForAll(each => each.Text.Length == 0);
}
