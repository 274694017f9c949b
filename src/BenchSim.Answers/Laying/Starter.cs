using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Folder.Files;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;

namespace BenchSim.Answers.Laying;

/// <summary>An invented farm of a common kind, with a plan that fits and something to try.</summary>
public sealed record Starter
{
    /// <summary>The first year that a starter may be of.</summary>
    public const int FirstYear = 1901;

    /// <summary>The last year that a starter may be of.</summary>
    public const int LastYear = 2198;

    /// <summary>Name of its variant, the thing to try.</summary>
    public const string Variant = "more";

    private const int OpensBeforeFrost = 133;
    private const int ClosesAfterWarmNights = 35;
    private const int FirstMonthOfNext = 8;

    /// <summary>Word that asks for it.</summary>
    public required string Id { get; init; }

    /// <summary>Its name, as the farm's.</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in a sentence without a full stop.</summary>
    public required string About { get; init; }

    /// <summary>The question that its folder is to answer.</summary>
    public required string Question { get; init; }

    /// <summary>What its variant changes, in a sentence.</summary>
    public required string Try { get; init; }

    /// <summary>The grower whose plants the variant makes more of; empty for those of all.</summary>
    public string MoreOf { get; init; } = "";

    /// <summary>How many times as many plants the variant wants of them.</summary>
    public double MoreTimes { get; init; } = 1.5;

    /// <summary>What would be answered to the ten questions, but for the season and the climate; imperial where it is given true.</summary>
    public required Func<bool, FarmAnswers> Answers { get; init; }

    /// <summary>Its plan.</summary>
    public required ImmutableArray<StarterLine> Plan { get; init; }

    /// <summary>Year of the spring to come: from August on that of the next year.</summary>
    /// <param name="today">The day it is.</param>
    public static int YearToCome(DateOnly today) => today.Month >= FirstMonthOfNext ? today.Year + 1 : today.Year;

    /// <summary>Its files.</summary>
    /// <param name="climate">The climate.</param>
    /// <param name="units">Units that it is written in.</param>
    /// <param name="year">Calendar year of the set-out dates, <see cref="FirstYear"/> to <see cref="LastYear"/>.</param>
    public ImmutableArray<InputFile> Files(StarterClimate climate, UnitSystem units, int year)
    {
        ArgumentNullException.ThrowIfNull(climate);
        var isImperial = units == UnitSystem.Imperial;
        var answers = Answers(isImperial) with
        {
            Year = year,
            Name = Name,
            Question = Question,
            Units = units,
            Latitude = climate.Latitude.ToString(CultureInfo.InvariantCulture),
            Climate = climate.Normals,
            FirstSowing = Date(climate.LateFrostIn(year).AddDays(-OpensBeforeFrost)),
            LastOut = Date(climate.WarmNightsIn(year).AddDays(ClosesAfterWarmNights)),
        };
        return
        [
            InputFile.Of("README.md", Readme(climate, isImperial)),
            InputFile.Of(FileNames.Plan, FarmTexts.PlanHead + string.Concat(Plan.Select(line => line.Text(climate, year)))),
            InputFile.Of(
                FileNames.Site,
                FarmTexts.Site(answers, "An invented farm and an invented climate: put your own values in their place.")
            ),
            InputFile.Of($"variants/{Variant}.toml", Changes),
        ];
    }

    private string Changes =>
        $"# {Try}\n"
        + string.Concat(
            Plan.Where(line => MoreOf.Length == 0 || string.Equals(line.Grower, MoreOf, StringComparison.Ordinal))
                .Select(line =>
                    FormattableString.Invariant(
                        $"\n[[plan]]\nbatch = \"{line.Id}{(line.Times > 1 ? "*" : "")}\"\nplants = {line.Plants * MoreTimes:0}\n"
                    )
                )
        );

    private string Readme(StarterClimate climate, bool isImperial) =>
        $"""
            # {Name}

            {About}.

            The farm and its plan are invented, and so is the climate, "{climate.Id}":
            {climate.About(isImperial)}.

            Type these where this file lies:

                benchsim run .
                benchsim open .

            The first plays the season and says whether it fits. It does. The second opens
            the workbench, where the answer moves with every change. Then try this, and see
            what would mend it where it does not fit:

                benchsim compare . --with {Variant}
                benchsim mend .

            {Try}

            Last, put your own farm in: houses, mats, benches and table into `site.toml`,
            sowings into `plan.csv`, from any spreadsheet. `benchsim check .` says what is
            wrong, with file, line and column. For an answer to rely on, put a daily record
            of the weather or the normals of a near station into `[weather]`.

            """;

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
