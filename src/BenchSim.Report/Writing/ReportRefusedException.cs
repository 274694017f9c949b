namespace BenchSim.Report.Writing;

/// <summary>A report was not written; nothing that stood there before was changed. The message is for people.</summary>
public sealed class ReportRefusedException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="message">What stands in the way and what would help, in one or two sentences.</param>
    public ReportRefusedException(string message)
        : base(message) { }

    /// <summary>Makes the exception.</summary>
    /// <param name="message">What stands in the way and what would help, in one or two sentences.</param>
    /// <param name="inner">What the system said.</param>
    public ReportRefusedException(string message, Exception inner)
        : base(message, inner) { }
}
