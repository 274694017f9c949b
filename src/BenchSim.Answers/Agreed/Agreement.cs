using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Folder;
using BenchSim.Report.Agreed;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Billing;

namespace BenchSim.Answers.Agreed;

/// <summary>What the growers of a scenario agreed on: the plan of a day, and the rule for the bill.</summary>
/// <param name="On">The day.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Folder">The folder that keeps the files of the plan, as the user would write it.</param>
/// <param name="Changed">Files in it that somebody has changed since, in order of name.</param>
public sealed record Agreement(DateOnly On, BillRule Rule, string Folder, ImmutableArray<string> Changed)
{
    /// <summary>Name of the folder of all agreements, in the scenario folder.</summary>
    public const string FolderName = "agreed";

    private const string Key = "bill";
    private const long LargestFile = 100_000;

    /// <summary>Where an agreement of a day is kept.</summary>
    /// <param name="directory">The scenario folder, as the user wrote it.</param>
    /// <param name="on">The day.</param>
    internal static string FolderOf(string directory, DateOnly on) => Path.Combine(directory, FolderName, Dates.Iso(on));

    /// <summary>What is written of an agreement beside the files of the plan.</summary>
    internal static byte[] Text(DateOnly on, BillRule rule) =>
        Encoding.UTF8.GetBytes(
            $"# The plan beside this file was agreed on {Dates.Iso(on)}, with this rule for the bill (benchsim agree).\n"
                + $"{Key} = {rule.Word()}\n"
        );

    /// <summary>The latest agreement of a scenario folder; null where there is none.</summary>
    /// <param name="directory">The folder; null for a scenario in memory.</param>
    /// <exception cref="FaultsFoundException">What was agreed cannot be read.</exception>
    public static Agreement? Latest(string? directory)
    {
        var days = Days(directory);
        return days.IsEmpty ? null : Read(directory!, days[^1]);
    }

    /// <summary>The days of the agreements that a scenario folder keeps, the latest last.</summary>
    /// <param name="directory">The folder; null for a scenario in memory.</param>
    public static ImmutableArray<DateOnly> Days(string? directory)
    {
        var all = directory is null ? null : Path.Combine(directory, FolderName);
        return all is null || !Directory.Exists(all)
            ? []
            : [.. Directory.EnumerateDirectories(all).Select(folder => DayOf(Path.GetFileName(folder))).OfType<DateOnly>().Order()];
    }

    /// <summary>What changes when a folder is given another agreement; null where it has none.</summary>
    /// <param name="directory">The folder.</param>
    public static object? Mark(string directory)
    {
        var days = Days(directory);
        return days.IsEmpty
            ? null
            : (days[^1], File.GetLastWriteTimeUtc(Path.Combine(FolderOf(directory, days[^1]), AgreedFolder.FileName)));
    }

    /// <summary>The plan that was agreed.</summary>
    /// <exception cref="FaultsFoundException">Its files cannot be read any more; their places are within the scenario folder.</exception>
    public SeasonPlan Plan() => Open().Plan;

    /// <summary>The same with the files it was read from.</summary>
    /// <exception cref="FaultsFoundException">They cannot be read any more.</exception>
    internal OpenedScenario Open()
    {
        try
        {
            return ScenarioSource.Folder(Folder).Open();
        }
        catch (FaultsFoundException found)
        {
            throw new FaultsFoundException(
                found.Faults.Select(fault => fault with { Place = fault.Place with { File = $"{Inside(On)}/{fault.Place.File}" } })
            );
        }
    }

    private static DateOnly? DayOf(string name) =>
        DateOnly.TryParseExact(name, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    private static string Inside(DateOnly on) => $"{FolderName}/{Dates.Iso(on)}";

    private static Agreement Read(string directory, DateOnly on)
    {
        var folder = FolderOf(directory, on);
        var name = $"{Inside(on)}/{AgreedFolder.FileName}";
        return PlainFile.Read(Path.Combine(folder, AgreedFolder.FileName), LargestFile, out var fault) is { } bytes
            ? new Agreement(on, RuleIn(name, Encoding.UTF8.GetString(bytes)), folder, [.. AgreedFolder.Changed(folder)])
            : throw new FaultsFoundException([fault! with { Place = new SourcePlace(name, 0, 0) }]);
    }

    private static BillRule RuleIn(string name, string text)
    {
        foreach (var (at, line) in text.ReplaceLineEndings("\n").Split('\n').Index())
        {
            var parts = line.Split('#')[0].Split('=', 2, StringSplitOptions.TrimEntries);
            if (string.Equals(parts[0], Key, StringComparison.OrdinalIgnoreCase))
            {
                return parts.Length == 2 && BillRules.Find(parts[1]) is { } rule
                    ? rule
                    : throw Fault(at + 1, $"{PlainText.Quote(PlainText.Short(line, 60))} names no rule for the bill");
            }
        }

        throw Fault(0, "it does not say by which rule the bill is divided");

        FaultsFoundException Fault(int line, string what) =>
            new([
                new Fault(
                    new SourcePlace(name, line, 0),
                    what,
                    $"write a line such as {Key} = {BillRule.TrayDays.Word()}; the rules are "
                        + string.Join(", ", BillRules.All.Select(each => each.Word()))
                ),
            ]);
    }
}
