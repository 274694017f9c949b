using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Study.Coming;

/// <summary>Sums the jobs of many seasons up.</summary>
internal static class ComingJobs
{
    public static ImmutableArray<ComingJob> Of(SeasonPlan plan, DateOnly today, ImmutableArray<ComingSeason> seasons) =>
        [
            .. seasons
                .SelectMany(season => season.Jobs)
                .GroupBy(each => each.Key, each => each.Value)
                .Select(group => (Job: Of(today, seasons.Length, group.Key, [.. group]), Middle: Quantile(group, 5)))
                .Where(each => each.Job.Likelihood > Likelihood.Rare)
                .OrderBy(each => !each.Job.IsToday)
                .ThenBy(each => each.Middle)
                .ThenBy(each => each.Job.Kind)
                .ThenBy(each => plan.Batches[each.Job.Batch].SetOutOn)
                .ThenBy(each => each.Job.Batch)
                .ThenBy(each => each.Job.AreFlats)
                .Select(each => each.Job),
        ];

    private static ComingJob Of(DateOnly today, int seasons, JobKey key, ImmutableArray<SeenJob> seen)
    {
        var now = seen.Count(job => job.Day == 0);
        var isToday = Likelihoods.Of(now, seasons) >= Likelihood.Likely;
        var ((from, to), _) = seen.SelectMany(job => job.Ways)
            .GroupBy(way => way.Key, way => (long)way.Value)
            .Select(way => (way.Key, Trays: way.Sum()))
            .OrderByDescending(way => way.Trays)
            .ThenBy(way => way.Key)
            .First();
        return new ComingJob
        {
            Kind = key.Kind,
            Batch = key.Batch,
            AreFlats = key.AreFlats,
            Pieces = isToday
                ? Middle([.. seen.Where(job => job.Day == 0).Select(job => job.PiecesToday)])
                : Middle([.. seen.Select(job => job.Pieces)]),
            From = from < 0 ? null : from,
            To = to < 0 ? null : to,
            IsToday = isToday,
            Likelihood = Likelihoods.Of(isToday ? now : seen.Length, seasons),
            First = today.AddDays(isToday ? 0 : Quantile(seen, Likelihoods.MaybeOfTen)),
            Last = today.AddDays(isToday ? 0 : Quantile(seen, Likelihoods.SureOfTen)),
        };
    }

    private static int Middle(int[] pieces)
    {
        Array.Sort(pieces);
        return pieces[(pieces.Length - 1) / 2];
    }

    // The first day by which so many of ten have begun.
    private static int Quantile(IEnumerable<SeenJob> seen, int ofTen)
    {
        int[] days = [.. seen.Select(job => job.Day).Order()];
        return days[((((long)days.Length * ofTen) + 9) / 10) - 1];
    }
}
