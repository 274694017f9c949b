namespace Published.Engine;

/// <summary>The interval used by the comparisons, against the student_t rows of queueing_checks.csv.</summary>
public class StudentTests
{
    [Fact]
    public void Expansion_agrees_with_printed_quantiles_from_30_degrees_of_freedom_on()
    {
        var rows = ReferenceFile.Rows("queueing_checks.csv").Where(row => row["category"] == "student_t").ToList();
        var used = 0;
        foreach (var row in rows)
        {
            var inputs = ReferenceFile.Inputs(row["inputs"]);
            if (inputs["df"] < 30)
            {
                continue;
            }

            Assert.Equal(0, (Comparison.Student(inputs["p"], inputs["df"]) / ReferenceFile.Number(row["value"])) - 1, 1e-3);
            used++;
        }

        Assert.InRange(used, 20, 75);
    }
}
