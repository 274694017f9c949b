namespace BenchSim.Folder.Tests.Variants;

/// <summary>docs/folder.md and the keys of a variant are one list.</summary>
public class VariantReferenceTests
{
    [Theory]
    [InlineData("variant", "### Keys of a variant file")]
    [InlineData("variant plan", "### Keys of [[plan]] in a variant")]
    [InlineData("invest", "### Keys of [invest] in a variant")]
    public void The_documentation_shows_every_key_and_no_other(string section, string heading)
    {
        var documented = new List<string>();
        var isHere = false;
        foreach (var line in File.ReadLines(Path.Combine(Repository.Root, "docs", "folder.md")))
        {
            isHere = line.StartsWith('#') ? string.Equals(line, heading, StringComparison.Ordinal) : isHere;
            if (isHere && line.StartsWith("| `", StringComparison.Ordinal))
            {
                documented.Add(line);
            }
        }

        Assert.Equal(
            FolderReference.VariantKeys.Where(key => string.Equals(key.Section, section, StringComparison.Ordinal)).Select(Row).ToArray(),
            documented.ToArray()
        );
    }

    private static string Row(FieldDescription field) =>
        "| " + string.Join(" | ", $"`{field.Name}`", field.Type, field.Unit, field.Default, field.DefaultSource, field.Meaning) + " |";
}
