using System.Reflection;
using System.Xml.Linq;
using BenchSim.Cli.Commands;

namespace BenchSim.Cli.Tests;

/// <summary>
/// The arrows between the rooms point one way: Cli to Answers, Level and Workbench, Workbench to Answers, Answers to Report and Folder,
/// Report and Level to Study to Season to Engine, Folder to Season.
/// </summary>
public sealed class ReferenceDirectionTests
{
    private static readonly SortedDictionary<string, string[]> s_arrows = new(StringComparer.Ordinal)
    {
        ["BenchSim.Answers"] = ["BenchSim.Folder", "BenchSim.Report"],
        ["BenchSim.Cli"] = ["BenchSim.Answers", "BenchSim.Level", "BenchSim.Workbench"],
        ["BenchSim.Engine"] = [],
        ["BenchSim.Folder"] = ["BenchSim.Season"],
        ["BenchSim.Level"] = ["BenchSim.Study"],
        ["BenchSim.Report"] = ["BenchSim.Study"],
        ["BenchSim.Season"] = ["BenchSim.Engine"],
        ["BenchSim.Study"] = ["BenchSim.Season"],
        ["BenchSim.Workbench"] = ["BenchSim.Answers"],
    };

    public static TheoryData<string> Rooms => [.. s_arrows.Keys];

    [Fact]
    public void Every_project_under_src_has_its_arrows_here() =>
        Assert.Equal(
            s_arrows.Keys,
            Directory.EnumerateDirectories(Source()).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal),
            StringComparer.Ordinal
        );

    [Theory]
    [MemberData(nameof(Rooms))]
    public void Project_files_follow_the_arrows(string room)
    {
        var project = XDocument.Load(Path.Combine(Source(), room, room + ".csproj"));
        string[] referenced =
        [
            .. project
                .Descendants("ProjectReference")
                .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/')))
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(s_arrows[room], referenced);
    }

    [Theory]
    [MemberData(nameof(Rooms))]
    public void Built_assemblies_follow_the_arrows(string room)
    {
        // References of references may be used too: the command prints what Study counted. Against an arrow, never.
        string[] used =
        [
            .. References(room).Where(name => name.StartsWith("BenchSim.", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
        ];
        Assert.Subset(Reachable(room), used.ToHashSet(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("BenchSim.Engine")]
    [InlineData("BenchSim.Season")]
    [InlineData("BenchSim.Study")]
    [InlineData("BenchSim.Level")]
    public void The_model_knows_no_screen_and_no_page(string room) =>
        Assert.DoesNotContain(References(room), name =>
            name is "System.Console" or "Spectre.Console" or "System.CommandLine" or "ScottPlot" or "Tomlyn"
        );

    // The solver is large: only levelling carries it.
    [Theory]
    [MemberData(nameof(Rooms))]
    public void Only_levelling_knows_the_solver(string room) =>
        Assert.Equal(
            string.Equals(room, "BenchSim.Level", StringComparison.Ordinal),
            References(room).Contains("Google.OrTools", StringComparer.Ordinal)
        );

    private static IEnumerable<string> References(string room)
    {
        var assembly = string.Equals(room, "BenchSim.Cli", StringComparison.Ordinal) ? "benchsim" : room;
        return Assembly.Load(assembly).GetReferencedAssemblies().Select(name => name.Name!);
    }

    private static HashSet<string> Reachable(string room)
    {
        var reachable = new HashSet<string>(StringComparer.Ordinal);
        foreach (var next in s_arrows[room])
        {
            reachable.Add(next);
            reachable.UnionWith(Reachable(next));
        }

        return reachable;
    }

    private static string Source() => Repository.File("src");
}
