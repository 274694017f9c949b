using System.CommandLine;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Commands;

/// <summary>The options that say how much of an answer is printed and for whom, alike in every command.</summary>
/// <param name="what">What is printed as JSON.</param>
internal sealed class OutputOptions(string what)
{
    /// <summary>Name of the option for output that machines read.</summary>
    public const string Json = "--json";

    private readonly Option<bool> _json = new(Json) { Description = $"Print {what} as JSON." };

    private readonly Option<bool> _all = new("--all") { Description = "Print everything, not only what fits a screen." };

    public void AddTo(Command command)
    {
        command.Add(_all);
        command.Add(_json);
    }

    /// <summary>What was asked.</summary>
    public AnswerForm Of(ParseResult parsed) =>
        parsed.GetValue(_json) ? AnswerForm.Json
        : parsed.GetValue(_all) ? AnswerForm.Whole
        : AnswerForm.FirstScreen;
}
