using BenchSim.Study.Money;
using Published.Statistics;

namespace Published.Money;

/// <summary>Present values and internal rates of tests/Published/data/queueing_checks.csv, each row with its source.</summary>
public class PublishedMoneyTests
{
    [Fact]
    public void Net_present_values()
    {
        foreach (var row in CheckRows.Of("npv"))
        {
            // Where no outlay now is given, all flows fall at the ends of periods.
            var now = row.Inputs.Contains("cost0=", StringComparison.Ordinal) ? row.Number("cost0") : 0;
            row.Check(PresentValue.Net(row.Number("rate"), [now, .. row.Numbers("flows")]));
        }
    }

    [Fact]
    public void Internal_rates()
    {
        foreach (var row in CheckRows.Of("irr"))
        {
            row.Check(Assert.Single(InternalRate.All(row.Numbers("flows"))));
        }
    }
}
