namespace BenchSim.Study.Trust;

/// <summary>What was read off the seasons of value sets: a number for each measure, set and season.</summary>
/// <param name="measures">Measures.</param>
/// <param name="sets">Sets.</param>
/// <param name="seasons">Seasons of each set, the same ones.</param>
public sealed class SetOutcomes(int measures, int sets, int seasons)
{
    private readonly float[] _values = new float[measures * sets * seasons];

    /// <summary>Measures.</summary>
    public int Measures => measures;

    /// <summary>Sets.</summary>
    public int Sets => sets;

    /// <summary>Seasons of each set.</summary>
    public int Seasons => seasons;

    /// <summary>A number.</summary>
    /// <param name="measure">Number of the measure.</param>
    /// <param name="set">Number of the set.</param>
    /// <param name="season">Number of the season.</param>
    public double this[int measure, int set, int season]
    {
        get => _values[(((measure * sets) + set) * seasons) + season];
        set => _values[(((measure * sets) + set) * seasons) + season] = (float)value;
    }

    /// <summary>The means of each set.</summary>
    /// <param name="measure">Number of the measure.</param>
    public double[] Means(int measure) => Means(measure, seasons);

    /// <summary>The means of each set over its first seasons.</summary>
    /// <param name="measure">Number of the measure.</param>
    /// <param name="first">How many.</param>
    public double[] Means(int measure, int first)
    {
        var means = new double[sets];
        for (var set = 0; set < sets; set++)
        {
            var sum = 0.0;
            for (var season = 0; season < first; season++)
            {
                sum += this[measure, set, season];
            }

            means[set] = sum / first;
        }

        return means;
    }
}
