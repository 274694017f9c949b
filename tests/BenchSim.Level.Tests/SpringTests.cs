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

    private static readonly FolderReading s_reading = ScenarioFolder.Read(Folder);
    private static readonly SeasonPlan s_plan = SeasonPlanner.Make(MayMove(s_reading.Scenario!)).Plan!;
    private static readonly LevelOptions s_options = new()
    {
        Seasons = Seasons,
        Seed = 2027,
        ExpectedSeasons = 60,
    };
    private static readonly LevelResult s_result = LevelRunner.Run(s_plan, s_options, new Leveller(), null, CancellationToken.None);

    // Intervals hold with 95 % confidence, all groups together; the seed is fixed, so the test always says the same.
    [Fact]
    public void The_peak_falls_and_the_play_confirms_it()
    {
        var mats = s_result.Groups.Single(group => group.Group.Kind == SpaceKind.Mat);
        Assert.True(mats.After.Places < mats.Before.Places, $"{mats.Before.Places} to {mats.After.Places}");
        Assert.True(mats.Played!.High < 0, mats.Played.ToString());
        Assert.True(s_result.OverAfter < s_result.OverBefore);
        Assert.True(s_result.IsOverProved && s_result.IsShiftProved);
        Assert.Equal(s_result.OverAfter, s_result.OverBound, 1e-9);
        Assert.Equal(s_result.ShiftDays, s_result.ShiftBound);
    }

    [Fact]
    public void The_verdict_is_what_the_intervals_say()
    {
        var trial = s_result.Trial!.Variants[0];
        var late = trial.Of(Measures.LatePlantDays)!;
        var isBetter = (late.IsReal && late.Difference < 0) || (trial.Fits.IsReal && trial.Fits.Difference > 0);
        var isWorse = (late.IsReal && late.Difference > 0) || (trial.Fits.IsReal && trial.Fits.Difference < 0);
        Assert.Equal(isBetter && !isWorse ? LevelVerdict.Adopt : LevelVerdict.Keep, s_result.Verdict);
    }

    [Fact]
    public void Every_move_is_within_its_tolerance_on_a_work_day_and_the_field_keeps_its_dates()
    {
        Assert.NotEmpty(s_result.Moves);
        foreach (var move in s_result.Moves)
        {
            BatchOrder order = s_plan.Scenario.Batches.Single(order => order.Id == move.Batch);
            Assert.InRange(move.Days, -order.EarlierDays, order.LaterDays);
            Assert.True(s_plan.Scenario.Rules.IsWorkDay(move.To), move.ToString());
            Assert.True(order.SetOut is null || move.SetOutFrom == move.SetOutTo, move.ToString());
        }

        Assert.Equal(s_result.ShiftDays, s_result.Moves.Sum(move => Math.Abs(move.Days)));
    }

    // The season's own count of places, kept apart from that of the batches, over the same seasons: those after the trial's.
    [Fact]
    public void Expected_places_are_the_mean_of_the_places_wanted()
    {
        var (player, season) = (new SeasonPlayer(s_plan, s_options.Seed), new SeasonResult());
        var sums = new long[s_plan.Days];
        var mats = s_plan.Scenario.Spaces.Select((space, at) => (space, at)).Single(each => each.space.Kind == SpaceKind.Mat).at;
        for (var number = Seasons; number < Seasons + s_options.ExpectedSeasons; number++)
        {
            player.Play(number, PlaceLimits.None, season);
            for (var day = 0; day < sums.Length; day++)
            {
                sums[day] += season.Held[mats][day];
            }
        }

        var before = s_result.Groups.Single(group => group.Group.Kind == SpaceKind.Mat).Before;
        Assert.Equal((double)sums.Max() / s_options.ExpectedSeasons, before.Places, 1e-9);
        Assert.Equal(s_plan.FirstDay.AddDays(Array.IndexOf(sums, sums.Max())), before.On);
        Assert.Equal(sums.Sum(sum => Math.Max(0, ((double)sum / s_options.ExpectedSeasons) - 52)), before.OverPlaceDays, 1e-6);
    }

    [Fact]
    public void The_file_that_is_written_plans_as_the_plan_that_was_tried()
    {
        var old = s_reading.Inputs.Single(input => input.Name == FileNames.Plan).Bytes;
        var levelled = MovedPlan.Write(old, s_result.Moves.ToDictionary(move => move.Batch, move => move.To, StringComparer.Ordinal));
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
            Assert.Equal(string.Join('\n', s_result.Levelled!.Batches.Select(Text)), string.Join('\n', plan.Batches.Select(Text)));
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
        var few = s_options with { Seasons = 12, ExpectedSeasons = 9 };
        Assert.Equal(
            Text(LevelRunner.Run(s_plan, few with { Threads = 1 }, new Leveller(), null, CancellationToken.None)),
            Text(LevelRunner.Run(s_plan, few with { Threads = 3 }, new Leveller(), null, CancellationToken.None))
        );
    }

    [Fact]
    public void A_smaller_share_to_fill_leaves_more_room()
    {
        var few = s_options with { Seasons = 2, ExpectedSeasons = 20 };
        var all = LevelRunner.Run(s_plan, few, new Leveller(), null, CancellationToken.None);
        var most = LevelRunner.Run(s_plan, few with { Fill = 0.9 }, new Leveller(), null, CancellationToken.None);
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
