using System.Text.Json;
using BenchSim.Answers.Words;
using BenchSim.Cli.Commands;
using BenchSim.Cli.Words;
using BenchSim.Report.Words;
using BenchSim.Study.Results;

namespace BenchSim.Cli.Printing;

/// <summary>Prints the answer of a run.</summary>
internal static class AnswerPrinter
{
    public static void Print(Desk desk, Answer answer, string directory)
    {
        var result = answer.Result;
        desk.SayWrapped($"{SafeText.Short(result.Plan.Scenario.Name, 60)}: {answer.Verdict.Headline}");
        desk.Say();
        foreach (var sentence in answer.Verdict.Sentences)
        {
            Bullet(desk, sentence);
        }

        if (result.Bottlenecks is { } bottlenecks)
        {
            desk.Say();
            desk.Say("What holds the plan back:");
            desk.Say();
            BottleneckPrinter.PrintFindings(desk, bottlenecks);
        }

        if (answer.Required is { } required)
        {
            desk.Say();
            desk.SayWrapped(Requirement(answer, required));
        }

        if (answer.Precision is { } precision)
        {
            desk.Say();
            desk.SayWrapped(PrecisionWords.WhyItStopped(precision));
        }

        if (!answer.Verdict.LeavesOut.IsEmpty)
        {
            desk.Say();
            desk.Say("What these figures leave out:");
            foreach (var sentence in answer.Verdict.LeavesOut)
            {
                Bullet(desk, sentence);
            }
        }

        desk.Say();
        if (result.Plan.Warnings.Length is > 0 and var warnings)
        {
            desk.SayWrapped(
                $"{Figures.Count(warnings, "thing", "things")} in the files you should know: {RootMenu.ProgramName} check {Shell.Word(directory)} lists {(warnings == 1 ? "it" : "them")}."
            );
        }
    }

    /// <summary>Prints the answer for machines: the verdict, with the place of the report that holds the rest.</summary>
    public static void PrintJson(Desk desk, Answer answer, string? report, string? caseReport) =>
        desk.SayJson(json =>
        {
            var result = answer.Result;
            json.WriteString("name", result.Plan.Scenario.Name);
            json.WriteNumber("seasons", result.Seasons);
            json.WriteNumber("seed", result.Seed);
            StudyJson.Write(json, "fits", result.Fits);
            StudyJson.Write(json, "fits_weather_counted", result.FitsWeatherCounted);
            if (answer.Required is { } required)
            {
                json.WriteStartObject("require");
                json.WriteNumber("share", required);
                json.WriteBoolean("met", !answer.IsRequirementMissed);
                json.WriteEndObject();
            }

            if (answer.Precision is { } precision)
            {
                PrecisionJson.Write(json, precision);
            }

            json.WriteStartObject("verdict");
            if (answer.Verdict.Fits is { } fits)
            {
                json.WriteBoolean("fits_reliably", fits);
            }
            else
            {
                json.WriteNull("fits_reliably");
            }

            json.WriteString("headline", answer.Verdict.Headline);
            WriteList(json, "sentences", answer.Verdict.Sentences);
            WriteList(json, "leaves_out", answer.Verdict.LeavesOut);
            json.WriteEndObject();
            if (result.Bottlenecks is { } bottlenecks)
            {
                WriteList(json, "bottlenecks", BottleneckSentences.Of(bottlenecks));
            }

            FaultList.Write(json, "warnings", result.Plan.Warnings);
            json.WriteString("report", report);
            if (caseReport is not null)
            {
                json.WriteString("case", caseReport);
            }
        });

    private static string Requirement(Answer answer, double required)
    {
        var fits = answer.Result.Fits;
        var asked =
            $"Asked for: the plan fits in at least {Figures.Setting(required)} of seasons. It fits in {Figures.Percent(fits.Share)}: {(answer.IsRequirementMissed ? "not met" : "met")}.";
        return answer.IsRequirementClose
            ? $"{asked} The 95 % interval is {Figures.Interval(fits)}, so more seasons could turn the answer."
            : asked;
    }

    private static void Bullet(Desk desk, string sentence)
    {
        var mark = "- ";
        foreach (var line in Paragraph.Lines(SafeText.OneLine(sentence), 76))
        {
            desk.Say($"  {mark}{line}");
            mark = "  ";
        }
    }

    private static void WriteList(Utf8JsonWriter json, string name, IEnumerable<string> lines)
    {
        json.WriteStartArray(name);
        foreach (var line in lines)
        {
            json.WriteStringValue(line);
        }

        json.WriteEndArray();
    }
}
