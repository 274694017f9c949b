using BenchSim.Season.Values;

namespace BenchSim.Folder.Editing;

/// <summary>What came of changing a text.</summary>
/// <param name="Text">The text with the change; as it was where it could not be made.</param>
/// <param name="Fault">Why the change could not be made; null when it was.</param>
public sealed record Edit(string Text, Fault? Fault)
{
    /// <summary>A change that could not be made.</summary>
    internal static Edit Refused(string text, SourcePlace place, string what, string instead) => new(text, new Fault(place, what, instead));
}
