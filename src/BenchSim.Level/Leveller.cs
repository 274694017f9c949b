using System.Globalization;
using BenchSim.Study.Levelling;
using Google.OrTools.Sat;

namespace BenchSim.Level;

/// <summary>
/// Solves a <see cref="LevelProblem"/> exactly with the CP-SAT solver of OR-Tools. One worker with a fixed seed, limited by its own count
/// of steps and
/// not by the clock: the same problem gives the same answer on each run of one build of the solver.
/// </summary>
public sealed class Leveller : ILeveller
{
    static Leveller() => SolverFiles.LookInFolder();

    /// <summary>One that can work here; null where the solver's files were left out.</summary>
    public static Leveller? IfHere => SolverFiles.AreHere ? new Leveller() : null;

    /// <inheritdoc />
    public LevelSolution Solve(LevelProblem problem, double effort, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var planned = problem.AsPlanned();
        if (problem.Over(planned) == 0 || problem.Choices.All(choices => choices.Length == 1))
        {
            return new LevelSolution(planned, problem.Over(planned), 0, true, true);
        }

        var draft = new Draft(problem);
        draft.Hint(planned);
        draft.MinimizeOver();
        var least = draft.Search(effort, cancel);

        // What the solver has before it found anything is no worse than the plan itself.
        var best = least.Chosen is { } found && problem.Over(found) < problem.Over(planned) ? found : planned;
        if (problem.Over(best) == problem.Over(planned))
        {
            return new LevelSolution(planned, least.Bound, 0, least.IsProved, true);
        }

        draft.Hint(best);
        draft.MinimizeShift(problem.Over(best));
        var shortest = draft.Search(effort, cancel);
        if (shortest.Chosen is { } nearer && problem.Over(nearer) <= problem.Over(best) && problem.Shift(nearer) <= problem.Shift(best))
        {
            best = nearer;
        }

        draft.Hint(best);
        draft.MinimizeUnevenness(problem.Shift(best));
        var spread = draft.Search(effort, cancel);
        if (
            spread.Chosen is { } fairer
            && problem.Over(fairer) <= problem.Over(best)
            && problem.Shift(fairer) <= problem.Shift(best)
            && problem.Unevenness(fairer) < problem.Unevenness(best)
        )
        {
            best = fairer;
        }

        return new LevelSolution(best, least.Bound, (int)shortest.Bound, least.IsProved, shortest.IsProved);
    }

    private readonly record struct Found(int[]? Chosen, long Bound, bool IsProved);

    private sealed class Draft
    {
        private readonly CpModel _model = new();
        private readonly LevelProblem _problem;
        private readonly BoolVar[][] _isChosen;
        private readonly List<IntVar> _over = [];
        private readonly LinearExpr _shift;
        private readonly long _unavoidable;

        public Draft(LevelProblem problem)
        {
            _problem = problem;
            _isChosen =
            [
                .. problem.Choices.Select(
                    (choices, batch) => choices.Select((_, at) => _model.NewBoolVar(Name("sown", batch, at))).ToArray()
                ),
            ];
            foreach (var ofBatch in _isChosen)
            {
                _model.AddExactlyOne(ofBatch);
            }

            for (var group = 0; group < problem.Room.Length; group++)
            {
                for (var day = 0; day < problem.Room[group].Length; day++)
                {
                    _unavoidable += AddDay(group, day);
                }
            }

            _shift = LinearExpr.WeightedSum(
                _isChosen.SelectMany(ofBatch => ofBatch).ToArray(),
                problem.Choices.SelectMany(choices => choices).Select(choice => (long)Math.Abs(choice.Shift)).ToArray()
            );
        }

        public void Hint(int[] chosen)
        {
            _model.ClearHints();
            for (var batch = 0; batch < _isChosen.Length; batch++)
            {
                for (var at = 0; at < _isChosen[batch].Length; at++)
                {
                    _model.AddHint(_isChosen[batch][at], at == chosen[batch]);
                }
            }
        }

        public void MinimizeOver() => _model.Minimize(LinearExpr.Sum(_over) + _unavoidable);

        public void MinimizeShift(long mostOver)
        {
            _model.Add(LinearExpr.Sum(_over) + _unavoidable <= mostOver);
            _model.Minimize(_shift);
        }

        // As few beyond the room and as few days as before; what a grower's moves weigh grows with their square.
        public void MinimizeUnevenness(int mostShift)
        {
            _model.Add(_shift <= mostShift);
            var squares = new List<IntVar>();
            var growers = Enumerable.Range(0, _isChosen.Length).GroupBy(batch => _problem.Growers.Count == 0 ? 0 : _problem.Growers[batch]);
            foreach (var own in growers)
            {
                BoolVar[] moves = [.. own.SelectMany(batch => _isChosen[batch].Where((_, at) => _problem.Choices[batch][at].Shift != 0))];
                long most = own.Count();
                var count = _model.NewIntVar(0, most, Name("moved", own.Key, 0));
                var square = _model.NewIntVar(0, most * most, Name("uneven", own.Key, 0));
                _model.Add(count == LinearExpr.Sum(moves));
                _model.AddMultiplicationEquality(square, count, count);
                squares.Add(square);
            }

            _model.Minimize(LinearExpr.Sum(squares));
        }

        public Found Search(double effort, CancellationToken cancel)
        {
            cancel.ThrowIfCancellationRequested();

            // Ctrl-C is the program's to catch: the solver's own handler would run on whichever thread the signal comes to, and end the
            // program there.
            using var solver = new CpSolver
            {
                StringParameters = string.Create(
                    CultureInfo.InvariantCulture,
                    $"num_workers:1 interleave_search:false random_seed:1 catch_sigint_signal:false max_deterministic_time:{effort}"
                ),
            };
            using var stop = cancel.Register(solver.StopSearch);
            var status = solver.Solve(_model);
            cancel.ThrowIfCancellationRequested();
            if (status == CpSolverStatus.ModelInvalid)
            {
                throw new InvalidOperationException("The solver refused the levelling as badly put.");
            }

            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return new Found(null, 0, false);
            }

            // Objectives are whole numbers, so a bound may be rounded up.
            return new Found(Chosen(solver), (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), status == CpSolverStatus.Optimal);
        }

        private int[] Chosen(CpSolver solver) => [.. _isChosen.Select(ofBatch => Array.FindIndex(ofBatch, solver.BooleanValue))];

        // What a choice takes above the least of its batch is what matters; a day that has room for anything, or that nothing can change,
        // needs no variable.
        private long AddDay(int group, int day)
        {
            var least = _problem.Fixed[group][day];
            var most = least;
            var variables = new List<BoolVar>();
            var extra = new List<long>();
            for (var batch = 0; batch < _problem.Choices.Length; batch++)
            {
                long[] loads = [.. _problem.Choices[batch].Select(choice => choice.Load[group][day])];
                var low = loads.Min();
                least += low;
                most += loads.Max();
                for (var at = 0; at < loads.Length; at++)
                {
                    if (loads[at] > low)
                    {
                        variables.Add(_isChosen[batch][at]);
                        extra.Add(loads[at] - low);
                    }
                }
            }

            var room = _problem.Room[group][day];
            if (most <= room)
            {
                return 0;
            }

            var always = Math.Max(0, least - room);
            if (variables.Count == 0)
            {
                return always;
            }

            // always + over >= least + extra - room
            var over = _model.NewIntVar(0, most - room - always, Name("over", group, day));
            _model.Add(LinearExpr.WeightedSum(variables, extra) - over <= room - least + always);
            _over.Add(over);
            return always;
        }

        private static string Name(string what, int one, int two) => string.Create(CultureInfo.InvariantCulture, $"{what}-{one}-{two}");
    }
}
