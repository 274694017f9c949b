using System.Collections.Immutable;
using BenchSim.Season.Planning;

namespace BenchSim.Study.Review;

/// <summary>Where a figure of a review comes from.</summary>
public enum Basis
{
    /// <summary>From rows of the log alone.</summary>
    Counted,

    /// <summary>From seasons played.</summary>
    Played,

    /// <summary>From values of the site that nobody measured in this season.</summary>
    Assumed,
}

/// <summary>A figure of a review.</summary>
/// <param name="Name">Name for machines.</param>
/// <param name="Of">Of what it is, where there are several: a house, a job; empty for the season.</param>
/// <param name="Words">What it is.</param>
/// <param name="Value">Value; a mean where it was played.</param>
/// <param name="Low">One season in ten is at or below this; null where it is one value.</param>
/// <param name="High">Nine seasons in ten are at or below this; null likewise.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record ReviewFigure(string Name, string Of, string Words, double Value, double? Low, double? High, string Unit, Basis Basis)
{
    private const double MinutesAnHour = 60;

    /// <summary>The figures of a review, in order of importance.</summary>
    /// <param name="review">Review.</param>
    public static ImmutableArray<ReviewFigure> All(SeasonReview review)
    {
        ArgumentNullException.ThrowIfNull(review);
        return [.. Season(review), .. Work(review), .. Fuels(review)];
    }

    private static IEnumerable<ReviewFigure> Season(SeasonReview review)
    {
        yield return Counted("batches_due", "", "batches agreed to be in the field by the last line", review.DueOut, "batches");
        yield return Counted("batches_out", "", "batches agreed of which trays went to the field", review.OutBatches, "batches");
        yield return Counted("batches_in_time", "", "of these, in time by the agreed date", review.OutInTime, "batches");
        foreach (var kind in review.Kinds)
        {
            yield return Counted("jobs", JobOf(kind.Kind), "jobs due on batches that were begun", kind.Jobs, "jobs");
            yield return Counted("jobs_with_line", JobOf(kind.Kind), "of these with a line in the log", kind.WithRow, "jobs");
            if (kind.Middle is { } middle)
            {
                yield return Counted("days_late", JobOf(kind.Kind), "days later than agreed, middle of the batches", middle, "days");
            }
        }

        if (review.Cases > 0)
        {
            yield return new(
                "forecast_in_range",
                "",
                "forecasts whose range held the day",
                review.Weeks.Sum(week => week.InRange),
                null,
                null,
                "forecasts",
                Basis.Played
            );
            yield return new("forecasts", "", "forecasts made", review.Cases, null, null, "forecasts", Basis.Played);
        }
    }

    private static IEnumerable<ReviewFigure> Work(SeasonReview review)
    {
        if (!review.Minutes.IsEmpty)
        {
            yield return Counted(
                "hours_timed",
                "",
                "work that was timed",
                review.Minutes.Sum(each => each.Minutes) / MinutesAnHour,
                "hours"
            );
            MinutesSpent[] ruled = [.. review.Minutes.Where(each => each.ByTheRules is not null)];
            if (ruled.Length > 0)
            {
                yield return Counted(
                    "hours_timed_of_jobs",
                    "",
                    "of it, work for which the site gives minutes",
                    ruled.Sum(each => each.Minutes) / MinutesAnHour,
                    "hours"
                );
                yield return new(
                    "hours_by_the_rules",
                    "",
                    "the same work by the minutes of the site",
                    ruled.Sum(each => each.ByTheRules!.Value) / MinutesAnHour,
                    null,
                    null,
                    "hours",
                    Basis.Assumed
                );
            }
        }

        var hours = review.Agreed.Work.Hours;
        yield return new(
            "hours_expected",
            "",
            "work of the whole season by the agreed plan",
            hours.Mean,
            hours.P10,
            hours.P90,
            "hours",
            Basis.Played
        );
    }

    private static IEnumerable<ReviewFigure> Fuels(SeasonReview review)
    {
        foreach (var fuel in review.Fuel)
        {
            var unit = fuel.House.Heat!.Fuel.Unit;
            if (fuel.Counted is { } counted)
            {
                yield return Counted("fuel_counted", fuel.House.Id, "fuel by the log", counted, unit);
            }

            yield return new(
                "fuel_as_it_was",
                fuel.House.Id,
                "fuel by the trays of the log and the weather observed",
                fuel.AsItWas,
                null,
                null,
                unit,
                Basis.Played
            );
            if (fuel.Expected is { } expected)
            {
                yield return new(
                    "fuel_expected",
                    fuel.House.Id,
                    "fuel by the agreed plan",
                    expected.Mean,
                    expected.P10,
                    expected.P90,
                    unit,
                    Basis.Played
                );
            }
        }
    }

    private static ReviewFigure Counted(string name, string of, string words, double value, string unit) =>
        new(name, of, words, value, null, null, unit, Basis.Counted);

    private static string JobOf(WorkKind kind) =>
        kind switch
        {
            WorkKind.Sow => "sow",
            WorkKind.OffMat => "off the mats",
            WorkKind.PotUp => "pot up",
            WorkKind.ToTable => "to the table",
            _ => "set out",
        };
}
