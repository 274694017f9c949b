using BenchSim.Report.Html;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Report.Words;

namespace BenchSim.Report.Tests.Words;

/// <summary>docs/glossary.md and the foot of the report explain the same words in the same way.</summary>
public class GlossaryTests
{
    private const string Page = "docs/glossary.md";

    [Fact]
    public void The_page_lists_every_word_and_no_other()
    {
        var page = File.ReadAllLines(Repository.File(Page));
        string[] made =
        [
            .. page.TakeWhile(line => !line.StartsWith("| word", StringComparison.Ordinal)),
            "| word | what it means |",
            "|---|---|",
            .. Glossary.Words.Select(word => $"| {word.Word} | {word.Meaning} |"),
            .. page.SkipWhile(line => !line.StartsWith("| word", StringComparison.Ordinal)).SkipWhile(line => line.StartsWith('|')),
        ];
        Assert.Equal(made, Approved.Text(Page, string.Join('\n', made) + "\n").TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Words_come_in_order_and_twenty_are_enough()
    {
        string[] words = [.. Glossary.Words.Select(word => word.Word)];
        Assert.Equal(words.Order(StringComparer.Ordinal), words, StringComparer.Ordinal);
        Assert.Equal(20, words.Length);
    }

    [Fact]
    public void The_foot_of_the_report_has_them()
    {
        var html = ReportPage.Write(SyntheticStudy.Tiny(), [], null);
        var foot = html[html.IndexOf("<footer>", StringComparison.Ordinal)..];
        Assert.All(Glossary.Words, word => Assert.Contains($"<dt>{word.Word}</dt>", foot, StringComparison.Ordinal));
        Assert.Contains("<code>slack_days</code>", foot, StringComparison.Ordinal);
    }
}
