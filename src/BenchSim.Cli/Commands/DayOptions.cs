using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Commands;

/// <summary>Options that take a day.</summary>
internal static class DayOptions
{
    /// <summary>A date, year first.</summary>
    public static Option<DateOnly?> Date(string name, string what) =>
        new(name)
        {
            HelpName = "DATE",
            Description = what,
            CustomParser = result => Read(name, result),
        };

    /// <summary>The day on which the benches stand as the log has them; without a date that of the calendar.</summary>
    public static Option<DateOnly?> Today(string what) =>
        new("--today")
        {
            HelpName = "DATE",
            Description = what,
            Arity = ArgumentArity.ZeroOrOne,
            CustomParser = result =>
                result.Tokens.Count == 0 ? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime) : Read("--today", result),
        };

    /// <summary>The day from which seasons are played; without a date that of the calendar.</summary>
    public static Option<DateOnly?> Underway() =>
        Today("Play from that day on, the days before as log.csv has them; without a date, from today.");

    /// <summary>Refuses options that do not go with a day.</summary>
    public static void RefuseBeside(CommandResult result, Option today, IEnumerable<Option> others)
    {
        foreach (var option in others.Where(option => result.IsGiven(today) && result.IsGiven(option)))
        {
            result.AddError($"{option.Name} does not go with --today yet; leave one of the two out.");
        }
    }

    private static DateOnly? Read(string name, ArgumentResult result)
    {
        var text = result.Tokens[0].Value;
        if (
            DateOnly.TryParseExact(text.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            && date.Year is >= 1900 and <= 2199
        )
        {
            return date;
        }

        result.AddError(
            $"{name} {PlainText.Quote(text)} cannot be used; write a date from 1900 to 2199 as year-month-day, such as 2027-03-15."
        );
        return null;
    }
}
