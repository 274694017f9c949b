namespace BenchSim.Folder.Csv;

/// <summary>One field of a CSV text.</summary>
/// <param name="Text">Its text without quotes and without spaces around it.</param>
/// <param name="Line">Line of its first character, from 1.</param>
/// <param name="Column">Column of its first character, from 1.</param>
/// <param name="Start">Position in the file's text at which it begins, quotation mark and all.</param>
/// <param name="End">Position just behind it: that of the separator, the line end or the end of the text.</param>
internal readonly record struct CsvField(string Text, int Line, int Column, int Start, int End);
