using System.Text;
using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"dense" says what dense sowing frees on the mats, what it takes on benches and in work, and from which density on.</summary>
public sealed class DenseTests
{
    // On the farm of scenarios/by-hand, with room for all: 200 plants sown on Monday 1 March in 50s are 4 trays, in flats of 100 seeds 2
    // flats and 4 trays.
    private const string OneBatch =
        "id,crop,grower,plants,sow,method,tray,flat,seeds_per_flat,germination\nA,paper,Ada,200,2027-03-01,direct,50-cell,,,100 %\n";

    // The same, planned to be potted up.
    private const string Potted =
        "id,crop,grower,plants,sow,method,tray,flat,seeds_per_flat,germination\n"
        + "A,paper,Ada,200,2027-03-01,pot up,50-cell,open-flat,100,100 %\n";

    [Theory]
    [InlineData(OneBatch, "direct", 600)]
    [InlineData(Potted, "pot-up", 0)]
    public void A_season_on_paper_trades_what_the_pencil_says(string plan, string planned, double lateMore)
    {
        using var folder = new TemporaryFolder();
        var dense = Call.Run("dense", Farm(folder, plan), "--seeds-per-flat", "100", "--seasons", "2", "--json");
        Assert.Equal(0, dense.Code);
        using var json = JsonDocument.Parse(dense.Output);
        var crop = Assert.Single(json.RootElement.GetProperty("crops").EnumerateArray());
        Assert.Equal(planned, crop.GetProperty("planned").GetString());

        // Mats: 4 trays against 2 flats, 3 days each, 1 to 3 March.
        Check("mat_tray_days", 4 * 3, 2 * 3);
        Check("mat_peak", 4, 2);

        // Benches: 4 trays from the 4th to the table on the 18th, 14 days; 2 flats from the 4th to potting up on the 11th, 7 days, then 4
        // trays to the table on
        // Monday 22, 11 days: grown 16 days after the 4th, on Saturday 20.
        Check("bench_tray_days", 4 * 14, (2 * 7) + (4 * 11));
        Check("flats", 0, 2);
        Check("trays", 4, 4);

        // Minutes: sowing 4, potting up 12, a move or loading 0.5 each. Directly two moves a tray; dense one a flat and one a tray.
        Check("labour_hours", ((4 * 4) + (8 * 0.5) + (4 * 0.5)) / 60, ((2 * 4) + (4 * 12) + (6 * 0.5) + (4 * 0.5)) / 60);

        // A tray of 50 takes 5.55 litres of mix, an open flat 7.5; loose they are 1 / 0.85 of that, rounded to a thousandth.
        Check("mix_litres", Math.Round(4 * 5.55 / 0.85, 3), Math.Round(((4 * 5.55) + (2 * 7.5)) / 0.85, 3));
        Check("seeds", 200, 200);

        // Planned directly, it is wanted on Monday 22 and goes out dense on Thursday 25, in time by late_days = 3. Planned dense it is
        // wanted on the 25th, and sown directly it waits for that day.
        Check("plants_late", 0, 0);
        var late = Of("late_plant_days");
        Assert.Equal(lateMore, late.GetProperty("difference").GetDouble(), 1e-9);

        void Check(string measure, double direct, double dense)
        {
            Assert.Equal(
                direct,
                Of(measure).GetProperty("base").GetDouble() - (planned == "pot-up" && measure == "bench_tray_days" ? Waited : 0),
                1e-6
            );
            Assert.Equal(dense, Of(measure).GetProperty("variant").GetDouble(), 1e-6);
        }

        JsonElement Of(string measure) =>
            crop.GetProperty("measures").EnumerateArray().Single(each => each.GetProperty("measure").GetString() == measure);
    }

    // Wanted on the 25th, the table is not entered before 25 - 3 nights - 3 days of lead: Friday 19, one day on the bench more for 4 trays.
    private const double Waited = 4;

    [Fact]
    public void The_break_even_density_is_the_closed_form()
    {
        using var folder = new TemporaryFolder();
        using var ofQuick = new TemporaryFolder();
        using var ofSeeds = new TemporaryFolder();
        using var ofLossy = new TemporaryFolder();

        // 200 plants / s flats x 3 days = 4 trays x 3 days at s = 50, the cells of the tray; in whole flats 3 are fewer than 4 from 67
        // seeds on.
        var even = BreakEven(Farm(folder, OneBatch), "dense");
        Assert.Equal(50, even.GetProperty("mat_seeds_per_flat").GetDouble(), 1e-9);
        Assert.Equal(67, even.GetProperty("mat_seeds_per_flat_whole_flats").GetInt32());

        // Potting up, moving and loading 4 trays takes 4 x 13 = 52 minutes, all of direct sowing 4 x 5.5 = 22: no density will do.
        Assert.Equal((22.0, 52.0), (even.GetProperty("direct_minutes").GetDouble(), even.GetProperty("potted_minutes").GetDouble()));
        Assert.Equal(JsonValueKind.Null, even.GetProperty("labour_seeds_per_flat").ValueKind);

        // With 2 minutes a tray potted up 12 of the 22 are gone, and 10 are left for 200 / s flats of 4.5 minutes: s = 90; 2 whole flats,
        // from 100 seeds on.
        var quick = BreakEven(Farm(ofQuick, OneBatch, "[work_minutes]\npot_up = 2\n"), "quick");
        Assert.Equal(90, quick.GetProperty("labour_seeds_per_flat").GetDouble(), 1e-9);
        Assert.Equal(100, quick.GetProperty("labour_seeds_per_flat_whole_flats").GetInt32());
        Assert.Equal(67, quick.GetProperty("mat_seeds_per_flat_whole_flats").GetInt32());

        // Seeds at 3 s: 4 trays of 50 take 10 minutes more directly, and 200 seeds 10 minutes in flats. Half a minute a tray to pot up
        // plants at 0.6 s: 14 of 32 minutes are gone, 10 go to seeds, and 8 are left: s = 200 x 4.5 / 8 = 112.5. Whole flats: 18 minutes
        // for flats of 4.5 minutes and s seeds of 0.05 minutes; two of 113 seeds take 20.3, one of 200 takes 14.5.
        var seeds = BreakEven(
            Farm(ofSeeds, OneBatch, "[work_minutes]\npot_up = 2\n[work_seconds]\nsow_seed = 3\npot_up_plant = 0.6\n"),
            "seeds"
        );
        Assert.Equal((32.0, 54.0 - 40), (seeds.GetProperty("direct_minutes").GetDouble(), seeds.GetProperty("potted_minutes").GetDouble()));
        Assert.Equal(112.5, seeds.GetProperty("labour_seeds_per_flat").GetDouble(), 1e-9);
        Assert.Equal(200, seeds.GetProperty("labour_seeds_per_flat_whole_flats").GetInt32());

        // One seedling in five lost in potting up takes a quarter more of them: 50 / (1 - 0.2).
        var lossy = Farm(ofLossy, OneBatch);
        var crops = Path.Combine(lossy, "crops.csv");
        File.WriteAllText(crops, File.ReadAllText(crops).Replace(",7,2,0 %,", ",7,2,20 %,", StringComparison.Ordinal));
        Assert.Equal(62.5, BreakEven(lossy, "lossy").GetProperty("mat_seeds_per_flat").GetDouble(), 1e-9);

        static JsonElement BreakEven(string farm, string name)
        {
            var call = Call.Run("dense", farm, "--seeds-per-flat", "100", "--seasons", "1", "--json");
            Assert.True(call.Code == 0, name);
            return JsonDocument.Parse(call.Output).RootElement.GetProperty("crops")[0].GetProperty("break_even");
        }
    }

    [Fact]
    public void Says_it_in_sentences()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, OneBatch);
        var before = folder.Everything();
        var dense = Call.Run("dense", farm, "--crop", "paper", "--seeds-per-flat", "100", "--seasons", "3", "--all");
        Assert.Equal(0, dense.Code);
        Assert.Empty(dense.Error);
        dense.Says(
            "Paper plant sown dense, 100 seeds a flat, instead of directly: it frees 6 tray-days on the heat mats, "
                + "adds 2 tray-days on the benches and takes 0.65 hours more work.",
            "The same plants are out in time in every season",
            "Dense sowing frees mats above 50 seeds a flat; in whole flats, with the assurance of the plan, from 67 on.",
            "No density takes as little work: potting up takes 0.9 hours with the moves after it, all the work of direct sowing 0.4."
        );
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void The_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        string[] Args(string threads) => ["dense", spring, "--seasons", "12", "--seeds-per-flat", "150", "--json", "--threads", threads];
        var one = Call.Run(Args("1"));
        Assert.Equal(0, one.Code);
        Assert.Equal(one.Output, Call.Run(Args("3")).Output);
    }

    [Fact]
    public void Writes_a_chart_and_tables_whole_and_the_same_bytes_again()
    {
        using var folder = new TemporaryFolder();
        string[] args = ["dense", Farm(folder, OneBatch), "--seeds-per-flat", "100", "--seasons", "2", "--out", folder.In("trade")];
        Assert.Equal(0, Call.Run(args).Code);
        string[] files =
        [
            "charts/dense.png",
            "charts/density.png",
            "tables/dense-break-even.csv",
            "tables/dense-changes.csv",
            "tables/dense-curve.csv",
        ];
        byte[][] first = [.. files.Select(file => File.ReadAllBytes(folder.In("trade/" + file)))];
        Assert.Contains(
            "paper,100,100,mat_tray_days,tray-days,12,6,-6,-6,-6,yes,2\r\n",
            Encoding.UTF8.GetString(first[3]),
            StringComparison.Ordinal
        );

        // 200 seeds a flat: one flat, 3 days on the mat, 4.5 minutes and the 52 of the trays.
        Assert.Contains("paper,200,1,200,3,12,56.5,22\r\n", Encoding.UTF8.GetString(first[4]), StringComparison.Ordinal);
        Assert.Equal(0, Call.Run(args).Code);
        for (var at = 0; at < files.Length; at++)
        {
            Assert.Equal(first[at], File.ReadAllBytes(folder.In("trade/" + files[at])));
        }
    }

    [Theory]
    [InlineData("papr", "The plan has no crop \"papr\". Did you mean \"paper\"?")]
    [InlineData("zzz", "The plan has no crop \"zzz\". The crops on its heat mats are \"paper\".")]
    public void A_crop_that_is_not_there_is_named(string crop, string words)
    {
        using var folder = new TemporaryFolder();
        var dense = Call.Run("dense", Farm(folder, OneBatch), "--crop", crop);
        Assert.Equal(2, dense.Code);
        Assert.Empty(dense.Output);
        Assert.Contains(words, dense.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flat_that_is_not_there_is_named()
    {
        using var folder = new TemporaryFolder();
        var dense = Call.Run("dense", Farm(folder, OneBatch), "--flat", "50-cell");
        Assert.Equal(2, dense.Code);
        Assert.Contains("There is no open flat \"50-cell\". The open flats are \"open-flat\".", dense.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flat_that_fills_more_trays_than_there_is_room_for_is_left_out_with_the_reason()
    {
        using var folder = new TemporaryFolder();
        var dense = Call.Run("dense", Farm(folder, OneBatch), "--seeds-per-flat", "2000", "--seasons", "1", "--all");
        Assert.Equal(0, dense.Code);
        Assert.Contains(
            "Left out: \"paper\" cannot be sown dense: one flat of 2000 seeds may fill 40 trays, and the benches hold 12.",
            dense.Sentences,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Stopped_it_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(130, Call.Run(stop.Token, "dense", Farm(folder, OneBatch), "--out", folder.In("trade")).Code);
        Assert.False(Directory.Exists(folder.In("trade")));
    }

    private static string Farm(TemporaryFolder folder, string plan, string sections = "")
    {
        var farm = PaperFarm.In(folder, sections: sections);
        File.WriteAllText(Path.Combine(farm, "plan.csv"), plan);
        var site = Path.Combine(farm, "site.toml");
        File.WriteAllText(
            site,
            File.ReadAllText(site)
                .Replace("places = 5", "places = 12", StringComparison.Ordinal)
                .Replace("\nplaces = 4", "\nplaces = 8", StringComparison.Ordinal)
        );
        return farm;
    }
}
