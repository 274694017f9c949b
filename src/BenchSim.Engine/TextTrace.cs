namespace BenchSim.Engine;

/// <summary>A trace that writes each step as a line of text.</summary>
/// <param name="writer">Where to.</param>
public sealed class TextTrace(TextWriter writer) : ITrace
{
    /// <inheritdoc/>
    public void Note(in TraceNote note) => writer.WriteLine(note.ToString());
}
