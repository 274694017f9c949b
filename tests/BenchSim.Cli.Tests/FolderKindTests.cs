namespace BenchSim.Cli.Tests;

/// <summary>A command replaces its own earlier folder and no folder of another command, though BenchSim wrote both.</summary>
public sealed class FolderKindTests
{
    [Theory]
    [InlineData("print", "run")]
    [InlineData("run", "print")]
    [InlineData("size", "run")]
    [InlineData("run", "size")]
    [InlineData("size", "print")]
    public void A_folder_of_another_command_is_left_alone(string first, string second)
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        var place = folder.In("kept");
        Assert.Equal(0, Write(first, farm, place).Code);
        var before = Everything(place);
        var refused = Write(second, farm, place);
        Assert.Equal(2, refused.Code);
        Assert.Contains(
            $"Nothing was written: '{place}' holds a report of another kind. Name another folder.",
            refused.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(before, Everything(place));
    }

    [Theory]
    [InlineData("run")]
    [InlineData("print")]
    [InlineData("size")]
    public void Its_own_earlier_folder_is_replaced(string command)
    {
        using var folder = new TemporaryFolder();
        var farm = PaperFarm.In(folder);
        var place = folder.In("kept");
        Assert.Equal(0, Write(command, farm, place).Code);
        var before = Everything(place);
        Assert.Equal(0, Write(command, farm, place).Code);
        Assert.Equal(before, Everything(place));
    }

    private static Call Write(string command, string farm, string place) =>
        command switch
        {
            "run" => Call.Run("run", farm, "--seasons", "2", "--out", place),
            "size" => Call.Run("size", farm, "--space", "mats", "--seasons", "40", "--out", place),
            _ => Call.Run("print", farm, "--what", "list", "--out", place),
        };

    private static string[] Everything(string place) =>
        [
            .. Directory
                .GetFiles(place, "*", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .Select(file => $"{file} {Convert.ToHexString(File.ReadAllBytes(file))}"),
        ];
}
