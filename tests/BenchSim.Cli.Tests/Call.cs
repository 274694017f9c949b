using System.Text;

namespace BenchSim.Cli.Tests;

/// <summary>One call of the program, in this process.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Call(int Code, string Output, string Error)
{
    public static Call Run(params string[] args) => Run(CancellationToken.None, args);

    public static Call Run(CancellationToken cancel, params string[] args)
    {
        var output = new StringWriter(new StringBuilder());
        var error = new StringWriter(new StringBuilder());
        var code = CommandLine.Run(args, output, error, terminal: false, cancel);
        return new Call(code, output.ToString(), error.ToString());
    }

    /// <summary>Output with line breaks and indents taken out, to look for sentences in.</summary>
    public string Sentences => string.Join(' ', Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
