namespace BenchSim.Engine;

/// <summary>Hears of each step of a simulation. With no listener a step costs a test for null and nothing else.</summary>
public interface ITrace
{
    /// <summary>A step.</summary>
    /// <param name="note">Who does what, when, where, and why waiting.</param>
    void Note(in TraceNote note);
}
