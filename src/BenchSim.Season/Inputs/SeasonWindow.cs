namespace BenchSim.Season.Inputs;

/// <summary>The length of the season.</summary>
/// <param name="Opens">First day on which anything may be sown; day 0 of the clock.</param>
/// <param name="Closes">Last day for which a batch may be wanted in the field. The play runs on past it until every batch has had its
/// chance.</param>
public sealed record SeasonWindow(DateOnly Opens, DateOnly Closes);
