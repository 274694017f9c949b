using System.Globalization;

namespace BenchSim.Engine;

/// <summary>One step of a trace.</summary>
/// <param name="Time">When, in days.</param>
/// <param name="Process">Who.</param>
/// <param name="Act">What.</param>
/// <param name="Where">Which places, if any.</param>
/// <param name="Count">How many places.</param>
/// <param name="Until">The moment waited for, of a pause; when the first turn comes, of a start.</param>
/// <param name="Ahead">How many stood in line before it, of a wait for places.</param>
/// <param name="Why">What a pause is for, if it was said.</param>
public readonly record struct TraceNote(
    double Time,
    string Process,
    TraceAct Act,
    Places? Where,
    int Count,
    double Until,
    int Ahead,
    string? Why
)
{
    /// <summary>The step as a sentence, with the state of the places at this moment: true only while the note is being heard.</summary>
    public override string ToString()
    {
        var what = Act switch
        {
            TraceAct.Starts => Until > Time ? string.Create(CultureInfo.InvariantCulture, $"is to start on day {Until:0.####}") : "starts",
            TraceAct.Pauses => string.Create(
                CultureInfo.InvariantCulture,
                $"waits until day {Until:0.####}{(Why is null ? "" : ": ")}{Why}"
            ),
            TraceAct.Waits => $"waits for {Count} of {Where!.Name}: {Reason()}",
            TraceAct.Takes => $"takes {Count} of {Where!.Name} ({State()})",
            TraceAct.Leaves => $"leaves {Count} of {Where!.Name} ({State()})",
            _ => "ends",
        };
        return string.Create(CultureInfo.InvariantCulture, $"day {Time:0.####}  {Process} {what}");
    }

    private string Reason() => Ahead == 0 ? State() : $"{State()}, {Ahead} in line before it";

    private string State() => Where!.Capacity == Places.Unlimited ? $"{Where.Held} held" : $"{Where.Held} of {Where.Capacity} held";
}
