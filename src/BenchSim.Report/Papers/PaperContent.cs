using System.Collections.Immutable;
using BenchSim.Report.Labels;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>What the papers are made from, worked out once.</summary>
internal sealed record PaperContent
{
    /// <summary>Plan.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>First date.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last date.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Jobs of those dates, in order.</summary>
    public required ImmutableArray<WorkTask> Tasks { get; init; }

    /// <summary>Nights on the table in the weeks of those dates.</summary>
    public required ImmutableArray<TableWeek> Nights { get; init; }

    /// <summary>Days of those dates on which the plan itself wants more places than there are.</summary>
    public required ImmutableArray<PlannedShortage> Shortages { get; init; }

    /// <summary>Seed, trays and mix for what is sown and potted on those dates.</summary>
    public required SupplyNeeds Needs { get; init; }

    /// <summary>Labels for what is filled on those dates.</summary>
    public required ImmutableArray<TrayLabel> Labels { get; init; }

    /// <summary>Mondays of the weeks that have a job or a night on the table, in order.</summary>
    public ImmutableArray<DateOnly> Mondays =>
        [.. Tasks.Select(task => TableNights.MondayOf(task.On)).Concat(Nights.Select(week => week.Monday)).Distinct().Order()];

    /// <summary>Name of the site.</summary>
    public string SiteName => Plan.Scenario.Name;

    /// <summary>Works the content out.</summary>
    public static PaperContent Of(SeasonPlan plan, DateOnly? from, DateOnly? to)
    {
        var work = PlannedWork.Of(plan);
        var first = from ?? plan.FirstDay;

        // Not the last set-out: where both dates of a batch are given, its trays may be ready for the table or
        // for potting up only after it.
        var last = to ?? work.Select(task => task.On).DefaultIfEmpty(plan.LastDay).Max();
        return new PaperContent
        {
            Plan = plan,
            From = first,
            To = last,
            Tasks = [.. work.Where(task => task.On >= first && task.On <= last)],
            Nights = [.. TableNights.Of(plan).Where(week => week.Monday >= TableNights.MondayOf(first) && week.Monday <= last)],
            Shortages = [.. PlannedRoom.Shortages(plan).Where(shortage => shortage.On >= first && shortage.On <= last)],
            Needs = SupplyNeeds.Of(plan, first, last),
            Labels = TrayLabel.All(plan, first, last),
        };
    }
}
