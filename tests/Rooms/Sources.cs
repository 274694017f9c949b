using Support;

namespace Rooms;

/// <summary>The C# files of the repository, without what the build makes.</summary>
internal static class Sources
{
    /// <summary>Paths within the repository of the C# files under a folder of it, in order.</summary>
    public static IEnumerable<string> Of(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal);

    /// <summary>A file as far as rooms are concerned; null when it declares no namespace.</summary>
    public static SourceFile? Read(string path) => SourceFile.Read(path, Text(path));

    /// <summary>What stands in a file.</summary>
    public static string Text(string path) => File.ReadAllText(Path.Combine(Repository.Root, path));
}
