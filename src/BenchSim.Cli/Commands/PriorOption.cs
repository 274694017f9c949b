using System.CommandLine;
using System.Globalization;
using BenchSim.Report.Words;
using BenchSim.Study.Learning;

namespace BenchSim.Cli.Commands;

/// <summary>The option that says how far off values in force may be before anything is counted.</summary>
internal static class PriorOption
{
    private const string Name = "--prior";
    private const int Numbers = 3;
    private const double Least = 0.01;
    private const double Most = 2;

    public static Option<Deviations> Make() =>
        new(Name)
        {
            HelpName = "R,M,A",
            Description =
                "How far off a value may be, as a standard deviation of its logarithm: read in a source, from memory, assumed. "
                + "Default: 0.15,0.3,0.5.",
            DefaultValueFactory = _ => Deviations.Usual,
            CustomParser = result =>
            {
                // An option that is not given comes here too, without a word.
                if (result.Tokens.Count == 0)
                {
                    return Deviations.Usual;
                }

                var text = result.Tokens[0].Value;
                double[] numbers = [.. text.Split(',').Select(Read).OfType<double>()];
                if (numbers.Length == Numbers && text.Split(',').Length == Numbers && numbers[0] <= numbers[1] && numbers[1] <= numbers[2])
                {
                    return new Deviations(numbers[0], numbers[1], numbers[2]);
                }

                result.AddError(
                    $"{Name} {PlainText.Quote(text)} cannot be used; write three numbers from 0.01 to 2 with commas between them, "
                        + "none below the one before, such as 0.15,0.3,0.5."
                );
                return Deviations.Usual;
            },
        };

    private static double? Read(string text) =>
        double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && number is >= Least and <= Most
            ? number
            : null;
}
