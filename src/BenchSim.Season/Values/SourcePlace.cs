namespace BenchSim.Season.Values;

/// <summary>A place in a file of the scenario folder.</summary>
/// <param name="File">File name, relative to the folder.</param>
/// <param name="Line">Line, from 1; 0 for the file as a whole.</param>
/// <param name="Column">Column in characters, from 1; 0 for the line as a whole.</param>
public readonly record struct SourcePlace(string File, int Line, int Column)
{
    /// <summary>file:line:column.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
