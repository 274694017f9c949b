using System.Collections.Immutable;
using BenchSim.Report.Json;
using BenchSim.Report.Papers;

namespace BenchSim.Answers.Json;

/// <summary>Papers that were written.</summary>
/// <param name="Version">Version of the documents.</param>
/// <param name="Name">Name of the case.</param>
/// <param name="Grower">Grower whose papers they are; null for all growers.</param>
/// <param name="Folder">Folder of the papers.</param>
/// <param name="From">First date.</param>
/// <param name="To">Last date.</param>
/// <param name="Files">Names of the files.</param>
/// <param name="Weeks">Weeks of work.</param>
/// <param name="Jobs">Jobs.</param>
/// <param name="Hours">Hours of the jobs, by [work_minutes] and [work_seconds].</param>
/// <param name="WateringHours">Hours of watering; 0 where it is not counted.</param>
/// <param name="Seeds">Seeds needed.</param>
/// <param name="Trays">Trays needed.</param>
/// <param name="Flats">Flats needed.</param>
/// <param name="MixLitres">Litres of loose mix needed.</param>
/// <param name="MixCubicFeet">The same in cubic feet.</param>
/// <param name="MixUnits">The same in bales, bags or totes, whole ones.</param>
/// <param name="MixSoldIn">What mix is bought in: bale, bag or tote.</param>
/// <param name="Cost">Cost of seed and mix; null where a price is missing.</param>
/// <param name="Labels">Labels, one a tray or flat.</param>
internal sealed record PapersDocument(
    int Version,
    string Name,
    string? Grower,
    string Folder,
    DateOnly From,
    DateOnly To,
    ImmutableArray<string> Files,
    int Weeks,
    int Jobs,
    double Hours,
    double WateringHours,
    long Seeds,
    int Trays,
    int Flats,
    double MixLitres,
    double MixCubicFeet,
    int MixUnits,
    string MixSoldIn,
    double? Cost,
    JsonLabels Labels
)
{
    public static PapersDocument Of(string name, string folder, PaperSummary summary) =>
        new(
            Version: JsonDialect.Version,
            Name: name,
            Grower: summary.Grower,
            Folder: folder,
            From: summary.From,
            To: summary.To,
            Files: summary.Files,
            Weeks: summary.Weeks,
            Jobs: summary.Tasks,
            Hours: summary.Hours,
            WateringHours: summary.WateringHours,
            Seeds: summary.Seeds,
            Trays: summary.Trays,
            Flats: summary.Flats,
            MixLitres: summary.MixLitres,
            MixCubicFeet: summary.MixCubicFeet,
            MixUnits: summary.MixUnits,
            MixSoldIn: summary.MixSoldIn,
            Cost: summary.Cost,
            Labels: new JsonLabels(summary.Sheet.Name, summary.Labels, summary.LabelSheets)
        );
}

/// <summary>Labels of trays.</summary>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="Labels">Labels.</param>
/// <param name="Sheets">Sheets; 0 where none are printed.</param>
internal sealed record JsonLabels(string Sheet, int Labels, int Sheets);
