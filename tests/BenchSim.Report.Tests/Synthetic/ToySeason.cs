using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Synthetic;

/// <summary>One toy season: whole batches go mat, bench, table, field, and wait where the next space has no room for all of them.</summary>
internal sealed class ToySeason
{
    private uint _state;

    public required int[][] Held { get; init; }

    public required int[][] Waiting { get; init; }

    /// <summary>Day of sowing, off the mat, on the table and out by batch.</summary>
    public required int[][] Steps { get; init; }

    public static ToySeason Play(SeasonPlan plan, int season, bool limited)
    {
        var spaces = plan.Scenario.Spaces.Length;
        var toy = new ToySeason
        {
            Held = [.. Enumerable.Range(0, spaces).Select(_ => new int[plan.Days])],
            Waiting = [.. Enumerable.Range(0, spaces).Select(_ => new int[plan.Days])],
            Steps = [.. plan.Batches.Select(_ => new[] { -1, -1, -1, -1 })],
            _state = (uint)(season + 1) * 2654435761u,
        };
        toy.Run(plan, limited);
        return toy;
    }

    public bool Fits(SeasonPlan plan) => LatePlants(plan) < 0.05 * plan.Batches.Sum(batch => batch.Order.Plants);

    public int LatePlants(SeasonPlan plan) =>
        plan
            .Batches.Select(
                (batch, index) =>
                    Steps[index][3] < 0 || plan.FirstDay.DayNumber + Steps[index][3] > batch.SetOutOn.DayNumber + 3 ? batch.Order.Plants : 0
            )
            .Sum();

    public int WaitingMost(SpaceKind kind) => kind == SpaceKind.Mat ? Waiting[0].Max() : Waiting[^1].Max();

    private void Run(SeasonPlan plan, bool limited)
    {
        var spaces = plan.Scenario.Spaces;
        var count = plan.Batches.Length;
        var at = Enumerable.Repeat(-1, count).ToArray();
        var stage = new int[count];
        var due = plan.Batches.Select(batch => batch.SowOn.DayNumber - plan.FirstDay.DayNumber).ToArray();
        var stretch = plan.Batches.Select(_ => 0.85 + (0.3 * Next())).ToArray();
        var used = new int[spaces.Length];
        for (var day = 0; day < plan.Days; day++)
        {
            for (var batch = 0; batch < count; batch++)
            {
                Advance(plan.Batches[batch], batch, day);
            }

            for (var space = 0; space < spaces.Length; space++)
            {
                Held[space][day] = used[space];
            }
        }

        void Advance(BatchPlan batch, int index, int day)
        {
            if (stage[index] > 3 || day < due[index])
            {
                return;
            }

            var choice = stage[index] switch
            {
                0 => batch.Mats.IsEmpty ? batch.Benches : batch.Mats,
                1 => batch.Benches,
                2 => batch.Tables,
                _ => [],
            };
            var to = -1;
            if (stage[index] < 3)
            {
                foreach (var space in choice)
                {
                    if (to < 0 && (!limited || used[space] + batch.Trays <= spaces[space].Places))
                    {
                        to = space;
                    }
                }

                if (to < 0)
                {
                    Waiting[choice[0]][day] += batch.Trays;
                    return;
                }

                used[to] += batch.Trays;
            }

            if (at[index] >= 0)
            {
                used[at[index]] -= batch.Trays;
            }

            at[index] = to;
            Steps[index][stage[index]] = day;
            due[index] = day + Stay(batch, index);
            stage[index]++;
        }

        int Stay(BatchPlan batch, int index) =>
            stage[index] switch
            {
                0 => (int)Math.Round(stretch[index] * ((batch.OffMatOn ?? batch.SowOn).DayNumber - batch.SowOn.DayNumber)),
                1 => (int)Math.Round(stretch[index] * (batch.TableOn.DayNumber - (batch.OffMatOn ?? batch.SowOn).DayNumber)),
                _ => batch.SetOutOn.DayNumber - batch.TableOn.DayNumber,
            };
    }

    private double Next()
    {
        _state ^= _state << 13;
        _state ^= _state >> 17;
        _state ^= _state << 5;
        return _state / 4294967296.0;
    }
}
