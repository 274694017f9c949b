using System.Collections.Immutable;
using System.Text;
using BenchSim.Folder.Plan;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Plan;

/// <summary>A plan written again with other sow dates keeps all else.</summary>
public class MovedPlanTests
{
    private static readonly DateOnly s_monday = new(2027, 3, 1);

    [Fact]
    public void Only_the_date_of_a_moved_line_changes() =>
        Assert.Equal(
            "id,crop,plants,sow,note\r\n\r\na,tomato,100, 2027-03-02,\"x, \"\"y\"\"\"\r\n  b , tomato,100,2027-03-03,kept\r\n",
            Written(
                "id,crop,plants,sow,note\r\n\r\na,tomato,100, 2027-03-01,\"x, \"\"y\"\"\"\r\n  b , tomato,100,2027-03-03,kept\r\n",
                ("a", s_monday.AddDays(1))
            )
        );

    [Fact]
    public void A_plan_without_sow_dates_gets_a_column_for_them() =>
        Assert.Equal(
            "id;crop;plants;set_out;note;sow\na;tomato;100;2027-05-20;;2027-03-02\nb;tomato;100;2027-05-20\n"
                + "c;tomato;100;2027-05-20;n;2027-03-01",
            Written(
                "id;crop;plants;set_out;note\na;tomato;100;2027-05-20\nb;tomato;100;2027-05-20\nc;tomato;100;2027-05-20;n",
                ("a", s_monday.AddDays(1)),
                ("c", s_monday)
            )
        );

    [Fact]
    public void A_line_of_successions_becomes_a_line_each() =>
        Assert.Equal(
            "id,crop,plants,sow,set_out,every_days,times,note\n"
                + "\"x-1\",tomato,100,,2027-05-01,,,n\n\"x-2\",tomato,100,2027-03-01,2027-05-08,,,n\n\"x-3\",tomato,100,,2027-05-15,,,n\n"
                + "y,tomato,100,2027-03-01,,7,2,",
            Written(
                "id,crop,plants,sow,set_out,every_days,times,note\n\"x\",tomato,100,,2027-05-01,7,3,n\ny,tomato,100,2027-03-01,,7,2,",
                ("x-2", s_monday)
            )
        );

    [Fact]
    public void Without_moves_every_byte_stays()
    {
        byte[] plan = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("sep=;\r\nid;crop;plants;sow\r\ná;tomato;100;2027-03-01\r\n")];
        Assert.Equal(plan, MovedPlan.Write([.. plan], ImmutableDictionary<string, DateOnly>.Empty).ToArray());
    }

    // A sign before a number is read as the plan reads it. Read back, the new plan has the new sow dates and is otherwise the old one,
    // batch by batch.
    [Fact]
    public void What_is_written_reads_as_the_plan_with_other_sow_dates()
    {
        const string Plan =
            "Set out,id,crop,plants,Every-days,times,earlier,later,packet,sow\n"
            + "2027-05-20,t,tomato,100,7,+3,2,3,p,\n,u,lettuce,50,10,2,,,,2027-03-08\n2027-05-25,v,tomato,70,,,,,,2027-03-15\n";
        var moves = new Dictionary<string, DateOnly>(StringComparer.Ordinal)
        {
            ["t-1"] = s_monday,
            ["t-3"] = s_monday.AddDays(9),
            ["u-2"] = s_monday.AddDays(16),
            ["v"] = s_monday.AddDays(10),
        };
        using var before = new TestFolder(plan: Plan);
        using var after = new TestFolder(plan: Encoding.UTF8.GetString(MovedPlan.Write([.. Encoding.UTF8.GetBytes(Plan)], moves).AsSpan()));
        var old = before.Read().Scenario!.Batches;
        Assert.Equal(
            old.Select(order => order with { Place = default, Sow = moves.TryGetValue(order.Id, out var date) ? date : order.Sow }),
            after.Read().Scenario!.Batches.Select(order => order with { Place = default })
        );
    }

    [Theory]
    [InlineData("id,crop,plants,sow,times,every_days,note\nx,tomato,100,2027-03-01,2,7,n\n", true)]
    [InlineData("id,crop,plants,sow,note\nx-1,tomato,100,2027-02-27,n\nx-2,tomato,100,2027-03-08,n\n", true)]
    [InlineData("id,crop,plants,sow,earlier,note\nx-1,tomato,100,2027-02-27,3,n\nx-2,tomato,100,2027-03-08,,n\n", true)]
    [InlineData("id,crop,plants,sow,note\nx-1,tomato,100,2027-02-27,n\nx-2,tomato,100,2027-03-08,my own\n", false)]
    [InlineData("id,crop,plants,sow,note\nx-1,tomato,100,2027-02-27,n\n", false)]
    [InlineData("id,crop,plants,sow,times,every_days,note\nx,tomato,100,2027-03-01,2,2000000000,n\n", false)]
    [InlineData("dear diary", false)]
    [InlineData("", false)]
    [InlineData("\"", false)]
    public void A_file_with_other_sow_dates_alone_is_a_form_of_the_plan(string file, bool isForm) =>
        Assert.Equal(
            isForm,
            MovedPlan.IsFormOf(
                [.. Encoding.UTF8.GetBytes("id,crop,plants,sow,times,every_days,note\nx,tomato,100,2027-03-01,2,7,n\n")],
                [.. Encoding.UTF8.GetBytes(file)]
            )
        );

    [Fact]
    public void Bytes_that_are_no_text_are_no_form_of_the_plan() =>
        Assert.False(MovedPlan.IsFormOf([.. Encoding.UTF8.GetBytes("id,crop\n")], [0xFF, 0xFE, 0x00]));

    private static string Written(string plan, params (string Id, DateOnly Sow)[] moves) =>
        Encoding.UTF8.GetString(
            MovedPlan
                .Write([.. Encoding.UTF8.GetBytes(plan)], moves.ToDictionary(move => move.Id, move => move.Sow, StringComparer.Ordinal))
                .AsSpan()
        );
}
