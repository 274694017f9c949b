using System.IO.Compression;

namespace BenchSim.Report.Papers;

/// <summary>Takes the clock out of a zip file: every entry gets the earliest date a zip can hold, in the order it came.</summary>
internal static class ZipIdentity
{
    private static readonly DateTimeOffset s_earliest = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The same entries always give the same bytes.</summary>
    public static byte[] Fixed(byte[] zip)
    {
        using var made = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(zip), ZipArchiveMode.Read))
        using (var to = new ZipArchive(made, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ZipArchiveEntry entry in from.Entries)
            {
                ZipArchiveEntry copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = s_earliest;
                using Stream source = entry.Open();
                using Stream target = copy.Open();
                source.CopyTo(target);
            }
        }

        return made.ToArray();
    }
}
