using System.CommandLine;
using BenchSim.Answers.Agree;
using BenchSim.Answers.Opening;
using BenchSim.Answers.Words;
using BenchSim.Cli.Terminal;
using BenchSim.Report.Words;
using BenchSim.Study.Billing;

namespace BenchSim.Cli.Commands;

/// <summary><c>agree DIR</c>: shows the rules for the bill side by side, and keeps the plan and the rule that were agreed.</summary>
internal static class AgreeCommand
{
    public static readonly string[] Examples =
    [
        "benchsim agree spring",
        "benchsim agree spring --bill tray-days",
        "benchsim agree spring --bill full-weeks --on 2027-01-15",
    ];

    public static Command Make(Desk desk)
    {
        var folder = CommonOptions.Folder("Scenario folder: site.toml and plan.csv.");
        var bill = Rule();
        var on = DayOptions.Date("--on", "With --bill: the day of the agreement. Default: today.");
        Option<bool> replace = new("--replace") { Description = "With --bill: put it in the place of an agreement of the same day." };
        var play = new PlayOptions("Without --bill: seasons to play.");
        var output = new OutputOptions("the bills, or what was agreed,");
        var command = new Command(
            "agree",
            "Shows what each of three rules for the bill of fuel and mats would ask of each grower. With --bill it keeps the plan and that "
                + "rule in the folder, with the date, for \"check\", \"print --today\" and \"review\" to go by."
        )
        {
            folder,
            bill,
            on,
            replace,
        };
        play.AddTo(command);
        output.AddTo(command);
        command.Validators.Add(result =>
        {
            foreach (var option in new Option[] { on, replace }.Where(option => result.IsGiven(option) && !result.IsGiven(bill)))
            {
                result.AddError($"{option.Name} goes with --bill; name a rule, or leave it out.");
            }

            foreach (var option in new Option[] { play.Seasons, play.Seed, play.Threads }.Where(option => result.IsGiven(option)))
            {
                if (result.IsGiven(bill))
                {
                    result.AddError($"{option.Name} does not go with --bill: nothing is played for it; leave it out.");
                }
            }
        });
        command.SetAction(parsed =>
        {
            var scenario = ScenarioSource.Folder(parsed.GetRequiredValue(folder));
            return desk.Give(
                parsed.GetValue(bill) is { } rule
                    ? new AgreeQuestion
                    {
                        Scenario = scenario,
                        Bill = rule,
                        On = parsed.GetValue(on) ?? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
                        Replace = parsed.GetValue(replace),
                    }.Ask(desk.Watch)
                    : new BillsQuestion { Scenario = scenario, Play = play.Of(parsed) }.Ask(desk.Watch),
                output.Of(parsed)
            );
        });
        return command;
    }

    private static Option<BillRule?> Rule()
    {
        string[] words = [.. BillRules.All.Select(rule => rule.Word())];
        return new Option<BillRule?>("--bill")
        {
            HelpName = string.Join('|', words),
            Description = "The rule for the bill that was agreed: keep it, with the plan as it is.",
            CustomParser = result =>
            {
                var text = result.Tokens[0].Value;
                if (BillRules.Find(text) is { } rule)
                {
                    return rule;
                }

                result.AddError($"--bill {PlainText.Quote(text)} cannot be used; write {string.Join(" or ", words)}.");
                return null;
            },
        };
    }
}
