using BenchSim.Season.Inputs;
using BenchSim.Season.Logbook;
using CsCheck;
using static BenchSim.Season.Tests.Logbook.SmallLog;

namespace BenchSim.Season.Tests.Logbook;

/// <summary>
/// Whatever is written, nothing comes from nowhere and nothing is lost unsaid: what came is what stands and what went. Logs are drawn from
/// a fixed seed; there is no chance of a false alarm.
/// </summary>
public class LedgerBalanceTests
{
    private static readonly Gen<LogEntry> s_row = Gen.Select(
        Gen.Int[0, 30],
        Gen.Int[0, 8],
        Gen.Int[0, 6],
        Gen.Int[0, 3],
        Gen.Int[-1, 3],
        Gen.Bool,
        (day, what, count, space, from, flats) =>
        {
            int? at = from < 0 ? null : from;
            return what switch
            {
                0 or 1 => Sown(day, flats ? "flats" : "trays", count + 1, space),
                2 => Moved(day, count + 1, space, at == space ? null : at, flats),
                3 => PottedUp(day, count, count + 1, space),
                4 => Counted(day, count, space, flats),
                5 => Walked(day, space),
                6 => Gone(day, LogKind.SetOut, count + 1, at, flats ? "flats" : "trays", false),
                7 => Gone(day, LogKind.HandedOver, count + 1, at, flats ? "flats" : "trays", false),
                _ => Gone(day, LogKind.ThrownOut, count + 1, at, flats ? "flats" : "trays", flats),
            };
        }
    );

    [Fact]
    public void What_came_stands_or_went()
    {
        var kept = 0;
        s_row
            .Array[1, 40]
            .Each(600, 19, rows =>
            {
                // Rows with a fault are left out, one after the other, as a person would mend them.
                var good = new List<LogEntry>();
                foreach (var row in rows)
                {
                    if (BenchLedger.Of(Site, [.. good, row]).Faults.IsEmpty)
                    {
                        good.Add(row);
                    }
                }

                kept += good.Count;
                var ledger = BenchLedger.Of(Site, good);
                foreach (var (index, batch) in ledger.Batches.Index())
                {
                    Assert.Equal(Came(ledger, index, areFlats: true), Went(batch, areFlats: true));
                    Assert.Equal(Came(ledger, index, areFlats: false), Went(batch, areFlats: false));
                    Assert.All(batch.Piles, pile => Assert.True(pile.Count > 0));
                    AssertApart(batch);
                }
            });
        Assert.True(kept > FixedSample.CasesOf(600) * 5, $"{kept} rows");
    }

    // Found are above 0, missing below.
    private static int Came(BenchLedger ledger, int index, bool areFlats)
    {
        var batch = ledger.Batches[index];
        var isSown = areFlats == (batch.Order.Method == Method.PotUp);
        return (isSown ? batch.Sown : 0)
            + (areFlats ? batch.BegunFlats : batch.BegunTrays + batch.Filled)
            + ledger.Differences.Where(each => each.Batch == index && each.AreFlats == areFlats).Sum(each => each.Unexplained);
    }

    private static int Went(BatchLedger batch, bool areFlats) =>
        batch.Standing(areFlats)
        + (
            areFlats
                ? batch.FlatsUsed + batch.FlatsThrownOut
                : batch.TraysThrownOut + batch.Out.Sum(each => each.Trays) + batch.HandedOver.Sum(each => each.Trays)
        );

    private static void AssertApart(BatchLedger batch)
    {
        var indices = batch
            .Piles.SelectMany(pile => Enumerable.Range(pile.First, pile.Count).Select(tray => (pile.AreFlats, tray)))
            .ToArray();
        Assert.Equal(indices.Length, indices.Distinct().Count());
    }
}
