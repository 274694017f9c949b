namespace BenchSim.Folder.Tests.Logbook;

/// <summary>What may be wrong with a log, each with its exact message. Lines and columns were counted by hand.</summary>
public class LogFaultTests
{
    // One row, on line 2.
    [Theory]
    [InlineData(
        "2027-03-01,tomato,sown,4,,,mats,,,,,,",
        "12: batch is \"tomato\", and the plan has no such batch; name a batch of plan.csv; add a sowing that was not planned to plan.csv "
            + "first"
    )]
    [InlineData(
        "2027-03-01,x-4,sown,4,,,mats,,,,,,",
        "12: batch is \"x-4\", and the plan has no such batch; name a batch of plan.csv; add a sowing that was not planned to plan.csv "
            + "first"
    )]
    [InlineData("2027-03-01,x,sown,4,,,mats,,,,,,", "12: batch is \"x\", which is sown 3 times; write which sowing it is: x-1 to x-3")]
    [InlineData("2027-03-01,,sown,4,,,mats,,,,,,", "12: batch is empty, and a row \"sown\" needs it; name the batch")]
    [InlineData("2027-03-01,a,soan,4,,,mats,,,,,,", "14: what is \"soan\"; did you mean \"sown\"")]
    [InlineData(
        "2027-03-01,a,dunno,4,,,mats,,,,,,",
        "14: what is \"dunno\"; write \"sown\", \"up\", \"potted up\", \"moved\", \"ready\", \"not ready\", \"good\", \"set out\", "
            + "\"thrown out\", \"counted\", \"walked\", \"handed over\", \"covered\", \"carried in\", \"low\", \"mishap\" or \"fuel\""
    )]
    [InlineData("2027-03-01,a,,4,,,mats,,,,,,", "14: what is empty; write what was done or seen, such as sown, moved or counted")]
    [InlineData(",a,sown,4,,,mats,,,,,,", "1: date is empty; write the day")]
    [InlineData("soon,a,sown,4,,,mats,,,,,,", "1: date is \"soon\", which is not a date; write year-month-day such as 2027-03-15")]
    [InlineData("2027-02-30,a,sown,4,,,mats,,,,,,", "1: date is 2027-02-30, which is not in the calendar; February 2027 has 28 days")]
    [InlineData(
        "1 Mar,a,sown,4,,,mats,,,,,,",
        "1: date is \"1 Mar\", which has no year; write the year too: year-month-day such as 2027-03-01"
    )]
    [InlineData(
        "3/4/2027,a,sown,4,,,mats,,,,,,",
        "1: date is \"3/4/2027\" in row 2, column A, which may be 3 April or 4 March; write date_order = \"dmy\" or date_order = \"mdy\" "
            + "under [site] of site.toml"
    )]
    [InlineData(
        "2026-03-01,a,sown,4,,,mats,,,,,,",
        "1: date is 2026-03-01, before the season opens on 2027-01-18; mend the date, or opens of [season] in site.toml"
    )]
    [InlineData("2027-03-01,a,sown,,,,mats,,,,,,", "19: trays is empty; write how many trays were sown")]
    [InlineData("2027-03-01,b,sown,,,,mats,,,,,,", "20: flats is empty; write how many flats were sown")]
    [InlineData(
        "2027-03-01,b,counted,,,,mats,,,,,,",
        "22: trays is empty, and flats too; write how many trays or flats stand there, 0 for none"
    )]
    [InlineData("2027-03-01,b,sown,4,,,mats,,,,,,", "19: trays is 4, and \"b\" is sown in flats; write the number in flats")]
    [InlineData("2027-03-01,a,sown,,4,,mats,,,,,,", "20: flats is 4, and \"a\" stands in trays; write the number in trays")]
    [InlineData("2027-03-01,a,counted,,4,,mats,,,,,,", "23: flats is 4, and \"a\" stands in trays; write the number in trays")]
    [InlineData(
        "2027-03-01,a,sown,4,2,,mats,,,,,,",
        "21: flats is \"2\", and trays is \"4\" in the same row; write a row for the trays and one for the flats"
    )]
    [InlineData(
        "2027-03-01,a,sown,0,,,mats,,,,,,",
        "19: trays is 0; write 1 or more, or delete the row; where none are left, write counted"
    )]
    [InlineData("2027-03-01,a,sown,-3,,,mats,,,,,,", "19: trays is -3, and cannot be negative; write a whole number, from 0 to 100000")]
    [InlineData(
        "2027-03-01,a,sown,1.5,,,mats,,,,,,",
        "19: trays is 1.5, which is not a whole number; write a whole number, from 0 to 100000"
    )]
    [InlineData("2027-03-01,a,sown,4,,,,,,,,,", "23: space is empty, and a row \"sown\" needs it; name the space")]
    [InlineData("2027-03-01,a,sown,4,,,mat,,,,,,", "23: space is \"mat\", and the site has no such space; did you mean \"mats\"")]
    [InlineData(
        "2027-03-01,a,sown,4,,,nowhere,,,,,,",
        "23: space is \"nowhere\", and the site has no such space; write mats, bench, table or chamber"
    )]
    [InlineData(
        "2027-03-01,a,sown,4,,,table,,,,,,",
        "23: space is \"table\", a hardening table, where nothing is sown; name the mat or the bench"
    )]
    [InlineData(
        "2027-03-01,b,counted,,3,,table,,,,,,",
        "26: space is \"table\", a hardening table, where no flats stand; name the mat or the bench"
    )]
    [InlineData(
        "2027-03-01,b,counted,3,,,chamber,,,,,,",
        "26: space is \"chamber\", a chamber, where no potted trays stand; name the bench"
    )]
    [InlineData(
        "2027-03-01,a,sown,4,,bench,mats,,,,,,",
        "22: from is \"bench\", and a row \"sown\" says nothing of it; leave it empty, or mend what was done"
    )]
    [InlineData("2027-03-01,a,moved,4,,mats,mats,,,,,,", "28: space is \"mats\", and so is from; write where they went, or delete the row")]
    [InlineData(
        "2027-03-01,a,set out,4,,bench,table,,,,,,",
        "31: space is \"table\", and from is \"bench\"; write where they stood, and leave the other empty"
    )]
    [InlineData("2027-03-01,a,set out,,,,,,,,,,", "22: trays is empty; write how many trays were set out")]
    [InlineData(
        "2027-03-01,a,potted up,4,2,,bench,,,,,,",
        "14: what is \"potted up\", and \"a\" is sown in the trays in which it goes to the field; name another batch, or write moved"
    )]
    [InlineData("2027-03-01,b,potted up,4,,,bench,,,,,,", "26: flats is empty; write how many flats were used up, 0 for none")]
    [InlineData("2027-03-01,b,potted up,,4,,bench,,,,,,", "24: trays is empty; write how many trays were filled, 0 for none")]
    [InlineData(
        "2027-03-01,b,potted up,0,0,,bench,,,,,,",
        "24: trays is 0, and flats too; write how many trays were filled, or delete the row"
    )]
    [InlineData(
        "2027-03-01,a,up,,,,,30,24,,,,",
        "21: count is 30, and of is 24; write in of how many were looked at, and in count how many of them were there"
    )]
    [InlineData("2027-03-01,a,up,,,,,many,24,,,,", "21: count is \"many\"; write how many, or few, half, most or all")]
    [InlineData("2027-03-01,a,up,,,,,mots,24,,,,", "21: count is \"mots\"; did you mean \"most\"")]
    [InlineData("2027-03-01,a,good,,,,,most,4,,,,", "23: count is \"most\", and of is 4; write how many: a word is read of 5 or more")]
    [InlineData("2027-03-01,a,up,,,,,few,,,,,", "25: of is empty, and a row \"up\" needs it; write how many seeds or cells were looked at")]
    [InlineData("2027-03-01,a,up,,,,,30,,,,,", "24: of is empty, and a row \"up\" needs it; write how many seeds or cells were looked at")]
    [InlineData("2027-03-01,a,good,,,,,,50,,,,", "23: count is empty, and a row \"good\" needs it; write how many, or how much")]
    [InlineData(
        "2027-03-01,,walked,3,,,bench,,,,,,",
        "20: trays is \"3\", and a row \"walked\" says nothing of it; leave it empty, or mend what was done"
    )]
    [InlineData("2027-03-01,,walked,,,,,,,,,,", "23: space is empty, and a row \"walked\" needs it; name the space")]
    [InlineData(
        "2027-03-01,,low,,,,main,900,,,,,",
        "25: count is \"900\", which is 900 C; write a temperature from -60 C to 55 C, with its unit, such as 60 F"
    )]
    [InlineData("2027-03-01,,low,,,,,28 F,,,,,", "20: space is empty, and a row \"low\" needs it; write outdoors, or the house")]
    [InlineData(
        "2027-03-01,,low,,,,shed,28 F,,,,,",
        "20: space is \"shed\", and the site has no such house or space; write mats, bench, table, chamber, main or outdoors"
    )]
    [InlineData("2027-03-01,,fuel,,,,,40,,,,,", "29: note is empty, and a row \"fuel\" needs it; write the unit, such as gallons")]
    [InlineData("2027-03-01,,mishap,,,,bench,,,,,,", "34: note is empty, and a row \"mishap\" needs it; write what happened")]
    [InlineData("2027-03-01,,covered,,,,,,,,,,", "24: space is empty, and batch too; name the space or the batch that was covered")]
    [InlineData(
        "2027-03-01,a,counted,4,,,bench,,,,,2027-02-01,",
        "36: entered is 2027-02-01, before the day it tells of, 2027-03-01; mend one of the two dates"
    )]
    [InlineData(
        "2027-03-01,a,counted,4,,,bench,,,abc,,,",
        "34: minutes is \"abc\", which is not a number; write a number, from 0 to 100000"
    )]
    [InlineData(
        "2027-03-05,a,moved,4,,mats,bench,,,,,,",
        "12: batch is \"a\", which was not sown by 2027-03-05; write its sown row, or what was counted of it"
    )]
    public void Of_a_row(string row, string fault) => FaultMessageTests.AssertFaults(LogFarm.Faults(row), "log.csv:2:" + fault);

    [Fact]
    public void Moved_before_it_was_sown() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults(
                "2027-03-05,a,moved,4,,,bench,,,,,,",
                "2027-03-08,a,sown,4,,,mats,,,,,,",
                "2027-03-08,x-1,moved,4,,,bench,,,,,,",
                "2027-03-08,x-1,sown,4,,,mats,,,,,,"
            ),
            "log.csv:2:12: batch is \"a\", which was not sown by 2027-03-05: line 3 has it sown on 2027-03-08; mend one of the two dates",
            "log.csv:4:12: batch is \"x-1\", which was not sown by 2027-03-08: its sown row stands below, on line 5; put the sown row "
                + "above this one"
        );

    [Fact]
    public void More_than_stand_there() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults(
                "2027-03-01,a,sown,5,,,mats,,,,,,",
                "2027-03-03,a,moved,8,,,bench,,,,,,",
                "2027-03-01,b,sown,,3,,mats,,,,,,",
                "2027-03-20,b,potted up,8,4,,bench,,,,,,",
                "2027-03-02,x-1,sown,6,,,mats,,,,,,",
                "2027-03-12,x-1,moved,1,,bench,table,,,,,,"
            ),
            "log.csv:3:20: trays is 8, and 5 trays of \"a\" stand in \"mats\" on 2027-03-03; write 5 or fewer, or before it what was "
                + "counted there",
            "log.csv:5:26: flats is 4, and 3 flats of \"b\" stand in \"mats\" on 2027-03-20; write 3 or fewer, or before it what was "
                + "counted there",
            "log.csv:7:22: trays is 1, and no trays of \"x-1\" stand in \"bench\" on 2027-03-12; there stand 6 in \"mats\": mend the row, "
                + "or write before it how they came there"
        );

    [Fact]
    public void Set_out_when_none_are_left() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults(
                "2027-03-01,a,sown,5,,,mats,,,,,,",
                "2027-04-03,a,thrown out,5,,,,,,,,,mice",
                "2027-05-03,a,set out,5,,,,,,,,,",
                "2027-05-04,a,handed over,1,,,,,,,,,"
            ),
            "log.csv:4:22: trays is 5, and no trays of \"a\" stand on 2027-05-03; mend the row, or write before it how they came there",
            "log.csv:5:26: trays is 1, and no trays of \"a\" stand on 2027-05-04; mend the row, or write before it how they came there"
        );

    [Fact]
    public void From_which_space_is_not_plain() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults(
                "2027-03-01,x-3,sown,9,,,bench,,,,,,",
                "2027-03-13,x-3,moved,2,,,table,,,,,,",
                "2027-03-14,x-3,thrown out,2,,,,,,,,,"
            ),
            "log.csv:4:30: from is empty, and of \"x-3\" there stand 7 in \"bench\" and 2 in \"table\"; write in from where they stood"
        );

    [Fact]
    public void A_tray_that_no_flat_can_have_filled() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults("2027-03-01,b,sown,,3,,mats,,,,,,", "2027-03-20,b,potted up,8,0,,bench,,,,,,"),
            "log.csv:3:26: flats is 0, and no flat of \"b\" was used up before; write the flats that were used up"
        );

    [Fact]
    public void Two_rows_alike() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults("2027-03-01,a,sown,5,,,mats,,,20,Ada,,", "2027-03-01,A,sowed,5,,,mats,,,,,2027-03-02,from the paper"),
            "log.csv:3:1: this row says the same as line 2; delete one of them; where it was done twice, write one row for both"
        );

    // The rows after a wrong one are judged by themselves: what follows from it is not told again.
    [Fact]
    public void One_mistake_is_one_fault() =>
        FaultMessageTests.AssertFaults(
            LogFarm.Faults(
                "2027-03-01,a,sown,5,,,mat,,,,,,",
                "2027-03-08,a,moved,5,,,bench,,,,,,",
                "2027-03-01,x-1,moved,5,,mats,bench,,,,,,",
                "2027-03-08,x-1,moved,5,,,table,,,,,,",
                "2027-03-28,x-1,set out,5,,,,,,,,,"
            ),
            "log.csv:2:23: space is \"mat\", and the site has no such space; did you mean \"mats\"",
            "log.csv:4:12: batch is \"x-1\", which was not sown by 2027-03-01; write its sown row, or what was counted of it"
        );

    [Fact]
    public void Columns_that_are_not_there() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(LogFarm.Site, LogFarm.Plan, ("log.csv", "batch,tray\na,4\n")),
            "log.csv:1:1: there is no column \"date\"; add a column named date to the first line",
            "log.csv:1:1: there is no column \"what\"; add a column named what to the first line",
            "log.csv:1:7: there is no column \"tray\" in this file; did you mean \"trays\""
        );

    // The log may name what could not be read: nothing is said of it until that is mended.
    [Fact]
    public void A_plan_with_a_fault_is_told_and_the_names_of_the_log_are_not()
    {
        using var folder = LogFarm.Of("2027-03-01,new,sown,5,,,mats,,,,,,");
        folder.Write("plan.csv", "id,crop,plants,sow\nnew,tomatto,100,2027-03-01\n");
        FaultMessageTests.AssertFaults(
            [.. folder.Read().Faults.Select(fault => fault.ToString())],
            "plan.csv:2:5: there is no crop \"tomatto\"; did you mean \"tomato\""
        );
    }

    [Fact]
    public void A_weather_record_cannot_have_the_name_of_the_log() =>
        Assert.Contains(
            TestFolder.Faults(
                TestFolder.Site("kind = \"constant\"\nlow = \"12 C\"\nhigh = \"20 C\"", "kind = \"record\"\nfile = \"log.csv\"")
            ),
            fault => fault.StartsWith("site.toml:", StringComparison.Ordinal)
        );
}
