using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Answers.Asking;

/// <summary>Tells from what a season under way was played: what the log lacks, and how far the weather is known.</summary>
internal static class UnderwayWords
{
    private const int MostNamed = 3;

    private static readonly string[] s_ofADay = ["run", "compare", "bottlenecks", "size", "mend", "level", "dense"];

    /// <summary>
    /// A first screen with what the log lacks before all else, and how far the weather is known after it, unless that would take the room
    /// of its table.
    /// </summary>
    public static FirstScreen On(FirstScreen screen, PlayedFrom from) =>
        screen with
        {
            Facts = [Log(from), .. screen.Facts, .. screen.Table is null ? [Weather(from)] : Array.Empty<string>()],
            Next = screen.Next is { } next ? Next(next, from) : null,
        };

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(PlayedFrom from) => [Log(from), Weather(from)];

    // What is asked next is asked of the same day.
    private static NextStep Next(NextStep next, PlayedFrom from) =>
        s_ofADay.Any(command => next.Command.StartsWith($"{Shell.Program} {command} ", StringComparison.Ordinal))
            ? next with
            {
                Command = $"{next.Command} --today {Dates.Iso(from.Today)}",
            }
            : next;

    private static string Log(PlayedFrom from)
    {
        var due = from.Due;
        var sowings = due.Count(job => job.Kind == WorkKind.Sow);
        var others = due.Length - sowings;
        return "The days before are those of the log"
            + (
                due.IsEmpty
                    ? ", and nothing that is due lacks a line."
                    : $"; {Numbers.Count(due.Length, "job is", "jobs are")} due without a line and counted as not done: "
                        + $"{Numbers.Count(sowings, "sowing", "sowings")}, {Numbers.Count(others, "other", "others")}."
            );
    }

    private static string Weather(PlayedFrom from) => Weather(new Dates(from.Plan), from.Plan.Scenario.Known ?? KnownDays.None);

    private static string Weather(Dates dates, KnownDays known)
    {
        var observed = known.Observed - known.Lacking.Length;
        var forecast = known.Days.Length - known.Observed;
        var lacking =
            known.Lacking.IsEmpty ? ""
            : known.Lacking.Length <= MostNamed ? $", {PlainText.List([.. known.Lacking.Select(dates.Plain)])} taken as normal"
            : $", {Numbers.Whole(known.Lacking.Length)} from {dates.Plain(known.Lacking[0])} to {dates.Plain(known.Lacking[^1])} taken "
                + "as normal";
        return $"Weather: {Numbers.Count(observed, "day", "days")} observed{lacking}; {Numbers.Count(forecast, "day", "days")} forecast"
            + (forecast == 0 ? "" : $", to {dates.Plain(known.Days[^1].Date)}")
            + "; then that of each season.";
    }
}
