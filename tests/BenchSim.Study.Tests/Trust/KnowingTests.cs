using BenchSim.Study.Trust;

namespace BenchSim.Study.Tests.Trust;

/// <summary>What knowing is worth, on problems solved by hand.</summary>
public sealed class KnowingTests
{
    private const int Sets = 4096;
    private const int Parts = 32;

    // The change brings 10 x - 4 plants, x uniform between 0 and 1: 1 on average, so it is chosen. Who knows x leaves it where x < 0.4 and
    // spares the integral of 4 - 10 x from 0 to 0.4, which is 1.6 - 0.8 = 0.8 plants. The other choice is better in 40 % of cases. The
    // second value does nothing, and knowing it is worth nothing.
    [Fact]
    public void Knowing_a_value_is_worth_what_the_hand_works_out()
    {
        var sets = ValueSets.Of(Sets, [0, 1], 3);
        var gains = Array.ConvertAll(sets, set => (10 * set[0]) - 4);
        int[] all = [.. Enumerable.Range(0, Sets)];

        // A part that holds the turn at 0.4 is taken as a whole: it hides at most 10 x (1/32)^2 / 8 = 0.0012.
        Assert.Equal(0.8, Knowing.OfOne(FirstShares.PartsOf(sets, 0, Parts), gains, Parts, all), 0.005);
        Assert.Equal(0, Knowing.OfOne(FirstShares.PartsOf(sets, 1, Parts), gains, Parts, all), 0.005);
        Assert.Equal(0.8, Knowing.OfAll(gains), 0.005);
        Assert.Equal(0.4, Knowing.Changes(gains), 0.005);
    }

    // Two values that matter alike: 6 (x + y) - 6, none on average. Knowing both is worth E max(0, 6 (x + y - 1)) = 6 E max(0, s - 1) with
    // s = x + y triangular on 0 to 2: 6 x 1/6 = 1. Knowing x alone: E max(0, 6 x - 3) = 6 x 1/8 = 0.75.
    [Fact]
    public void Knowing_one_of_two_values_is_worth_less_than_knowing_both()
    {
        var sets = ValueSets.Of(Sets, [0, 1], 3);
        var gains = Array.ConvertAll(sets, set => (6 * (set[0] + set[1])) - 6);
        int[] all = [.. Enumerable.Range(0, Sets)];
        Assert.Equal(1, Knowing.OfAll(gains), 0.02);
        Assert.Equal(0.75, Knowing.OfOne(FirstShares.PartsOf(sets, 0, Parts), gains, Parts, all), 0.02);
    }

    // A choice that no value turns: knowing is worth nothing.
    [Fact]
    public void Where_no_value_turns_the_choice_knowing_is_worth_nothing()
    {
        var sets = ValueSets.Of(Sets, [0], 3);
        var gains = Array.ConvertAll(sets, set => 5 + set[0]);
        Assert.Equal(0, Knowing.OfAll(gains), 1e-9);
        Assert.Equal(0, Knowing.Changes(gains));
    }

    // A table of 3 sets by 2 seasons: set means 1, 3, 5, season means 2 and 4, nothing else. The variance of the set means is 4 and of the
    // season means 2; no rest. So values make 4 and luck 2.
    [Fact]
    public void Values_and_luck_are_told_apart()
    {
        var outcomes = new SetOutcomes(1, 3, 2);
        for (var set = 0; set < 3; set++)
        {
            for (var season = 0; season < 2; season++)
            {
                outcomes[0, set, season] = (2 * set) + (2 * season);
            }
        }

        var widths = TwoWidths.Of(outcomes, 0);
        Assert.Equal(4, widths.Values, 1e-9);
        Assert.Equal(2, widths.Luck, 1e-9);
        Assert.Equal(4 / 6.0, widths.ShareOfValues, 1e-9);
    }

    // The same means of sets, and luck in a cell that the season does not explain.
    [Fact]
    public void Luck_of_a_set_by_itself_is_not_counted_as_values()
    {
        // Cells: 0 2 | 3 3 | 4 6. Set means 1, 3, 5; season means 7/3, 11/3; mean 3. Rests: -1/3 +1/3 | +2/3 -2/3 | -1/3 +1/3, their
        // squares 12/9; over (3 - 1) x (2 - 1) = 2/3. Values: 4 - (2/3) / 2 = 11/3. Luck: (8/9 - (2/3) / 3) + 2/3 = 4/3.
        var outcomes = new SetOutcomes(1, 3, 2);
        double[] cells = [0, 2, 3, 3, 4, 6];
        for (var cell = 0; cell < cells.Length; cell++)
        {
            outcomes[0, cell / 2, cell % 2] = cells[cell];
        }

        var widths = TwoWidths.Of(outcomes, 0);
        Assert.Equal(11 / 3.0, widths.Values, 1e-6);
        Assert.Equal(4 / 3.0, widths.Luck, 1e-6);
    }
}
