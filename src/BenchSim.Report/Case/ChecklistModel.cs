using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Report.Case;

/// <summary>Items 1 and 2 of the checklist: what the model is for and how it works.</summary>
internal static class ChecklistModel
{
    private const int MostSpaces = 8;

    /// <summary>Items 1.1 to 1.3.</summary>
    public static IEnumerable<ChecklistItem> Objectives(CaseInput input)
    {
        var name = PlainText.Short(input.Base.Plan.Scenario.Name, 80);
        yield return new(
            "1.1",
            "Purpose of the model",
            $"To find out whether the propagation plan of {name} fits its places, where and when not, and what would mend it. "
                + $"The question: {CaseWords.Question(input)}"
        );
        yield return new(
            "1.2",
            "Model outputs",
            "Chance of fit: share of seasons that fit (section 2), with a Wilson score interval. Counts (plants, trays, hours, "
                + "fuel): mean of the seasons with a Student interval, and percentiles by exact counting. Places held, "
                + "wanted and refused: counted each day just after the round. "
                + (
                    input.Comparison is null
                        ? ""
                        : "Differences: both played in the same seasons; Newcombe's paired interval for "
                            + "chances and Student's for means, Bonferroni for all of them. "
                )
                + (
                    input.Money is null
                        ? ""
                        : "Money: net present value, internal rate and payback of runs of years drawn from the seasons, "
                            + "intervals by resampling the seasons (docs/invest.md). "
                )
                + "Definitions: docs/model.md, section 9."
        );
        yield return new(
            "1.3",
            "Experimentation aims",
            input.Variant is { } variant
                ? $"(A) Scenario based analysis. Base: the plan as it is. Scenario {CaseWords.Name(variant.Name)}: "
                    + "the plan with the change named in section 2, chosen by the user to answer the question. No design of experiments, "
                    + "no optimisation."
                : "One scenario, the plan as it is. No design of experiments, no optimisation."
        );
    }

    /// <summary>Items 2.1 to 2.5.5.</summary>
    public static IEnumerable<ChecklistItem> Logic(CaseInput input)
    {
        var scenario = input.Base.Plan.Scenario;
        var rules = scenario.Rules;
        yield return new(
            "2.1",
            "Base model overview diagram",
            "Figure 1 in section 2. It covers the way of every tray from sowing to field through the spaces of the site; "
                + "the field and the market are outside."
        );
        yield return new(
            "2.2",
            "Base model logic",
            "Once each work day, downstream first: throw out what stood too long, set out, bench to table, pot up, mat to bench, "
                + "sow; a tray moves at most once a round. A tray that is ready and finds no place keeps the one it has (blocking after "
                + "service). Full logic: docs/model.md, sections 1 to 7."
        );
        yield return new(
            "2.3",
            "Scenario logic",
            input.Variant is { } variant
                ? $"The logic is the same; the values that differ stand in section 2, “What {PlainText.Short(variant.Name, 40)} "
                    + "changes”. Values named in this list are the base's. Sowings that it does not change keep their planned dates."
                : "No scenario beside the base."
        );
        yield return new(
            "2.4",
            "Algorithms",
            "Number of trays to sow: the fewest that bring the wanted plants with a chance of "
                + $"{ChanceWords.Setting(rules.StandAssurance)}. Emergence and growth: heat sums, hour by hour. Planned dates: "
                + "each batch walked by itself through the same rounds. Hardening by forecast of "
                + $"{Numbers.Count(rules.ForecastNights, "night", "nights")}. Formulas: docs/model.md, sections 4 to 7; weather: "
                + "docs/weather.md."
        );
        yield return new(
            "2.5.1",
            "Components: entities",
            $"Trays and flats, in lots of one past: {Numbers.Count(input.Base.Plan.Batches.Length, "batch", "batches")} with "
                + $"{Numbers.Count(input.Base.Plan.Batches.Sum(batch => batch.Trays), "tray", "trays")} and "
                + $"{Numbers.Count(input.Base.Plan.Batches.Sum(batch => batch.Flats), "flat", "flats")} planned. Attributes: batch, crop, "
                + "grower, place, heat taken up, plants, nights hardened, days held and days waited."
        );
        yield return new(
            "2.5.2",
            "Components: activities",
            "Sowing, coming up (on a heat mat where the crop wants one), growing on a bench, potting up, hardening on a table, "
                + "setting out; carrying in for cold nights. Routing: Figure 1."
        );
        yield return new("2.5.3", "Components: resources", Resources(input.Base, rules));
        yield return new(
            "2.5.4",
            "Components: queues",
            "One order for all waiting trays: planned set-out date, planned sow date, batch; nobody overtakes within a group of "
                + $"spaces. No line has a limit. What is unsown {Numbers.Count(rules.SowGiveUpDays, "day", "days")} after its date is "
                + "given up; trays that stand too long are thrown out after the days of their crop. Ways of making room: "
                + $"{(rules.Reliefs.IsEmpty ? "none" : string.Join(", ", rules.Reliefs.Select(ReliefFields.Deed)))}."
        );
        yield return new(
            "2.5.5",
            "Components: entry/exit points",
            "Entry: the sow dates of the plan, known beforehand (no random arrivals). Exit: to the field, thrown out, "
                + "given up unsown, or still standing on the last day; each is counted."
        );
    }

    private static string Resources(StudyResult study, SiteRules rules)
    {
        var spaces = string.Join(
            ", ",
            study
                .Spaces.Take(MostSpaces)
                .Select(space =>
                    $"{PlainText.Short(space.Space.Name, 30)} ({Trade.Code(space.Space.Kind)}, {Numbers.Whole(space.Space.Places)})"
                )
        );
        var more = study.Spaces.Length > MostSpaces ? $" and {Numbers.Whole(study.Spaces.Length - MostSpaces)} more" : "";
        var hands = $"sow {Limit(rules.SowTraysADay)}, pot up {Limit(rules.PotUpTraysADay)}, set out {Limit(rules.SetOutTraysADay)}";
        return $"Places of: {spaces}{more}. Hands, in trays a day: {hands}.";
    }

    private static string Limit(int? trays) => trays is { } most ? Numbers.Whole(most) : "no limit";
}
