using System.Collections.Immutable;
using BenchSim.Answers.Laying;

namespace BenchSim.Workbench.Showing;

/// <summary>The starters, for the page on which nothing is open yet.</summary>
/// <param name="Farms">The starters.</param>
/// <param name="Climates">The climates each comes in.</param>
internal sealed record StartersDocument(ImmutableArray<ChoiceDocument> Farms, ImmutableArray<ChoiceDocument> Climates)
{
    /// <summary>All of them.</summary>
    public static StartersDocument All { get; } =
        new(
            [.. Starters.All.Select(starter => new ChoiceDocument(starter.Id, starter.Name, starter.About))],
            [.. StarterClimate.All.Select(climate => new ChoiceDocument(climate.Id, climate.Id, climate.About(isImperial: true)))]
        );
}

/// <summary>One of several to choose from.</summary>
/// <param name="Id">Word that asks for it.</param>
/// <param name="Name">Its name.</param>
/// <param name="About">What it is.</param>
internal sealed record ChoiceDocument(string Id, string Name, string About);
