using System.Text;
using BenchSim.Report.Tables;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Study.Results;

namespace BenchSim.Report.Tests.Tables;

public class ApprovedTablesTests
{
    [Fact]
    public void The_daily_table_is_as_approved() => Approval.Check("daily.csv", TableFiles.Daily(SyntheticStudy.Tiny()));

    [Fact]
    public void The_batch_table_is_as_approved() => Approval.Check("batches.csv", BatchTable.Write(SyntheticStudy.Tiny()));

    [Fact]
    public void The_space_table_is_as_approved() => Approval.Check("spaces.csv", TableFiles.Spaces(SyntheticStudy.Tiny()));

    [Fact]
    public void The_grower_table_is_as_approved() => Approval.Check("growers.csv", TableFiles.Growers(SyntheticStudy.Tiny()));

    [Fact]
    public void The_fuel_table_is_as_approved() => Approval.Check("fuel.csv", FuelTable.Write(SyntheticStudy.Tiny()));

    [Fact]
    public void The_daily_table_has_a_row_a_day_and_space()
    {
        var result = SyntheticStudy.Tiny();
        var rows = CsvRows.Of(TableFiles.Daily(result));

        Assert.Equal(1 + (result.Plan.Days * result.Spaces.Length), rows.Length);
        Assert.Equal(["2027-02-01", "mats", "6"], rows[1][..3]);
        Assert.Equal(["2027-05-01", "table", "8"], rows[^1][..3]);
    }

    [Theory]
    [InlineData("=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0")]
    [InlineData("a\r\n=b", "\"a\r\n=b\"")]
    [InlineData("x\",=1", "\"x\"\",=1\"")]
    public void Hostile_names_are_inert(string name, string cell)
    {
        var result = SyntheticStudy.Tiny();
        var hostile = result with { Growers = [result.Growers[0] with { Grower = name }] };

        var text = Encoding.UTF8.GetString(TableFiles.Growers(hostile));
        Assert.Contains("\r\n" + cell + ",", text, StringComparison.Ordinal);
    }
}
