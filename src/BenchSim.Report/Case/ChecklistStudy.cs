using BenchSim.Report.Html;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Marks;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>Items 3 to 6 of the checklist: the data, how often and for how long it was played, and by which program.</summary>
internal static class ChecklistStudy
{
    private const int MostFiles = 10;
    private const int HashLength = 12;
    private const string Mended =
        "In the weather record, gaps of up to three days are filled on a straight line and rows that repeat a day with the same values "
        + "are left out.";

    /// <summary>Items 3.1 to 3.4.</summary>
    public static IEnumerable<ChecklistItem> Data(CaseInput input, IReadOnlyList<ReportInput> inputs)
    {
        var scenario = input.Base.Plan.Scenario;
        var files = string.Join(
            ", ",
            inputs
                .Take(MostFiles)
                .Select(file =>
                    $"{PlainText.Short(file.Name, 40)} (SHA-256 {Convert.ToHexStringLower(Sha256.HashData(file.Bytes.Span))[..HashLength]})"
                )
        );
        var more = inputs.Count > MostFiles ? $" and {Numbers.Whole(inputs.Count - MostFiles)} more" : "";
        yield return new(
            "3.1",
            "Data sources",
            "The user's files, kept in the folder inputs beside this report: "
                + $"{(inputs.Count == 0 ? "none were kept" : files + more)}. Weather: {WeatherPart.Words(scenario)}. "
                + "The source of each crop, tray and house value stands with it in the files or in the library of the program "
                + "(docs/sources.md)."
        );
        yield return new(
            "3.2",
            "Pre-processing",
            "Units are converted on reading, successions become batches, weeks to ready become heat sums (docs/model.md, "
                + "section 5). A recorded year without 29 February takes the 28th's weather. "
                + scenario.Weather switch
                {
                    GeneratedWeather { Fitted: not null } =>
                        $"{Mended} The weather generator is fitted to the record as docs/weather.md says; no outlier is removed.",
                    GeneratedWeather => "The weather generator is made from the normals as docs/weather.md says.",
                    RecordedWeather => $"{Mended} No other value is filled in or removed.",
                    _ => "The weather is the same every day.",
                }
        );
        yield return new("3.3", "Input parameters", Parameters(input));
        yield return new(
            "3.4",
            "Assumptions",
            $"{Weak(scenario)} Emergence and growth by heat sums, one random factor a batch; what is left out stands in section 5. "
                + "No tray moves between rounds, and people do as the plan says."
        );
    }

    /// <summary>Items 4.1 to 4.3.</summary>
    public static IEnumerable<ChecklistItem> Experiment(CaseInput input)
    {
        var plan = input.Base.Plan;
        yield return new(
            "4.1",
            "Initialisation",
            $"Terminating. Every season begins empty on {Dates.Full(plan.FirstDay)}, always the same; no warm-up. "
                + $"It stops after {Dates.Full(plan.LastDay)}."
        );
        yield return new(
            "4.2",
            "Run length",
            $"{Numbers.Count(plan.Days, "day", "days")}; the unit of time is the day, heat is summed by the hour."
        );
        var halves = input.Variant is not { } variant
            ? HalfWidth(input.Base)
            : $"{HalfWidth(input.Base)} without {CaseWords.Name(variant.Name)} and {HalfWidth(input.Changed!)} with it";
        var paired = input.Comparison is null ? "" : " of each scenario, paired by common random numbers";
        yield return new(
            "4.3",
            "Estimation approach",
            $"Independent replications: {Numbers.Count(input.Base.Seasons, "season", "seasons")}{paired}. "
                + "Seasons start empty, so batch means do not arise. With this number the 95 % interval of the chance of fit reaches "
                + $"{halves} to either side, half its "
                + $"width{(input.Base.Seasons < Numbers.EnoughSeasons ? "; that is too few to decide anything" : "")}."
        );
    }

    /// <summary>Items 5.1 to 6.1.</summary>
    public static IEnumerable<ChecklistItem> Program(CaseInput input)
    {
        yield return new(
            "5.1",
            "Software or programming language",
            $"BenchSim {input.Version}, build of the model {input.Build}, C# on .NET 10, with its own simulation engine "
                + "(docs/decisions/001-own-engine.md). The operating system is left out, so that the same files give the same report."
        );
        yield return new(
            "5.2",
            "Random sampling",
            $"Philox4x32-10 (Salmon and others 2011), seed {input.Base.Seed.ToString(null, null)}, by inverse transform. "
                + "Each draw is a function of the seed, the season, the batch or packet by name, and its purpose, so a change draws no "
                + "other numbers for what it leaves alone (docs/decisions/002-randomness-by-name.md)."
        );
        yield return new(
            "5.3",
            "Model execution",
            "Three-phase method (Tocher 1963): the clock goes to the next event that is bound to happen, all such events of that instant "
                + "happen, and then the activities of the work round are tried, downstream first, each in the "
                + "order of item 2.5.4 (docs/mechanisms.md). Seasons are played in parallel on the cores of one machine and share "
                + "nothing; the answer does not depend on the number of threads."
        );
        yield return new(
            "5.4",
            "System specification",
            "Run time and machine are left out for the same reason as in 5.1; no special hardware is needed. Measured times: "
                + "docs/performance.md."
        );
        yield return new(
            "6.1",
            "Computer model sharing statement",
            "BenchSim is free software under the MIT licence; its source holds the model, the tests and the pages named here. "
                + $"To repeat: with the same version, in the folder of this report, run: {PlainText.OneLine(input.Command)}"
        );
    }

    private static string HalfWidth(StudyResult study) => $"{ChanceWords.Points((study.Fits.High - study.Fits.Low) / 2)} percentage points";

    private static string Parameters(CaseInput input)
    {
        var scenario = input.Base.Plan.Scenario;
        var emergence = Range(scenario.Crops.Select(crop => crop.EmergeCv));
        var growth = Range(scenario.Crops.Select(crop => crop.GrowthCv));
        var losses = Range(scenario.Crops.Select(crop => crop.StandLossCorrelation));
        return $"All values, of {(input.Comparison is null ? "the plan" : "base and scenario")}: the files in inputs. Distributions: "
            + "share of a packet that germinates Beta(v n, (1 - v) n) about its tested value v, n = "
            + $"{Numbers.Whole(scenario.Rules.GerminationSample)}; plants of a tray binomial, of a batch "
            + $"beta-binomial with the losses of the crop and their correlation {losses}; speed of emergence of a batch lognormal, "
            + $"mean 1, coefficient of variation {emergence}; of growth lognormal, mean 1, coefficient of variation {growth}; "
            + (scenario.Mishaps.IsEmpty ? "" : "mishaps by their chance, at most once a season, on each day of theirs alike (section 2); ")
            + "weather as in 3.1. Chosen as the common laws of these quantities (docs/model.md, sections 4 to 6), "
            + "not fitted to this site.";
    }

    private static string Range(IEnumerable<double> values)
    {
        double[] all = [.. values.DefaultIfEmpty(0)];
        return all.Min().Equals(all.Max()) ? Numbers.Fine(all[0]) : $"{Numbers.Fine(all.Min())} to {Numbers.Fine(all.Max())}";
    }

    private static string Weak(Scenario scenario)
    {
        var weak = scenario
            .Crops.SelectMany(crop => crop.Sources.Values)
            .Concat(scenario.TrayTypes.SelectMany(tray => tray.Sources.Values))
            .Concat(
                scenario.Houses.SelectMany(house =>
                    house.Body is not { } body ? []
                    : house.Heat is { } heat ? body.Sources.Values.Append(heat.Fuel.ContentSource)
                    : body.Sources.Values
                )
            )
            .Count(source => source.Trust is Trust.Memory or Trust.Assumption);
        return weak == 0
            ? "No value of a crop, tray or house rests on memory or assumption."
            : $"{Numbers.Count(weak, "value of crops, trays and houses rests", "values of crops, trays and houses rest")} on memory "
                + "or assumption; the command check lists them.";
    }
}
