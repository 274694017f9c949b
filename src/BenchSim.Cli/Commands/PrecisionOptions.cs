using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Precision;

namespace BenchSim.Cli.Commands;

/// <summary>The options that ask for intervals as narrow as wanted.</summary>
internal sealed class PrecisionOptions
{
    private const double NarrowestChance = 0.001;
    private const double WidestChance = 0.45;
    private const double WidestLate = 1e12;
    private const int Fewest = 30;
    private const int Most = 1_000_000;

    private readonly Option<double?> _chance = new("--precision")
    {
        HelpName = "P",
        Description =
            "Play until the 95 % interval of the chance that the plan fits reaches no more than "
            + "this to either side, such as 2%. Not with --seasons.",
        CustomParser = result =>
            Read(result, NarrowestChance, WidestChance, "write percentage points from 0.1% to 45%, such as 2%, or a share, such as 0.02"),
    };

    private readonly Option<double?> _late = new("--precision-late")
    {
        HelpName = "D",
        Description =
            "Play until the 95 % interval of the mean late plant-days reaches no more than "
            + "this to either side, such as 50. Not with --seasons.",
        CustomParser = result =>
            Read(result, double.Epsilon, WidestLate, "write a number of late plant-days above 0, such as 50", isShare: false),
    };

    private readonly Option<int?> _least = CommonOptions.Whole(
        "--least",
        "N",
        Fewest,
        Most,
        $"With --precision or --precision-late: fewest seasons to play. Default: {PrecisionGoal.UsualLeast}."
    );

    private readonly Option<int?> _most = CommonOptions.Whole(
        "--most",
        "N",
        Fewest,
        Most,
        $"With --precision or --precision-late: most seasons to play. Default: {Numbers.Whole(PrecisionGoal.UsualMost)}."
    );

    /// <summary>All of them.</summary>
    public IEnumerable<Option> All => [_chance, _late, _least, _most];

    public void AddTo(Command command)
    {
        foreach (var option in All)
        {
            command.Add(option);
        }
    }

    /// <summary>Refuses options that leave nothing to find out.</summary>
    public void RefuseContradictions(CommandResult result, IEnumerable<Option> others)
    {
        if (result.IsGiven(_chance) || result.IsGiven(_late))
        {
            foreach (var option in others.Where(option => result.IsGiven(option)))
            {
                var instead = string.Equals(option.Name, "--seasons", StringComparison.Ordinal) ? "; --least and --most set bounds" : "";
                result.AddError(
                    $"{option.Name} does not go with --precision and --precision-late, "
                        + $"which find the number of seasons themselves; leave it out{instead}."
                );
            }
        }
        else
        {
            foreach (var option in new Option[] { _least, _most }.Where(option => result.IsGiven(option)))
            {
                result.AddError($"{option.Name} goes with --precision or --precision-late; write one of them, or leave it out.");
            }
        }
    }

    /// <summary>What is asked for; null when nothing is.</summary>
    /// <exception cref="RefusedException">The fewest seasons are more than the most.</exception>
    public PrecisionGoal? GoalOf(ParseResult parsed)
    {
        var chance = parsed.GetValue(_chance);
        var late = parsed.GetValue(_late);
        if (chance is null && late is null)
        {
            return null;
        }

        var least = parsed.GetValue(_least);
        var most = parsed.GetValue(_most);
        if (least > most)
        {
            throw new RefusedException(
                $"--least {Numbers.Whole(least.Value)} is more than --most {Numbers.Whole(most.Value)}; give the fewest seasons first."
            );
        }

        return new PrecisionGoal
        {
            Chance = chance,
            LatePlantDays = late,
            Least = least ?? Math.Min(PrecisionGoal.UsualLeast, most ?? int.MaxValue),
            Most = most ?? Math.Max(PrecisionGoal.UsualMost, least ?? 0),
        };
    }

    private static double? Read(ArgumentResult result, double least, double most, string instead, bool isShare = true)
    {
        var text = result.Tokens[0].Value.Trim();
        var isPercent = isShare && text.EndsWith('%');
        var digits = isPercent ? text[..^1].TrimEnd() : text;
        if (double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            var value = isPercent ? number / 100 : number;
            if (value >= least && value <= most)
            {
                return value;
            }
        }

        result.AddError($"{((OptionResult)result.Parent!).Option.Name} {PlainText.Quote(text)} cannot be used; {instead}.");
        return null;
    }
}
