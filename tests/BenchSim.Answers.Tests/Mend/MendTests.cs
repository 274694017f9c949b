using BenchSim.Answers.Asking;
using BenchSim.Answers.Mend;
using BenchSim.Answers.Opening;
using BenchSim.Season.Inputs;
using BenchSim.Study;
using BenchSim.Study.Compare;
using BenchSim.Study.Figures;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Tests.Mend;

/// <summary>What would mend a plan is found; it is what a variant file says, and it keeps its gain.</summary>
public sealed class MendTests
{
    private const int Seasons = 200;

    private static readonly PlayWatch s_watch = new(CancellationToken.None);

    private static readonly Dictionary<string, Func<FarmFolder>> s_farms = new(StringComparer.Ordinal)
    {
        ["few mats"] = MendFarms.WithFewMats,
        ["short table"] = MendFarms.WithShortTable,
        ["late house"] = MendFarms.WithLateHouse,
    };

    public static TheoryData<string> Farms => [.. s_farms.Keys];

    // Every change of the list is played in full against the plan, in seasons of another seed, by what compares variants. Its best is the
    // best of mend, or cannot be told from it.
    [Theory]
    [Trait("Category", "Slow")]
    [MemberData(nameof(Farms))]
    public void The_best_single_change_is_that_of_a_full_play_of_all(string name)
    {
        using var folder = s_farms[name]();
        var answer = Ask(folder);
        var best = answer.Result.Singles[0];
        var (brute, gains) = Brute(folder);
        Assert.True(
            best.Change.Code == brute || best.AsGood.Any(other => other.Code == brute) || gains[brute] - gains[best.Change.Code] < 0.02,
            $"{best.Change.Code} ({gains[best.Change.Code]:0.000}), and not {brute} ({gains[brute]:0.000})"
        );
        Assert.True(gains[best.Change.Code] > 0.1);
    }

    // The farms are made so that it is plain what they lack.
    [Theory]
    [InlineData("few mats", "places mats")]
    [InlineData("short table", "places table")]
    [InlineData("late house", "open second")]
    public void What_a_farm_lacks_is_among_the_changes(string name, string mark)
    {
        using var folder = s_farms[name]();
        var result = Ask(folder).Result;
        Assert.Contains(result.Singles.Select(single => single.Change).Concat(result.Singles.SelectMany(single => single.AsGood)), change =>
            change.Mark == mark
        );
        Assert.NotEmpty(result.Steps);
        Assert.True(result.After.Fits.Share > result.Before.Fits.Share);
    }

    [Fact]
    public void A_farm_that_lacks_nothing_is_told_so()
    {
        using var folder = MendFarms.WithEnough();
        var answer = Ask(folder);
        Assert.True(answer.Result.IsMetBefore);
        Assert.Empty(answer.Result.Steps);
        Assert.Contains("nothing needs mending", answer.Screen!.Headline, StringComparison.Ordinal);
    }

    // What was chosen, written as a variant and compared with the plan in the same seasons, gains to the plant what mend says.
    [Theory]
    [MemberData(nameof(Farms))]
    public void The_variant_that_is_written_plays_as_was_said(string name)
    {
        using var folder = s_farms[name]();
        var answer = Ask(folder, write: "mended");
        var source = ScenarioSource.Folder(folder.Path);
        var plan = source.Open().Plan;
        var compared = CompareRunner.Play(
            plan,
            source.OpenVariants(plan, ["mended"]).Plans,
            new StudyOptions { Seasons = Seasons, Seed = plan.Scenario.Play.Seed },
            null,
            CancellationToken.None
        );
        var gain = answer.Result.Steps[^1].Gain;
        var variant = compared.Variants[0];
        Assert.Equal((variant.Fits.Base.Hits, variant.Fits.Variant.Hits), (gain.Fits.Base.Hits, gain.Fits.Variant.Hits));
        Assert.Equal(-variant.Of(Measures.PlantsInTime)!.Difference, gain.Late.Difference, 9);
    }

    [Fact]
    public void The_same_question_has_the_same_answer_on_any_number_of_threads()
    {
        using var folder = MendFarms.WithShortTable();
        Assert.Equal(Ask(folder, threads: 1).Json(), Ask(folder, threads: 3).Json());
    }

    // Twenty searches, each with a seed of its own; the truth is 4,000 seasons of the same two plans with yet another. The interval of the
    // chance of fit has 95 % confidence or more (Bonferroni); that of the truth is a fifth as wide. Were it right in just 95 %, fewer than
    // 17 of 20 would hold it with a chance of 1.6 %.
    [Fact]
    [Trait("Category", "Slow")]
    public void The_gain_of_what_was_chosen_is_that_of_fresh_seasons()
    {
        using var folder = MendFarms.WithLateHouse();
        var held = 0;
        for (var repeat = 0; repeat < 20; repeat++)
        {
            var answer = Ask(folder, seed: 100 + (ulong)repeat);
            var step = answer.Result.Steps[^1];
            var fresh = CompareRunner.Play(
                answer.Result.Plan,
                [("chosen", step.Plan)],
                new StudyOptions { Seasons = 4000, Seed = 900 + (ulong)repeat },
                null,
                CancellationToken.None
            );
            var truth = fresh.Variants[0];
            var late = -truth.Of(Measures.PlantsInTime)!.Difference;
            held +=
                truth.Fits.Difference >= step.Gain.Fits.Low
                && truth.Fits.Difference <= step.Gain.Fits.High
                && late >= step.Gain.Late.Low
                && late <= step.Gain.Late.High
                    ? 1
                    : 0;
        }

        Assert.InRange(held, 17, 20);
    }

    [Fact]
    public void What_is_marked_as_not_here_is_left_out()
    {
        using var folder = MendFarms.WithShortTable();
        folder.Write("not-here.txt", "places table   # no room beside it\nheat\n\n# a remark\n");
        var result = Ask(folder).Result;
        Assert.True(result.NotHere > 0);
        Assert.DoesNotContain(Everything(result), change => change is PlacesChange { Space.Id: "table" } or SetPointChange);
    }

    [Theory]
    [InlineData("place table", "not-here.txt:1:1: nothing that could be changed is called \"place table\"; did you mean \"places\"")]
    [InlineData("places tabel", "did you mean \"places table\"")]
    [InlineData("sow a\nsow d", "not-here.txt:2:1: ")]
    public void A_mark_of_nothing_is_a_fault_with_its_place(string text, string fault)
    {
        using var folder = MendFarms.WithShortTable();
        folder.Write("not-here.txt", text);
        var found = Assert.Throws<FaultsFoundException>(() => Ask(folder));
        Assert.Contains(fault, Assert.Single(found.Faults).ToString(), StringComparison.Ordinal);
    }

    // Every change of the list can be written, read and planned, or is refused by a fault; none throws.
    [Theory]
    [MemberData(nameof(Farms))]
    public void Every_change_is_a_variant_that_can_be_read(string name)
    {
        using var folder = s_farms[name]();
        var opened = ScenarioSource.Folder(folder.Path).Open();
        var changes = MendCandidates.Of(opened.Plan, opened.OpenFlats[0]);
        Assert.Equal(changes.Length, changes.Select(change => change.Code).Distinct(StringComparer.Ordinal).Count());
        var planned = changes.Select(change => (change, Plan: new MendPlanner(opened).Make([change]))).ToArray();
        Assert.All(planned.Where(each => each.Plan is not null && !each.change.IsOfTheOrder), each =>
            Assert.Equal(Wanted(opened.Plan), Wanted(each.Plan!))
        );
        Assert.True(planned.Count(each => each.Plan is not null) > changes.Length / 2);
    }

    // Wanted plants and dates stay those of the plan: by them it is told what is late.
    private static IEnumerable<(string, int, DateOnly)> Wanted(SeasonPlan plan) =>
        plan.Batches.Select(batch => (batch.Order.Id, batch.Order.Plants, batch.SetOutOn));

    private static IEnumerable<MendChange> Everything(MendResult result) =>
        result
            .Singles.SelectMany(single => single.AsGood.Append(single.Change))
            .Concat(result.Steps.SelectMany(step => step.AsGood.Append(step.Change)));

    private static MendAnswer Ask(FarmFolder folder, string? write = null, ulong? seed = null, int? threads = null) =>
        new MendQuestion
        {
            Scenario = ScenarioSource.Folder(folder.Path),
            Play = new PlayWish(Seasons, seed, threads),
            Write = write,
        }.Ask(null, s_watch);

    // Seasons that fit more, and the share of plants in time more: what mend ranks by (docs/mend.md).
    private static (string Best, Dictionary<string, double> Gains) Brute(FarmFolder folder)
    {
        var opened = ScenarioSource.Folder(folder.Path).Open();
        var planner = new MendPlanner(opened);
        var wanted = opened.Plan.Batches.Sum(batch => (double)batch.Order.Plants);
        (string Name, SeasonPlan Plan)[] variants =
        [
            .. MendCandidates
                .Of(opened.Plan, opened.OpenFlats[0])
                .Where(change => !change.IsOfTheOrder)
                .Select(change => (change.Code, Plan: planner.Make([change])))
                .Where(each => each.Plan is not null)
                .Select(each => (each.Code, each.Plan!)),
        ];
        var played = CompareRunner.Play(opened.Plan, variants, new StudyOptions { Seasons = 600, Seed = 77 }, null, CancellationToken.None);
        var gains = played.Variants.ToDictionary(
            variant => variant.Name,
            variant => variant.Fits.Difference + (variant.Of(Measures.PlantsInTime)!.Difference / wanted),
            StringComparer.Ordinal
        );
        return (gains.MaxBy(each => each.Value).Key, gains);
    }
}
