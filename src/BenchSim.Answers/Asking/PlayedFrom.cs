using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;

namespace BenchSim.Answers.Asking;

/// <summary>From what a season under way is played: the days before are those of the log.</summary>
/// <param name="Today">The first day that is played.</param>
/// <param name="Plan">The plan, with its past and the days whose weather is known.</param>
/// <param name="Due">What is due on that day, and has no row.</param>
public sealed record PlayedFrom(DateOnly Today, SeasonPlan Plan, ImmutableArray<DueJob> Due);
