namespace BenchSim.Season.Values;

/// <summary>Something wrong with the input, or, in a list of warnings, something the user should know.</summary>
/// <param name="Place">Where.</param>
/// <param name="What">What is wrong, without a full stop.</param>
/// <param name="Instead">What would be right, without a full stop.</param>
public sealed record Fault(SourcePlace Place, string What, string Instead)
{
    /// <summary>file:line:column: what is wrong; what would be right.</summary>
    public override string ToString() => $"{Place}: {What}; {Instead}";
}
