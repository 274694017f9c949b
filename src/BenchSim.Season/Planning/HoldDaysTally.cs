using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>Counts hold days, year after year: crops that the weather treats alike are counted once.</summary>
internal sealed class HoldDaysTally
{
    private const int FortnightDays = 14;

    private readonly SeasonPlan _plan;
    private readonly int _days;
    private readonly ImmutableArray<Line> _lines;
    private int _years;

    public HoldDaysTally(SeasonPlan plan, ClimateLayout layout, int days)
    {
        (_plan, _days) = (plan, days);
        ImmutableArray<BatchPlan> batches = [.. plan.Batches.OrderBy(batch => batch.Crop.Id, StringComparer.Ordinal)];
        var table = batches
            .Where(batch => !batch.Tables.IsEmpty)
            .GroupBy(batch => (batch.Crop.TableAboveC, Airs: string.Join(' ', AirsOf(batch, layout))))
            .OrderBy(group => group.Key.TableAboveC)
            .ThenBy(group => group.Key.Airs, StringComparer.Ordinal)
            .Select(group => new Line(HoldKind.Table, group.Key.TableAboveC, AirsOf(group.First(), layout), Names(group), Fortnights));
        var field = batches
            .GroupBy(batch => (batch.Crop.FieldAboveC, batch.Order.FieldCover))
            .OrderBy(group => group.Key)
            .Select(group => new Line(HoldKind.Field, group.Key.FieldAboveC, [], Names(group), Fortnights)
            {
                Cover = group.Key.FieldCover,
            });
        _lines = [.. table, new Line(HoldKind.WetField, null, [], [], Fortnights), .. field];
    }

    private int Fortnights => (_days + FortnightDays - 1) / FortnightDays;

    /// <summary>Counts one year's weather.</summary>
    /// <param name="climate">Climate of a season.</param>
    public void Add(SeasonClimate climate)
    {
        _years++;
        foreach (var line in _lines)
        {
            for (var fortnight = 0; fortnight < Fortnights; fortnight++)
            {
                var held = 0;
                for (var day = fortnight * FortnightDays; day < Math.Min(_days, (fortnight + 1) * FortnightDays); day++)
                {
                    held += Holds(line, climate, day) ? 1 : 0;
                }

                line.Sums[fortnight] += held;
                line.Squares[fortnight] += held * held;
            }
        }
    }

    /// <summary>The counts of all years so far; at least one must have been added.</summary>
    public ImmutableArray<HoldDays> ToHoldDays() =>
        [
            .. _lines.Select(line => new HoldDays
            {
                Kind = line.Kind,
                AboveC = line.AboveC,
                Cover = line.Cover,
                Under = [.. line.Airs.Select(air => air == 0 ? "" : _plan.Scenario.Houses[air - 1].Id).Order(StringComparer.Ordinal)],
                Crops = line.Crops,
                Fortnights = [.. Enumerable.Range(0, Fortnights).Select(fortnight => ToHolds(line, fortnight))],
            }),
        ];

    private static ImmutableArray<int> AirsOf(BatchPlan batch, ClimateLayout layout) =>
        [.. batch.Tables.Select(layout.AirOf).Distinct().Order()];

    private static ImmutableArray<string> Names(IEnumerable<BatchPlan> batches) =>
        [.. batches.DistinctBy(batch => batch.Crop.Id, StringComparer.Ordinal).Select(batch => batch.Crop.Name)];

    private bool Holds(Line line, SeasonClimate climate, int day)
    {
        var rules = _plan.Scenario.Rules;
        return line.Kind switch
        {
            HoldKind.WetField => WeatherHold.IsWet(climate.Weather, day, rules),
            HoldKind.Field => WeatherHold.FromField(climate.Weather, day, rules, line.AboveC!.Value, line.Cover),
            _ => line.Airs.All(air => WeatherHold.FromTable(climate.NightC(air), day, rules, line.AboveC!.Value)),
        };
    }

    private FortnightHolds ToHolds(Line line, int fortnight)
    {
        var first = fortnight * FortnightDays;
        var mean = (double)line.Sums[fortnight] / _years;
        var variance = _years > 1 ? Math.Max(0, (line.Squares[fortnight] - (mean * line.Sums[fortnight])) / (_years - 1)) : 0;
        return new FortnightHolds(
            _plan.Scenario.Window.Opens.AddDays(first),
            Math.Min(FortnightDays, _days - first),
            mean,
            Math.Sqrt(variance),
            _years
        );
    }

    private sealed class Line(HoldKind kind, double? aboveC, ImmutableArray<int> airs, ImmutableArray<string> crops, int fortnights)
    {
        public HoldKind Kind { get; } = kind;

        public double? AboveC { get; } = aboveC;

        public FieldCover Cover { get; init; }

        public ImmutableArray<int> Airs { get; } = airs;

        public ImmutableArray<string> Crops { get; } = crops;

        public long[] Sums { get; } = new long[fortnights];

        public long[] Squares { get; } = new long[fortnights];
    }
}
