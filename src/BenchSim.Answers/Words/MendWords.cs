using System.Globalization;
using BenchSim.Report.Words;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Mending;

namespace BenchSim.Answers.Words;

/// <summary>Says a change as something a grower can do, and when it would be wrong.</summary>
internal sealed class MendWords(SeasonPlan basePlan)
{
    private const int LongestName = 24;
    private const int MostGrowers = 3;

    private readonly UnitSystem _units = basePlan.Scenario.Units;
    private readonly Dates _dates = new(basePlan);

    /// <summary>What to do, a sentence.</summary>
    /// <param name="change">The change.</param>
    /// <param name="plan">The plan with it.</param>
    public string Deed(MendChange change, SeasonPlan plan) =>
        change switch
        {
            PlacesChange places => Deed(places, plan),
            OpeningChange opening => $"Open {Name(opening.House.Name)} on {Day(opening.From)}, not {Day(opening.House.OpensOn!.Value)}.",
            SetPointChange heat => Deed(heat),
            CoverChange cover => "Lay a row cover over the hardening table on cold nights (one that adds "
                + $"{Kinds.Difference(0, 20).Show(cover.GainK, _units)}).",
            ReliefChange relief => $"When trays find no place, {ReliefFields.Deed(relief.Relief)}.",
            DenseChange dense => $"Sow {Crop(dense.CropId)} dense, {Numbers.Whole(dense.SeedsPerFlat)} seeds in a flat "
                + $"({Name(dense.Flat.Id)}), and pot it up.",
            FinishChange finish => $"Finish {Crop(finish.CropId)} on {Name(finish.Bench.Name)}, from "
                + $"{ChanceWords.Setting(finish.At)} of its growth on.",
            SlackChange slack => $"Sow {Numbers.Count(Moved(plan), "sowing", "sowings")} sooner, with {slack.To} days of slack before the "
                + $"set-out date, not {slack.From}.",
            SowChange { Moves: [var move] } =>
                $"Sow {Name(move.Line)} on {WeekDay(move.To)}, not {WeekDay(move.From)} ({Name(move.Grower)}).",
            SowChange sow => $"Sow {Numbers.Whole(sow.Moves.Length)} lines on other days: {Spread(sow.Moves)}.",
            FewerChange fewer => $"Grow {Numbers.Whole(fewer.To)} plants of {Name(fewer.Line)}, not {Numbers.Whole(fewer.From)}.",
            LaterChange later => $"Sow and set out {Name(later.Line)} {later.Days} days later.",
            _ => throw new ArgumentOutOfRangeException(nameof(change), change, "An unknown change."),
        };

    /// <summary>The same in a few words, for a list of equals.</summary>
    public string Short(MendChange change) =>
        change switch
        {
            PlacesChange places => $"{Numbers.Count(places.Places, "place", "places")} more on {Name(places.Space.Name)}",
            OpeningChange opening => $"{Name(opening.House.Name)} open on {Day(opening.From)}",
            SetPointChange heat => $"{Name(heat.House.Name)} at {Degrees(heat.NightC)} by night and {Degrees(heat.DayC)} by day",
            CoverChange => "a row cover on the table",
            ReliefChange relief => ReliefFields.Deed(relief.Relief),
            DenseChange dense => $"{Crop(dense.CropId)} dense, {Numbers.Whole(dense.SeedsPerFlat)} seeds a flat",
            FinishChange finish => $"{Crop(finish.CropId)} finished on {Name(finish.Bench.Name)}",
            SlackChange slack => $"{slack.To} days of slack",
            SowChange { Moves: [var move] } => $"{Name(move.Line)} sown on {Day(move.To)}",
            SowChange sow => $"{Numbers.Whole(sow.Moves.Length)} lines sown on other days",
            FewerChange fewer => $"{Numbers.Whole(fewer.To)} plants of {Name(fewer.Line)}",
            LaterChange later => $"{Name(later.Line)} {later.Days} days later",
            _ => change.Code,
        };

    /// <summary>When it would be wrong, to follow "Wrong if".</summary>
    public static string WrongIf(MendChange change, SeasonPlan plan) =>
        change switch
        {
            PlacesChange { Space.Kind: SpaceKind.Mat } => "the circuit does not carry it",
            PlacesChange => "there is no room to work beside it",
            OpeningChange => "the house cannot be kept warm so early in a cold year",
            SetPointChange heat when heat.NightC < heat.House.NightC || heat.DayC < heat.DayBefore =>
                "a crop in it stands the cold less well than its data say",
            SetPointChange => "the heater does not hold it on a cold night",
            CoverChange => "the cover adds less on clear nights, or nobody lays it",
            ReliefChange => "the trays suffer for it",
            DenseChange => "nobody has time to pot up on the day",
            FinishChange => "the crop stalls in the cooler air",
            SlackChange or SowChange { Moves.Length: > 1 } => "spring is early: trays are then past their best",
            SowChange { Moves: [var move] } when move.Days < 0 => "it grows faster than its data say",
            SowChange { Moves: [var move] } => $"seed takes over {Emergence(plan, move.Line)} days to come up",
            FewerChange => "the plants are promised",
            _ => "the date is promised",
        };

    /// <summary>A date with its day of the week.</summary>
    public string WeekDay(DateOnly date) => $"{date.ToString("dddd", CultureInfo.InvariantCulture)} {Day(date)}";

    /// <summary>A date.</summary>
    public string Day(DateOnly date) => _dates.Plain(date);

    /// <summary>A name on one line, not too long.</summary>
    public static string Name(string name) => PlainText.Short(name, LongestName);

    private string Deed(PlacesChange change, SeasonPlan plan)
    {
        var at = basePlan.Scenario.Spaces.IndexOf(change.Space);
        var now = plan.Scenario.Spaces[at].Places;
        var then = $"{Numbers.Whole(now)} places, not {Numbers.Whole(change.Space.Places)}";
        return change.LengthM > 0
            ? $"Make {Name(change.Space.Name)} {Kinds.Length(0, 1000).Show(change.LengthM, _units)} longer: {then}."
            : $"Add {Numbers.Count(now - change.Space.Places, "place", "places")} to {Name(change.Space.Name)}: {then}.";
    }

    private string Deed(SetPointChange change)
    {
        var nights = change.NightC != change.House.NightC;
        var days = change.DayC != change.DayBefore;
        var night = $"{Degrees(change.NightC)} at night, not {Degrees(change.House.NightC!.Value)}";
        var day = $"{Degrees(change.DayC)} by day, not {Degrees(change.DayBefore)}";
        return $"Heat {Name(change.House.Name)} to {(nights && days ? $"{night}, and {day}" : nights ? night : day)}.";
    }

    /// <summary>Moves counted by grower, so that it is seen whether one bears them all: "2 of Mara and 1 of Ben".</summary>
    internal static string Spread(IEnumerable<SowingMove> moves)
    {
        var growers = moves
            .GroupBy(move => move.Grower, StringComparer.Ordinal)
            .OrderByDescending(own => own.Count())
            .ThenBy(own => own.Key, StringComparer.Ordinal)
            .Select(own => $"{own.Count()} of {Name(own.Key)}")
            .ToArray();
        return growers.Length <= MostGrowers
            ? PlainText.List(growers)
            : PlainText.List([
                .. growers.Take(MostGrowers),
                $"others of {Numbers.Count(growers.Length - MostGrowers, "grower", "growers")}",
            ]);
    }

    private int Moved(SeasonPlan plan) => basePlan.Batches.Zip(plan.Batches).Count(pair => pair.First.SowOn != pair.Second.SowOn);

    private static int Emergence(SeasonPlan plan, string line)
    {
        var batch = plan.Batches.First(each => string.Equals(each.Order.Id, line, StringComparison.Ordinal));
        return batch.EmergeOn.DayNumber - batch.SowOn.DayNumber + 2;
    }

    private string Crop(string id) =>
        PlainText.Short(
            basePlan.Scenario.Crops.First(crop => string.Equals(crop.Id, id, StringComparison.Ordinal)).Name.ToLowerInvariant(),
            LongestName
        );

    private string Degrees(double celsius) => Temperatures.Words(celsius, _units);
}
