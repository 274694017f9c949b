using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;

namespace BenchSim.Study.Mending;

/// <summary>Plays many plans of one site on the same luck, and keeps what a search reads off each season.</summary>
/// <param name="options">Seed and threads.</param>
/// <param name="cancel">Stops the play.</param>
internal sealed class MendPlays(MendOptions options, CancellationToken cancel)
{
    private readonly ClimateStore _store = new();
    private readonly Dictionary<SeasonPlan, SeasonPlayer> _players = new(ReferenceEqualityComparer.Instance);

    /// <summary>Told after each season of a plan.</summary>
    public Action<int>? Told { get; init; }

    /// <summary>Plays seasons of each plan, all batches of which are those of the first, in the same order.</summary>
    /// <param name="plans">The plans, one or more.</param>
    /// <param name="first">Number of the first season.</param>
    /// <param name="count">Seasons.</param>
    /// <param name="limits">Places as given, or otherwise.</param>
    public MendCount Play(IReadOnlyList<SeasonPlan> plans, int first, int count, PlaceLimits? limits = null)
    {
        SeasonPlayer[] players = [.. plans.Select(PlayerOf)];
        MendSeason[][] seasons = [.. plans.Select(_ => new MendSeason[count])];
        var study = new StudyOptions
        {
            Seasons = count,
            Seed = options.Seed,
            Threads = options.Threads,
        };
        var tally = new ParallelSeasons<MendTally>(study, null, cancel).Run(
            () => new MendTally(plans, options.CountsWeather),
            () =>
            {
                SeasonPlayer[] own = [.. players.Select(player => player.Another())];
                var result = new SeasonResult();
                MeasuredSeason[] measured = [.. plans.Select(plan => new MeasuredSeason(plan))];
                MendMoney[] money = [.. plans.Select(plan => new MendMoney(plan.Scenario))];
                return (at, count) =>
                {
                    for (var plan = 0; plan < own.Length; plan++)
                    {
                        own[plan].Play(first + at, limits ?? PlaceLimits.AsGiven, result);
                        measured[plan].Read(result, [], []);
                        seasons[plan][at] = Read(measured[plan], money[plan], plans[plan]);
                        count.Add(plan, result);
                    }

                    Told?.Invoke(own.Length);
                };
            },
            (sum, other) => sum.Merge(other)
        );
        return new MendCount(seasons, tally);
    }

    /// <summary>Lets the players of plans go that are not played again.</summary>
    public void Forget(IEnumerable<SeasonPlan> plans)
    {
        foreach (var plan in plans)
        {
            _players.Remove(plan);
        }
    }

    private MendSeason Read(MeasuredSeason measured, MendMoney money, SeasonPlan plan)
    {
        var season = measured.Season;
        long wanted = 0;
        foreach (var batch in plan.Batches)
        {
            wanted += batch.Order.Plants;
        }

        return new MendSeason(
            options.CountsWeather ? season.FitsWeatherCounted : season.Fits,
            season.FitsWeatherCounted,
            wanted - (options.CountsWeather ? season.PlantsInTimeWeatherCounted : season.PlantsInTime),
            measured.WorkParts,
            money.PartsOf(measured)
        );
    }

    private SeasonPlayer PlayerOf(SeasonPlan plan)
    {
        if (!_players.TryGetValue(plan, out var player))
        {
            _players.Add(plan, player = new SeasonPlayer(plan, options.Seed, _store));
        }

        return player;
    }
}

/// <summary>What came of playing plans.</summary>
/// <param name="Seasons">By plan and season.</param>
/// <param name="Tally">Sums by batch and space.</param>
internal sealed record MendCount(MendSeason[][] Seasons, MendTally Tally);
