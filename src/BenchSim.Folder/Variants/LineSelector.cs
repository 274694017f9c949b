namespace BenchSim.Folder.Variants;

/// <summary>How a variant names lines of the plan: by the id of one, or by the beginning of several and a star.</summary>
public static class LineSelector
{
    /// <summary>Whether a line is meant.</summary>
    /// <param name="id">Id of the line.</param>
    /// <param name="selector">What the variant says.</param>
    public static bool Matches(string id, string selector)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(selector);
        return selector.EndsWith('*')
            ? id.StartsWith(selector[..^1], StringComparison.Ordinal)
            : string.Equals(id, selector, StringComparison.Ordinal);
    }
}
