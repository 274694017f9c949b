using System.Security.Cryptography;

namespace EndToEnd.Faults;

/// <summary>All names and bytes of a folder as one text, to be compared.</summary>
internal static class FolderText
{
    public static string Of(string folder) =>
        string.Join(
            '\n',
            Directory
                .EnumerateFiles(
                    folder,
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }
                )
                .Select(file => $"{Path.GetRelativePath(folder, file)} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(file)))}")
                .Order(StringComparer.Ordinal)
        );
}
