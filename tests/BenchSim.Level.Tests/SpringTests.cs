using System.Collections.Immutable;
using BenchSim.Folder;
using BenchSim.Folder.Files;
using BenchSim.Folder.Plan;
using BenchSim.Season.Inputs;
using BenchSim.Season.Planning;
using BenchSim.Season.Play;
using BenchSim.Study.Figures;
using BenchSim.Study.Levelling;

namespace BenchSim.Level.Tests;

/// <summary>The spring example: the peaks fall, and the play confirms it.</summary>
public class SpringTests
{
    private const int Seasons = 150;

    public static readonly string Folder = Path.Combine(Repository.Root, "scenarios", "two-house-spring");

    private static readonly FolderReading Reading = ScenarioFolder.Read(Folder);
    private static readonly SeasonPlan Plan = SeasonPlanner.Make(MayMove(Reading.Scenario!)).Plan!;
    private static readonly LevelOptions Options = new()
    {
        Seasons = Seasons,
        Seed = 2027,
        ExpectedSeasons = 60,
    };
    private static readonly LevelResult Result = LevelRunner.Run(Plan, Options, new Leveller(), null, CancellationToken.None);

    // Intervals hold with 95 % confidence, all groups together; the seed is fixed, so the test always says the same.
    [Fact]
    public void The_peak_falls_and_the_play_confirms_it()
    {
        var mats = Result.Groups.Single(group => group.Group.Kind == SpaceKind.Mat);
        Assert.True(mats.After.Places < mats.Before.Places, $"{mats.Before.Places} to {mats.After.Places}");
        Assert.True(mats.Played!.High < 0, mats.Played.ToString());
        Assert.True(Result.OverAfter < Result.OverBefore);
        Assert.True(Result.IsOverProved && Result.IsShiftProved);
        Assert.Equal(Result.OverAfter, Result.OverBound, 1e-9);
        Assert.Equal(Result.ShiftDays, Result.ShiftBound);
    }

    [Fact]
    public void The_verdict_is_what_the_intervals_say()
    {
        var trial = Result.Trial!.Variants[0];
        var late = trial.Of(Measures.LatePlantDays)!;
        var isBetter = (late.IsReal && late.Difference < 0) || (trial.Fits.IsReal && trial.Fits.Difference > 0);
        var isWorse = (late.IsReal && late.Difference > 0) || (trial.Fits.IsReal && trial.Fits.Difference < 0);
        Assert.Equal(isBetter && !isWorse ? LevelVerdict.Adopt : LevelVerdict.Keep, Result.Verdict);
    }

    [Fact]
    public void Every_move_is_within_its_tolerance_on_a_work_day_and_the_field_keeps_its_dates()
    {
        Assert.NotEmpty(Result.Moves);
        foreach (var move in Result.Moves)
        {
            BatchOrder order = Plan.Scenario.Batches.Single(order => order.Id == move.Batch);
            Assert.InRange(move.Days, -order.EarlierDays, order.LaterDays);
            Assert.True(Plan.Scenario.Rules.IsWorkDay(move.To), move.ToString());
            Assert.True(order.SetOut is null || move.SetOutFrom == move.SetOutTo, move.ToString());
        }

        Assert.Equal(Result.ShiftDays, Result.Moves.Sum(move => Math.Abs(move.Days)));
    }

    // The season's own count of places, kept apart from that of the batches, over the same seasons: those after the trial's.
    [Fact]
    public void Expected_places_are_the_mean_of_the_places_wanted()
    {
        var (player, season) = (new SeasonPlayer(Plan, Options.Seed), new SeasonResult());
        var sums = new long[Plan.Days];
        var mats = Plan.Scenario.Spaces.Select((space, at) => (space, at)).Single(each => each.space.Kind == SpaceKind.Mat).at;
        for (var number = Seasons; number < Seasons + Options.ExpectedSeasons; number++)
        {
            player.Play(number, PlaceLimits.None, season);
            for (var day = 0; day < sums.Length; day++)
            {
                sums[day] += season.Held[mats][day];
            }
        }

        var before = Result.Groups.Single(group => group.Group.Kind == SpaceKind.Mat).Before;
        Assert.Equal((double)sums.Max() / Options.ExpectedSeasons, before.Places, 1e-9);
        Assert.Equal(Plan.FirstDay.AddDays(Array.IndexOf(sums, sums.Max())), before.On);
        Assert.Equal(sums.Sum(sum => Math.Max(0, ((double)sum / Options.ExpectedSeasons) - 52)), before.OverPlaceDays, 1e-6);
    }

    [Fact]
    public void The_file_that_is_written_plans_as_the_plan_that_was_tried()
    {
        var old = Reading.Inputs.Single(input => input.Name == FileNames.Plan).Bytes;
        var levelled = MovedPlan.Write(old, Result.Moves.ToDictionary(move => move.Batch, move => move.To, StringComparer.Ordinal));
        var folder = Directory.CreateTempSubdirectory("benchsim-level-").FullName;
        try
        {
            foreach (var file in Directory.EnumerateFiles(Folder))
            {
                File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
            }

            File.WriteAllBytes(Path.Combine(folder, FileNames.Plan), [.. levelled]);
            var reading = ScenarioFolder.Read(folder);
            Assert.Empty(reading.Faults);
            var plan = SeasonPlanner.Make(reading.Scenario!).Plan!;
            Assert.Equal(string.Join('\n', Result.Levelled!.Batches.Select(Text)), string.Join('\n', plan.Batches.Select(Text)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    [Trait("Category", "Slow")]
    public void Threads_change_nothing()
    {
        var few = Options with { Seasons = 12, ExpectedSeasons = 9 };
        Assert.Equal(
            Text(LevelRunner.Run(Plan, few with { Threads = 1 }, new Leveller(), null, CancellationToken.None)),
            Text(LevelRunner.Run(Plan, few with { Threads = 3 }, new Leveller(), null, CancellationToken.None))
        );
    }

    [Fact]
    public void A_smaller_share_to_fill_leaves_more_room()
    {
        var few = Options with { Seasons = 2, ExpectedSeasons = 20 };
        var all = LevelRunner.Run(Plan, few, new Leveller(), null, CancellationToken.None);
        var most = LevelRunner.Run(Plan, few with { Fill = 0.9 }, new Leveller(), null, CancellationToken.None);
        Assert.True(most.OverBefore > all.OverBefore);
        Assert.True(Peak(most) <= Peak(all), $"{Peak(most)} against {Peak(all)}");

        static double Peak(LevelResult result) => result.Groups.Single(group => group.Group.Kind == SpaceKind.Mat).After.Places;
    }

    // What fruits may be sown up to five days earlier and three days later; the rest stays where it is.
    private static Scenario MayMove(Scenario scenario) =>
        scenario with
        {
            Batches =
            [
                .. scenario.Batches.Select(order =>
                    order.CropId
                        is "pepper"
                            or "eggplant"
                            or "tomato"
                            or "tomatillo"
                            or "winter-squash"
                            or "pumpkin"
                            or "melon"
                            or "watermelon"
                            or "okra"
                        ? order with
                        {
                            EarlierDays = 5,
                            LaterDays = 3,
                        }
                        : order with
                        {
                            EarlierDays = 0,
                            LaterDays = 0,
                        }
                ),
            ],
        };

    private static string Text(LevelResult result) =>
        string.Join(
            '\n',
            [
                .. result.Moves.Select(move => move.ToString()),
                .. result.Groups.Select(group => $"{group.Before} {group.After} {group.Played}"),
                .. result.Trial!.Variants[0].Changes.Select(change => change.ToString()),
            ]
        );

    private static string Text(BatchPlan batch) =>
        (
            batch with
            {
                Order = batch.Order with { Place = default, EarlierDays = 0, LaterDays = 0 },
                Mats = [],
                Benches = [],
                Tables = [],
                Crop = batch.Crop with { GerminationCurve = [], Benches = [], Mats = [] },
            }
        ).ToString();
}
