using System.Collections.Concurrent;
using System.Collections.Immutable;
using BenchSim.Answers.Opening;
using BenchSim.Workbench.Drafts;
using BenchSim.Workbench.Plays;
using BenchSim.Workbench.Showing;

namespace BenchSim.Workbench.Tests.Plays;

/// <summary>What the player answers, and in which order.</summary>
public sealed class PlayerTests : IDisposable
{
    private readonly FarmFolder _folder = new();
    private readonly BlockingCollection<Told> _told = [];

    public void Dispose()
    {
        _folder.Dispose();
        _told.Dispose();
    }

    [Fact]
    public void A_first_answer_is_sharpened_until_the_last()
    {
        using var player = Open(20, [50, 100]);
        player.Ask(Of(1, FarmFolder.GoodPlan));
        Assert.Equal([(20, false), (50, false), (100, true)], Enumerable.Range(0, 3).Select(_ => Next()));
    }

    [Fact]
    public void A_hand_that_moves_sees_answers_and_the_newest_is_answered_last()
    {
        using var player = Open(20, [100_000]);
        for (var plants = 1; plants <= 50; plants++)
        {
            player.Ask(Of(plants, $"id,crop,plants,sow\na,tomato,{plants},2027-03-01\n"));
        }

        var answered = new List<long>();
        while (answered.LastOrDefault() < 50)
        {
            answered.Add(_told.Take().Question.Revision);
        }

        Assert.Equal(answered.Order(), answered);
    }

    [Fact]
    public void A_try_is_set_against_the_files_season_by_season()
    {
        using var player = Open(20, [50, 80]);
        player.Ask(Of(1, "id,crop,plants,sow\na,tomato,2000,2027-03-01\n") with { Files = TextsOf(FarmFolder.GoodPlan) });
        var first = _told.Take();
        Assert.Equal(20, first.Base?.Result?.Seasons);
        Assert.Null(first.Change);
        Told last;
        do
        {
            last = _told.Take();
        } while (last.Change is null);

        AssertOneNumberOfSeasons(50, last);
        AssertOneNumberOfSeasons(80, _told.Take());

        static void AssertOneNumberOfSeasons(int seasons, Told told)
        {
            Assert.Equal(seasons, told.Base?.Result?.Seasons);
            Assert.Equal(seasons, told.Change!.Base.Seasons);
            Assert.Equal(told.Base!.Result!.Fits.Hits, told.Change.Base.Hits);
            Assert.Equal(told.Played.Result!.Fits.Hits, told.Change.Variant.Hits);
        }
    }

    // The try calls 60 more days in time and changes nothing that grows: it wins nothing by that.
    [Fact]
    public void A_try_that_moves_the_yardstick_gains_nothing_by_it()
    {
        const string Plan = "id,crop,plants,set_out\na,tomato,1200,2027-05-03\nb,tomato,1200,2027-05-04\n";
        var files = TextsOf(Plan);
        var lenient = files.With("site.toml", FarmFolder.GoodSite + "\n[rules]\nlate_days = 60\nservice_goal = \"50 %\"\n");
        using var player = Open(20, [50]);
        player.Ask(new Question(1, 1, false, lenient, files));
        Told told;
        do
        {
            told = _told.Take();
            Assert.DoesNotContain("more.", AnswerDocument.Of(told, _ => null).Difference, StringComparison.Ordinal);
        } while (told.Change is null);

        Assert.True(told.Played.Result!.Fits.Hits > told.Base!.Result!.Fits.Hits, "the try says no other fit of itself");
        Assert.Equal(0, told.Change!.Differing);
        Assert.Contains("by what the files call in time", AnswerDocument.Of(told, _ => null).Difference, StringComparison.Ordinal);
    }

    [Fact]
    public void A_player_that_was_stopped_is_asked_in_vain()
    {
        var player = Open(20, []);
        player.Dispose();
        player.Ask(Of(1, FarmFolder.GoodPlan));
        player.Dispose();
        Assert.Empty(_told);
    }

    [Fact]
    public void Texts_with_faults_are_answered_with_all_of_them()
    {
        using var player = Open(20, [50]);
        player.Ask(Of(1, "id,crop,plants,sow\na,tomatoe,100,2027-03-01\nb,kale,none,2027-03-01\n"));
        var told = _told.Take();
        Assert.Null(told.Played.Result);
        Assert.Equal(["plan.csv:2:3", "plan.csv:3:8"], told.Played.Faults.Select(fault => fault.Place.ToString()), StringComparer.Ordinal);
    }

    [Fact]
    public void A_fault_of_the_program_is_told_as_one_and_the_next_question_is_answered()
    {
        var opened = 0;
        var good = ScenarioSource.Folder(_folder.Path);
        using var player = new Player(_ => ++opened == 1 ? throw new InvalidOperationException("inside") : good, _told.Add, 20, []);
        player.Ask(Of(1, FarmFolder.GoodPlan));
        var told = _told.Take();
        Assert.Equal("InvalidOperationException", told.Played.Failure);
        var answer = AnswerDocument.Of(told, _ => null);
        Assert.Empty(answer.Faults);
        Assert.Contains("a fault of the program, not of your files", answer.Failure, StringComparison.Ordinal);
        player.Ask(Of(2, FarmFolder.GoodPlan));
        Assert.Equal(20, _told.Take().Played.Result?.Seasons);
    }

    private Player Open(int first, ImmutableArray<int> further) =>
        Player.Of(new OpenFolder(_folder.Path), told => _told.Add(told), new KeptOpenings(), first, further);

    private static ImmutableSortedDictionary<string, string> TextsOf(string plan) =>
        Texts.None.With("site.toml", FarmFolder.GoodSite).With("plan.csv", plan);

    private static Question Of(long number, string plan) => new(number, 0, false, TextsOf(plan), TextsOf(plan));

    private (int Seasons, bool IsLast) Next()
    {
        var told = _told.Take();
        return (told.Played.Result!.Seasons, told.IsLast);
    }
}
