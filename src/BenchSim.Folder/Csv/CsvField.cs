namespace BenchSim.Folder.Csv;

/// <summary>One field of a CSV text.</summary>
/// <param name="Text">Its text without quotes and without spaces around it.</param>
/// <param name="Line">Line of its first character, from 1.</param>
/// <param name="Column">Column of its first character, from 1.</param>
internal readonly record struct CsvField(string Text, int Line, int Column);
