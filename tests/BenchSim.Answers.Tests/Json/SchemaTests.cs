using System.Text.Json.Serialization.Metadata;
using BenchSim.Answers.Json;

namespace BenchSim.Answers.Tests.Json;

/// <summary>docs/schemas says of every command what it prints with --json: no more and no less than the records
/// it is written from.</summary>
public sealed class SchemaTests
{
    private static readonly AnswerContext s_known = AnswerContext.Dialect;

    private static readonly Dictionary<string, JsonTypeInfo[]> s_answers = new(StringComparer.Ordinal)
    {
        ["agree"] = [s_known.BillsDocument, s_known.AgreedDocument],
        ["bottlenecks"] = [s_known.BottlenecksDocument, s_known.UnderwayDocument],
        ["check"] = [s_known.CheckDocument, s_known.TodayDocument],
        ["compare"] = [s_known.CompareDocument, s_known.UnderwayDocument],
        ["dense"] = [s_known.DenseDocument, s_known.UnderwayDocument],
        ["invest"] = [s_known.InvestDocument],
        ["learn"] = [s_known.LearnDocument],
        ["level"] = [s_known.LevelDocument, s_known.UnderwayDocument],
        ["mend"] = [s_known.MendDocument, s_known.UnderwayDocument],
        ["merge"] = [s_known.RunDocument],
        ["new"] = [s_known.NewDocument, s_known.StartersDocument],
        ["print"] = [s_known.PapersDocument, s_known.TodayPaperDocument],
        ["review"] = [s_known.ReviewDocument],
        ["run"] = [s_known.RunDocument, s_known.PartDocument, s_known.StoryDocument, s_known.UnderwayDocument],
        ["size"] = [s_known.SizeDocument, s_known.UnderwayDocument],
        ["succession"] = [s_known.SuccessionDocument],
        ["sweep"] = [s_known.SweepDocument, s_known.SweepPlanDocument, s_known.SweepPlayedDocument, s_known.SweepLackingDocument],
        ["trust"] = [s_known.TrustDocument, s_known.UnderwayDocument],
        ["weather"] = [s_known.WeatherDocument],
    };

    public static TheoryData<string> Commands => [.. s_answers.Keys];

    [Theory]
    [MemberData(nameof(Commands))]
    public void The_schema_is_that_of_the_records(string command)
    {
        var schema = SchemaText.Of($"benchsim {command} --json", [.. s_answers[command], s_known.FaultsDocument, s_known.RefusalDocument]);

        Assert.Equal(Approved.Text($"docs/schemas/{command}.schema.json", schema), schema);
    }

    // One page tells of all of them.
    [Fact]
    public void The_page_names_every_schema_there_is()
    {
        var page = File.ReadAllText(Repository.File("docs/json.md"));
        foreach (var file in Directory.EnumerateFiles(Repository.File("docs/schemas")).Select(Path.GetFileName))
        {
            Assert.Contains($"(schemas/{file})", page, StringComparison.Ordinal);
        }
    }
}
