namespace BenchSim.Folder.Tests;

public class ScenarioTemplateTests
{
    [Fact]
    public void The_starter_folder_reads_without_faults_or_warnings()
    {
        using var folder = new TestFolder(null, null);
        foreach (var file in ScenarioTemplate.Files())
        {
            folder.Write(file.Name, [.. file.Bytes]);
        }

        var reading = folder.Read();
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        Assert.NotNull(reading.Scenario);
        // Six rows; broccoli is sown three times and lettuce four.
        Assert.Equal(11, reading.Scenario.Batches.Length);
        Assert.Equal(["basil", "broccoli", "lettuce", "onion", "pepper", "tomato"], reading.Scenario.Crops.Select(crop => crop.Id).ToArray());
    }

    [Fact]
    public void The_same_files_come_every_time() =>
        Assert.Equal(["README.md", "plan.csv", "site.toml"], ScenarioTemplate.Files().Select(file => file.Name).ToArray());
}
