using BenchSim.Season.Fields;
using BenchSim.Season.Seed;
using BenchSim.Season.Values;

namespace BenchSim.Season.Inputs;

/// <summary>The keys of [seed]. Where one of the two is not said its number is NaN, and seed does not age.</summary>
public static class SeedFields
{
    private const string DoesNotAge = "packet values do not age";

    // Bounds of SeedStorage.
    private const double WettestPercent = 30;
    private const double ColdestC = -20;
    private const double HottestC = 50;

    /// <summary>Nothing said.</summary>
    public static SeedStorage NotSaid { get; } = new(double.NaN, double.NaN);

    /// <summary>The keys, in the order of the reference.</summary>
    public static FieldTable<SeedStorage> Table { get; } =
        FieldTable
            .Of("seed", "[seed]", NotSaid)
            .Key(
                "moisture",
                new MoistureKind().OrNone("not given"),
                kept => Said(kept.MoisturePercent),
                (kept, moisture) => kept with { MoisturePercent = moisture ?? double.NaN }
            )
            .Means(
                "Moisture of the stored seed by fresh weight; together with storage. Seed with a tested_on date then ages until it is "
                    + "sown, where the constants of its crop are known (docs/sources.md).",
                Why.Ours,
                DoesNotAge
            )
            .Key(
                "storage",
                Kinds.TemperatureFrom(ColdestC, HottestC).OrNone("not given"),
                kept => Said(kept.TemperatureC),
                (kept, celsius) => kept with { TemperatureC = celsius ?? double.NaN }
            )
            .Means("Temperature the seed is stored at; together with moisture.", Why.Ours, DoesNotAge)
            .Table();

    private static double? Said(double number) => double.IsNaN(number) ? null : number;

    /// <summary>A moisture in percent, written as a share.</summary>
    private sealed class MoistureKind() : Kind<double>("share", "% or 0 to 1", $"above 0 % and below {WettestPercent} %")
    {
        public override bool TryRead(IWritten written, out double value)
        {
            // 7 % is 7, not 7.000000000000001.
            value = Math.Round((written.Share(aboveNone: false, belowAll: false) ?? double.NaN) * 100, 9);
            if (value is <= 0 or >= WettestPercent)
            {
                written.Refuse($"is {written.Quoted}", $"write a share {Range}; packed seed has about 5 % to 15 %");
                return false;
            }

            return !double.IsNaN(value);
        }

        public override string Show(double value, UnitSystem units) => $"{Plain(value)} %";
    }
}
