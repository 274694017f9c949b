using System.Collections.Immutable;
using System.Globalization;
using BenchSim.Answers.Words;
using BenchSim.Report.Json;
using BenchSim.Report.Words;
using BenchSim.Study.Compare;
using BenchSim.Study.Levelling;

namespace BenchSim.Answers.Json;

/// <summary>A levelled plan and what came of it. Place-days over are places wanted beyond the limit, added up over the days.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="ExpectedSeasons">Seasons without limits of place that the expected places are the mean of.</param>
/// <param name="Fill">Share of the places that the expected trays may fill.</param>
/// <param name="MayMove">Sowings that may move.</param>
/// <param name="Verdict">"adopt", "keep", "nothing_may_move", "nothing_is_over" or "nothing_helps".</param>
/// <param name="Sentence">What to do, in words.</param>
/// <param name="OverBefore">Place-days over as planned.</param>
/// <param name="OverAfter">Place-days over when levelled.</param>
/// <param name="OverBound">No choice leaves fewer place-days over than this.</param>
/// <param name="OverProved">Whether it is proved that no choice leaves fewer than the levelled plan.</param>
/// <param name="ShiftDays">Days of shift, earlier and later added up.</param>
/// <param name="ShiftBound">No choice as good shifts fewer days than this.</param>
/// <param name="ShiftProved">Whether it is proved that none shifts fewer than the levelled plan.</param>
/// <param name="Moves">Sowings moved, in the order of the plan.</param>
/// <param name="Groups">Spaces that are levelled together.</param>
/// <param name="Trial">The levelled plan against the plan; null when nothing moves.</param>
/// <param name="File">File of the levelled plan; null where none was written.</param>
internal sealed record LevelDocument(
    int Version,
    string Name,
    int ExpectedSeasons,
    double Fill,
    int MayMove,
    string Verdict,
    string Sentence,
    double OverBefore,
    double OverAfter,
    double OverBound,
    bool OverProved,
    int ShiftDays,
    int ShiftBound,
    bool ShiftProved,
    ImmutableArray<JsonMove> Moves,
    ImmutableArray<JsonLevelGroup> Groups,
    JsonComparison? Trial,
    string? File
)
{
    public static LevelDocument Of(LevelResult result, string? written) =>
        new(
            Version: JsonDialect.Version,
            Name: result.Plan.Scenario.Name,
            ExpectedSeasons: result.Options.ExpectedSeasons,
            Fill: result.Options.Fill,
            MayMove: result.Movable,
            Verdict: result.Verdict switch
            {
                LevelVerdict.NothingMayMove => "nothing_may_move",
                LevelVerdict.NothingIsOver => "nothing_is_over",
                LevelVerdict.NothingHelps => "nothing_helps",
                LevelVerdict.Adopt => "adopt",
                LevelVerdict.Keep => "keep",
                _ => throw new InvalidOperationException("An unknown verdict."),
            },
            Sentence: LevelWords.Verdict(result),
            OverBefore: result.OverBefore,
            OverAfter: result.OverAfter,
            OverBound: result.OverBound,
            OverProved: result.IsOverProved,
            ShiftDays: result.ShiftDays,
            ShiftBound: result.ShiftBound,
            ShiftProved: result.IsShiftProved,
            Moves: [.. result.Moves.Select(JsonMove.Of)],
            Groups: [.. result.Groups.Select(group => JsonLevelGroup.Of(group, result))],
            Trial: result.Trial is { } trial ? JsonComparison.Of(trial) : null,
            File: written
        );
}

/// <summary>A sowing moved.</summary>
/// <param name="Batch">Id of the batch.</param>
/// <param name="Grower">Grower whose batch it is.</param>
/// <param name="From">Planned sow date.</param>
/// <param name="To">Its sow date when moved.</param>
/// <param name="Days">Days moved, below 0 for earlier.</param>
/// <param name="SetOutFrom">Planned set-out date.</param>
/// <param name="SetOutTo">Its set-out date then.</param>
internal sealed record JsonMove(string Batch, string Grower, DateOnly From, DateOnly To, int Days, DateOnly SetOutFrom, DateOnly SetOutTo)
{
    public static JsonMove Of(MovedSowing move) =>
        new(move.Batch, move.Grower, move.From, move.To, move.Days, move.SetOutFrom, move.SetOutTo);
}

/// <summary>Spaces that are levelled together.</summary>
/// <param name="Kind">"mat", "bench" or "table".</param>
/// <param name="Spaces">Ids of the spaces.</param>
/// <param name="PlacesLeast">Fewest places on any day.</param>
/// <param name="PlacesMost">Most places on any day.</param>
/// <param name="ExpectedBefore">Expected peak as planned.</param>
/// <param name="ExpectedAfter">Expected peak when levelled.</param>
/// <param name="PlayedPeak">Most places wanted on any day of a played season without limits; null when nothing moves.</param>
internal sealed record JsonLevelGroup(
    string Kind,
    ImmutableArray<string> Spaces,
    int PlacesLeast,
    int PlacesMost,
    JsonExpectedPeak ExpectedBefore,
    JsonExpectedPeak ExpectedAfter,
    JsonPlayedPeak? PlayedPeak
)
{
    public static JsonLevelGroup Of(LevelledGroup group, LevelResult result) =>
        new(
            Trade.Code(group.Group.Kind),
            [.. group.Group.Spaces.Select(space => result.Plan.Scenario.Spaces[space].Id)],
            group.Group.Places.Min(),
            group.Group.Places.Max(),
            JsonExpectedPeak.Of(group.Before),
            JsonExpectedPeak.Of(group.After),
            group.Played is { } played ? JsonPlayedPeak.Of(played) : null
        );
}

/// <summary>What is expected of a group.</summary>
/// <param name="Peak">Most places wanted on any day.</param>
/// <param name="On">The day.</param>
/// <param name="OverPlaceDays">Place-days over.</param>
/// <param name="OverDays">Days with places over.</param>
internal sealed record JsonExpectedPeak(double Peak, DateOnly On, double OverPlaceDays, int OverDays)
{
    public static JsonExpectedPeak Of(ExpectedPeak peak) => new(peak.Places, peak.On, peak.OverPlaceDays, peak.OverDays);
}

/// <summary>The peak of a group over played seasons, as planned and when levelled.</summary>
/// <param name="Before">Mean as planned.</param>
/// <param name="After">Mean when levelled.</param>
/// <param name="Difference">Mean of the difference.</param>
/// <param name="Interval">Interval of the difference, allowing for all groups; null for one season.</param>
/// <param name="Real">The interval leaves out 0.</param>
internal sealed record JsonPlayedPeak(double Before, double After, double Difference, JsonInterval? Interval, bool Real)
{
    public static JsonPlayedPeak Of(PlayedPeak peak) =>
        new(peak.Before, peak.After, peak.Difference, JsonInterval.Of(peak.Low, peak.High), peak.IsReal);
}
