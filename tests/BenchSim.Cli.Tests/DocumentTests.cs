using System.CommandLine;
using System.Text.RegularExpressions;
using BenchSim.Cli.Commands;
using BenchSim.Cli.Terminal;

namespace BenchSim.Cli.Tests;

/// <summary>What the pages say is there, is there.</summary>
public sealed partial class DocumentTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [InlineData("docs/commands.md")]
    [InlineData("docs/tutorial.md")]
    public void Links_lead_somewhere(string page)
    {
        var path = Path.Combine(Repository.Root, page);
        foreach (Match link in Link().Matches(File.ReadAllText(path)))
        {
            var target = link.Groups["to"].Value;
            if (!target.StartsWith("https://", StringComparison.Ordinal))
            {
                Assert.True(
                    Path.Exists(Path.Combine(Path.GetDirectoryName(path)!, target)),
                    $"{page} points to {target}, which is not there."
                );
            }
        }
    }

    [Fact]
    public void Every_command_and_option_is_on_the_page_of_commands()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "commands.md"));
        var root = RootMenu.Make(new Desk(TextWriter.Null, TextWriter.Null, IsTerminal: false, CancellationToken.None));
        foreach (var command in root.Subcommands)
        {
            Assert.Contains($"## `benchsim {command.Name} {command.Arguments[0].Name}`", page, StringComparison.Ordinal);
            foreach (var option in command.Options)
            {
                Assert.Contains($"`{option.Name}", page, StringComparison.Ordinal);
            }
        }
    }

    [GeneratedRegex(@"\]\((?<to>[^)#]+)\)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Link();
}
