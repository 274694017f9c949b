using BenchSim.Report.Words;
using BenchSim.Season.Inputs;
using BenchSim.Season.Values;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Words;

/// <summary>What was learned, in words.</summary>
internal static class LearnWords
{
    private const int MostNamed = 3;

    /// <summary>The answer in a sentence or three: how many values the seasons teach, and which of them move a date.</summary>
    public static string Headline(LearnResult result)
    {
        var values = result.Values.ToList();
        var seasons = $"The {(result.Seasons.Length == 1 ? "log" : "logs")} of {Seasons(result)}";
        if (values.Count == 0)
        {
            return $"{seasons} {(result.Seasons.Length == 1 ? "teaches" : "teach")} no value of a crop.";
        }

        var matter = values.Where(each => each.Value.Anew.Matters).ToList();
        var crops = values.Select(each => each.Crop).Distinct().Count();
        var taught =
            $"{seasons} {(result.Seasons.Length == 1 ? "teaches" : "teach")} {Numbers.Count(values.Count, "value", "values")} of "
            + $"{Numbers.Count(crops, "crop", "crops")}.";
        if (matter.Count == 0)
        {
            return $"{taught} None of them would move a planned date by more than a day.";
        }

        var named = matter.Take(MostNamed).Select(each => $"{Crop(each.Crop)} ({Value(each.Value.Learned.Kind)})").ToList();
        if (matter.Count > MostNamed)
        {
            named.Add(Numbers.Count(matter.Count - MostNamed, "other", "others"));
        }

        return $"{taught} {Numbers.Whole(matter.Count)} would move a planned date by more than a day: {PlainText.List(named)}.";
    }

    /// <summary>The seasons in a few words.</summary>
    public static string Seasons(LearnResult result) => PlainText.List([.. result.Seasons.Select(season => season.Name)]);

    /// <summary>A crop as people read it.</summary>
    public static string Crop(TaughtCrop crop) => PlainText.Short(crop.Lessons.Crop.Name, 24);

    /// <summary>What a value is called.</summary>
    public static string Value(LearnedKind kind) =>
        kind switch
        {
            LearnedKind.EmergeHeat => "heat to come up",
            LearnedKind.Germination => "germination",
            LearnedKind.PotUpLoss => "loss potting up",
            LearnedKind.StandLoss => "loss once up",
            _ => "days of growth",
        };

    /// <summary>What a job of [work_minutes] is called.</summary>
    public static string Job(string key) =>
        key switch
        {
            "sow" => "sowing",
            "pot_up" => "potting up",
            "move" => "moving",
            _ => "setting out",
        };

    /// <summary>The interval of a value.</summary>
    public static string Interval(LearnedKind kind, Learned value) => $"{kind.Text(value.Low)} to {kind.Text(value.High)}";

    /// <summary>By how much it would move a planned date.</summary>
    public static string Days(PlannedAnew anew)
    {
        if (!anew.Faults.IsEmpty)
        {
            return "no such plan";
        }

        var days = anew.Moved.IsEmpty ? 0 : Most(anew).Days;
        return days == 0 ? "no" : $"{Numbers.Count(Math.Abs(days), "day", "days")} {(days < 0 ? "earlier" : "later")}";
    }

    /// <summary>The same with what is moved.</summary>
    public static string Dates(PlannedAnew anew) => anew.Moved.IsEmpty ? Days(anew) : $"{Most(anew).What}, {Days(anew)}";

    /// <summary>The same, batch by batch, in a sentence.</summary>
    public static string AllDates(PlannedAnew anew) =>
        anew.Faults.IsEmpty
            ? string.Join(
                "; ",
                anew.Moved.Select(date =>
                    $"{date.Batch}: {date.What} {Report.Words.Dates.Iso(date.From)} becomes " + $"{Report.Words.Dates.Iso(date.To)}"
                )
            )
            : $"the plan would have a fault: {anew.Faults[0].What}";

    /// <summary>Why a batch that was judged teaches nothing of growth.</summary>
    public static string Why(NotLearned batch, UnitSystem units) =>
        batch.House switch
        {
            null => "by the weather and the places written down it was not up by then",
            { Unwritten: > 0 } house => $"no house temperatures written down in {Numbers.Whole(house.Unwritten)} of its "
                + $"{Numbers.Count(house.Weeks, "week", "weeks")} in {PlainText.Short(house.House, 30)}",
            { } house => $"the nights written down in {PlainText.Short(house.House, 30)} were "
                + $"{UnitWords.Difference(Math.Abs(house.MeanGapK), units)} {(house.MeanGapK < 0 ? "colder" : "warmer")} "
                + "than by its set-point and the weather: mend its night in site.toml first",
        };

    /// <summary>That chosen counts say nothing of the crop.</summary>
    public static string Volunteered(LearnResult result) =>
        $"{Numbers.Count(result.Volunteered, "count is", "counts are")} of trays that someone chose, and "
        + $"{(result.Volunteered == 1 ? "says" : "say")} nothing of the crop: pick trays by lot, count them whatever they look like, "
        + "and begin the note with \"picked\".";

    /// <summary>The houses of whose heat loss the fuel says something.</summary>
    public static IEnumerable<(House House, int Stretches, Learned Loss)> WithLoss(LearnResult result)
    {
        foreach (var house in result.Houses)
        {
            if (house.Loss is { } loss)
            {
                yield return (house.House, house.Stretches, loss);
            }
        }
    }

    /// <summary>The houses that take another heat than is worked out, beyond luck; null for none.</summary>
    public static string? Houses(LearnResult result)
    {
        var others = WithLoss(result).Where(house => house.Loss.Low > 1 || house.Loss.High < 1).ToList();
        return others.Count == 0
            ? null
            : "By their fuel: "
                + PlainText.List([
                    .. others.Select(house =>
                        $"{PlainText.Short(house.House.Name, 24)} takes {Numbers.Hundredths(house.Loss.New)} times the heat worked out "
                        + $"({Numbers.Hundredths(house.Loss.Low)} to {Numbers.Hundredths(house.Loss.High)})"
                    ),
                ])
                + ".";
    }

    /// <summary>That the fuel of a house was counted too seldom.</summary>
    public static string TooFew(LearnedHouse house) =>
        $"Heat loss of {PlainText.Short(house.House.Name, 24)}: "
        + $"{Numbers.Count(house.Stretches, "stretch", "stretches")} between lines of fuel can be set beside the weather, and "
        + $"{Numbers.Whole(HouseLessons.Fewest)} are needed.";

    /// <summary>That some days have normal weather.</summary>
    public static string Lacking(LearnResult result) =>
        $"{Numbers.Count(result.LackingDays, "day has", "days have")} no observed weather and {(result.LackingDays == 1 ? "was" : "were")} "
        + "taken as normal: what was learned off the mats rests on that.";

    /// <summary>How many judged batches teach nothing of growth, and why the first does not.</summary>
    public static string NotGrown(LearnResult result)
    {
        var all = result.Crops.SelectMany(crop => crop.Lessons.NotGrown).ToList();
        return $"{Numbers.Count(all.Count, "judged batch teaches", "judged batches teach")} nothing of growth: "
            + $"{PlainText.Short(all[0].Batch, 24)}, {Why(all[0], result.Plan.Scenario.Units)}{(all.Count > 1 ? "; and so on" : "")}.";
    }

    private static MovedDate Most(PlannedAnew anew) => anew.Moved.MaxBy(date => Math.Abs(date.Days))!;
}
