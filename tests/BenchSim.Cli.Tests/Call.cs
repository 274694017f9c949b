using System.Text;
using BenchSim.Cli.Commands;

namespace BenchSim.Cli.Tests;

/// <summary>One call of the program, in this process.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Call(int Code, string Output, string Error)
{
    // What comes for machines is always held against its schema.
    private static readonly HashSet<string> s_commands =
    [
        .. Directory.EnumerateFiles(Repository.File("docs/schemas")).Select(file => Path.GetFileName(file).Split('.')[0]),
    ];

    public static Call Run(params string[] args) => Run(CancellationToken.None, args);

    public static Call Run(CancellationToken cancel, params string[] args)
    {
        var output = new StringWriter(new StringBuilder());
        var error = new StringWriter(new StringBuilder());
        var code = CommandLine.Run(args, output, error, terminal: false, cancel);
        if (args.Contains("--json", StringComparer.Ordinal) && output.GetStringBuilder().Length > 0 && s_commands.Contains(args[0]))
        {
            Assert.Empty(SchemaCheck.Faults(args[0], output.ToString()));
        }

        return new Call(code, output.ToString(), error.ToString());
    }

    /// <summary>All of these sentences, one or more, stand in the output, wherever its lines break.</summary>
    public void Says(params IEnumerable<string> sentences)
    {
        string[] asked = [.. sentences];
        Assert.NotEmpty(asked);
        Assert.All(asked, sentence =>
        {
            Assert.False(string.IsNullOrWhiteSpace(sentence), "An empty sentence stands in every output.");
            Assert.Contains(sentence, Sentences, StringComparison.Ordinal);
        });
    }

    /// <summary>Output with line breaks and indents taken out, to look for sentences in.</summary>
    public string Sentences => string.Join(' ', Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
