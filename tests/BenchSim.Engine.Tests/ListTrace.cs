namespace BenchSim.Engine.Tests;

/// <summary>A trace that keeps what it hears as text.</summary>
internal sealed class ListTrace : ITrace
{
    public List<string> Lines { get; } = [];

    public List<TraceNote> Notes { get; } = [];

    public void Note(in TraceNote note)
    {
        Notes.Add(note);
        Lines.Add(note.ToString());
    }
}
