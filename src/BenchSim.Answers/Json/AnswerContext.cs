using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using BenchSim.Report.Json;

namespace BenchSim.Answers.Json;

/// <summary>Writes the documents of the answers without looking types up while the program runs.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(AgreedDocument))]
[JsonSerializable(typeof(BillsDocument))]
[JsonSerializable(typeof(BottlenecksDocument))]
[JsonSerializable(typeof(CheckDocument))]
[JsonSerializable(typeof(CompareDocument))]
[JsonSerializable(typeof(DenseDocument))]
[JsonSerializable(typeof(FaultsDocument))]
[JsonSerializable(typeof(InvestDocument))]
[JsonSerializable(typeof(LearnDocument))]
[JsonSerializable(typeof(LevelDocument))]
[JsonSerializable(typeof(MendDocument))]
[JsonSerializable(typeof(NewDocument))]
[JsonSerializable(typeof(StartersDocument))]
[JsonSerializable(typeof(PapersDocument))]
[JsonSerializable(typeof(PartDocument))]
[JsonSerializable(typeof(RefusalDocument))]
[JsonSerializable(typeof(ReviewDocument))]
[JsonSerializable(typeof(RunDocument))]
[JsonSerializable(typeof(SizeDocument))]
[JsonSerializable(typeof(StoryDocument))]
[JsonSerializable(typeof(SuccessionDocument))]
[JsonSerializable(typeof(SweepDocument))]
[JsonSerializable(typeof(SweepLackingDocument))]
[JsonSerializable(typeof(SweepPlanDocument))]
[JsonSerializable(typeof(SweepPlayedDocument))]
[JsonSerializable(typeof(TodayDocument))]
[JsonSerializable(typeof(TodayPaperDocument))]
[JsonSerializable(typeof(TrustDocument))]
[JsonSerializable(typeof(UnderwayDocument))]
[JsonSerializable(typeof(WeatherDocument))]
internal sealed partial class AnswerContext : JsonSerializerContext
{
    public static AnswerContext Dialect { get; } = new(JsonDialect.Options());

    /// <summary>A document as UTF-8.</summary>
    public static byte[] Write<T>(T document) => JsonDialect.Write(document, (JsonTypeInfo<T>)Dialect.GetTypeInfo(typeof(T))!);
}
