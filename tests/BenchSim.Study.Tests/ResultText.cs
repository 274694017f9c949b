using System.Text.Json;
using BenchSim.Study.Results;

namespace BenchSim.Study.Tests;

/// <summary>A whole result as text, to compare two of them bit by bit (round-trip numbers).</summary>
internal static class ResultText
{
    private static readonly JsonSerializerOptions s_options = new()
    {
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    // The plan is what the two were made from; weather is an abstract record, which this writer leaves empty.
    public static string Of(StudyResult result) => JsonSerializer.Serialize(result, s_options);
}
