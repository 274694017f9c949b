using System.Text;
using System.Text.Json;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Invest;
using BenchSim.Answers.Opening;
using BenchSim.Report.Words;
using BenchSim.Report.Writing;
using BenchSim.Study.Money;

namespace BenchSim.Cli.Tests;

/// <summary>"invest" says whether a variant pays, with every figure's spread, and what one must believe.</summary>
public sealed class InvestTests
{
    // On the farm of scenarios/by-hand batch B is 3 days late for lack of room. Here 2 days count as in time, so its 100 plants do not;
    // with room they do.
    private const string Room = """
        [[space]]
        id = "mats"
        places = 8

        [[space]]
        id = "bench"
        places = 12

        [[space]]
        id = "table"
        places = 12

        [work_minutes]
        sow = 64

        [invest]
        capital = 500
        life_years = 4
        discount_rate = "5 %"
        plant_on_time = 5
        upkeep = 20
        basis = "made up"
        """;

    [Fact]
    public void A_season_on_paper_pays_what_the_pencil_says()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Room);
        var invest = Call.Run("invest", farm, "--with", "room", "--seasons", "3", "--json");
        Assert.Equal(0, invest.Code);
        using var json = JsonDocument.Parse(invest.Output);
        var root = json.RootElement;

        // 100 plants in time more at 5; 4 + 2 trays and a flat sown, an hour more each, at 30 an hour; 20 of upkeep.
        const double year = (100 * 5) - (7 * 30) - 20;
        Assert.Equal(year, root.GetProperty("yearly_net_benefit").GetProperty("mean").GetDouble(), 1e-6);
        var net = -500 + (year / 1.05) + (year / Math.Pow(1.05, 2)) + (year / Math.Pow(1.05, 3)) + (year / Math.Pow(1.05, 4));
        Assert.Equal(net, root.GetProperty("net_present_value").GetProperty("mean").GetDouble(), 1e-6);
        Assert.Equal(net, root.GetProperty("net_present_value").GetProperty("p90").GetDouble(), 1e-6);
        var rate = root.GetProperty("internal_rate").GetProperty("of_average_year").GetDouble();

        // The rate is written to six decimals, and a year's money more or less by half of the last changes the value by less than a
        // thousandth.
        Assert.Equal(0, PresentValue.Net(rate, [-500, year, year, year, year]), 1e-3);
        Assert.Equal(500 / year, root.GetProperty("simple_payback").GetProperty("of_average_year").GetDouble(), 1e-6);
        Assert.Equal(1, root.GetProperty("pays").GetProperty("share").GetDouble());

        // 1 - 1.05^-4 over 0.05 years of (100 v - 230) must bring 500.
        var least = ((500 / ((1 - Math.Pow(1.05, -4)) / 0.05)) + 230) / 100;
        var plant = root.GetProperty("break_even")
            .EnumerateArray()
            .Single(each => each.GetProperty("input").GetString() == "value of a plant on time");
        Assert.Equal(least, plant.GetProperty("at").GetDouble(), 1e-6);
        Assert.Equal("at least", plant.GetProperty("must_be").GetString());
        Assert.True(root.GetProperty("tornado").EnumerateArray().First().GetProperty("decides").GetBoolean());
    }

    [Fact]
    public void Says_it_in_sentences_with_cautions()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Room);
        var before = folder.Everything();
        var invest = Call.Run("invest", farm, "--with", "room", "--seasons", "3", "--all");
        Assert.Equal(0, invest.Code);
        Assert.Empty(invest.Error);
        var result = new InvestQuestion
        {
            Scenario = ScenarioSource.Folder(farm),
            Variant = "room",
            Play = new PlayWish(Seasons: 3),
        }
            .Ask(Asked.Unwatched)
            .Result;
        Assert.Equal("made up", result.Terms.Basis);
        invest.Says(InvestSentences.Headline(result), InvestSentences.Chance(result), InvestSentences.Deciding(result));
        invest.Says(result.BreakEvens.Select(each => InvestSentences.Belief(each, result.Currency)));
        invest.Says("in the words of the variant: " + result.Terms.Basis);
        invest.Says(
            "This is a calculation for planning, not financial advice.",
            "Show it to your lender and your accountant before you spend.",
            "Whether a structure stands up to snow and wind is for a licensed engineer and the local codes; "
                + "gas and electrical work is for licensed people.",
            "Left out: a plant that goes out in time but stood past its best counts as whole; taxes, grants, loans"
        );
        Assert.Equal(before, folder.Everything());
    }

    [Fact]
    public void The_threads_do_not_matter()
    {
        using var folder = new TemporaryFolder();
        var spring = folder.Starter();
        Directory.CreateDirectory(Path.Combine(spring, "variants"));
        File.WriteAllText(
            Path.Combine(spring, "variants", "room.toml"),
            "[rules]\nforecast_nights = 0\n\n[invest]\ncapital = 50\nlife_years = 3\ndiscount_rate = 0.1\nplant_on_time = 1\n"
        );
        string[] Args(string threads) => ["invest", spring, "--with", "room", "--seasons", "20", "--json", "--threads", threads];
        var one = Call.Run(Args("1"));
        Assert.Equal(0, one.Code);
        Assert.Equal(one.Output, Call.Run(Args("3")).Output);
    }

    [Fact]
    public void Writes_a_chart_and_tables_whole_and_the_same_bytes_again()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Room);
        string[] args = ["invest", farm, "--with", "room", "--seasons", "3", "--out", folder.In("case")];
        Assert.Equal(0, Call.Run(args).Code);
        string[] files =
        [
            "charts/tornado.png",
            "tables/invest-break-even.csv",
            "tables/invest-figures.csv",
            "tables/invest-parts.csv",
            "tables/invest-tornado.csv",
        ];
        byte[][] first = [.. files.Select(file => File.ReadAllBytes(folder.In("case/" + file)))];

        // The signature of the format: Portable Network Graphics Specification, third edition, section 5.2.
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], first[0][..8]);
        Assert.Contains(
            "yearly_net_benefit,money,270,270,270,270,270,270,seasons,3\r\n",
            Encoding.UTF8.GetString(first[2]),
            StringComparison.Ordinal
        );
        Assert.Equal(0, Call.Run(args).Code);
        for (var at = 0; at < files.Length; at++)
        {
            Assert.Equal(first[at], File.ReadAllBytes(folder.In("case/" + files[at])));
        }
    }

    [Fact]
    public void Takes_no_ones_place()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.In("mine"));
        File.WriteAllText(folder.In("mine/note.txt"), "mine");
        var invest = Call.Run("invest", Farm(folder, Room), "--with", "room", "--out", folder.In("mine"));
        Assert.Equal(2, invest.Code);
        Assert.Empty(invest.Output);
        Assert.Equal(FolderRefusals.NotOurs(folder.In("mine")) + "\n", invest.Error);
    }

    [Fact]
    public void Stopped_it_writes_nothing()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Room);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var invest = Call.Run(stop.Token, "invest", farm, "--with", "room", "--out", folder.In("case"));
        Assert.Equal(130, invest.Code);
        Assert.False(Directory.Exists(folder.In("case")));
    }

    [Fact]
    public void A_variant_without_terms_is_a_fault_with_its_place()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, "[rules]\nforecast_nights = 4\n");
        var invest = Call.Run("invest", farm, "--with", "room");
        Assert.Equal(2, invest.Code);
        Assert.Empty(invest.Output);
        Assert.StartsWith(
            "variants/room.toml:0:0: there is no table [invest], so nothing says what the variant costs; "
                + "add [invest] with capital, life_years and discount_rate\n",
            invest.Error,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Words_from_the_files_cannot_move_the_cursor()
    {
        using var folder = new TemporaryFolder();
        var farm = Farm(folder, Room.Replace("made up", "red \\u001b[31m text", StringComparison.Ordinal));
        var invest = Call.Run("invest", farm, "--with", "room", "--seasons", "2");
        Assert.Equal(0, invest.Code);
        Assert.DoesNotContain('\u001b', invest.Output);
    }

    private static string Farm(TemporaryFolder folder, string variant)
    {
        var farm = PaperFarm.In(folder, sections: "[prices]\nlabour_hour = 30\n");
        var site = Path.Combine(farm, "site.toml");
        File.WriteAllText(site, File.ReadAllText(site).Replace("[rules]\n", "[rules]\nlate_days = 2\n", StringComparison.Ordinal));
        Directory.CreateDirectory(Path.Combine(farm, "variants"));
        File.WriteAllText(Path.Combine(farm, "variants", "room.toml"), variant);
        return farm;
    }
}
