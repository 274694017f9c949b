using BenchSim.Answers.Words;
using BenchSim.Report.Words;
using BenchSim.Season.Weather;

namespace BenchSim.Answers.Weather;

/// <summary>The first screen of a fitted record: how long it is, how well the generator does, and what to know.</summary>
internal static class WeatherScreen
{
    private const int MostWarnings = 2;

    public static FirstScreen Of(WeatherAnswer answer)
    {
        var (report, question) = (answer.Fitted.Report, answer.Question);
        var sentences = WeatherFitWords.Sentences(report, question.Temperature, question.Rain);
        var warnings = WeatherFitWords.Warnings(report, question.Temperature);
        var known = warnings.IsEmpty ? "Nothing else to know." : $"{Numbers.Count(warnings.Length, "thing", "things")} you should know.";
        var repaired = answer.Repairs.IsEmpty
            ? "nothing had to be put right"
            : $"{Numbers.Count(answer.Repairs.Length, "place was", "places were")} put right";
        return new FirstScreen($"{PlainText.Short(Path.GetFileName(question.File), 40)}: {sentences[0]} In the record {repaired}. {known}")
        {
            Facts = [.. sentences.Skip(1).Take(3)],
            Warnings = [.. warnings.Take(MostWarnings).Select(warning => PlainText.Short(warning, 228))],
            Next = Next(question.File),
            Written = question.Out is { } place ? $"Chart and tables: {place}" : null,
        };
    }

    // A record that lies in a scenario folder is that folder's.
    private static NextStep? Next(string file) =>
        Path.GetDirectoryName(file) is { Length: > 0 } folder && File.Exists(Path.Combine(folder, Folder.Files.FileNames.Site))
            ? NextStep.Of("See what it means for your plan", "check", folder)
            : null;
}
