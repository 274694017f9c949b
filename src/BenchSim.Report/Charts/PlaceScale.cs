namespace BenchSim.Report.Charts;

/// <summary>A scale of whole places with round marks.</summary>
internal sealed class PlaceScale
{
    /// <summary>A scale from 0 to at least <paramref name="largest"/>.</summary>
    public PlaceScale(int largest)
    {
        var aim = Math.Max(1, largest);
        Step = 1;
        int[] factors = [2, 5, 10];
        for (var power = 1; aim > 5 * Step; power *= 10)
        {
            foreach (var factor in factors)
            {
                if (aim > 5 * Step)
                {
                    Step = factor * power;
                }
            }
        }

        // A little air above the highest line.
        Top = aim * 1.06;
    }

    /// <summary>Distance of the marks.</summary>
    public int Step { get; }

    /// <summary>Upper end.</summary>
    public double Top { get; }

    /// <summary>The marks.</summary>
    public IEnumerable<int> Marks
    {
        get
        {
            for (var mark = 0; mark <= Top; mark += Step)
            {
                yield return mark;
            }
        }
    }
}
