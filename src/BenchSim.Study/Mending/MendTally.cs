using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Compare;

namespace BenchSim.Study.Mending;

/// <summary>Sums over seasons, by plan, of what became of batches and spaces. Whole numbers, so threads add up in any order.</summary>
internal sealed class MendTally
{
    private readonly long[] _baseLate;

    private readonly bool _countsWeather;

    public MendTally(IReadOnlyList<SeasonPlan> plans, bool countsWeather)
    {
        _countsWeather = countsWeather;
        var batches = plans[0].Batches.Length;
        _baseLate = new long[batches];
        Plans =
        [
            .. plans.Select(plan => new OfPlan(
                [.. plan.Batches.Select(batch => batch.Order.Plants)],
                batches,
                plan.Scenario.Spaces.Length
            )),
        ];
    }

    /// <summary>By plan.</summary>
    public OfPlan[] Plans { get; }

    /// <summary>Counts a season of a plan; the first plan of each season first.</summary>
    public void Add(int plan, SeasonResult season)
    {
        var own = Plans[plan];
        own.Seasons++;
        for (var at = 0; at < season.Batches.Length; at++)
        {
            var batch = season.Batches[at];
            long late = own.Wanted[at] - (_countsWeather ? batch.PlantsInTimeWeatherCounted : batch.PlantsInTime);
            if (plan == 0)
            {
                _baseLate[at] = late;
            }

            own.Late[at].Add(_baseLate[at], late);
            own.LateForRoom[at] += own.Wanted[at] - batch.PlantsInTime;
            own.LateInAll[at] += own.Wanted[at] - batch.PlantsInTimeWeatherCounted;
            own.Short[at] += batch.PlantsShort;
            foreach (var blocked in batch.BlockedTrayDays)
            {
                own.Blocked[at] += blocked;
            }
        }

        for (var space = 0; space < season.Waiting.Length; space++)
        {
            var days = season.Waiting[space];
            long sum = 0;
            for (var day = 0; day < days.Length; day++)
            {
                sum += days[day];
                if (days[day] > 0 && day < own.FirstWait[space])
                {
                    own.FirstWait[space] = day;
                }
            }

            own.Waits[space] += sum;
            own.WaitSeasons[space] += sum > 0 ? 1 : 0;
        }
    }

    /// <summary>Adds another thread's count.</summary>
    public void Merge(MendTally other)
    {
        for (var plan = 0; plan < Plans.Length; plan++)
        {
            Plans[plan].Merge(other.Plans[plan]);
        }
    }

    /// <summary>The sums of one plan.</summary>
    internal sealed class OfPlan(int[] wanted, int batches, int spaces)
    {
        /// <summary>Seasons counted.</summary>
        public int Seasons { get; set; }

        /// <summary>Plants wanted by batch.</summary>
        public int[] Wanted => wanted;

        /// <summary>By batch: plants late in the first plan and in this, by the days that count.</summary>
        public PairedSums[] Late { get; } = [.. Enumerable.Range(0, batches).Select(_ => new PairedSums())];

        /// <summary>By batch: plants late, weather holds excepted.</summary>
        public long[] LateForRoom { get; } = new long[batches];

        /// <summary>By batch: plants late, every late day counted.</summary>
        public long[] LateInAll { get; } = new long[batches];

        /// <summary>By batch: plants that never went out.</summary>
        public long[] Short { get; } = new long[batches];

        /// <summary>By batch: tray-days refused a place.</summary>
        public long[] Blocked { get; } = new long[batches];

        /// <summary>By space: place-days refused.</summary>
        public long[] Waits { get; } = new long[spaces];

        /// <summary>By space: seasons in which a place was refused.</summary>
        public int[] WaitSeasons { get; } = new int[spaces];

        /// <summary>By space: the earliest day on which a place was refused; the greatest number where none ever was.</summary>
        public int[] FirstWait { get; } = [.. Enumerable.Repeat(int.MaxValue, spaces)];

        public void Merge(OfPlan other)
        {
            Seasons += other.Seasons;
            for (var at = 0; at < Late.Length; at++)
            {
                Late[at].Merge(other.Late[at]);
                LateForRoom[at] += other.LateForRoom[at];
                LateInAll[at] += other.LateInAll[at];
                Short[at] += other.Short[at];
                Blocked[at] += other.Blocked[at];
            }

            for (var space = 0; space < Waits.Length; space++)
            {
                Waits[space] += other.Waits[space];
                WaitSeasons[space] += other.WaitSeasons[space];
                FirstWait[space] = Math.Min(FirstWait[space], other.FirstWait[space]);
            }
        }
    }
}
