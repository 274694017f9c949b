using System.Collections.Immutable;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;

namespace BenchSim.Report.Papers;

/// <summary>Nights of one week, one after the other, that are worth watching for a crop on a hardening table.</summary>
internal sealed record NightWatch
{
    /// <summary>Monday of the week.</summary>
    public required DateOnly Monday { get; init; }

    /// <summary>The table.</summary>
    public required Space Table { get; init; }

    /// <summary>Which of the week's it is on that table, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>First evening.</summary>
    public required DateOnly First { get; init; }

    /// <summary>Last evening.</summary>
    public required DateOnly Last { get; init; }

    /// <summary>The crops that give reason to watch, each with its nights among these.</summary>
    public required ImmutableArray<(TableWeek Week, ImmutableArray<TableNight> Nights)> Crops { get; init; }

    /// <summary>All that is worth watching, in order of week, table and night.</summary>
    /// <param name="weeks">Nights of each crop on each table.</param>
    public static IEnumerable<NightWatch> Of(IEnumerable<TableWeek> weeks) =>
        weeks
            .GroupBy(week => (week.Monday, week.Table.Id))
            .OrderBy(own => own.Key.Monday)
            .ThenBy(own => own.Key.Id, StringComparer.Ordinal)
            .SelectMany(own => OfTable([.. own]));

    private static IEnumerable<NightWatch> OfTable(TableWeek[] weeks)
    {
        DateOnly[] evenings = [.. weeks.SelectMany(week => week.Watched).Select(night => night.On).Distinct().Order()];
        var (number, from) = (0, 0);
        for (var at = 0; at < evenings.Length; at++)
        {
            if (at + 1 < evenings.Length && evenings[at + 1] == evenings[at].AddDays(1))
            {
                continue;
            }

            var (first, last) = (evenings[from], evenings[at]);
            from = at + 1;
            yield return new NightWatch
            {
                Monday = weeks[0].Monday,
                Table = weeks[0].Table,
                Number = ++number,
                First = first,
                Last = last,
                Crops =
                [
                    .. weeks
                        .Select(week => (week, week.Watched.RemoveAll(night => night.On < first || night.On > last)))
                        .Where(own => !own.Item2.IsEmpty),
                ],
            };
        }
    }
}
