using BenchSim.Answers.Json;
using BenchSim.Report.Json;

namespace BenchSim.Answers.Asking;

/// <summary>What was asked cannot be done. The message is for people: what stands in the way and what would help.</summary>
/// <param name="message">One or more whole sentences.</param>
public sealed class RefusedException(string message) : Exception(message)
{
    /// <summary>Why something was refused, as one JSON object.</summary>
    /// <param name="why">One or more whole sentences.</param>
    public static byte[] Json(string why) => AnswerContext.Write(new RefusalDocument(JsonDialect.Version, why));
}
