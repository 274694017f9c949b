using BenchSim.Season.Inputs;
using BenchSim.Season.Play;

namespace BenchSim.Study.Figures;

/// <summary>A played season as measures read it.</summary>
internal sealed class MeasuredSeason
{
    private readonly int[][] _spacesOfKind;
    private readonly (BatchPlan Plan, int At)[] _batches;
    private readonly long _wanted;

    /// <summary>Readies it for the seasons of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="crop">Crop whose batches goods are counted of; null for all.</param>
    public MeasuredSeason(SeasonPlan plan, string? crop = null)
    {
        Scenario = plan.Scenario;
        _spacesOfKind =
        [
            .. Enum.GetValues<SpaceKind>()
                .Select(kind => Enumerable.Range(0, Scenario.Spaces.Length).Where(space => Scenario.Spaces[space].Kind == kind).ToArray()),
        ];
        _batches =
        [
            .. plan
                .Batches.Select((batch, at) => (batch, at))
                .Where(each => crop is null || string.Equals(each.batch.Order.CropId, crop, StringComparison.Ordinal)),
        ];
        _wanted = plan.Batches.Sum(batch => (long)batch.Order.Plants);
    }

    public Scenario Scenario { get; }

    public SeasonResult Season { get; private set; } = new();

    public long PlantsLate => _wanted - Season.PlantsInTime;

    public long LatePlantDays => LatePlantDaysOf(Season.Batches);

    public long WorkParts => WorkSeason.PartsOf(Season, Scenario.Rules);

    public long PlaceDays => Season.Held.Sum(days => Rows.Sum(days));

    /// <summary>Late plant-days of a season, all batches.</summary>
    public static long LatePlantDaysOf(BatchOutcome[] batches)
    {
        long sum = 0;
        foreach (var batch in batches)
        {
            sum += batch.LatePlantDays;
        }

        return sum;
    }

    /// <summary>
    /// Thousandths of a day from sowing to field size, mean of the trays that went out; null where none did. A day has 24 hours.
    /// </summary>
    public static long? GrowingDaysOf(BatchOutcome[] batches)
    {
        long hours = 0;
        long trays = 0;
        foreach (var batch in batches)
        {
            hours += batch.GrowingHours;
            trays += batch.TraysOut;
        }

        return trays == 0 ? null : SeasonEnergy.Rounded(hours / (24.0 * trays));
    }

    /// <summary>Fills one number a measure; each is 0 or more.</summary>
    public void Read(SeasonResult season, IReadOnlyList<Measure> measures, long[] values)
    {
        Season = season;
        for (var at = 0; at < values.Length; at++)
        {
            values[at] = measures[at].Read(this);
        }
    }

    /// <summary>Most places held on any day in all spaces of a kind together.</summary>
    public long Peak(SpaceKind kind)
    {
        var spaces = _spacesOfKind[(int)kind];
        var peak = 0;
        for (var day = 0; day < Season.Sown.Length; day++)
        {
            var held = 0;
            foreach (var space in spaces)
            {
                held += Season.Held[space][day];
            }

            peak = Math.Max(peak, held);
        }

        return peak;
    }

    /// <summary>Tray-days in all spaces of a kind together.</summary>
    public long TrayDays(SpaceKind kind)
    {
        long sum = 0;
        foreach (var space in _spacesOfKind[(int)kind])
        {
            sum += Rows.Sum(Season.Held[space]);
        }

        return sum;
    }

    /// <summary>A sum over the batches that goods are counted of.</summary>
    public long Goods(Func<BatchPlan, BatchOutcome, long> of)
    {
        long sum = 0;
        foreach ((var plan, var at) in _batches)
        {
            sum += of(plan, Season.Batches[at]);
        }

        return sum;
    }
}
