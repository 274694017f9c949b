using System.Collections.Immutable;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Season.Values;
using BenchSim.Study.Learning;

namespace BenchSim.Answers.Json;

/// <summary>What the logs of seasons teach of crops and of the work.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case, of the last folder.</param>
/// <param name="Sentence">The answer in words.</param>
/// <param name="Seasons">The seasons, in the order named.</param>
/// <param name="Prior">How far off values in force were taken to be.</param>
/// <param name="Values">The values of crops, in order of crop.</param>
/// <param name="Packets">Germination of packets against their test.</param>
/// <param name="Work">Minutes a tray.</param>
/// <param name="Houses">Houses whose fuel was counted.</param>
/// <param name="NotLearned">Batches that were judged and teach nothing of growth.</param>
/// <param name="Volunteered">Rows that count trays which someone chose, and say nothing of the crop.</param>
/// <param name="File">The crops.csv with the values; null where none was to be written, or there was nothing to write.</param>
/// <param name="Changed">Whether that file was changed.</param>
internal sealed record LearnDocument(
    int Version,
    string Name,
    string Sentence,
    ImmutableArray<JsonLearnedSeason> Seasons,
    JsonPrior Prior,
    ImmutableArray<JsonLearnedValue> Values,
    ImmutableArray<JsonLearnedPacket> Packets,
    ImmutableArray<JsonLearnedWork> Work,
    ImmutableArray<JsonLearnedHouse> Houses,
    ImmutableArray<JsonNotLearned> NotLearned,
    int Volunteered,
    string? File,
    bool Changed
)
{
    public static LearnDocument Of(LearnResult result, string? written, bool isChanged) =>
        new(
            Version: JsonDialect.Version,
            Name: result.Plan.Scenario.Name,
            Sentence: LearnWords.Headline(result),
            Seasons: [.. result.Seasons.Select(JsonLearnedSeason.Of)],
            Prior: new JsonPrior(result.Deviations.Read, result.Deviations.Remembered, result.Deviations.Assumed),
            Values: [.. result.Values.Select(each => JsonLearnedValue.Of(each.Crop, each.Value))],
            Packets: [.. result.Crops.SelectMany(crop => crop.Lessons.Packets, JsonLearnedPacket.Of)],
            Work: [.. result.Work.Select(JsonLearnedWork.Of)],
            Houses: [.. result.Houses.Select(JsonLearnedHouse.Of)],
            NotLearned: [.. result.Crops.SelectMany(crop => crop.Lessons.NotGrown, JsonNotLearned.Of)],
            Volunteered: result.Volunteered,
            File: written,
            Changed: isChanged
        );
}

/// <summary>A season that was learned from.</summary>
/// <param name="Name">Its year; with the folder where two are of one year.</param>
/// <param name="Case">Name of the case.</param>
/// <param name="LastRow">Date of the last row of its log.</param>
/// <param name="Batches">Batches in its log.</param>
/// <param name="DaysWithoutWeather">Days from its first row to then whose weather was not observed and was taken as normal.</param>
internal sealed record JsonLearnedSeason(string Name, string Case, DateOnly LastRow, int Batches, int DaysWithoutWeather)
{
    public static JsonLearnedSeason Of(LearnedSeason season) =>
        new(
            season.Name,
            season.Plan.Scenario.Name,
            season.Plan.Scenario.Log.Max(row => row.Date),
            season.Batches.Length,
            LearnResult.LackingIn(season)
        );
}

/// <summary>Standard deviations of the logarithm of a value in force, of a share of its log odds.</summary>
/// <param name="Read">Of one that was read in a source.</param>
/// <param name="Remembered">Of one from memory or common practice, or your own without a source.</param>
/// <param name="Assumed">Of an assumption, or a relative's.</param>
internal sealed record JsonPrior(double Read, double Remembered, double Assumed);

/// <summary>A value of a crop. Shares are from 0 to 1, heats degree-days C, growth days at the crop's reference temperature.</summary>
/// <param name="Crop">Id of the crop.</param>
/// <param name="Value">"emerge_heat", "germination", "pot_up_loss", "stand_loss" or "growth_days".</param>
/// <param name="Old">The value before these seasons.</param>
/// <param name="New">The value learned, not rounded.</param>
/// <param name="Interval90">It lies in it with a chance of 90 %.</param>
/// <param name="Batches">Batches behind it.</param>
/// <param name="Counted">Seeds or plants behind it; 0 where trays were judged.</param>
/// <param name="Moves">Of each batch of the plan the date that the value moves most, where that is by more than a day.</param>
/// <param name="PlanFault">What stands in the way of a plan with the value; null for nothing.</param>
internal sealed record JsonLearnedValue(
    string Crop,
    string Value,
    double Old,
    double New,
    JsonInterval? Interval90,
    int Batches,
    int Counted,
    ImmutableArray<JsonMovedDate> Moves,
    string? PlanFault
)
{
    public static JsonLearnedValue Of(TaughtCrop crop, TaughtValue value)
    {
        var learned = value.Learned;
        return new(
            crop.Lessons.Crop.Id,
            learned.Kind == LearnedKind.GrowthDays ? "growth_days" : learned.Kind.Column(),
            learned.Value.Old,
            learned.Value.New,
            JsonInterval.Of(learned.Value.Low, learned.Value.High),
            learned.Batches,
            learned.Counted,
            [.. value.Anew.Moved.Select(date => new JsonMovedDate(date.Batch, date.What, date.From, date.To))],
            value.Anew.Faults.IsEmpty ? null : value.Anew.Faults[0].ToString()
        );
    }
}

/// <summary>A planned date that a value moves.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="What">What is planned for it, in words.</param>
/// <param name="From">The date as planned.</param>
/// <param name="To">The date with the value.</param>
internal sealed record JsonMovedDate(string Batch, string What, DateOnly From, DateOnly To);

/// <summary>The germination of a packet; shares from 0 to 1.</summary>
/// <param name="Season">Season.</param>
/// <param name="Packet">Packet, or the batch where the plan names none.</param>
/// <param name="Crop">Id of the crop.</param>
/// <param name="Tested">By its test, aged to the sowing.</param>
/// <param name="Counted">By what was counted.</param>
/// <param name="Interval90">It lies in it with a chance of 90 %.</param>
/// <param name="Seeds">Seeds behind it.</param>
internal sealed record JsonLearnedPacket(
    string Season,
    string Packet,
    string Crop,
    double Tested,
    double Counted,
    JsonInterval? Interval90,
    int Seeds
)
{
    public static JsonLearnedPacket Of(TaughtCrop crop, LearnedPacket packet) =>
        new(
            packet.Season,
            packet.Packet,
            crop.Lessons.Crop.Id,
            packet.Tested,
            packet.Seen.New,
            JsonInterval.Of(packet.Seen.Low, packet.Seen.High),
            packet.Seen.Seen
        );
}

/// <summary>Minutes a tray of a job.</summary>
/// <param name="Key">Key of [work_minutes] in site.toml.</param>
/// <param name="Old">Minutes in force.</param>
/// <param name="New">Minutes learned.</param>
/// <param name="Interval90">They lie in it with a chance of 90 %.</param>
/// <param name="Rows">Rows with minutes.</param>
/// <param name="Trays">Trays or flats in these rows.</param>
internal sealed record JsonLearnedWork(string Key, double Old, double New, JsonInterval? Interval90, int Rows, int Trays)
{
    public static JsonLearnedWork Of(LearnedWork work) =>
        new(work.Key, work.Value.Old, work.Value.New, JsonInterval.Of(work.Value.Low, work.Value.High), work.Value.Seen, work.Trays);
}

/// <summary>The heat loss of a house, by the fuel that was counted.</summary>
/// <param name="House">Id of the house.</param>
/// <param name="Stretches">Stretches of days, from one row of fuel to the next, that say something.</param>
/// <param name="LossFactor">Its heat loss over that which is worked out; null where there are too few stretches.</param>
/// <param name="Interval90">It lies in it with a chance of 90 %; null likewise.</param>
internal sealed record JsonLearnedHouse(string House, int Stretches, double? LossFactor, JsonInterval? Interval90)
{
    public static JsonLearnedHouse Of(LearnedHouse house) =>
        new(house.House.Id, house.Stretches, house.Loss?.New, house.Loss is { } loss ? JsonInterval.Of(loss.Low, loss.High) : null);
}

/// <summary>A batch that was judged and teaches nothing of growth.</summary>
/// <param name="Season">Season.</param>
/// <param name="Crop">Id of the crop.</param>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Why">Why, in words.</param>
internal sealed record JsonNotLearned(string Season, string Crop, string Batch, string Why)
{
    public static JsonNotLearned Of(TaughtCrop crop, NotLearned batch) =>
        new(batch.Season, crop.Lessons.Crop.Id, batch.Batch, LearnWords.Why(batch, UnitSystem.Metric));
}
