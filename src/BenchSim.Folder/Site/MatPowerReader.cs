using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Site;

/// <summary>Reads the electricity of the mats of one [[space]].</summary>
internal sealed class MatPowerReader(CellReader cells, Section section)
{
    /// <summary>The electricity; null where it is not given or had a fault.</summary>
    /// <param name="kind">Kind of the space; null where it could not be read.</param>
    /// <param name="mostPlaces">Most places the space ever has.</param>
    public MatPower? Read(SpaceKind? kind, int mostPlaces)
    {
        var given = PowerFields.Table.Names.Where(section.Has).ToList();
        if (given.Count == 0)
        {
            return null;
        }

        if (kind is SpaceKind.Bench or SpaceKind.Table)
        {
            foreach (var key in given)
            {
                cells.Refuse(section.Scalar(key), "is only for a mat", "take it out, or write kind = \"mat\"");
            }

            return null;
        }

        var before = cells.Faults.Count;
        var power = section.Read(PowerFields.Table, PowerFields.Nothing, cells);
        CheckWatts(given[0]);
        section.RefuseHalf("circuit_volts", "120", "circuit_amps", "15");
        power = power.WattsEachPlace is { } each ? power with { Watts = each * mostPlaces } : power;
        if (cells.Faults.Count > before || double.IsNaN(power.Watts))
        {
            return null;
        }

        WarnOfLoad(power);
        return power;
    }

    private void CheckWatts(string firstKey)
    {
        var (hasAll, hasEach) = (section.Has("watts"), section.Has("watts_each_place"));
        if (hasAll && hasEach)
        {
            cells.Refuse(section.Scalar("watts_each_place"), "is given together with watts", "write watts, or watts_each_place, not both");
        }
        else if (!hasAll && !hasEach && section.IsWhole)
        {
            cells.Faults.Add(
                section.PlaceOf(firstKey),
                $"{firstKey} is given but the watts of the mats are not",
                "add a line such as watts = 200, for all mats together, or watts_each_place = 19.5"
            );
        }
    }

    private void WarnOfLoad(MatPower power)
    {
        if (
            power is not { Volts: { } volts, BreakerAmps: { } amps }
            || CircuitCheck.Of(power.Watts, volts, amps) is not { IsWithin: false } check
        )
        {
            return;
        }

        var place = section.Scalar(section.Has("watts") ? "watts" : "watts_each_place").Place;
        cells.Faults.Warn(place, check.Words.TrimEnd('.'), CircuitCheck.Caution.TrimEnd('.'));
    }
}
