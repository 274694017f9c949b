using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Plan;

/// <summary>ranges.csv: what values may truly be.</summary>
public class RangeTests
{
    private const string Head = "what,of,low,high,shape\n";

    [Fact]
    public void Rows_name_values_as_the_files_do()
    {
        using var folder = new TestFolder();
        folder.Write(
            "ranges.csv",
            Head
                + "days_to_ready,Tomato,35,50,\nDays_to_ready,pepper | leek,-20 %,+30%,uniform\n"
                + "stand_loss,,2 %,10 %,\nmedium_offset,,-3 C,1 C,\n"
        );
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(
            [
                ("days_to_ready", "tomato", 35.0, 50.0, false, RangeShape.Lognormal),
                ("days_to_ready", "pepper|leek", 0.8, 1.3, true, RangeShape.Uniform),
                ("stand_loss", "", 0.02, 0.1, false, RangeShape.Odds),
                ("medium_offset", "", -3.0, 1.0, false, RangeShape.Triangular),
            ],
            reading.Scenario!.Ranges.Select(row => (row.What, string.Join('|', row.Of), row.Low, row.High, row.IsRelative, row.Shape))
        );
    }

    [Fact]
    public void Bad_rows_say_where_and_what() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(
                others: (
                    "ranges.csv",
                    Head
                        + "days_to_redy,,30,40,\n"
                        + "growth_cv,tomatto,0.1,0.2,\n"
                        + "stand_loss,tomato,-20 %,+20 %,\n"
                        + "days_to_ready,tomato,50,40,\n"
                        + "days_to_ready,pepper,-20 %,40,\n"
                        + "medium_offset,tomato,1 C,2 C,\n"
                        + "emerge_base,leek,-1 C,2 C,lognormal\n"
                        + "emerge_base,tomato,5 C,8 C,odds\n"
                        + "emerge_base,tomato,5 C,8 C,\n"
                        + "emerge_heat,,,90,\n"
                        + "emerge_cv,,0.1,0.2,round\n"
                        + "u_value,attic,1,2,\n"
                        + "days_to_ready,leek,0.1,400,\n"
                )
            ),
            "ranges.csv:2:1: what is \"days_to_redy\", which is no value that may be wrong; did you mean \"days_to_ready\"",
            "ranges.csv:3:11: of names \"tomatto\", and there is no crop of that name; did you mean \"tomato\"",
            "ranges.csv:4:19: low is \"-20 %\", and stand_loss has no ends in percent of itself; "
                + "write the end itself, as the value is written",
            "ranges.csv:4:25: high is \"+20 %\", and stand_loss has no ends in percent of itself; "
                + "write the end itself, as the value is written",
            "ranges.csv:5:25: high is not above low; write the least under low and the most under high",
            "ranges.csv:6:28: high is written otherwise than low; write both ends as values, or both as changes in percent",
            "ranges.csv:7:15: of is for values of crops and houses, and medium_offset is of the site; leave it empty",
            "ranges.csv:8:27: shape lognormal has no place for a low end of 0 or less; write uniform or triangular",
            "ranges.csv:9:28: shape odds is for a share whose ends lie between 0 % and 100 %; "
                + "write uniform or triangular, or ends between them",
            "ranges.csv:10:1: what emerge_base of \"tomato\" has a row already, on line 9; keep one row for a value",
            "ranges.csv:11:14: low is empty; write the least that the value may be",
            "ranges.csv:12:20: shape is \"round\"; write \"uniform\", \"triangular\", \"lognormal\" or \"odds\"",
            "ranges.csv:13:9: of names \"attic\", and there is no house of that name; name a house by its id, several with | between them",
            "ranges.csv:14:24: high is \"400\"; write a value from 0.1 to 365"
        );

    // 60 degree-days at 20 C over a base of 10 are 6 days to come up; with 7 nights of hardening 13 of the written days are none of growth.
    [Fact]
    public void Days_that_leave_none_for_growth_are_a_fault()
    {
        const string Crop =
            "id,emerge_base,emerge_optimum,emerge_plateau,emerge_ceiling,emerge_heat,germinate_at,days_to_ready,counted_from,"
            + "includes_hardening,hardening_nights\ntomato,10 C,30 C,none,40 C,60,20 C,50,sowing,yes,7\n";
        string[] Faults(string low) =>
            TestFolder.Faults(
                others: [("crops.csv", Crop), ("ranges.csv", $"what,of,low,high,shape\ndays_to_ready,tomato,{low},60,uniform\n")]
            );

        FaultMessageTests.AssertFaults(
            Faults("13"),
            "ranges.csv:2:22: low is 13, and 13 days of \"tomato\" go to coming up and hardening; write more days than that"
        );
        Assert.Empty(Faults("14"));
    }
}
