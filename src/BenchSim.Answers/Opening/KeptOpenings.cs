using BenchSim.Folder;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Opening;

/// <summary>
/// Keeps what came of opening a scenario, weather records and planned batches, for whoever opens it again and again with few changes. What
/// an opening gives does not depend on it. Safe for use by several threads.
/// </summary>
public sealed class KeptOpenings
{
    internal KeptRecords Records { get; } = new();

    internal KeptDates Dates { get; } = new();
}
