namespace BenchSim.Workbench.Drafts;

/// <summary>What somebody asks for, as JSON brought it.</summary>
internal interface IAsked
{
    /// <summary>Whether no null stands in a list, where JSON lets one in.</summary>
    bool IsWhole => true;
}
