using System.Collections.Immutable;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>A temperature below which a night holds crops of the plan back.</summary>
/// <param name="TemperatureC">Temperature, degrees Celsius.</param>
/// <param name="ToTable">Names of the crops that do not go to the hardening table with a colder night in the forecast, in order of
/// id.</param>
/// <param name="ToField">Names of the crops that do not go to the field with a colder night in the forecast, in order of id.</param>
public sealed record HoldThreshold(double TemperatureC, ImmutableArray<string> ToTable, ImmutableArray<string> ToField)
{
    /// <summary>The distinct thresholds of a plan's crops, coldest first.</summary>
    /// <param name="plan">Plan.</param>
    public static ImmutableArray<HoldThreshold> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<Crop> crops =
        [
            .. plan
                .Batches.Select(batch => batch.Crop)
                .DistinctBy(crop => crop.Id, StringComparer.Ordinal)
                .OrderBy(crop => crop.Id, StringComparer.Ordinal),
        ];
        return
        [
            .. crops
                .SelectMany(crop => new[] { crop.TableAboveC, crop.FieldAboveC })
                .Distinct()
                .Order()
                .Select(celsius => new HoldThreshold(
                    celsius,
                    [.. crops.Where(crop => crop.TableAboveC == celsius).Select(crop => crop.Name)],
                    [.. crops.Where(crop => crop.FieldAboveC == celsius).Select(crop => crop.Name)]
                )),
        ];
    }
}
