namespace BenchSim.Study.Levelling;

/// <summary>
/// Which choice of each batch keeps the sum of their loads most within the room: first as little as can be beyond it, summed over groups
/// and days;
/// then, of the ways to that, one with the fewest days of shift; and of those, one that spreads the sowings moved over the growers.
/// </summary>
/// <param name="Choices">Choices by batch, one or more each.</param>
/// <param name="Fixed">Load of all that does not move, by group and day.</param>
/// <param name="Room">Load there is room for, by group and day.</param>
public sealed record LevelProblem(SowingChoice[][] Choices, long[][] Fixed, long[][] Room)
{
    /// <summary>Number of the grower of each batch, from 0; empty where all are one grower's.</summary>
    public IReadOnlyList<int> Growers { get; init; } = [];

    /// <summary>
    /// How unevenly the moves lie on the growers: the sum over growers of the square of the sowings moved. Of choices with as many moves,
    /// the one that is most even has the least.
    /// </summary>
    /// <param name="chosen">Position of the choice of each batch.</param>
    public int Unevenness(IReadOnlyList<int> chosen) =>
        Enumerable
            .Range(0, Choices.Length)
            .Where(batch => Choices[batch][chosen[batch]].Shift != 0)
            .GroupBy(batch => Growers.Count == 0 ? 0 : Growers[batch])
            .Sum(moved => moved.Count() * moved.Count());

    /// <summary>What is beyond the room in all.</summary>
    /// <param name="chosen">Position of the choice of each batch.</param>
    public long Over(IReadOnlyList<int> chosen)
    {
        long over = 0;
        for (var group = 0; group < Room.Length; group++)
        {
            for (var day = 0; day < Room[group].Length; day++)
            {
                over += Math.Max(0, Load(chosen, group, day) - Room[group][day]);
            }
        }

        return over;
    }

    /// <summary>Load of a group on a day.</summary>
    public long Load(IReadOnlyList<int> chosen, int group, int day)
    {
        var load = Fixed[group][day];
        for (var batch = 0; batch < Choices.Length; batch++)
        {
            load += Choices[batch][chosen[batch]].Load[group][day];
        }

        return load;
    }

    /// <summary>Days of shift in all.</summary>
    public int Shift(IReadOnlyList<int> chosen)
    {
        var days = 0;
        for (var batch = 0; batch < Choices.Length; batch++)
        {
            days += Math.Abs(Choices[batch][chosen[batch]].Shift);
        }

        return days;
    }

    /// <summary>The choices that leave every batch where it is.</summary>
    public int[] AsPlanned() => [.. Choices.Select(choices => Array.FindIndex(choices, choice => choice.Shift == 0))];
}

/// <summary>One day on which a batch may be sown, as levelling sees it.</summary>
/// <param name="Shift">Days from the planned sow date, below 0 for earlier; 0 exactly once in a batch.</param>
/// <param name="Load">
/// What the batch takes then, by group and day, whole numbers of 0 or more in the unit of <see cref="LevelProblem.Room"/>.
/// </param>
public sealed record SowingChoice(int Shift, long[][] Load);

/// <summary>The best choices found.</summary>
/// <param name="Chosen">Position of the choice of each batch.</param>
/// <param name="OverBound">What is beyond the room can be no less than this, whatever is chosen.</param>
/// <param name="ShiftBound">
/// Days of shift can be no fewer than this with as little beyond the room as <paramref name="Chosen"/> leaves.
/// </param>
/// <param name="IsOverProved">True when it is proved that no choice leaves less beyond the room.</param>
/// <param name="IsShiftProved">True when it is proved that none with as little beyond the room shifts fewer days.</param>
public sealed record LevelSolution(int[] Chosen, long OverBound, int ShiftBound, bool IsOverProved, bool IsShiftProved);
