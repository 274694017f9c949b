using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Report.Morning;
using BenchSim.Study;
using BenchSim.Study.Coming;

namespace BenchSim.Answers.Print;

/// <summary>Asks for the jobs of the next days, as the page of a day has them.</summary>
public sealed record ComingQuestion
{
    /// <summary>Most seasons that are played on from the day: the words for how likely a job is need no more.</summary>
    public const int MostSeasons = 400;

    /// <summary>The scenario, with its log.</summary>
    public required ScenarioSource Scenario { get; init; }

    /// <summary>The day: rows of that day have been done before its round.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Threads to play on, 1 or more; 0 for one a core. The answer does not depend on it.</summary>
    public int Threads { get; init; }

    /// <summary>Plays the seasons on from the day.</summary>
    /// <param name="watch">Watches the play.</param>
    /// <exception cref="FaultsFoundException">The scenario or its log has faults, or a row is of a later day.</exception>
    /// <exception cref="RefusedException">The day is not of the season.</exception>
    public ComingAnswer Ask(PlayWatch watch)
    {
        ArgumentNullException.ThrowIfNull(watch);
        var opened = OpenedToday.Of(Scenario, Today);
        return new ComingAnswer(opened, Play(opened, Threads, watch));
    }

    internal static ComingDays Play(OpenedToday opened, int threads, PlayWatch watch)
    {
        var plan = opened.Underway().Plan;
        var play = plan.Scenario.Play;
        var options = new StudyOptions
        {
            Seasons = Math.Min(play.Seasons, MostSeasons),
            Seed = play.Seed,
            Threads = threads,
        };
        return watch.Over(options.Seasons, progress => ComingRunner.Play(plan, opened.Today, options, progress, watch.Cancel));
    }
}

/// <summary>The benches on a day, and what the next days bring.</summary>
/// <param name="Opened">The benches by the log.</param>
/// <param name="Days">What the seasons bring.</param>
public sealed record ComingAnswer(OpenedToday Opened, ComingDays Days)
{
    /// <summary>The jobs with the numbers that the page of the day gives them.</summary>
    public ImmutableArray<NumberedJob> Jobs => NumberedJob.Of(Days.Jobs, Opened.Due);
}
