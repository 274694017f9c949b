using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Study.Results;

namespace BenchSim.Study.Review;

/// <summary>A season that is over, set beside the plan that was agreed.</summary>
public sealed record SeasonReview
{
    /// <summary>The plan as it is, with its log.</summary>
    public required SeasonPlan Plan { get; init; }

    /// <summary>The agreed plan, played; where none was agreed, the plan as it is.</summary>
    public required StudyResult Agreed { get; init; }

    /// <summary>The batches: those of the plan in its order, then those that are no longer in it.</summary>
    public required ImmutableArray<ReviewedBatch> Batches { get; init; }

    /// <summary>The jobs on the batches that were begun, by kind.</summary>
    public required ImmutableArray<ReviewedKind> Kinds { get; init; }

    /// <summary>What was forecast on each Monday, against what came.</summary>
    public required ImmutableArray<ForecastWeek> Weeks { get; init; }

    /// <summary>Work that was timed.</summary>
    public required ImmutableArray<MinutesSpent> Minutes { get; init; }

    /// <summary>Fuel of the houses that burn some.</summary>
    public required ImmutableArray<FuelSpent> Fuel { get; init; }

    /// <summary>Rows of fuel that name no house that burns any, or no unit of its fuel.</summary>
    public required int FuelRowsUnread { get; init; }

    /// <summary>Days up to the last row whose weather was not observed, and that are taken as normal.</summary>
    public required int DaysLacking { get; init; }

    /// <summary>Batches that were agreed.</summary>
    public int AgreedBatches => Batches.Count(batch => batch.Agreed is not null);

    /// <summary>Day of the last row of the log.</summary>
    public DateOnly LastRow => Plan.Scenario.Log.Max(row => row.Date);

    /// <summary>Those of them that were to be in the field by the last row of the log.</summary>
    public int DueOut => Batches.Count(batch => batch.Agreed is { } agreed && agreed.SetOutOn <= LastRow);

    /// <summary>Those of them of which trays went to the field.</summary>
    public int OutBatches => Batches.Count(batch => batch is { Agreed: not null, OutOn: not null });

    /// <summary>Those of them whose middle tray went out no more than the late days of the site after the agreed date.</summary>
    public int OutInTime =>
        Batches.Count(batch =>
            batch is { Agreed: { } agreed, OutOn: { } on } && on <= agreed.SetOutOn.AddDays(Plan.Scenario.Rules.LateDays)
        );

    /// <summary>Forecasts of a batch that were made, over all weeks.</summary>
    public int Cases => Weeks.Sum(week => week.Cases.Length);
}
