using System.Text;
using System.Text.RegularExpressions;
using BenchSim.Folder.Reference;
using BenchSim.Season.Fields;
using BenchSim.Season.Inputs;

namespace BenchSim.Folder.Tests;

/// <summary>
/// The starter folder is prose beside an invented farm, and no descriptor holds it. What it names, though, the descriptors know, and what
/// it says of a key that is left out is what they say.
/// </summary>
public partial class ScenarioTemplateFieldsTests
{
    [Fact]
    public void Every_key_stands_in_the_section_that_has_it()
    {
        Assert.All(Keys(), key => Assert.Contains(key.Name, NamesOf(key.Section), StringComparer.Ordinal));
        Assert.Equal(
            FolderReference
                .Site.Select(table => table.Section)
                .Where(section => !section.Contains('.', StringComparison.Ordinal))
                .Distinct(StringComparer.Ordinal),
            Keys().Select(key => key.Section).Distinct(StringComparer.Ordinal),
            StringComparer.Ordinal
        );
    }

    // "eave = ..." in a remark, and names of two words or more such as circuit_amps.
    [Fact]
    public void Every_name_in_a_remark_is_one_that_may_be_written()
    {
        string[] known = [.. FolderReference.All.SelectMany(table => table.Names.Append(table.Section))];
        string[] named =
        [
            .. Named().Matches(Text("site.toml")).Select(match => match.Groups["name"].Value).Distinct(StringComparer.Ordinal),
        ];

        Assert.Contains("eave", named, StringComparer.Ordinal);
        Assert.Contains("set_out_trays_a_day", named, StringComparer.Ordinal);
        Assert.All(named, name => Assert.Contains(name, known, StringComparer.Ordinal));
    }

    // A key that is commented out, or a guess at minutes, stands there with what holds without it, where that is one value. Fourteen keys
    // and five minutes have one.
    [Fact]
    public void A_key_that_is_commented_out_shows_what_holds_without_it()
    {
        var shown = Keys()
            .Where(key => key.IsRemark || string.Equals(key.Section, WorkMinuteFields.Table.Section, StringComparison.Ordinal))
            .Select(key => (key.Section, key.Name, Value: key.Value.Trim('"'), FieldOf(key.Section, key.Name).Default))
            .Where(key => OneValue().IsMatch(key.Default))
            .ToArray();

        Assert.Equal(19, shown.Length);
        Assert.All(shown, key => Assert.Equal((key.Section, key.Name, key.Default), (key.Section, key.Name, key.Value)));
    }

    [Theory]
    [InlineData("house", "side_wall", "none when left out")]
    [InlineData("house", "day", "the night's when left out")]
    [InlineData("house", "efficiency", "the fuel's when left out")]
    [InlineData("house", "air_changes", "the covering's when left out")]
    [InlineData("space", "unit_places", "left out: a tenth more")]
    [InlineData("rules", "slack_days", "0 when left out")]
    [InlineData("rules", "sow_trays_a_day", "no limit when left out")]
    public void What_a_remark_says_of_a_key_left_out_is_what_the_reference_says(string section, string name, string remark)
    {
        Assert.Contains(
            remark,
            Text("site.toml").Split('\n').First(line => line.TrimStart('#', ' ').StartsWith(name + " =", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
        var known = remark switch
        {
            "the night's when left out" => "as night",
            "the fuel's when left out" => "that of the fuel",
            "the covering's when left out" => "0.75 for double film, 1.125 for others",
            "left out: a tenth more" => "a tenth of the space's places, rounded up",
            _ => remark.Replace(" when left out", "", StringComparison.Ordinal),
        };
        Assert.Equal(known, FieldOf(section, name).Default);
    }

    [Fact]
    public void Every_column_is_one_that_the_file_has()
    {
        var readme = Text("README.md");
        var plan = Text("plan.csv").Split('\n')[0].Split(',');
        var crops = readme.Split('\n').First(line => line.StartsWith("      id,", StringComparison.Ordinal)).Trim().Split(',');
        var trays = TrayColumns().Match(readme).Groups["columns"].Value.Split(", ");
        var record = RecordColumns().Match(Text("site.toml")).Groups["columns"].Value.Split(',');

        Assert.All(plan, column => Assert.Contains(column, PlanFields.Table.Names, StringComparer.Ordinal));
        Assert.All(crops, column => Assert.Contains(column, CropFields.Table.Names, StringComparer.Ordinal));
        Assert.All(trays, column => Assert.Contains(column, TrayFields.Table.Names, StringComparer.Ordinal));
        Assert.All(record, column => Assert.Contains(column, RecordFields.Table.Names, StringComparer.Ordinal));
        Assert.Equal((19, 5, 6, 4), (plan.Length, crops.Length, trays.Length, record.Length));
    }

    private static string Text(string file) =>
        Encoding.UTF8.GetString([.. ScenarioTemplate.Files().Single(each => each.Name == file).Bytes]);

    private static IEnumerable<string> NamesOf(string section) =>
        FolderReference.Site.Where(table => table.Section == section).SelectMany(table => table.Names);

    private static Field FieldOf(string section, string name) =>
        FolderReference.Site.Where(table => table.Section == section).SelectMany(table => table.Fields).Single(field => field.Name == name);

    // What may be written in the place of the weather stands above its heading, and further in than other remarks.
    private static IEnumerable<(string Section, string Name, string Value, bool IsRemark)> Keys()
    {
        var section = "";
        foreach (var line in Text("site.toml").Split('\n'))
        {
            section = Heading().Match(line) is { Success: true } heading ? heading.Groups["name"].Value : section;
            if (KeyLine().Match(line) is { Success: true } key)
            {
                yield return (
                    key.Groups["remark"].Length > 2 ? "weather" : section,
                    key.Groups["name"].Value,
                    key.Groups["value"].Value.Trim(),
                    key.Groups["remark"].Success
                );
            }
        }
    }

    [GeneratedRegex(@"^(# )?\[+(?<name>[a-z_]+)\]+$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^(?<remark># +)?(?<name>[a-z_]+) = (?<value>[^#]*)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex KeyLine();

    [GeneratedRegex(@"\b(?<name>[a-z]+(_[a-z]+)+)\b|\b(?<name>[a-z_]+) = ", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Named();

    [GeneratedRegex(@"^[0-9.]+( (C|mm|%))?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex OneValue();

    [GeneratedRegex(@"trays, with the columns (?<columns>[a-z_, ]+)\.", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex TrayColumns();

    [GeneratedRegex(@"columns (?<columns>[a-z_,]+);", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex RecordColumns();
}
