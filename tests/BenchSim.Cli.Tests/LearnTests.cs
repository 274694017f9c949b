using System.Text.Json;

namespace BenchSim.Cli.Tests;

/// <summary>"learn" says what a log teaches of the crops, and writes it into crops.csv where that is asked for.</summary>
public sealed class LearnTests
{
    private const string Plan = "id,crop,plants,sow\na,tomato,200,2027-03-01\nb,tomato,100,2027-03-08\n";
    private const string Head = "date,batch,what,trays,space,count,of,minutes,note\n";
    private const string Sown = Head + "2027-03-01,a,sown,5,mats,,,30,\n";
    private const string Picked = "2027-03-08,a,up,,,0,72,,picked\n2027-03-11,a,up,,,40,72,,Picked by lot\n";
    private const string Judged = "2027-03-12,a,moved,5,bench,,,,\n2027-04-12,a,not ready,,,,,,\n2027-04-20,a,ready,,,,,,\n";

    // Sown in 30 minutes for 5 trays, where 4 a tray are assumed. Of the logarithm the precision is 1/0.5^2 before and 1/s^2 for the row,
    // s^2 = ln(1 + 0.5^2) = 0.223144: 4 + 4.481420 = 8.481420. The row lies at ln(6/4) + s^2/2 = 0.517037, so the mean at 0.517037 x
    // 4.481420/8.481420 = 0.273193, with a deviation of 1/sqrt(8.481420) = 0.343373; 4 exp(0.273193) = 5.2566, and 4 exp(0.273193 -+
    // 1.644854 x 0.343373) = 2.9882 and 9.2469.
    [Fact]
    public void Minutes_of_a_row_give_the_closed_normal_form()
    {
        using var farm = Farm(Sown);
        var work = Json(farm).GetProperty("work").EnumerateArray().Single();
        Assert.Equal("sow", work.GetProperty("key").GetString());
        Assert.Equal(5.2566, work.GetProperty("new").GetDouble(), 1e-3);
        Assert.Equal(2.9882, work.GetProperty("interval90").GetProperty("low").GetDouble(), 2e-3);
        Assert.Equal(9.2469, work.GetProperty("interval90").GetProperty("high").GetDouble(), 5e-3);
        Assert.Equal((1, 5), (work.GetProperty("rows").GetInt32(), work.GetProperty("trays").GetInt32()));
    }

    // A day at 25 C gives tomato 17.5 degree-days above 7.5 C: none up at 7 days is more than 103.3, and more than half at 10 days is
    // between 122 and 175.
    [Fact]
    public void Says_first_how_much_is_learned_and_what_moves_a_date()
    {
        using var farm = Farm(Sown + Picked);
        var learn = Call.Run("learn", farm.Path);
        Assert.Equal(("", 0), (learn.Error, learn.Code));
        Assert.Equal(
            """
            Test farm: The log of 2027 teaches 2 values of 1 crop. 1 would move a planned
            date by more than a day: Tomato (heat to come up).
            """.ReplaceLineEndings("\n"),
            string.Join('\n', FirstScreen.Of(learn, farm.Path).Take(2))
        );
        learn.Says("Write the values into crops.csv: benchsim learn", "--write");
        var heat = Value(Json(farm), "emerge_heat");
        Assert.Equal(103.3, heat.GetProperty("old").GetDouble(), 1e-9);
        Assert.InRange(heat.GetProperty("new").GetDouble(), 122, 175);
        Assert.Equal((1, 72), (heat.GetProperty("batches").GetInt32(), heat.GetProperty("counted").GetInt32()));
        var moves = heat.GetProperty("moves").EnumerateArray().ToList();
        Assert.Equal(["a", "b"], moves.Select(move => move.GetProperty("batch").GetString()), StringComparer.Ordinal);
    }

    // 36 of 72 is what "half" stands for in the middle; the word tells of the same heat, and less surely.
    [Fact]
    public void A_word_teaches_less_than_the_number_it_stands_for()
    {
        JsonElement Heat(string count)
        {
            using var farm = Farm(Sown + $"2027-03-08,a,up,,,{count},72,,picked\n");
            return Value(Json(farm), "emerge_heat");
        }

        var (number, word) = (Heat("36"), Heat("half"));
        Assert.True(Width(word) > 1.1 * Width(number));
        Assert.Equal(number.GetProperty("new").GetDouble(), word.GetProperty("new").GetDouble(), 8.0);
        Assert.Equal(72, word.GetProperty("counted").GetInt32());

        static double Width(JsonElement value) =>
            value.GetProperty("interval90").GetProperty("high").GetDouble()
            - value.GetProperty("interval90").GetProperty("low").GetDouble();
    }

    // Plants lost: of 72 cells with a plant few are left by hand or in words.
    [Fact]
    public void Words_of_cells_teach_of_losses()
    {
        using var farm = Farm(Sown + "2027-03-20,a,good,,,few,72,,picked\n");
        var loss = Value(Json(farm), "stand_loss");
        Assert.True(loss.GetProperty("new").GetDouble() > loss.GetProperty("old").GetDouble());
    }

    [Fact]
    public void A_count_of_chosen_trays_says_nothing_of_the_crop()
    {
        using var farm = Farm(Sown + Picked.Replace("picked", "the worst tray", StringComparison.OrdinalIgnoreCase));
        Assert.Empty(Json(farm).GetProperty("values").EnumerateArray());
        Call.Run("learn", farm.Path)
            .Says(
                "Test farm: The log of 2027 teaches no value of a crop.",
                "2 counts are of trays that someone chose, and say nothing of the crop"
            );
    }

    // A packet of its own test says nothing of the germination of the crop; that of the packet is told.
    [Fact]
    public void A_tested_packet_is_told_against_its_test()
    {
        using var farm = Farm(Sown + Picked + "2027-03-22,a,up,,,40,72,,picked\n");
        farm.Write("plan.csv", "id,crop,plants,sow,germination\na,tomato,200,2027-03-01,90 %\n");
        var root = Json(farm);
        Assert.DoesNotContain(root.GetProperty("values").EnumerateArray(), each => Is(each, "germination"));
        var packet = root.GetProperty("packets").EnumerateArray().Single();
        Assert.Equal(0.9, packet.GetProperty("tested").GetDouble(), 1e-9);

        // 40 of 72 are 56 %; the test of 400 seeds holds it back.
        Assert.InRange(packet.GetProperty("counted").GetDouble(), 0.75, 0.89);
    }

    [Fact]
    public void Growth_is_learned_only_where_the_temperatures_of_the_house_were_written_down()
    {
        string[] weekly = ["03-08", "03-15", "03-22", "03-29", "04-05", "04-12", "04-19"];
        string Lows(IEnumerable<string> days, string low) => string.Concat(days.Select(day => $"2027-{day},,low,,main,{low},,,\n"));

        // In the house it is never colder than 60 F.
        using var farm = Farm(Sown + Picked + Judged + Lows(weekly, "60 F"));
        Assert.Contains(Json(farm).GetProperty("values").EnumerateArray(), each => Is(each, "growth_days"));

        farm.Write("log.csv", Sown + Picked + Judged + Lows(weekly.Where(day => day is not "03-29"), "60 F"));
        NotLearned("no house temperatures written down in 1 of its 6 weeks in main");
        farm.Write("log.csv", Sown + Picked + Judged);
        NotLearned("no house temperatures written down in 6 of its 6 weeks in main");
        farm.Write("log.csv", Sown + Picked + Judged + Lows(weekly, "55 F"));
        NotLearned(
            "the nights written down in main were 2.8 C colder than by its set-point and the weather: mend its night in site.toml first"
        );

        void NotLearned(string why)
        {
            var root = Json(farm);
            Assert.DoesNotContain(root.GetProperty("values").EnumerateArray(), each => Is(each, "growth_days"));
            Assert.Equal(why, root.GetProperty("not_learned").EnumerateArray().Single().GetProperty("why").GetString());
        }
    }

    [Fact]
    public void Writes_a_crops_file_that_reads_as_what_was_said_and_stays_the_same()
    {
        using var farm = Farm(Sown + Picked);
        var said = Value(Json(farm), "emerge_heat").GetProperty("new").GetDouble();
        Assert.False(File.Exists(farm.In("crops.csv")));
        Call.Run("learn", farm.Path, "--write").Says("now holds the values of 1 crop, with their source.");
        var first = File.ReadAllText(farm.In("crops.csv"));
        Assert.StartsWith("id,emerge_heat,germination,days_to_ready,source\ntomato,", first, StringComparison.Ordinal);
        Assert.Contains(
            "\"own log, 2027, 1 batch; before: emerge_heat 103.3 (worked out from the source), germination 90 % (assumption), ",
            first,
            StringComparison.Ordinal
        );
        Assert.Equal(Math.Round(said), double.Parse(first.Split('\n')[1].Split(',')[1], null), 0.0);

        Call.Run("learn", farm.Path, "--write").Says("holds these values already, and is as it was.");
        Assert.Equal(first, File.ReadAllText(farm.In("crops.csv")));
        Assert.Equal(said, Value(Json(farm), "emerge_heat").GetProperty("new").GetDouble(), 1e-9);
        Call.Run("check", farm.Path, "--sources").Says("emerge_heat 144 degree-days C yours own log, 2027, 1 batch; before:");
    }

    // Mixed quoting, semicolons, line ends of Windows, a row and a column that are nobody's business, a crop called by its name.
    [Fact]
    public void Keeps_what_stands_in_the_file()
    {
        using var farm = Farm(Sown + Picked);
        farm.Write("crops.csv", "id;\"keep_per_cell\";stand_loss;source\r\nonion;\"4\";;seed merchant\r\nTomato;;\"5 %\";my notebook\r\n");
        Assert.Equal(0, Call.Run("learn", farm.Path, "--write").Code);
        var lines = File.ReadAllText(farm.In("crops.csv")).Split("\r\n");
        Assert.Equal("id;\"keep_per_cell\";stand_loss;source;emerge_heat;germination;days_to_ready", lines[0]);
        Assert.Equal("onion;\"4\";;seed merchant", lines[1]);
        Assert.Matches("^Tomato;;\"5 %\";\"own log, 2027, 1 batch; before: .*; others: my notebook\";144;[0-9.]+ %;[0-9.]+$", lines[2]);
        Assert.Equal(["", "4"], [lines[3], $"{lines.Length}"], StringComparer.Ordinal);

        var written = File.ReadAllText(farm.In("crops.csv"));
        Assert.Equal(0, Call.Run("learn", farm.Path, "--write").Code);
        Assert.Equal(written, File.ReadAllText(farm.In("crops.csv")));
        Call.Run("check", farm.Path, "--sources").Says("stand_loss 5 % yours my notebook");
    }

    // 3 flats of 120 seeds at 90 % bring about 324 seedlings, less 4 %. 4 trays of 50 cells were filled where 9 were planned: between 151
    // and 249, so at least a fifth was lost; from 4 % (an assumption) the value goes a good part of that way.
    [Fact]
    public void Few_trays_from_many_seedlings_are_losses_at_potting_up()
    {
        using var farm = Farm(
            "date,batch,what,trays,flats,from,space\n2027-03-01,b,sown,,3,,mats\n2027-03-15,b,moved,,3,,bench\n"
                + "2027-03-24,b,potted up,4,3,,bench\n"
        );
        farm.Write(
            "plan.csv",
            "id,crop,plants,trays,sow,method,flat,flats,seeds_per_flat\nb,tomato,400,9,2027-03-01,pot up,open-flat,3,120\n"
        );
        var loss = Value(Json(farm), "pot_up_loss");
        Assert.Equal(0.04, loss.GetProperty("old").GetDouble(), 1e-9);
        Assert.InRange(loss.GetProperty("new").GetDouble(), 0.1, 0.3);
        Assert.Equal((1, 360), (loss.GetProperty("batches").GetInt32(), loss.GetProperty("counted").GetInt32()));
    }

    // Another season is learned from what the first has taught, and says so; both together begin from what stood there before either.
    [Fact]
    public void Seasons_add_up()
    {
        using var first = Farm(Sown + Picked);
        using var second = Farm((Sown + Picked).Replace("2027", "2028", StringComparison.Ordinal));
        second.Write("site.toml", FarmFolder.GoodSite.Replace("2027", "2028", StringComparison.Ordinal));
        second.Write("plan.csv", Plan.Replace("2027", "2028", StringComparison.Ordinal));
        var one = Value(Json(first), "emerge_heat");
        var both = Value(Json(first, second), "emerge_heat");
        Assert.Equal(2, both.GetProperty("batches").GetInt32());
        Assert.True(both.GetProperty("new").GetDouble() > one.GetProperty("new").GetDouble());
        Assert.True(Width(both) < Width(one));

        Assert.Equal(0, Call.Run("learn", first.Path, second.Path, "--write").Code);
        Assert.Contains("own log, 2027 and 2028, 2 batches", File.ReadAllText(second.In("crops.csv")), StringComparison.Ordinal);
        Assert.Equal(103.3, Value(Json(first, second), "emerge_heat").GetProperty("old").GetDouble(), 1e-9);

        static double Width(JsonElement value) =>
            value.GetProperty("interval90").GetProperty("high").GetDouble()
            - value.GetProperty("interval90").GetProperty("low").GetDouble();
    }

    private static FarmFolder Farm(string log)
    {
        var farm = new FarmFolder(plan: Plan);
        farm.Write("log.csv", log);
        return farm;
    }

    private static JsonElement Json(params FarmFolder[] farms)
    {
        var learn = Call.Run(["learn", .. farms.Select(farm => farm.Path), "--json"]);
        Assert.Equal(("", 0), (learn.Error, learn.Code));
        using var document = JsonDocument.Parse(learn.Output);
        return document.RootElement.Clone();
    }

    private static JsonElement Value(JsonElement root, string value) =>
        root.GetProperty("values").EnumerateArray().Single(each => Is(each, value));

    private static bool Is(JsonElement each, string value) =>
        string.Equals(each.GetProperty("value").GetString(), value, StringComparison.Ordinal);
}
