using System.Globalization;
using BenchSim.Engine.Randomness;

namespace Published.Engine;

/// <summary>Random numbers against published and independently computed answers.</summary>
public class RandomnessTests
{
    // philox_kat.csv: Random123 tests/kat_vectors (D. E. Shaw Research), and further counters and keys worked out apart from this code.
    [Fact]
    public void Philox_known_answers()
    {
        var rows = ReferenceFile.Rows("philox_kat.csv");
        Assert.Equal(16, rows.Count);
        foreach (var row in rows)
        {
            var counter = new PhiloxBlock(Word(row["ctr0"]), Word(row["ctr1"]), Word(row["ctr2"]), Word(row["ctr3"]));
            var key = new PhiloxKey(Word(row["key0"]), Word(row["key1"]));
            var rounds = int.Parse(row["rounds"], CultureInfo.InvariantCulture);
            var expected = new PhiloxBlock(Word(row["out0"]), Word(row["out1"]), Word(row["out2"]), Word(row["out3"]));
            Assert.Equal(expected, Philox.Block(counter, key, rounds));
            if (rounds == 10)
            {
                Assert.Equal(expected, Philox.Block(counter, key));
            }
        }
    }

    // queueing_checks.csv, rows "normal" and "lognormal" (scipy, 12 digits).
    [Fact]
    public void Normal_and_lognormal_quantiles()
    {
        var used = 0;
        foreach (var row in ReferenceFile.Rows("queueing_checks.csv"))
        {
            var inputs = ReferenceFile.Inputs(row["inputs"]);
            double? found = row["category"] switch
            {
                "normal" => Normal.Quantile(inputs["p"]),
                "lognormal" => inputs["mean"] * Lognormal.MeanOne(ReferenceFile.Number(row["quantity"][1..]), inputs["cv"]),
                _ => null,
            };
            if (found is not { } value)
            {
                continue;
            }

            Assert.Equal(0, (value / ReferenceFile.Number(row["value"])) - 1, 1e-11);
            used++;
        }

        Assert.Equal(11, used);
    }

    private static uint Word(string hex) => uint.Parse(hex, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
