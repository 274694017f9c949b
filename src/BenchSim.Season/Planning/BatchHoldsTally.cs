using System.Collections.Immutable;
using BenchSim.Season.Climate;
using BenchSim.Season.Inputs;

namespace BenchSim.Season.Planning;

/// <summary>
/// Counts, year after year, the days on which the weather would keep a batch from the table and from the field in the fortnight from its
/// planned dates on. Batches that the weather treats alike are counted once.
/// </summary>
internal sealed class BatchHoldsTally
{
    private const int FortnightDays = 14;

    private readonly SeasonPlan _plan;
    private readonly (BatchPlan Batch, Line Table, Line Field)[] _batches;
    private readonly Line[] _lines;
    private int _years;

    public BatchHoldsTally(SeasonPlan plan, ClimateLayout layout)
    {
        _plan = plan;
        var lines = new Dictionary<string, Line>(StringComparer.Ordinal);
        _batches =
        [
            .. plan.Batches.Select(batch =>
                (
                    batch,
                    LineOf(lines, batch, HoldKind.Table, batch.TableOn, [.. batch.Tables.Select(layout.AirOf).Distinct().Order()]),
                    LineOf(lines, batch, HoldKind.Field, batch.SetOutOn, [])
                )
            ),
        ];
        _lines = [.. lines.Values];
    }

    /// <summary>Counts one year's weather.</summary>
    /// <param name="climate">Climate of a season.</param>
    public void Add(SeasonClimate climate)
    {
        _years++;
        foreach (var line in _lines)
        {
            for (var day = line.From; day < line.From + FortnightDays; day++)
            {
                line.Held += Holds(line, climate, day) ? 1 : 0;
            }
        }
    }

    /// <summary>
    /// Those that the weather is expected to hold on more than so many of the days, in the order of the plan: from the table or, where it
    /// lets them go there, from the field. At least one year must have been added.
    /// </summary>
    /// <param name="days">Days.</param>
    public ImmutableArray<BatchHold> MoreThan(int days) =>
        [
            .. _batches
                .Select(each =>
                    each.Table.Held > (long)days * _years ? HoldOf(each.Batch, each.Table)
                    : each.Field.Held > (long)days * _years ? HoldOf(each.Batch, each.Field)
                    : null
                )
                .OfType<BatchHold>(),
        ];

    private BatchHold HoldOf(BatchPlan batch, Line line) =>
        new(batch, line.Kind, _plan.FirstDay.AddDays(line.From), FortnightDays, (double)line.Held / _years);

    private Line LineOf(Dictionary<string, Line> lines, BatchPlan batch, HoldKind kind, DateOnly on, ImmutableArray<int> airs)
    {
        var from = on.DayNumber - _plan.FirstDay.DayNumber;
        var (above, cover) = kind == HoldKind.Table ? (batch.Crop.TableAboveC, default) : (batch.Crop.FieldAboveC, batch.Order.FieldCover);
        var key = string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{kind} {from} {above:R} {cover} {string.Join(' ', airs)}"
        );
        if (!lines.TryGetValue(key, out var line))
        {
            lines.Add(key, line = new Line(kind, from, above, cover, airs));
        }

        return line;
    }

    private bool Holds(Line line, SeasonClimate climate, int day)
    {
        var rules = _plan.Scenario.Rules;
        return line.Kind == HoldKind.Field
            ? WeatherHold.FromField(climate.Weather, day, rules, line.AboveC, line.Cover)
            : !line.Airs.IsEmpty && line.Airs.All(air => WeatherHold.FromTable(climate.NightC(air), day, rules, line.AboveC));
    }

    private sealed record Line(HoldKind Kind, int From, double AboveC, FieldCover Cover, ImmutableArray<int> Airs)
    {
        public long Held { get; set; }
    }
}
