using BenchSim.Season.Heat;

namespace BenchSim.Season.Climate;

/// <summary>Gives the air of a day.</summary>
/// <param name="air">Number of the air.</param>
/// <param name="day">Day, 0 the first.</param>
/// <param name="airC">Filled: its 24 hours, degrees Celsius.</param>
internal delegate void FillAirDay(int air, int day, Span<double> airC);

/// <summary>
/// The running heat sums of one season in several airs, filled day by day as far as they are asked for, all that were asked for together:
/// an hour of air is worked out once, and the processor adds up several blocks at the same time. Not for use by several threads at once.
/// </summary>
/// <param name="days">Days covered.</param>
/// <param name="light">Factor of the light on growth, by day.</param>
/// <param name="offsetK">Temperature of a medium less that of its air, kelvin.</param>
/// <param name="airOf">Gives the airs.</param>
internal sealed class HeatSums(int days, double[] light, double offsetK, FillAirDay airOf)
{
    // A season often needs only the beginning of the sums; ten days at a time cost little in steps and waste little.
    private const int DaysAStep = 10;

    private readonly List<AirBlocks> _airs = [];
    private int _filledDays;

    /// <summary>Hours covered.</summary>
    public int Hours { get; } = days * HourlyClimate.Hours;

    /// <summary>Hours that are there; a sum at this hour is the last that may be read.</summary>
    public int Filled { get; private set; }

    /// <summary>Bytes of the sums.</summary>
    public long Bytes
    {
        get
        {
            var blocks = 0;
            foreach (var air in _airs)
            {
                blocks += air.Blocks.Count;
            }

            return blocks * (Hours + 1L) * HeatBlock.Most * sizeof(double);
        }
    }

    /// <summary>Empties the sums, for other weather.</summary>
    public void Renew()
    {
        (_filledDays, Filled) = (0, 0);
        foreach (var air in _airs)
        {
            air.Blocks.ForEach(block => (block.IsFilled, block.IsAsked) = (block.IsAsked, false));
        }
    }

    /// <summary>Makes the table of a law in an air; it stays good for all weathers to come.</summary>
    /// <param name="law">Law.</param>
    /// <param name="air">Number of the air.</param>
    public HeatTable Add(HeatLaw law, int air)
    {
        var of = _airs.Find(each => each.Air == air);
        if (of is null)
        {
            _airs.Add(of = new AirBlocks(air, []));
        }

        var block = of.Blocks.Find(each => each.Count < HeatBlock.Most);
        if (block is null)
        {
            of.Blocks.Add(block = new HeatBlock(offsetK, Hours));
        }

        var table = new HeatTable(this, block, block.Add(law));
        block.IsFilled = false;
        Ask(block);
        return table;
    }

    /// <summary>Tells that a block is read under the present weather: it is filled as far as the others are, and on with them.</summary>
    /// <param name="block">A block of these sums.</param>
    public void Ask(HeatBlock block)
    {
        block.IsAsked = true;
        if (block.IsFilled)
        {
            return;
        }

        block.IsFilled = true;
        var air = _airs.Find(each => each.Blocks.Contains(block))!.Air;
        Span<double> airC = stackalloc double[HourlyClimate.Hours];
        for (var day = 0; day < _filledDays; day++)
        {
            airOf(air, day, airC);
            block.AddDay(day, airC, light[day]);
        }
    }

    /// <summary>Fills the sums to an hour or some days past it, at most to their end.</summary>
    /// <param name="hour">Hour.</param>
    public void FillTo(int hour)
    {
        var until = Math.Min(days, Math.Max((hour + HourlyClimate.Hours - 1) / HourlyClimate.Hours, _filledDays + DaysAStep));
        Span<double> airC = stackalloc double[HourlyClimate.Hours];
        for (; _filledDays < until; _filledDays++)
        {
            foreach (var (air, blocks) in _airs)
            {
                var isThere = false;
                foreach (var block in blocks)
                {
                    if (!block.IsFilled)
                    {
                        continue;
                    }

                    if (!isThere)
                    {
                        airOf(air, _filledDays, airC);
                        isThere = true;
                    }

                    block.AddDay(_filledDays, airC, light[_filledDays]);
                }
            }
        }

        Filled = _filledDays * HourlyClimate.Hours;
    }

    /// <summary>The blocks of one air.</summary>
    private sealed record AirBlocks(int Air, List<HeatBlock> Blocks);
}
