using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Twin.Tests;

/// <summary>What differs between the twin's season and the first's: of each kind the first place.</summary>
internal static class Differences
{
    public static IEnumerable<string> Between(TwinResult twin, SeasonResult original, SeasonPlan plan)
    {
        var found = Days("sown", twin.Sown, original.Sown)
            .Concat(Days("potted", twin.Potted, original.Potted))
            .Concat(Days("moved", twin.Moved, original.Moved))
            .Concat(Days("set out", twin.SetOut, original.SetOut))
            .Concat(Days("carried in", twin.CarriedIn, original.CarriedIn))
            .Concat(Days("seeds sown", twin.SeedsSown, original.SeedsSown))
            .Concat(Days("cells sown", twin.CellsSown, original.CellsSown))
            .Concat(Days("cells thinned", twin.CellsThinned, original.CellsThinned))
            .Concat(Days("plants potted", twin.PlantsPotted, original.PlantsPotted))
            .Concat(Value("sown in time", twin.SownInTime, original.SownInTime))
            .Concat(Value("none over-held for place", twin.NoneOverHeldForPlace, original.NoneOverHeldForPlace))
            .Concat(Value("fits", twin.Fits, original.Fits))
            .Concat(Value("fits, weather counted", twin.FitsWeatherCounted, original.FitsWeatherCounted));
        for (var space = 0; space < twin.Held.Length; space++)
        {
            var id = plan.Scenario.Spaces[space].Id;
            found = found
                .Concat(Days($"held by {id}", twin.Held[space], original.Held[space]))
                .Concat(Days($"waiting for {id}", twin.Waiting[space], original.Waiting[space]))
                .Concat(Value($"mat days of {id}", twin.MatDays[space], original.MatDays[space]));
        }

        for (var row = 0; row < twin.Refused.Length; row++)
        {
            var (from, by) = (row / twin.Held.Length, row % twin.Held.Length);
            found = found.Concat(Days($"refused to {from} by {by}", twin.Refused[row], original.Refused[from, by]));
        }

        for (var house = 0; house < twin.Heat.Length; house++)
        {
            var id = plan.Scenario.Houses[house].Id;
            found = found
                .Concat(Days($"heat of {id}", twin.Heat[house], original.HeatWattHours[house]))
                .Concat(Value($"days open of {id}", twin.DaysOpen[house], original.DaysOpen[house]));
        }

        for (var relief = 0; relief < plan.Scenario.Rules.Reliefs.Length; relief++)
        {
            var kind = plan.Scenario.Rules.Reliefs[relief];
            found = found.Concat(Value($"uses of {kind}", twin.ReliefUses[kind], original.ReliefUses[relief]));
        }

        for (var mishap = 0; mishap < twin.MishapTrays.Length; mishap++)
        {
            found = found.Concat(Value($"trays struck by {mishap}", twin.MishapTrays[mishap], original.MishapTrays[mishap]));
        }

        return found.Concat(
            twin.Batches.Zip(original.Batches, (one, other) => (one, other))
                .SelectMany((pair, index) => Batch(plan.Batches[index].Order.Id, pair.one, pair.other))
        );
    }

    private static IEnumerable<string> Batch(string id, BatchOutcome twin, BatchOutcome original)
    {
        foreach (var property in typeof(BatchOutcome).GetProperties())
        {
            var (one, other) = (property.GetValue(twin), property.GetValue(original));
            var found = (one, other) switch
            {
                (int[] a, int[] b) => Days($"{id} {property.Name}", a, b),
                (long[] a, long[] b) => Days($"{id} {property.Name}", a, b),
                _ => Value($"{id} {property.Name}", one, other),
            };
            foreach (var difference in found)
            {
                yield return difference;
            }
        }
    }

    private static IEnumerable<string> Days<T>(string what, T[] twin, T[] original)
    {
        for (var index = 0; index < Math.Max(twin.Length, original.Length); index++)
        {
            if (index >= twin.Length || index >= original.Length || !Equals(twin[index], original[index]))
            {
                yield return $"{what}[{index}] twin {(index < twin.Length ? twin[index] : default)} original "
                    + $"{(index < original.Length ? original[index] : default)}";
                yield break;
            }
        }
    }

    private static IEnumerable<string> Value<T>(string what, T twin, T original)
    {
        if (!Equals(twin, original))
        {
            yield return $"{what}: twin {twin} original {original}";
        }
    }
}
