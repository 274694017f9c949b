using BenchSim.Study.Counting;

namespace BenchSim.Study.Shards;

/// <summary>Rows of tallies.</summary>
internal static class TallyExchanges
{
    /// <summary>Each of a row in turn.</summary>
    public static void Every(this ITallyExchange exchange, ExactTally[] row)
    {
        foreach (var tally in row)
        {
            exchange.Every(tally);
        }
    }

    /// <summary>Each of a row in turn.</summary>
    public static void Every(this ITallyExchange exchange, WideTally[] row)
    {
        foreach (var tally in row)
        {
            exchange.Every(tally);
        }
    }
}
