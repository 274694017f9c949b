using System.CommandLine;
using System.CommandLine.Parsing;
using BenchSim.Answers.Words;
using BenchSim.Report.Case;
using BenchSim.Report.Words;

namespace BenchSim.Cli.Commands;

/// <summary>The options that ask for a case report.</summary>
internal sealed class CaseOptions(string what)
{
    private readonly Option<bool> _case = new("--case") { Description = what };

    private readonly Option<CasePaper?> _paper = new("--paper")
    {
        HelpName = "a4|letter",
        Description = "With --case: paper of the case report. Default: letter where the units of the site are imperial, else a4.",
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (string.Equals(text, "a4", StringComparison.OrdinalIgnoreCase))
            {
                return CasePaper.A4;
            }

            if (string.Equals(text, "letter", StringComparison.OrdinalIgnoreCase))
            {
                return CasePaper.Letter;
            }

            result.AddError($"--paper {PlainText.Quote(text)} cannot be used; write a4 or letter.");
            return null;
        },
    };

    /// <summary>Both.</summary>
    public IEnumerable<Option> All => [_case, _paper];

    public void AddTo(Command command)
    {
        foreach (var option in All)
        {
            command.Add(option);
        }
    }

    /// <summary>Refuses the paper, and what else goes only with a case report, where none is asked for.</summary>
    public void RefuseWithout(CommandResult result, params IEnumerable<Option> others)
    {
        if (IsAsked(result))
        {
            return;
        }

        foreach (var option in others.Prepend(_paper).Where(option => result.IsGiven(option)))
        {
            result.AddError($"{option.Name} goes with --case; write --case too, or leave it out.");
        }
    }

    /// <summary>True where a case report is asked for.</summary>
    public bool IsAsked(CommandResult result) => result.GetResult(_case) is { } given && !given.Errors.Any() && result.GetValue(_case);

    /// <summary>True where a case report is asked for.</summary>
    public bool IsAsked(ParseResult parsed) => parsed.GetValue(_case);

    /// <summary>The paper asked for; null for the usual one of the site.</summary>
    public CasePaper? PaperOf(ParseResult parsed) => parsed.GetValue(_paper);
}
