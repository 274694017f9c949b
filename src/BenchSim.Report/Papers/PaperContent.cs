using System.Collections.Immutable;
using BenchSim.Report.Labels;
using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>What the papers are made from, worked out once.</summary>
internal sealed record PaperContent
{
    /// <summary>Plan, with the batches that the papers are for.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>Grower whose papers they are; null for all growers.</summary>
    public required string? Grower { get; init; }

    /// <summary>First date.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last date.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Jobs of those dates, in order.</summary>
    public required ImmutableArray<WorkTask> Tasks { get; init; }

    /// <summary>Nights on the table in the weeks of those dates.</summary>
    public required ImmutableArray<TableWeek> Nights { get; init; }

    /// <summary>Days of those dates on which the plan itself, of all growers, wants more places than there are.</summary>
    public required ImmutableArray<PlannedShortage> Shortages { get; init; }

    /// <summary>Seed, trays and mix for what is sown and potted on those dates.</summary>
    public required SupplyNeeds Needs { get; init; }

    /// <summary>
    /// What to buy of it, in the packs of supplies.csv; empty where there is no such file, and on the papers of one grower: packs and what
    /// is on hand are shared.
    /// </summary>
    public required ImmutableArray<Purchase> Purchases { get; init; }

    /// <summary>Labels for what is filled on those dates.</summary>
    public required ImmutableArray<TrayLabel> Labels { get; init; }

    /// <summary>Mondays of the weeks that have a job or a night on the table, in order.</summary>
    public ImmutableArray<DateOnly> Mondays =>
        [.. Tasks.Select(task => TableNights.MondayOf(task.On)).Concat(Nights.Select(week => week.Monday)).Distinct().Order()];

    /// <summary>Hours of watering on those dates; 0 where the site gives no minutes for it.</summary>
    public double WateringHours => PlannedWork.WateringHours(Plan, From, To);

    /// <summary>Name of the site.</summary>
    public string SiteName => Plan.Scenario.Name;

    /// <summary>Name of the site and, where the papers are for one, of the grower.</summary>
    public string Title => Grower is null ? SiteName : $"{SiteName}, {Grower}";

    /// <summary>Works the content out.</summary>
    /// <exception cref="ArgumentException">The plan has no such grower.</exception>
    public static PaperContent Of(SeasonPlan whole, DateOnly? from, DateOnly? to, string? grower)
    {
        var plan = grower is null ? whole : OwnOf(whole, grower);
        var work = PlannedWork.Of(plan);
        var first = from ?? plan.FirstDay;

        // Not the last set-out: where both dates of a batch are given, its trays may be ready for the table or
        // for potting up only after it.
        var last = to ?? work.Select(task => task.On).DefaultIfEmpty(plan.LastDay).Max();
        var needs = SupplyNeeds.Of(plan, first, last);
        return new PaperContent
        {
            Plan = plan,
            Grower = grower,
            From = first,
            To = last,
            Tasks = [.. work.Where(task => task.On >= first && task.On <= last)],
            Nights = [.. TableNights.Of(plan).Where(week => week.Monday >= TableNights.MondayOf(first) && week.Monday <= last)],
            Shortages = [.. PlannedRoom.Shortages(whole).Where(shortage => shortage.On >= first && shortage.On <= last)],
            Needs = needs,
            Purchases = grower is null ? Season.Planning.Purchases.Of(plan, needs, first, last) : [],
            Labels = TrayLabel.All(plan, ShortCodes.Of(whole), first, last),
        };
    }

    private static SeasonPlan OwnOf(SeasonPlan plan, string grower)
    {
        var own = plan.Batches.RemoveAll(batch => !string.Equals(batch.Order.Grower, grower, StringComparison.Ordinal));
        return own.IsEmpty ? throw new ArgumentException("The plan has no such grower.", nameof(grower)) : plan with { Batches = own };
    }
}
