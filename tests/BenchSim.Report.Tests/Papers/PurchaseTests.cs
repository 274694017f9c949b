using System.Text;
using BenchSim.Report.Papers;
using BenchSim.Report.Tests.Synthetic;
using BenchSim.Season.Inputs;

namespace BenchSim.Report.Tests.Papers;

/// <summary>What to buy, on the page, as CSV and in the workbook.</summary>
public class PurchaseTests
{
    // 720 seeds less 100 are 620: 3 packs of 250, 100 + 750 - 720 = 130 left, 3 x 4.25 = 12.75.
    [Fact]
    public void What_to_buy_stands_on_every_paper_of_the_order()
    {
        var content = Content("Valley <Seeds>");
        var html = OrderPage.Write(content);
        Assert.Contains("<h2>To buy</h2>", html, StringComparison.Ordinal);
        Assert.Contains("<h3><bdi>Valley &lt;Seeds&gt;</bdi></h3>", html, StringComparison.Ordinal);
        Assert.Contains(
            "<td class=\"number\">720 seeds</td><td class=\"number\">100</td><td class=\"number\">250</td>"
                + "<td class=\"number\"><b>3</b></td><td class=\"number\">130</td><td class=\"number\">$12.75</td>",
            html,
            StringComparison.Ordinal
        );
        Assert.Contains("Together: <b>$12.75</b>", html, StringComparison.Ordinal);
        var batch = content.Plan.Batches[0];
        Assert.Equal(
            "supplier,item,name,variety,needed,unit,on_hand,pack,packs,left_over,price,cost,needed_by,order_by,growers\r\n"
                + $"Valley <Seeds>,{batch.Crop.Id},Tomato,,720,seeds,100,250,3,130,4.25,12.75,{batch.SowOn:yyyy-MM-dd},"
                + $"{batch.SowOn.AddDays(-7):yyyy-MM-dd},{batch.Order.Grower} 720\r\n",
            Encoding.UTF8.GetString(PurchaseTable.Write(content.Purchases)).TrimStart('\uFEFF')
        );
        var rows = new SmallWorkbook(Workbook.Write(content)).Rows("To buy");
        Assert.Equal(2, rows.Length);
        Assert.Equal(batch.SowOn.AddDays(-7), rows[1][12]);
    }

    [Fact]
    public void Without_a_file_of_supplies_nothing_is_said_of_packs() =>
        Assert.DoesNotContain("<h2>To buy</h2>", OrderPage.Write(PaperSample.Of(SyntheticPlan.Tiny())), StringComparison.Ordinal);

    [Fact]
    public void A_supplier_that_begins_as_a_formula_is_text() =>
        Assert.Contains("\r\n'=1+1,", Encoding.UTF8.GetString(PurchaseTable.Write(Content("=1+1").Purchases)), StringComparison.Ordinal);

    private static PaperContent Content(string supplier)
    {
        var plan = SyntheticPlan.Tiny();
        var batch = plan.Batches[0] with { Trays = 10, Seeds = 720, Flat = null, Flats = 0, PotUpOn = null };
        var supply = new Supply
        {
            Item = batch.Crop.Id,
            Pack = 250,
            Price = 4.25,
            OnHand = 100,
            Supplier = supplier,
            DeliveryDays = 7,
        };
        return PaperSample.Of(plan with { Batches = [batch], Scenario = plan.Scenario with { Supplies = [supply] } });
    }
}
