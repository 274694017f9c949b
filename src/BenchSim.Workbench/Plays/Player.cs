using System.Collections.Immutable;
using BenchSim.Answers.Asking;
using BenchSim.Answers.Opening;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Compare;
using BenchSim.Study.Kept;
using BenchSim.Study.Results;
using BenchSim.Workbench.Drafts;

namespace BenchSim.Workbench.Plays;

/// <summary>
/// Answers the newest question. A short play is always finished, so that a moving hand sees answers; then the newest question is taken
/// next, and while there is none the play goes on to more seasons, which a newer question stops.
/// </summary>
internal sealed class Player : IDisposable
{
    /// <summary>Seasons of the first answer.</summary>
    public const int UsualFirst = 200;

    private static readonly ImmutableArray<int> s_usualFurther = [1000, 4000];

    // The first answer is drawn before the cores are taken again, and a hand that goes on asks sooner than that.
    private static readonly TimeSpan s_breath = TimeSpan.FromMilliseconds(150);

    private readonly Func<ImmutableSortedDictionary<string, string>, ScenarioSource> _open;
    private readonly Action<Told> _tell;
    private readonly Lock _gate = new();
    private readonly SemaphoreSlim _wake = new(0);
    private readonly CancellationTokenSource _end = new();
    private readonly KeptSeasons _seasons = new();
    private readonly PlayedShelf _shelf = new();
    private readonly Thread _thread;
    private readonly int _first;
    private readonly ImmutableArray<int> _further;
    private Question? _next;
    private bool _isStopped;
    private CancellationTokenSource _newer = new();

    /// <summary>Starts a player.</summary>
    /// <param name="open">Opens texts as a scenario.</param>
    /// <param name="tell">Told every answer, on the player's thread.</param>
    /// <param name="first">Seasons of the first answer.</param>
    /// <param name="further">Seasons of the sharper answers that follow, rising.</param>
    internal Player(
        Func<ImmutableSortedDictionary<string, string>, ScenarioSource> open,
        Action<Told> tell,
        int first,
        ImmutableArray<int> further
    )
    {
        (_open, _tell, _first, _further) = (open, tell, first, further);
        _thread = new Thread(Work) { IsBackground = true, Name = "player" };
        _thread.Start();
    }

    /// <summary>Starts a player of the files of a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="tell">Told every answer, on the player's thread.</param>
    /// <param name="kept">Keeps what does not change from one opening of the folder to the next.</param>
    public static Player Of(OpenFolder folder, Action<Told> tell, KeptOpenings kept) => Of(folder, tell, kept, UsualFirst, s_usualFurther);

    /// <summary>The same with other numbers of seasons.</summary>
    public static Player Of(OpenFolder folder, Action<Told> tell, KeptOpenings kept, int first, ImmutableArray<int> further) =>
        new(texts => folder.Source(texts, kept), tell, first, further);

    /// <summary>What is kept of the seasons played, for others who play the same plans.</summary>
    public KeptSeasons Kept => _seasons;

    /// <summary>
    /// Asks for the answer of texts. Any earlier question that is not being answered yet is forgotten; a player that has been stopped
    /// answers no more.
    /// </summary>
    public void Ask(Question question)
    {
        lock (_gate)
        {
            if (!_isStopped)
            {
                _next = question;
                _newer.Cancel();
                _wake.Release();
            }
        }
    }

    /// <summary>What has been played of texts so far; null for nothing.</summary>
    public Played? Find(ImmutableSortedDictionary<string, string> texts, long beside) => _shelf.Find(texts, beside);

    /// <inheritdoc />
    public void Dispose()
    {
        lock (_gate)
        {
            if (_isStopped)
            {
                return;
            }

            _isStopped = true;
            _end.Cancel();
            _wake.Release();
        }

        _thread.Join();
        _newer.Dispose();
        _end.Dispose();
        _wake.Dispose();
    }

    private void Work()
    {
        while (!_end.IsCancellationRequested)
        {
            _wake.Wait();
            if (Take() is not { } question)
            {
                continue;
            }

            try
            {
                Answer(question.Question, question.Newer);
            }
            catch (OperationCanceledException)
            {
                // A newer question, or the end.
            }
            catch (Exception failure) when (failure is not OutOfMemoryException)
            {
                // A fault of the program itself: it is told in the place of the answer, and the next question is answered.
                var failed = new Played(question.Question.Now, question.Question.Beside) { Failure = failure.GetType().Name };
                _tell(new Told(question.Question, failed, null, null, true));
            }
        }
    }

    private (Question Question, CancellationToken Newer)? Take()
    {
        lock (_gate)
        {
            if (_next is not { } question)
            {
                return null;
            }

            _next = null;
            _newer.Dispose();
            _newer = CancellationTokenSource.CreateLinkedTokenSource(_end.Token);
            return (question, _newer.Token);
        }
    }

    private void Answer(Question question, CancellationToken newer)
    {
        var isBase = Texts.Differing(question.Now, question.Files).IsEmpty;
        var played = PlayTo(_first, question.Now, question.Beside, _end.Token);
        var files = isBase ? null : PlayTo(_first, question.Files, question.Beside, _end.Token);
        var isLast = played.Result is not { } first || _further.IsEmpty || (isBase && first.Seasons >= _further[^1]);
        _tell(new Told(question, played, files, null, isLast));
        if (!isLast && newer.WaitHandle.WaitOne(s_breath))
        {
            return;
        }

        foreach (var seasons in isLast ? [] : _further)
        {
            played = PlayTo(seasons, question.Now, question.Beside, newer);
            files = isBase ? null : PlayTo(seasons, question.Files, question.Beside, newer);
            isLast = seasons == _further[^1];

            // The first of them is told before it is compared; a sharper one with its difference, so that both are of as many seasons.
            var isFirst = seasons == _further[0];
            if (isFirst)
            {
                _tell(new Told(question, played, files, null, isLast));
            }

            var change = Compared(played, files, newer);
            if (change is not null || !isFirst)
            {
                _tell(new Told(question, played, files, change, isLast));
            }
        }
    }

    private Played PlayTo(int seasons, ImmutableSortedDictionary<string, string> texts, long beside, CancellationToken cancel)
    {
        var played = _shelf.Find(texts, beside) ?? Open(texts, beside);
        if (played.Plan is { } plan && (played.Result is not { } result || result.Seasons < seasons))
        {
            var options = new StudyOptions { Seasons = seasons, Seed = plan.Scenario.Play.Seed };
            played = played with { Result = StudyRunner.Play(plan, options, null, cancel, _seasons) };
        }

        _shelf.Keep(played);
        return played;
    }

    private Played Open(ImmutableSortedDictionary<string, string> texts, long beside)
    {
        try
        {
            var opened = SeasonDay.Open(_open(texts));
            return new Played(texts, beside) { Plan = opened.Plan, Today = opened.From?.Today };
        }
        catch (FaultsFoundException found)
        {
            return new Played(texts, beside) { Faults = found.Faults };
        }
    }

    // Both on the same luck, season by season; not where the season opens on another day, or the luck is another.
    private static FitChange? Compared(Played played, Played? files, CancellationToken cancel)
    {
        if (
            played is not { Plan: { } plan, Result: { } result }
            || files?.Plan is not { } basePlan
            || plan.FirstDay != basePlan.FirstDay
            || plan.Scenario.Play.Seed != basePlan.Scenario.Play.Seed
        )
        {
            return null;
        }

        var options = new StudyOptions { Seasons = result.Seasons, Seed = result.Seed };
        return CompareRunner.Play(basePlan, [("try", Yardstick.Judged(basePlan, plan))], options, null, cancel).Variants[0].Fits;
    }
}
