using System.Collections.Immutable;

namespace BenchSim.Answers.Json;

/// <summary>How large a sweep is: what <c>--plan</c> gives.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the sweep.</param>
/// <param name="Folders">Scenario folders.</param>
/// <param name="Plans">Plans of all folders: the plans themselves and variants.</param>
/// <param name="ValueSets">Sets of values beside the values as given.</param>
/// <param name="Seasons">Seasons of each plan and set of values.</param>
/// <param name="SeasonsInAll">Seasons of all tasks.</param>
/// <param name="Tasks">Number of tasks.</param>
/// <param name="Done">Tasks whose results are there.</param>
internal sealed record SweepPlanDocument(
    int Version,
    string Name,
    int Folders,
    int Plans,
    int ValueSets,
    int Seasons,
    long SeasonsInAll,
    int Tasks,
    int Done
);

/// <summary>What a call with <c>--task</c> or <c>--shard</c> did.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Tasks">Number of tasks of the sweep.</param>
/// <param name="Asked">Tasks that were asked for.</param>
/// <param name="Played">Those that were played now.</param>
/// <param name="Found">Those whose results were there.</param>
/// <param name="Replaced">
/// Those that were played now and had earlier results that were damaged, or of other files or settings or another build.
/// </param>
internal sealed record SweepPlayedDocument(int Version, int Tasks, int Asked, int Played, int Found, int Replaced);

/// <summary>What a merge lacks.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Tasks">Number of tasks of the sweep.</param>
/// <param name="Lacking">Tasks that have no result that can be merged.</param>
/// <param name="Missing">Those that have none.</param>
/// <param name="Damaged">Those whose results were cut short or changed.</param>
/// <param name="OtherBuild">Those that another build played.</param>
/// <param name="OtherFiles">Those that are of other files or settings.</param>
/// <param name="Ranges">The first of them, in ranges.</param>
/// <param name="Beyond">Those beyond these ranges.</param>
/// <param name="First">What the first of them plays.</param>
internal sealed record SweepLackingDocument(
    int Version,
    int Tasks,
    int Lacking,
    int Missing,
    int Damaged,
    int OtherBuild,
    int OtherFiles,
    ImmutableArray<JsonTaskRange> Ranges,
    int Beyond,
    JsonTask First
);

/// <summary>Tasks that follow one another.</summary>
/// <param name="First">Number of the first.</param>
/// <param name="Last">Number of the last.</param>
internal sealed record JsonTaskRange(int First, int Last);

/// <summary>What a task plays.</summary>
/// <param name="Task">Its number, from 1.</param>
/// <param name="Folder">Scenario folder, as the file of the sweep has it.</param>
/// <param name="Variant">Name of the variant; null for the plan itself.</param>
/// <param name="ValueSet">Its set of values; 0 for the values as given.</param>
/// <param name="FirstSeason">Its first season, from 1.</param>
/// <param name="LastSeason">Its last season.</param>
internal sealed record JsonTask(int Task, string Folder, string? Variant, int ValueSet, int FirstSeason, int LastSeason);
