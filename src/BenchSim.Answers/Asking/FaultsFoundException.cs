using System.Collections.Immutable;
using BenchSim.Answers.Json;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Asking;

/// <summary>The files have faults, so that the question has no answer.</summary>
/// <param name="faults">Every fault that was found.</param>
public sealed class FaultsFoundException(IEnumerable<Fault> faults) : Exception("The files have faults.")
{
    /// <summary>The faults, in order of file, line and column.</summary>
    public ImmutableArray<Fault> Faults { get; } = Sorted(faults);

    /// <summary>How many there are and what to do, in a sentence.</summary>
    public string Sentence =>
        $"{Numbers.Count(Faults.Length, "fault", "faults")} found. Mend {(Faults.Length == 1 ? "it" : "them")} and try again.";

    /// <summary>What one should know to understand them; null for nothing.</summary>
    public string? Note { get; init; }

    /// <summary>The faults as one JSON object.</summary>
    public byte[] Json() => AnswerContext.Write(new FaultsDocument(JsonDialect.Version, JsonFault.Of(Faults)));

    /// <summary>Faults or warnings in order of file, line and column.</summary>
    internal static ImmutableArray<Fault> Sorted(IEnumerable<Fault> faults) =>
        [
            .. faults
                .OrderBy(fault => fault.Place.File, StringComparer.Ordinal)
                .ThenBy(fault => fault.Place.Line)
                .ThenBy(fault => fault.Place.Column),
        ];
}
