using BenchSim.Folder.Text;
using BenchSim.Folder.Toml;
using BenchSim.Season.Heat;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Site;

/// <summary>Reads the electricity of the mats of one [[space]].</summary>
internal sealed class MatPowerReader(CellReader cells, Section section)
{
    private const double MostWatts = 100_000;
    private const double MostWattsEachPlace = 500;
    private const double MostVolts = 1000;
    private const double MostAmps = 1000;
    private const double HighestPrice = 1_000_000;

    private static readonly string[] Keys = ["watts", "watts_each_place", "duty", "circuit_volts", "circuit_amps", "power_price"];

    /// <summary>The electricity; null where it is not given or had a fault.</summary>
    /// <param name="kind">Kind of the space; null where it could not be read.</param>
    /// <param name="mostPlaces">Most places the space ever has.</param>
    public MatPower? Read(SpaceKind? kind, int mostPlaces)
    {
        var given = Keys.Where(section.Has).ToList();
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
        var watts = ReadWatts(given[0], mostPlaces);
        var duty = cells.Fraction(section.Scalar("duty")) ?? MatElectricity.DefaultDuty;
        var volts = cells.Number(section.Scalar("circuit_volts"), 1, MostVolts);
        var amps = cells.Number(section.Scalar("circuit_amps"), 1, MostAmps);
        var price = cells.Number(section.Scalar("power_price"), 0, HighestPrice);
        section.RefuseHalf("circuit_volts", "120", "circuit_amps", "15");
        if (cells.Faults.Count > before || watts is null)
        {
            return null;
        }

        WarnOfLoad(watts.Value, volts, amps);
        return new MatPower(watts.Value, duty, volts, amps, price);
    }

    private double? ReadWatts(string firstKey, int mostPlaces)
    {
        var (allCell, eachCell) = (section.Scalar("watts"), section.Scalar("watts_each_place"));
        var all = cells.Number(allCell, 0, MostWatts);
        var each = cells.Number(eachCell, 0, MostWattsEachPlace);
        if (section.Has("watts") && section.Has("watts_each_place"))
        {
            cells.Refuse(eachCell, "is given together with watts", "write watts, or watts_each_place, not both");
        }
        else if (!section.Has("watts") && !section.Has("watts_each_place") && section.IsWhole)
        {
            cells.Faults.Add(
                section.PlaceOf(firstKey),
                $"{firstKey} is given but the watts of the mats are not",
                "add a line such as watts = 200, for all mats together, or watts_each_place = 16.7"
            );
        }

        return all ?? (each * mostPlaces);
    }

    private void WarnOfLoad(double watts, double? volts, double? amps)
    {
        if (volts is null || amps is null || CircuitCheck.Of(watts, volts.Value, amps.Value) is not { IsWithin: false } check)
        {
            return;
        }

        var place = section.Scalar(section.Has("watts") ? "watts" : "watts_each_place").Place;
        cells.Faults.Warn(place, check.Words.TrimEnd('.'), CircuitCheck.Caution.TrimEnd('.'));
    }
}
