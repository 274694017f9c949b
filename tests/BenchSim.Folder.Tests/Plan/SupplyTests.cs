using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests.Plan;

/// <summary>supplies.csv: how seed and trays are bought.</summary>
public class SupplyTests
{
    private const string Head = "item,variety,pack,price,on_hand,supplier,delivery_days,reused\n";

    [Fact]
    public void Lines_name_crops_and_trays_as_people_do()
    {
        using var folder = new TestFolder();
        folder.Write(
            "supplies.csv",
            Head + "TOMATO,Early red,\"1,000\",$ 4.50,250,Valley Seeds,7,\nTomato,,,,,,,\n200 cells,,50,60,,,,yes\nCarriers,,,,12,,,\n"
        );
        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Equal(["plan.csv", "site.toml", "supplies.csv"], reading.Inputs.Select(file => file.Name), StringComparer.Ordinal);
        Assert.Equal(
            ["tomato", "tomato", "200-cell", Supply.Carrier],
            reading.Scenario!.Supplies.Select(supply => supply.Item),
            StringComparer.Ordinal
        );
        Assert.Equal(
            new Supply
            {
                Item = "tomato",
                Variety = "Early red",
                Pack = 1000,
                Price = 4.5,
                OnHand = 250,
                Supplier = "Valley Seeds",
                DeliveryDays = 7,
                Place = new("supplies.csv", 2, 1),
            },
            reading.Scenario.Supplies[0]
        );
        Assert.True(reading.Scenario.Supplies[2].IsReused);
    }

    [Fact]
    public void Bad_lines_say_where_and_what() =>
        FaultMessageTests.AssertFaults(
            TestFolder.Faults(
                others: (
                    "supplies.csv",
                    Head + "tomatto,,,,,,,\n200-cell,x,,,,,,\ntomato,a,0,-1,,,,\nTomato,A,,,,,,\n,,5,,,,,\ntomato,,,,,,,maybe\n"
                )
            ),
            "supplies.csv:2:1: item is \"tomatto\", and there is no crop and no tray type of that name; did you mean \"tomato\"",
            "supplies.csv:3:10: variety is only for seed; name a crop in the column item, or leave this empty",
            "supplies.csv:4:10: pack is 0; write a whole number, 1 or more",
            "supplies.csv:4:12: price is \"-1\"; write a value 0 or more",
            "supplies.csv:5:1: item \"Tomato\" has a row already, on line 4; keep one row for a thing, or name the variety",
            "supplies.csv:6:1: item is empty; name a crop or a tray type, or write carrier",
            "supplies.csv:7:14: reused is \"maybe\"; write \"yes\" or \"no\""
        );
}
