using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Laying;
using BenchSim.Answers.New;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Words;
using BenchSim.Season.Values;

namespace BenchSim.Cli.Commands;

/// <summary><c>new DIR</c>: lays down a commented scenario folder to fill in, or an invented farm of a common kind.</summary>
internal static class NewCommand
{
    public static readonly string[] Examples =
    [
        "benchsim new spring",
        "benchsim new --farm",
        "benchsim new spring --farm hoop-house --climate cold --units metric",
    ];

    public static Command Make(Desk desk)
    {
        var folder = new Argument<string?>("DIR")
        {
            Description = "Folder to make. It must not exist yet, or be empty.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var farm = new Option<string?>("--farm")
        {
            HelpName = "NAME",
            Description =
                $"Invented farm to lay down: {Names(Starters.All.Select(starter => starter.Id))}. Without a name: says what each is.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var climate = CommonOptions.OneOf(
            "--climate",
            StarterClimate.All,
            each => each.Id,
            StarterClimate.Usual,
            $"With --farm: its invented climate. Default: {StarterClimate.Usual.Id}."
        );
        var units = CommonOptions.OneOf(
            "--units",
            [UnitSystem.Imperial, UnitSystem.Metric],
            each => each == UnitSystem.Metric ? "metric" : "imperial",
            UnitSystem.Imperial,
            "With --farm: feet and Fahrenheit, or metres and Celsius. Default: imperial."
        );
        var year = CommonOptions.Year(
            "--year",
            Starter.FirstYear,
            Starter.LastYear,
            "With --farm: year of the set-out dates. Default: the spring to come; from August on that of the next year."
        );
        var output = new OutputOptions("the names of the files, or the farms there are,");
        var command = new Command("new", "Makes a scenario folder to fill in: a small invented farm, with a comment beside each line.")
        {
            folder,
            farm,
            climate,
            units,
            year,
        };
        output.AddTo(command);
        command.Validators.Add(result =>
        {
            if (!result.IsGiven(farm))
            {
                RefuseWithoutFarm(result, climate, units, year);
            }

            var isList = result.GetResult(farm)?.Tokens.Count == 0;
            var isNamed = result.GetResult(folder) is { Tokens: [{ Value: var name }] } && !string.IsNullOrWhiteSpace(name);
            if (!isList && !isNamed)
            {
                result.AddError("DIR is missing; name the folder to make.");
            }
        });
        farm.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var name }] && Starters.Find(name) is null)
            {
                result.AddError(Unknown(name));
            }
        });
        command.SetAction(parsed =>
        {
            if (parsed.GetResult(farm) is not { Implicit: false })
            {
                return desk.Give(new NewQuestion(parsed.GetValue(folder)!).Ask(desk.Watch), output.Of(parsed));
            }

            if (parsed.GetValue(farm) is not { } name)
            {
                return desk.Give(StartersQuestion.Ask(), output.Of(parsed));
            }

            var files = Starters.Find(name)!.Files(parsed.GetValue(climate)!, parsed.GetValue(units), parsed.GetValue(year) ?? YearToCome);
            return desk.Give(new NewQuestion(parsed.GetValue(folder)!) { Files = files }.Ask(desk.Watch), output.Of(parsed));
        });
        return command;
    }

    private static int YearToCome => Starter.YearToCome(DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime));

    private static string Unknown(string name)
    {
        var names = Starters.All.Select(starter => starter.Id).ToArray();
        return $"--farm {PlainText.Quote(name)} is not known; write one of {Names(names)}, or --farm alone to see what each is.";
    }

    private static string Names(IEnumerable<string> names) => string.Join(", ", names);

    private static void RefuseWithoutFarm(CommandResult result, params ReadOnlySpan<Option> options)
    {
        foreach (var option in options)
        {
            if (result.IsGiven(option))
            {
                result.AddError($"{option.Name} goes with --farm; name a farm, or leave it out.");
            }
        }
    }
}
