using BenchSim.Report.Html;
using BenchSim.Report.Papers;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Study.Coming;

namespace BenchSim.Report.Morning;

/// <summary>Words that stand in more than one part of the page of a day.</summary>
public static class SheetWords
{
    /// <summary>Longest name in a line.</summary>
    internal const int LongestName = 60;

    /// <summary>What the three words mean, once on a page.</summary>
    /// <param name="seasons">Seasons played.</param>
    public static string Likelihoods(int seasons) =>
        $"Sure: it comes in at least {Study.Coming.Likelihoods.SureOfTen} of 10 seasons played on from here; likely: in at least "
        + $"{Study.Coming.Likelihoods.LikelyOfTen}; maybe: in at least {Study.Coming.Likelihoods.MaybeOfTen}. What is rarer is not listed. "
        + $"{Numbers.Count(seasons, "season was", "seasons were")} played. A job without a line in the log counts as not done.";

    /// <summary>sure, likely, maybe.</summary>
    /// <param name="likelihood">How likely; not <see cref="Likelihood.Rare"/>.</param>
    public static string Of(Likelihood likelihood) =>
        likelihood switch
        {
            Likelihood.Sure => "sure",
            Likelihood.Likely => "likely",
            Likelihood.Maybe => "maybe",
            _ => throw new ArgumentOutOfRangeException(nameof(likelihood)),
        };

    /// <summary>Tue 20 Apr.</summary>
    internal static string Day(DateOnly date) => TaskWords.Day(date);

    /// <summary>"Tue 20 Apr", or "Tue 20 to Thu 22 Apr".</summary>
    /// <param name="first">First day.</param>
    /// <param name="last">Last day, no earlier.</param>
    public static string Days(DateOnly first, DateOnly last) =>
        first == last ? Day(first)
        : first.Month == last.Month ? $"{first.DayOfWeek.ToString()[..3]} {first.Day} to {Day(last)}"
        : $"{Day(first)} to {Day(last)}";

    /// <summary>Id of a batch, with its short code and what it is.</summary>
    internal static Markup Batch(TodaySheet sheet, BatchPlan batch) =>
        new(
            $"<b>{HtmlText.Name(batch.Order.Id, LongestName).Html}</b> <span class=\"code\">"
                + $"{HtmlText.Name(sheet.Codes.Full(batch)).Html}</span> {HtmlText.Name(batch.CropAndVariety, LongestName).Html}, "
                + HtmlText.Name(batch.Order.Grower, LongestName).Html
        );

    /// <summary>Name of a space.</summary>
    internal static Markup Space(SeasonPlan plan, int space) => HtmlText.Name(plan.Scenario.Spaces[space].Name, LongestName);

    /// <summary>From where to where a job goes, "from Heat mats to Main benches"; empty where there is nothing to say.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="job">The job.</param>
    public static string PlainWay(SeasonPlan plan, ComingJob job)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(job);
        return Way(job, space => PlainText.Short(plan.Scenario.Spaces[space].Name, LongestName));
    }

    internal static Markup Way(SeasonPlan plan, ComingJob job) => new(Way(job, space => Space(plan, space).Html));

    private static string Way(ComingJob job, Func<int, string> name) =>
        (job.From, job.To) switch
        {
            ({ } from, { } to) => $"from {name(from)} to {name(to)}",
            (null, { } to) => $"to {name(to)}",
            ({ } from, null) => $"from {name(from)}",
            _ => job.Kind == WorkKind.PotUp ? "trays filled from the flats" : "",
        };
}
