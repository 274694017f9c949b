using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;
using BenchSim.Season.Play;
using BenchSim.Season.Weather;
using static Support.SmallSite;

namespace BenchSim.Season.Tests.Climate;

/// <summary>What a store of climates keeps, what it tells apart, and that it stays within its bound. Results never depend on it.</summary>
public class ClimateStoreTests
{
    private const int Days = 60;

    // A day takes three numbers of eight bytes; 30 days lead in, and four follow for the forecast of three nights.
    private const int BytesASeason = (30 + Days + 4) * 3 * 8;

    private static readonly Scenario s_site = Scenario(
        [Mat(4), Bench(9), Table(9)],
        [Batch("a", 20, Monday)],
        weather: new GeneratedWeather(Model(0), null)
    ) with
    {
        Houses =
        [
            new House
            {
                Id = "main",
                Name = "Main",
                NightC = 11,
                DayC = 13,
                VentC = 25,
                DayLiftK = 6,
            },
        ],
    };

    [Fact]
    public void A_change_of_places_alone_finds_the_weather_and_the_room()
    {
        var store = new ClimateStore();
        var first = Played(store, s_site);
        var bytes = store.Bytes;
        var roomier = s_site with
        {
            Spaces = [.. s_site.Spaces.Select(space => space with { Places = space.Places + 5 }), Bench(7, "more")],
        };
        var second = Played(store, roomier);
        Assert.Same(first.Weather, second.Weather);
        Assert.Same(first.Heat, second.Heat);
        Assert.Equal(bytes, store.Bytes);
    }

    [Fact]
    public void Set_points_mats_and_laws_share_the_weather_and_have_heats_of_their_own()
    {
        var store = new ClimateStore();
        var first = Played(store, s_site);
        Scenario[] others =
        [
            s_site with
            {
                Houses = [s_site.Houses[0] with { NightC = 3 }, .. s_site.Houses[1..]],
            },
            s_site with
            {
                Houses = [s_site.Houses[0] with { DayLiftK = 1 }, .. s_site.Houses[1..]],
            },
            s_site with
            {
                Spaces = [s_site.Spaces[0] with { MatC = 29 }, .. s_site.Spaces[1..]],
            },
            s_site with
            {
                Crops = [s_site.Crops[0] with { EmergeBaseC = 3 }],
            },
            s_site with
            {
                Crops = [s_site.Crops[0] with { GrowthCapC = 15 }],
            },
        ];
        foreach (var other in others)
        {
            var climate = Played(store, other);
            Assert.Same(first.Weather, climate.Weather);
            Assert.Equal(Sums(new PlanClimates(other, Days, 1).Borrow(5).Climate), Sums(climate));
        }

        Assert.Equal(
            others.Length + 1,
            others.Append(s_site).Select(site => string.Join(" ", Sums(Played(store, site)))).Distinct(StringComparer.Ordinal).Count()
        );
    }

    [Fact]
    public void Whatever_the_weather_or_its_heat_depends_on_is_told_apart()
    {
        var store = new ClimateStore();
        var weather = Played(store, s_site).Weather;
        Assert.NotSame(weather, Played(store, s_site with { Weather = new GeneratedWeather(Model(1), null) }).Weather);
        Assert.NotSame(
            weather,
            Played(store, s_site with { Window = s_site.Window with { Opens = s_site.Window.Opens.AddDays(1) } }).Weather
        );
        Assert.NotSame(weather, Played(store, s_site with { Rules = s_site.Rules with { ForecastNights = 4 } }).Weather);
        Assert.NotSame(weather, Played(store, s_site with { Rules = s_site.Rules with { MediumOffsetK = -3 } }).Weather);
        Assert.NotSame(
            weather,
            Played(store, s_site with { Rules = s_site.Rules with { Light = s_site.Rules.Light.SetItem(3, 0.5) } }).Weather
        );
        Assert.NotSame(weather, Played(store, s_site, seed: 2).Weather);
        Assert.NotSame(weather, Played(store, s_site, days: Days + 1).Weather);

        // Equal by content, read or made anew, is the same.
        Assert.Same(
            weather,
            Played(store, s_site with { Weather = new GeneratedWeather(Model(0) with { Source = "read again" }, null) }).Weather
        );
        Assert.Same(Played(store, s_site with { Weather = Record(4) }).Weather, Played(store, s_site with { Weather = Record(4) }).Weather);
        Assert.NotSame(
            Played(store, s_site with { Weather = Record(4) }).Weather,
            Played(store, s_site with { Weather = Record(5) }).Weather
        );
    }

    [Fact]
    public void It_keeps_no_more_than_its_bound_and_drops_what_is_oldest_whole()
    {
        // Room for the heat of a season and the weather of ten.
        var room = RoomBytes();
        var store = new ClimateStore(room + (10 * BytesASeason));
        Play(store, s_site, 1, 0..30);
        Assert.Equal(store.MostBytes, store.Bytes);
        Assert.Equal(10, KeptOf(store, s_site, 1, 0..30));

        // Another seed has other weather: the one before goes altogether.
        Play(store, s_site, 2, 0..4);
        Assert.Equal(room + (4 * BytesASeason), store.Bytes);
        Assert.Equal(4, KeptOf(store, s_site, 2, 0..4));

        // What is being played is not dropped: the other is not kept.
        var climates = new PlanClimates(s_site, Days, 2, store);
        using (var lent = climates.Borrow(0))
        {
            Play(store, s_site, 3, 0..30);
            Assert.True(lent.Climate.Weather.IsKept);
        }

        Assert.Equal(4, KeptOf(store, s_site, 2, 0..4));
        Assert.InRange(store.Bytes, 1, store.MostBytes);
    }

    [Fact]
    public void A_store_without_room_keeps_nothing_and_all_goes_on()
    {
        var store = new ClimateStore(0);
        Assert.Equal(Sums(new PlanClimates(s_site, Days, 1).Borrow(5).Climate), Sums(Played(store, s_site)));
        Assert.Equal(0, store.Bytes);
        Assert.Throws<ArgumentOutOfRangeException>(() => new ClimateStore(-1));
    }

    // Four threads play two plans in a store that holds but few of their seasons; every season comes out as it does alone.
    [Fact]
    public void Threads_that_share_a_store_play_what_each_would_alone()
    {
        SeasonPlan[] plans = [Plan(s_site), Plan(s_site with { Crops = [s_site.Crops[0] with { GrowthBaseC = 2 }] })];
        var store = new ClimateStore((3 * RoomBytes()) + (20 * BytesASeason));
        var alone = plans.Select(plan => Outs(new SeasonPlayer(plan, 1))).ToArray();
        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 4 }, number =>
            Assert.Equal(alone[number % 2], Outs(new SeasonPlayer(plans[number % 2], 1, store)))
        );
        Assert.InRange(store.Bytes, 0, store.MostBytes);

        static int[] Outs(SeasonPlayer player)
        {
            var result = new SeasonResult();
            return
            [
                .. Enumerable
                    .Range(0, 40)
                    .Select(season =>
                    {
                        player.Play(season, PlaceLimits.AsGiven, result);
                        return result.Batches[0].OutLast;
                    }),
            ];
        }
    }

    private static long RoomBytes()
    {
        var store = new ClimateStore();
        Played(store, s_site);
        return store.Bytes - BytesASeason;
    }

    private static int KeptOf(ClimateStore store, Scenario site, ulong seed, Range seasons)
    {
        var climates = new PlanClimates(site, Days, seed, store);
        var kept = 0;
        for (var season = seasons.Start.Value; season < seasons.End.Value; season++)
        {
            using var borrowed = climates.Borrow(season);
            kept += borrowed.Climate.Weather.IsKept ? 1 : 0;
        }

        return kept;
    }

    private static void Play(ClimateStore store, Scenario site, ulong seed, Range seasons)
    {
        var climates = new PlanClimates(site, Days, seed, store);
        for (var season = seasons.Start.Value; season < seasons.End.Value; season++)
        {
            using var borrowed = climates.Borrow(season);
            _ = Sums(borrowed.Climate);
        }
    }

    private static SeasonClimate Played(ClimateStore store, Scenario site, ulong seed = 1, int days = Days)
    {
        var climates = new PlanClimates(site, days, seed, store);
        using var borrowed = climates.Borrow(5);
        _ = Sums(borrowed.Climate);
        return borrowed.Climate;
    }

    // Heat of the last day of each sum of the plan: of its medium, emergence on the mat and on the bench, growth in the house.
    private static long[] Sums(SeasonClimate climate)
    {
        const int At = 24 * 50;
        var layout = climate.Layout;
        var (mat, bench) = (layout.MediumOf(0), layout.MediumOf(1));
        return
        [
            climate.TemperatureSum(bench).At(At),
            climate.EmergenceSum(0, mat).At(At),
            climate.EmergenceSum(0, bench).At(At),
            climate.GrowthSum(0, layout.AirOf(1)).At(At),
        ];
    }

    private static WeatherModel Model(double warmer) =>
        new WeatherNormals
        {
            Source = "invented",
            Months = [.. Enumerable.Range(1, 12).Select(month => new MonthNormals(month + warmer, month + 10, 10, 60))],
        }.ToModel();

    private static RecordedWeather Record(double tmin) =>
        new(
            [.. Enumerable.Range(0, 365).Select(day => new DailyWeather(new DateOnly(2023, 1, 1).AddDays(day), tmin, 15, 0))],
            null,
            "r.csv"
        );
}
