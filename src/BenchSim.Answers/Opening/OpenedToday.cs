using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Folder.Files;
using BenchSim.Report.Words;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Opening;

/// <summary>A scenario as it stands on a day by its log.</summary>
public sealed record OpenedToday
{
    private const int MostLater = 5;

    /// <summary>The scenario, read and planned.</summary>
    public required OpenedScenario Opened { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>What stands where.</summary>
    public required BenchLedger Ledger { get; init; }

    /// <summary>What is due and has no row.</summary>
    public required ImmutableArray<DueJob> Due { get; init; }

    /// <summary>Whether the folder has a log.</summary>
    public bool HasLog => Opened.Inputs.Any(file => FileNames.IsLog(file.Name));

    /// <summary>Reads and plans a scenario, and keeps its ledger up to a day.</summary>
    /// <param name="source">The scenario.</param>
    /// <param name="today">The day: rows of that day have been done before its round.</param>
    /// <exception cref="FaultsFoundException">The scenario or its log has faults, or a row is of a later day.</exception>
    /// <exception cref="RefusedException">The day is not of the season.</exception>
    public static OpenedToday Of(ScenarioSource source, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(source);
        var opened = source.Open();
        var plan = opened.Plan;
        if (today < plan.FirstDay || today > plan.LastDay)
        {
            throw new RefusedException(
                $"--today {Dates.Iso(today)} is not of this season, which goes from {Dates.Iso(plan.FirstDay)} to "
                    + $"{Dates.Iso(plan.LastDay)}; write a day of it, such as --today {Dates.Iso(plan.FirstDay)}."
            );
        }

        var later = Later(plan.Scenario.Log, today);
        if (later.Length > 0)
        {
            throw new FaultsFoundException(later);
        }

        var ledger = BenchLedger.Of(plan.Scenario, plan.Scenario.Log, today);
        return new OpenedToday
        {
            Opened = opened,
            Today = today,
            Ledger = ledger,
            Due = DueWork.Of(plan, ledger, today),
        };
    }

    // A log that goes on for weeks after the day is not told line by line.
    private static Fault[] Later(IEnumerable<LogEntry> log, DateOnly today)
    {
        LogEntry[] rows = [.. log.Where(entry => entry.Date > today)];
        return rows.Length > MostLater
            ?
            [
                new Fault(
                    rows[0].Place,
                    $"{rows.Length} rows from here on are of days after the day asked for, {Dates.Iso(today)}: "
                        + $"up to {Dates.Iso(rows.Max(row => row.Date))}",
                    $"ask for that day or a later one, such as --today {Dates.Iso(rows.Max(row => row.Date))}, or mend the dates"
                ),
            ]
            :
            [
                .. rows.Select(entry => new Fault(
                    entry.Place,
                    $"date is {Dates.Iso(entry.Date)}, after the day asked for, {Dates.Iso(today)}",
                    "mend the date, or ask for a later day"
                )),
            ];
    }

    /// <summary>
    /// The scenario, to be played from the day on; as it is where nothing is over and nothing is known: on the opening day, without a row
    /// and a forecast.
    /// </summary>
    public OpenedScenario Underway()
    {
        var plan = Opened.Plan;
        var known = SeenDays.Of(plan.Scenario, Today);
        if (plan.Scenario.Log.IsEmpty && known.Days.IsEmpty)
        {
            return Opened;
        }

        plan = plan with { Scenario = plan.Scenario with { Known = known }, Past = LedgerPast.Of(plan, Ledger, Today) };
        return Opened with { Plan = plan, From = new PlayedFrom(Today, plan, Due) };
    }
}
