namespace BenchSim.Cli.Terminal;

/// <summary>How much of an answer is written, and for whom.</summary>
internal enum AnswerForm
{
    /// <summary>What fits a screen.</summary>
    FirstScreen,

    /// <summary>All of it.</summary>
    Whole,

    /// <summary>All of it, for machines.</summary>
    Json,
}
