using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace BenchSim.Cli.Tests;

/// <summary>The same chance is the same text on the terminal, on the page and in the sentences for machines (decision 017).</summary>
public sealed partial class OneChanceTests
{
    [Fact]
    public void No_two_places_give_the_same_chance_otherwise()
    {
        using var folder = new TemporaryFolder();
        var run = Call.Run("run", folder.Starter(), "--seasons=240", "--bottlenecks", "--require=0.5");
        Assert.Equal(0, run.Code & ~1);
        using var result = JsonDocument.Parse(File.ReadAllText(folder.In("spring-report/result.json")));
        string[] known = [.. Shares(result.RootElement).Select(Tenths).Distinct(StringComparer.Ordinal)];
        Assert.NotEmpty(known);

        var page = WebUtility.HtmlDecode(Tag().Replace(File.ReadAllText(folder.In("spring-report/report.html")), " "));

        // The glossary explains the words with a chance of its own.
        page = page.Replace("\"The plan fits in 90 % of seasons\" means", "", StringComparison.Ordinal);
        var verdict = result.RootElement.GetProperty("verdict").GetRawText();
        foreach (var (place, text) in new[] { ("terminal", run.Sentences), ("page", page), ("result.json", verdict) })
        {
            string[] said = [.. Said().Matches(text).Select(match => match.Groups["percent"].Value)];
            Assert.True(said.Length > 0, place);
            Assert.All(said, percent => Assert.True(known.Contains(percent, StringComparer.Ordinal), $"{place} says {percent} %"));
        }
    }

    // 131 of 240 seasons are 54.58 %: not 54.6 %, though it reads so.
    [Theory]
    [InlineData("0.5458", "54.58 %", "54.6 %, 131 of 240: met.")]
    [InlineData("0.546", "54.6 %", "54.6 %, 131 of 240: not met.")]
    public void A_requirement_that_reads_like_the_chance_is_told_by_its_seasons(string required, string asked, string told)
    {
        var chance = new BenchSim.Study.Results.Chance(131, 240, 0.48, 0.61);
        using var folder = new TemporaryFolder();
        var answer = new BenchSim.Answers.Run.RunQuestion
        {
            Scenario = BenchSim.Answers.Opening.ScenarioSource.Folder(folder.Starter()),
            Play = new BenchSim.Answers.Asking.PlayWish(Seasons: 2),
            NoReport = true,
        }.Ask(new BenchSim.Answers.Asking.PlayWatch(CancellationToken.None));
        var words = new BenchSim.Answers.Run.RunAnswer(answer.Result with { Fits = chance }, answer.Inputs)
        {
            Required = double.Parse(required, CultureInfo.InvariantCulture),
        }.Words;
        Assert.Contains(words.OfType<BenchSim.Answers.Words.Sentence>(), sentence =>
            sentence.Text.Contains($"at least {asked} of seasons. It fits in {told}", StringComparison.Ordinal)
        );
    }

    // Every share of seasons in the result, wherever it stands: an object with hits, seasons and a share.
    private static IEnumerable<double> Shares(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var property in element.EnumerateObject())
            {
                if (property.NameEquals("share") && property.Value.ValueKind == JsonValueKind.Number)
                {
                    yield return property.Value.GetDouble();
                }

                foreach (var share in Shares(property.Value))
                {
                    yield return share;
                }
            }
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var share in element.EnumerateArray().SelectMany(Shares))
            {
                yield return share;
            }
        }
    }

    // Worked out anew here, not by the writer that is tested.
    private static string Tenths(double share) =>
        Math.Round(Math.Round((decimal)share * 100, 9), 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture);

    [GeneratedRegex("(?:fits? in|instead of) (?<percent>[0-9.]+) %", RegexOptions.None, 1000)]
    private static partial Regex Said();

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Tag();
}
