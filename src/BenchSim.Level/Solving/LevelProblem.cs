namespace BenchSim.Level.Solving;

/// <summary>
/// Which choice of each batch keeps the sum of their loads most within the room: first as little as can be beyond it, summed over groups and days;
/// then, of the ways to that, the one with the fewest days of shift.
/// </summary>
/// <param name="Choices">Choices by batch, one or more each.</param>
/// <param name="Fixed">Load of all that does not move, by group and day.</param>
/// <param name="Room">Load there is room for, by group and day.</param>
internal sealed record LevelProblem(SowingChoice[][] Choices, long[][] Fixed, long[][] Room)
{
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
