using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using BenchSim.Engine;
using BenchSim.Season.Play;

namespace BenchSim.Season.Tests;

/// <summary>The engine holds what plays a season, and nothing else.</summary>
public class EngineUseTests
{
    [Fact]
    public void The_season_uses_every_public_type_of_the_engine()
    {
        using var file = File.OpenRead(typeof(SeasonPlayer).Assembly.Location);
        using var reader = new PEReader(file);
        var metadata = reader.GetMetadataReader();
        var used = metadata
            .TypeReferences.Select(metadata.GetTypeReference)
            .Select(type => $"{metadata.GetString(type.Namespace)}.{metadata.GetString(type.Name)}")
            .ToHashSet(StringComparer.Ordinal);
        Assert.All(typeof(Clock).Assembly.GetExportedTypes(), type => Assert.Contains(type.FullName!, used));
    }
}
