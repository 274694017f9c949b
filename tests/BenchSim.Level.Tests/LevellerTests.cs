using BenchSim.Study.Levelling;

namespace BenchSim.Level.Tests;

/// <summary>What levelling chooses is the best there is, and always the same.</summary>
public class LevellerTests
{
    // Two batches of 3 trays stand 2 days each; there are 3 places. Sown together they are 3 over on 2 days, 6 in all; a day apart 3 over
    // on 1 day;
    // two days apart none. Only the second may move, by 1 or 2 days.
    [Fact]
    public void Two_sowings_that_collide_are_moved_just_far_enough()
    {
        LevelProblem problem = new(
            [
                [Stay(0, 0)],
                [Stay(0, 0), Stay(1, 1), Stay(2, 2), Stay(3, 3)],
            ],
            [new long[6]],
            [
                [3, 3, 3, 3, 3, 3],
            ]
        );
        Assert.Equal(6, problem.Over(problem.AsPlanned()));
        var solution = Solve(problem);
        Assert.Equal([0, 2], solution.Chosen);
        Assert.Equal(
            (0, 2, true, true),
            (problem.Over(solution.Chosen), solution.ShiftBound, solution.IsOverProved, solution.IsShiftProved)
        );
    }

    [Fact]
    public void Nothing_moves_where_all_have_room() =>
        Assert.Equal(
            [1, 0],
            Solve(
                new LevelProblem(
                    [
                        [Stay(-1, 0), Stay(0, 1)],
                        [Stay(0, 3)],
                    ],
                    [new long[6]],
                    [
                        [3, 3, 3, 3, 3, 3],
                    ]
                )
            ).Chosen
        );

    [Fact]
    public void Nothing_moves_where_moving_does_not_help() =>
        Assert.Equal(
            [0],
            Solve(
                new LevelProblem(
                    [
                        [Stay(0, 0), Stay(1, 1)],
                    ],
                    [new long[6]],
                    [
                        [2, 2, 2, 2, 2, 2],
                    ]
                )
            ).Chosen
        );

    [Fact]
    public void What_does_not_move_takes_its_room_first()
    {
        LevelProblem problem = new(
            [
                [Stay(0, 0), Stay(2, 2)],
            ],
            [
                [1, 0, 0, 0, 0, 0],
            ],
            [
                [3, 3, 3, 3, 3, 3],
            ]
        );
        Assert.Equal([1], Solve(problem).Chosen);
    }

    // 60 random problems of up to 5 batches, 4 choices, 2 groups and 7 days: at most 4^5 = 1,024 combinations each, all tried. The seed is
    // fixed, so there
    // is no chance of error.
    [Fact]
    public void The_best_of_every_combination_is_found()
    {
        var random = new Random(20270301);
        var moved = 0;
        for (var trial = 0; trial < 60; trial++)
        {
            var problem = RandomProblem(random);
            (var over, var shift) = BruteForce(problem);
            var solution = Solve(problem);
            Assert.Equal((over, shift), (problem.Over(solution.Chosen), problem.Shift(solution.Chosen)));
            Assert.Equal(
                (over, shift, true, true),
                (solution.OverBound, solution.ShiftBound, solution.IsOverProved, solution.IsShiftProved)
            );
            moved += shift > 0 ? 1 : 0;
        }

        // A test in which nothing ever had to move would show nothing.
        Assert.True(moved >= 30, $"only {moved} of 60 moved");
    }

    // Three pairs of sowings share three days with room for one: one of each pair must move by a day. The first of each is grower 0's, the
    // second grower 1's, 2's and 1's: as good to the room and the days whoever moves. Even is one of each grower, 1 + 1 + 1.
    [Fact]
    public void Moves_that_are_as_good_are_spread_over_the_growers()
    {
        SowingChoice[] Pair(int day)
        {
            long[] Load(int on) => [.. Enumerable.Range(0, 6).Select(each => each == on ? 1L : 0)];
            return [new SowingChoice(0, [Load(day)]), new SowingChoice(1, [Load(day + 1)])];
        }

        LevelProblem problem = new(
            [Pair(0), Pair(0), Pair(2), Pair(2), Pair(4), Pair(4)],
            [new long[6]],
            [
                [1, 1, 1, 1, 1, 1],
            ]
        )
        {
            Growers = [0, 1, 0, 2, 0, 1],
        };
        var chosen = Solve(problem).Chosen;
        Assert.Equal((0, 3, 3), (problem.Over(chosen), problem.Shift(chosen), problem.Unevenness(chosen)));
        Assert.Equal(9, problem.Unevenness([1, 0, 1, 0, 1, 0]));
    }

    [Fact]
    public void The_same_problem_has_the_same_answer_each_time()
    {
        var random = new Random(7);
        var problem = RandomProblem(random, batches: 14, choices: 9, days: 25);
        var first = Solve(problem, 0.05).Chosen;
        for (var run = 0; run < 3; run++)
        {
            Assert.Equal(first, Solve(problem, 0.05).Chosen);
        }
    }

    [Fact]
    public void Too_little_effort_to_prove_is_said_and_nothing_gets_worse()
    {
        var problem = RandomProblem(new Random(8), batches: 30, choices: 12, days: 60);
        var solution = Solve(problem, 1e-6);
        Assert.False(solution.IsOverProved && solution.IsShiftProved);
        Assert.InRange(problem.Over(solution.Chosen), solution.OverBound, problem.Over(problem.AsPlanned()));
    }

    [Fact]
    public void A_stopped_search_is_no_answer()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        LevelProblem problem = new(
            [
                [Stay(0, 0), Stay(2, 2)],
            ],
            [
                [1, 0, 0, 0, 0, 0],
            ],
            [
                [3, 3, 3, 3, 3, 3],
            ]
        );
        Assert.Throws<OperationCanceledException>(() => new Leveller().Solve(problem, 1, stop.Token));
    }

    private static LevelSolution Solve(LevelProblem problem, double effort = 20) =>
        new Leveller().Solve(problem, effort, CancellationToken.None);

    // Three trays for two days of six.
    private static SowingChoice Stay(int shift, int day)
    {
        var load = new long[6];
        for (var at = day; at < Math.Min(day + 2, load.Length); at++)
        {
            load[at] = 3;
        }

        return new SowingChoice(shift, [load]);
    }

    private static LevelProblem RandomProblem(Random random, int batches = 0, int choices = 4, int days = 7)
    {
        batches = batches > 0 ? batches : random.Next(2, 6);
        var made = new SowingChoice[batches][];
        for (var batch = 0; batch < batches; batch++)
        {
            var count = random.Next(2, choices + 1);
            var planned = random.Next(count);
            var start = random.Next(days);
            var size = random.Next(1, 20);
            made[batch] =
            [
                .. Enumerable
                    .Range(0, count)
                    .Select(at => new SowingChoice(
                        at - planned,
                        [
                            Loads(days, start + at - planned, random.Next(1, 3), size),
                            Loads(days, start + at - planned + 2, random.Next(1, 4), size),
                        ]
                    )),
            ];
        }

        long[][] Rows(int least, int most) =>
            [.. Enumerable.Range(0, 2).Select(_ => Enumerable.Range(0, days).Select(_ => (long)random.Next(least, most)).ToArray())];
        return new LevelProblem(made, Rows(0, 4), Rows(8, 24));
    }

    private static long[] Loads(int days, int from, int length, int size) =>
        [.. Enumerable.Range(0, days).Select(day => day >= from && day < from + length ? (long)size : 0)];

    private static (long Over, int Shift) BruteForce(LevelProblem problem)
    {
        (long Over, int Shift) best = (long.MaxValue, int.MaxValue);
        var chosen = new int[problem.Choices.Length];
        while (true)
        {
            var at = (problem.Over(chosen), problem.Shift(chosen));
            if (at.CompareTo(best) < 0)
            {
                best = at;
            }

            var batch = 0;
            while (batch < chosen.Length && ++chosen[batch] == problem.Choices[batch].Length)
            {
                chosen[batch++] = 0;
            }

            if (batch == chosen.Length)
            {
                return best;
            }
        }
    }
}
